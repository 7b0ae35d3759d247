import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { ALL_FORMULAS } from './formulas.ts';
import type { FormulaInput, FormulaRecord } from './formula.ts';

const records = ALL_FORMULAS.map(({ record }) => record);

test('no two formulas share an id or a title', () => {
  expect(new Set(records.map(({ id }) => id)).size).toBe(records.length);
  expect(new Set(records.map(({ title }) => title)).size).toBe(records.length);
});

test.each(records)('$id says all that a reader needs', (record: FormulaRecord) => {
  expect(record.id).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*\/[a-z0-9]+(-[a-z0-9]+)*$/);
  expect(record.revision).toBeGreaterThanOrEqual(1);
  for (const text of [record.title, record.equation, record.doesNotKnow, record.source.text, record.output.unit])
    expect(text.trim()).not.toBe('');
});

test('a formula takes as many numbers as its record lists', () => {
  const crooked = ALL_FORMULAS.filter(({ length, record }) => length !== record.inputs.length);
  expect(crooked.map(({ record }) => record.id)).toEqual([]);
});

test('a valid range lies inside the possible one', () => {
  const outside = ({ possible, valid }: FormulaInput): boolean =>
    !(possible[0] <= valid[0] && valid[0] <= valid[1] && valid[1] <= possible[1]);
  expect(records.filter(({ inputs }) => inputs.some(outside)).map(({ id }) => id)).toEqual([]);
});

test('the line above a formula in the source is its title', () => {
  const folder = import.meta.dirname;
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((file) => /^[\w/-]+\.ts$/.test(file));
  const text = files.map((file) => readFileSync(join(folder, file), 'utf8')).join('\n');
  const lines = [...text.matchAll(/\/\*\* (?<line>[^*]+?)\. \*\/\nexport const \w+ = formula[<(]/g)].flatMap(
    ({ groups }) => groups?.['line'] ?? [],
  );
  expect(lines.length).toBeGreaterThan(40);
  const titles = new Set(records.map(({ title }) => title));
  expect(lines.filter((line) => !titles.has(line))).toEqual([]);
});
