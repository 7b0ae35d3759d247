import { commandOf } from './project.mjs';
import { runTests, runTool } from './parts.mjs';

/**
 * What the compiler found out about a file is kept until the file or something it rests on changes.
 * @param {string} name of the compiler settings
 */
const typesOf = (name) => () =>
  runTool(`types: ${name}`, [
    commandOf('typescript', 'tsc'),
    '--project',
    `tsconfig.${name}.json`,
    '--incremental',
    '--tsBuildInfoFile',
    `node_modules/.cache/types/${name}.tsbuildinfo`,
  ]);

const lint = () => runTool('lint', [commandOf('oxlint', 'oxlint')]);

const format = () =>
  runTool('format', [
    commandOf('prettier', 'prettier'),
    '--check',
    '--cache',
    '--cache-strategy=content',
    '--log-level=warn',
    '.',
  ]);

const unitTests = () => runTests('unit, property, architecture tests', ['unit']);

/**
 * What is looked at before every commit: types, lint, format, and the tests that need no disk and no browser. The tools
 * run at once, since each alone leaves half of two cores idle; the tests fill both.
 */
export const checkParts = [[typesOf('pure'), typesOf('node'), typesOf('web'), lint, format], unitTests];
