import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { commandOf, readJson, runNode } from './project.mjs';

/**
 * A part of a run: it passes or fails in a number of places.
 * @typedef {{ name: string, passed: number, failed: number, skipped: number, seconds: number }} Outcome
 */

const MILLISECONDS_PER_SECOND = 1000;

/** @param {number} started */
const secondsSince = (started) => (performance.now() - started) / MILLISECONDS_PER_SECOND;

/**
 * Something that is done or not: it counts as one.
 * @param {string} name @param {() => Promise<boolean>} duty @returns {Promise<Outcome>}
 */
export const runDuty = async (name, duty) => {
  const started = performance.now();
  const isDone = await duty();
  return { name, passed: isDone ? 1 : 0, failed: isDone ? 0 : 1, skipped: 0, seconds: secondsSince(started) };
};

/**
 * A tool that is content or not. What it prints is shown only when it is not content.
 * @param {string} name @param {readonly string[]} given
 */
export const runTool = (name, given) =>
  runDuty(name, async () => {
    const { code, printed } = await runNode(given, { quiet: true });
    if (code !== 0) console.log(printed.trim());
    return code === 0;
  });

/**
 * What Vitest wrote, as numbers. A file that could not be read in has no test that failed, and an error between
 * tests belongs to none: each counts as one failure.
 * @param {{ numPassedTests: number, numFailedTests: number, numPendingTests: number, numTodoTests: number,
 *   testResults: readonly { status: string, assertionResults: readonly { status: string }[] }[] } | null} report
 * @param {number} code of the process
 */
export const countTests = (report, code) => {
  if (!report) return { passed: 0, failed: 1, skipped: 0 };
  const unreadable = report.testResults.filter(
    ({ status, assertionResults }) =>
      status === 'failed' && !assertionResults.some((assertion) => assertion.status === 'failed'),
  );
  const failed = report.numFailedTests + unreadable.length;
  return {
    passed: report.numPassedTests,
    failed: failed === 0 && code !== 0 ? 1 : failed,
    skipped: report.numPendingTests + report.numTodoTests,
  };
};

/**
 * The tests of some projects of vitest.config.ts.
 * @param {string} name @param {readonly string[]} projects @param {Record<string, string>} [env]
 * @returns {Promise<Outcome>}
 */
export const runTests = async (name, projects, env = {}) => {
  const started = performance.now();
  const folder = mkdtempSync(join(tmpdir(), 'ballast-tests-'));
  const file = join(folder, 'report.json');
  const chosen = projects.map((project) => `--project=${project}`);
  const reporters = ['--reporter=dot', '--reporter=json', `--outputFile.json=${file}`];
  // A terminal sees the progress; a log gets what is printed only where something failed, and without colours.
  const quiet = process.stdout.isTTY !== true;
  const { code, printed } = await runNode([commandOf('vitest', 'vitest'), 'run', ...chosen, ...reporters], {
    env: quiet ? { ...env, NO_COLOR: '1' } : env,
    quiet,
  });
  if (code !== 0) console.log(printed.trim());
  const report = existsSync(file) ? /** @type {Parameters<typeof countTests>[0]} */ (readJson(file)) : null;
  rmSync(folder, { recursive: true, force: true });
  return { name, ...countTests(report, code), seconds: secondsSince(started) };
};

/**
 * @typedef {() => Promise<Outcome>} Part
 * @typedef {{ outcomes: readonly Outcome[], seconds: number }} Run what became of the parts, and how long it took in all
 */

/**
 * Runs parts one after another, those of a list at once, and says of each what it took.
 * @param {readonly (Part | readonly Part[])[]} parts @returns {Promise<Run>}
 */
export const runParts = async (parts) => {
  const started = performance.now();
  /** @type {Outcome[]} */
  const outcomes = [];
  for (const part of parts) {
    const together = typeof part === 'function' ? [part] : part;
    outcomes.push(...(await Promise.all(together.map(runPart))));
  }
  return { outcomes, seconds: secondsSince(started) };
};

/** @param {Part} part */
const runPart = async (part) => {
  const outcome = await part();
  console.log(lineOf(outcome));
  return outcome;
};

/** @param {Outcome} outcome */
const lineOf = ({ name, passed, failed, skipped, seconds }) => {
  const counts = [`${passed} passed`, `${failed} failed`, ...(skipped > 0 ? [`${skipped} skipped`] : [])].join(', ');
  return `${failed > 0 ? '✗' : '✓'} ${name.padEnd(34)} ${seconds.toFixed(1).padStart(6)} s   ${counts}`;
};

/**
 * The time against the budget, and as the last line the sum. The process ends with 1 where anything failed.
 * @param {Run} run @param {number} budget in seconds
 */
export const closeRun = ({ outcomes, seconds }, budget) => {
  const sum = (/** @type {'passed' | 'failed'} */ what) =>
    outcomes.reduce((total, outcome) => total + outcome[what], 0);
  const over = seconds > budget ? ', which is over' : '';
  console.log(`${seconds.toFixed(0)} s of a budget of ${budget} s${over}`);
  console.log(`${sum('passed')} passed, ${sum('failed')} failed`);
  process.exitCode = sum('failed') > 0 ? 1 : 0;
};
