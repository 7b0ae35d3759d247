import { readdirSync } from 'node:fs';
import { ensureInstalled } from './ensure-installed.mjs';
import { ROOT, giveUp, inProject, runNode } from './project.mjs';
import { requireNode } from './require-node.mjs';

const ENDING = '.bench.ts';

/** The benches whose name holds one of the words given, or all. @param {readonly string[]} words */
const benchesNamed = (words) =>
  readdirSync(inProject('bench'))
    .filter((file) => file.endsWith(ENDING))
    .map((file) => file.slice(0, -ENDING.length))
    .filter((name) => words.length === 0 || words.some((word) => name.includes(word)))
    .sort();

/**
 * Built as the program itself is built: a runner that compiles on the fly adds calls of its own to the code it times.
 * @param {readonly string[]} names
 */
const buildBenches = async (names) => {
  const { build } = await import('vite');
  await build({
    configFile: false,
    root: ROOT,
    publicDir: false,
    logLevel: 'warn',
    build: {
      ssr: true,
      outDir: inProject('dist', 'bench'),
      emptyOutDir: true,
      target: 'node20',
      minify: false,
      sourcemap: true,
      rolldownOptions: {
        input: Object.fromEntries(names.map((name) => [name, inProject('bench', name + ENDING)])),
        output: { entryFileNames: '[name].js' },
      },
    },
  });
};

requireNode();
await ensureInstalled();
const words = process.argv.slice(2);
const names = benchesNamed(words);
if (names.length === 0) giveUp(`No bench is named like "${words.join(' ')}": look into the folder bench.`);
await buildBenches(names);

/** Each in a process of its own, one after another. */
for (const name of names) {
  const { code } = await runNode([inProject('dist', 'bench', `${name}.js`)]);
  if (code !== 0) process.exitCode = 1;
}
