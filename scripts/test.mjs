import { ensureInstalled } from './ensure-installed.mjs';
import { requireNode } from './require-node.mjs';

const MINUTE = 60;
const BUDGET = 6 * MINUTE;

requireNode();
await ensureInstalled();
const { checkParts } = await import('./check-parts.mjs');
const { ensureBrowser } = await import('./ensure-browser.mjs');
const { closeRun, runDuty, runParts, runTests } = await import('./parts.mjs');

/** A failure here is told before the browser tests fail one by one. */
const browser = () =>
  runDuty('a browser', async () => {
    const { name, why } = await ensureBrowser();
    console.log(name === null ? why : `The browser tests use ${name}.`);
    return name !== null;
  });

const run = await runParts([
  ...checkParts,
  () => runTests('storage on two databases', ['storage']),
  () => runTests('faults', ['faults']),
  browser,
  () => runTests('in a browser', ['browser']),
]);
closeRun(run, BUDGET);
