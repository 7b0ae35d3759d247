import { expect, test } from 'vitest';
import { addDays, type Day } from '#units/day.ts';
import { inventedRoad, LANDING, LAUNCH, tested, PERSON } from '../invented-road.setup.ts';
import { planContext } from '../plan-context.ts';
import { stretchesOf } from './stretches.ts';

const TEST = addDays(LAUNCH, -300);
const WALK = addDays(LAUNCH, 100);
const stretches = stretchesOf(
  planContext(inventedRoad(tested(TEST), { kind: 'space walk', person: PERSON, day: WALK, text: '' }).known),
);
const from = (day: Day, ...days: readonly number[]) => days.map((each) => stretches.numberOf(addDays(day, each)));

test('days on both sides of what was entered lie in different stretches, days near it in none', () => {
  const [before, after] = from(TEST, -8, 8);
  expect(from(TEST, -7, -1, 0, 1, 7)).toEqual([null, null, null, null, null]);
  expect([before, after].every((number) => number !== null)).toBe(true);
  expect(before).not.toBe(after);
  expect(from(TEST, -100, 100)).toEqual([before, after]);
});

test('launch and landing are near for four weeks', () => {
  expect(from(LAUNCH, -8, 29).includes(null)).toBe(false);
  expect(from(LAUNCH, -7, 28)).toEqual([null, null]);
  expect(from(LANDING.latest, 28)).toEqual([null]);
  expect(from(LANDING.latest, 29)).not.toEqual([null]);
});

test('what is entered in flight parts the flight', () => {
  const [before, after] = from(WALK, -8, 8);
  expect(before).not.toBe(after);
});
