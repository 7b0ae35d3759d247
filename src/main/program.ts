import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** Both the built program and its source stand two folders below the root. */
export const inProject = (path: string): string => fileURLToPath(new URL(`../../${path}`, import.meta.url));

/** Name and version, as printed into documents. */
export const PROGRAM = ((): string => {
  const { version } = JSON.parse(readFileSync(inProject('package.json'), 'utf8')) as { readonly version: string };
  return `Ballast ${version}`;
})();
