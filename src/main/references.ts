import { writeFileSync } from 'node:fs';
import { referencesText } from './references-text.ts';

const target = new URL('../../docs/references.md', import.meta.url);
writeFileSync(target, referencesText());
console.log('docs/references.md is written anew.');
