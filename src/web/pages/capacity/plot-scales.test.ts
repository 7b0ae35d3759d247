import fc from 'fast-check';
import { expect, test } from 'vitest';
import { addDays, isoDay, isoOfDay, weekdayOf } from '#units/day.ts';
import { dayTicks } from './plot-scales.ts';

const FIRST = isoDay('2027-01-05');

test('a short history is marked on Mondays, a long one on firsts of months', () => {
  expect(dayTicks(FIRST, addDays(FIRST, 20)).map(weekdayOf)).toEqual([0, 0, 0]);
  expect(dayTicks(FIRST, addDays(FIRST, 120)).map(isoOfDay)).toEqual([
    '2027-02-01',
    '2027-03-01',
    '2027-04-01',
    '2027-05-01',
  ]);
});

test('never more marks than can be read', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 4000 }), (span) => {
      expect(dayTicks(FIRST, addDays(FIRST, span)).length).toBeLessThanOrEqual(9);
    }),
  );
});
