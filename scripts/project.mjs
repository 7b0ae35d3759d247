import { spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The folder of the package, wherever a command was typed. */
export const ROOT = fileURLToPath(new URL('..', import.meta.url));

/** @param {...string} parts */
export const inProject = (...parts) => join(ROOT, ...parts);

/**
 * What is being done goes to standard error: standard output belongs to the program that is started.
 * @param {string} sentence
 */
export const note = (sentence) => process.stderr.write(`${sentence}\n`);

/**
 * Ends the process with one sentence.
 * @param {string} sentence
 * @returns {never}
 */
export const giveUp = (sentence) => {
  note(sentence);
  process.exit(1);
};

/** @param {string} path @returns {unknown} */
export const readJson = (path) => JSON.parse(readFileSync(path, 'utf8'));

/**
 * The script behind a command of an installed package, so that Node runs it on every system without a shell.
 * @param {string} packageName @param {string} command
 */
export const commandOf = (packageName, command) => {
  const folder = inProject('node_modules', packageName);
  const { bin } = /** @type {{ bin: string | Record<string, string> }} */ (readJson(join(folder, 'package.json')));
  return join(folder, typeof bin === 'string' ? bin : (bin[command] ?? ''));
};

/**
 * Runs Node on a script in the package folder and waits for its end.
 * @param {readonly string[]} given script and arguments
 * @param {{ env?: Record<string, string>, quiet?: boolean }} [how] quiet keeps what is printed instead of showing it
 * @returns {Promise<{ code: number, printed: string }>}
 */
export const runNode = (given, { env = {}, quiet = false } = {}) =>
  new Promise((resolve, reject) => {
    const child = spawn(process.execPath, given, {
      cwd: ROOT,
      env: { ...process.env, ...env },
      stdio: ['ignore', quiet ? 'pipe' : 'inherit', quiet ? 'pipe' : 'inherit'],
    });
    let printed = '';
    for (const stream of [child.stdout, child.stderr]) stream?.on('data', (text) => (printed += String(text)));
    child.on('error', reject);
    child.on('close', (code) => resolve({ code: code ?? 1, printed }));
  });
