import { expect, test } from 'vitest';
import type { Problem } from '#contract/problem.ts';
import { isoDay } from '#units/day.ts';
import { chosenFrom, typedAmount, typedDay, typedDayOrNone, typedNumber, typedWords } from './typed-values.ts';

test('what can be read is read as typed, a decimal comma as a point', () => {
  const problems: Problem[] = [];
  expect(typedDay('2027-03-01', 'day', problems)).toBe(isoDay('2027-03-01'));
  expect(typedDayOrNone('', 'reviewOn', problems)).toBeNull();
  expect(typedAmount(' 102,50 ', 'kg', 'load.text', problems)).toEqual({ text: '102.50', unit: 'kg' });
  expect(typedNumber('7.5', 'effort.value', problems)).toBe(7.5);
  expect(typedWords(' Dr Lind ', 'toldBy', problems)).toBe('Dr Lind');
  expect(chosenFrom([{ id: 'a' }], 'a', 'exercise', problems)).toEqual({ id: 'a' });
  expect(problems).toEqual([]);
});

test('everything that cannot be read is said at its place, all at once', () => {
  const problems: Problem[] = [];
  typedDay('2027-02-31', 'day', problems);
  typedAmount('heavy', 'kg', 'load.text', problems);
  typedNumber('1e9', 'repetitions', problems);
  typedWords('  ', 'toldBy', problems);
  chosenFrom([], 'a', 'exercise', problems);
  expect(problems.map(({ field }) => field)).toEqual(['day', 'load.text', 'repetitions', 'toldBy', 'exercise']);
});
