import { expect, test } from 'vitest';
import type { FormulaCheck } from '#science/check.ts';
import { formula } from '#science/formula.ts';
import { formulaGroups, foundIn, seriesChecks } from './formula-groups.ts';

const source = { text: 'Noone N. (1999) A paper.', status: 'our own design' } as const;
const plain = (id: string, title: string) =>
  formula(
    {
      id,
      revision: 1,
      title,
      equation: 'x + 1',
      inputs: [],
      output: { name: 'y', symbol: 'y', unit: '1' },
      source,
      doesNotKnow: 'anything',
    },
    (x: number) => x + 1,
  );
const [one, two] = [plain('one-rep-max/first', 'Maximum, first'), plain('share/squat', 'Share of a squat')];
const check: FormulaCheck = {
  kind: 'formula',
  formula: two,
  given: [1],
  printed: 2,
  within: 0,
  because: 'exact',
  source,
};

test('formulas are grouped by path and keep their checks', () => {
  const groups = formulaGroups([one, two], [check]);
  expect(groups.map((group) => group.title)).toEqual([
    'One-repetition maximum of a set',
    'Share of body weight that a lift moves',
  ]);
  expect(groups[1]?.entries[0]?.checks).toEqual([check]);
  expect(groups[0]?.entries[0]?.checks).toEqual([]);
});

test('every word must be found, in the formula or in its paper', () => {
  const groups = formulaGroups([one, two], []);
  expect(foundIn(groups, '').length).toBe(2);
  expect(foundIn(groups, 'NOONE squat').map((group) => group.id)).toEqual(['share']);
  expect(foundIn(groups, 'squat first')).toEqual([]);
});

test('checks of more than one formula stand apart', () => {
  const series = {
    kind: 'series',
    title: 'A sum',
    compute: () => 1,
    printed: 1,
    within: 0,
    because: 'exact',
    source,
  } as const;
  expect(seriesChecks([check, series])).toEqual([series]);
});
