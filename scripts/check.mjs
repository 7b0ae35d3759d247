import { ensureInstalled } from './ensure-installed.mjs';
import { requireNode } from './require-node.mjs';

const BUDGET = 60;

requireNode();
await ensureInstalled();
const { checkParts } = await import('./check-parts.mjs');
const { closeRun, runParts } = await import('./parts.mjs');
closeRun(await runParts(checkParts), BUDGET);
