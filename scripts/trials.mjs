import { spawnSync } from 'node:child_process';
import { ensureInstalled } from './ensure-installed.mjs';
import { ROOT, commandOf, note, runNode } from './project.mjs';
import { requireNode } from './require-node.mjs';

const MINUTE = 60;
const BUDGET = 90 * MINUTE;

/** Folders whose arithmetic is tried by changing it. */
const MUTATED = ['src/science', 'src/planning'];

/** @param {readonly string[]} given @returns {string} what git prints, or nothing where it fails */
const git = (given) => spawnSync('git', given, { cwd: ROOT, encoding: 'utf8' }).stdout?.trim() ?? '';

/** The commit after which files count as changed: the one asked for, else what is published, else a day ago. */
const since = () => {
  const place = process.argv.indexOf('--since');
  const asked = place > 0 ? process.argv[place + 1] : undefined;
  const published = git(['merge-base', 'HEAD', 'origin/main']);
  const isBehind = published !== '' && published !== git(['rev-parse', 'HEAD']);
  const aDayAgo = git(['rev-list', '-1', '--before=1.day', 'HEAD']);
  return asked ?? (isBehind ? published : aDayAgo || git(['rev-list', '--max-parents=0', 'HEAD']));
};

/** @param {string} commit */
const changedSince = (commit) =>
  git(['diff', '--name-only', '--diff-filter=AM', commit, '--', ...MUTATED])
    .split('\n')
    .filter((file) => /^[^.]+\.ts$/.test(file));

/** Changes the arithmetic of changed files in every small way and counts what no test notices. */
const mutation = async () => {
  const commit = since();
  const files = changedSince(commit);
  note(`Mutation of ${files.length} files changed since ${commit.slice(0, 10)}.`);
  if (files.length === 0) return true;
  const { code } = await runNode([commandOf('@stryker-mutator/core', 'stryker'), 'run', '--mutate', files.join(',')]);
  return code === 0;
};

requireNode();
await ensureInstalled();
const { closeRun, runDuty, runParts, runTests } = await import('./parts.mjs');

const seed = process.env.BALLAST_SEED ?? String(Date.now() % 2 ** 31);
note(`Properties are tried from seed ${seed}: BALLAST_SEED=${seed} npm run trials repeats this run.`);
const env = { BALLAST_TRIALS: '1', BALLAST_SEED: seed };

const run = await runParts([
  () => runTests('unit and property tests, at length', ['unit'], env),
  () => runTests('storage, at length', ['storage'], env),
  () => runTests('faults, at length', ['faults'], env),
  () => runDuty('mutation', mutation),
]);
closeRun(run, BUDGET);
