import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { referencesText } from '../src/main/references-text.ts';

test('docs/references.md is what the formulas say today; npm run docs writes it anew', () => {
  expect(readFileSync(new URL('../docs/references.md', import.meta.url), 'utf8')).toBe(referencesText());
});
