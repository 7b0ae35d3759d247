import { spawn } from 'node:child_process';
import { ensureInstalled } from './ensure-installed.mjs';
import { ROOT, commandOf, inProject } from './project.mjs';
import { requireNode } from './require-node.mjs';

/** The program's port while developing; the pages come from Vite, which hands it what is not a page. */
const PORT = '4791';

requireNode();
await ensureInstalled();

/** @param {readonly string[]} given @param {Record<string, string>} [env] */
const keepRunning = (given, env = {}) =>
  spawn(process.execPath, given, {
    cwd: ROOT,
    env: { ...process.env, ...env },
    stdio: ['ignore', 'inherit', 'inherit'],
  });

const children = [
  keepRunning([
    commandOf('tsx', 'tsx'),
    'watch',
    inProject('src', 'main', 'serve.ts'),
    '--no-open',
    '--port',
    PORT,
    ...process.argv.slice(2),
  ]),
  keepRunning([commandOf('vite', 'vite')], { BALLAST_DEV_PORT: PORT }),
];

/** The end of one is the end of both. */
for (const child of children)
  child.on('exit', (code) => {
    for (const other of children) other.kill();
    process.exitCode ??= code ?? 1;
  });
for (const signal of /** @type {const} */ (['SIGINT', 'SIGTERM', 'SIGHUP']))
  process.on(signal, () => {
    for (const child of children) child.kill(signal);
  });
