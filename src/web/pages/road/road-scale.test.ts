import { expect, test } from 'vitest';
import { isoDay } from '#units/day.ts';
import { datesInWords } from './dates-in-words.ts';
import { monthsOf, percent, roadScale, yearsOf } from './road-scale.ts';

const ROAD = { first: isoDay('2027-11-15'), last: isoDay('2028-02-22') };

test('a hundred days are a hundred hundredths, each day as wide as the next', () => {
  const { at, width } = roadScale(ROAD);
  expect([at(ROAD.first), at(isoDay('2027-11-25')), width(ROAD)]).toEqual([0, 10, 100]);
  expect(width({ first: ROAD.last, last: ROAD.last })).toBe(1);
  expect(percent(33.333_333)).toBe('33.333%');
});

test('months and years begin on their own first days, cut where the road begins and ends', () => {
  expect(monthsOf(ROAD).map(({ says, first, last }) => [says, last - first + 1])).toEqual([
    ['Nov', 16],
    ['Dec', 31],
    ['Jan', 31],
    ['Feb', 22],
  ]);
  expect(yearsOf(ROAD).map(({ says, first }) => [says, first])).toEqual([
    ['2027', ROAD.first],
    ['2028', isoDay('2028-01-01')],
  ]);
});

test('dates inside a sentence are written in words; what is no date stays', () => {
  expect(datesInWords('from 2027-06-05 to 2027-12-09 (R+0)')).toBe('from 5 June 2027 to 9 December 2027 (R+0)');
  expect(datesInWords('number 2027-02-30')).toBe('number 2027-02-30');
});
