import { mkdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { exampleFiles } from './example-files.ts';

/** Writes the example files anew: npx tsx scripts/examples/make-examples.ts */
const FOLDER = 'examples';

for (const { path, content } of await exampleFiles()) {
  const target = join(FOLDER, path);
  await mkdir(dirname(target), { recursive: true });
  await writeFile(target, content);
  console.log(`${target}: ${content.length} bytes`);
}
