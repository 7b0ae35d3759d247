import { ensureInstalled } from './ensure-installed.mjs';
import { commandOf, inProject, runNode } from './project.mjs';
import { requireNode } from './require-node.mjs';

requireNode();
await ensureInstalled();
/** Writes the documents that are made from the sources. */
const { code } = await runNode([commandOf('tsx', 'tsx'), inProject('src', 'main', 'references.ts')]);
process.exitCode = code;
