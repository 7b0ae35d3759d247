import fc from 'fast-check';
import { expect, test } from 'vitest';
import { idOf } from './identity.ts';
import {
  isDeloadWeek,
  phaseAt,
  programmeWeekday,
  takeUp,
  type ProgrammeContent,
  type ProgrammePhase,
} from './programme.ts';

const phase = (more: Partial<ProgrammePhase>): ProgrammePhase => ({
  name: 'first flight weeks',
  flightDays: [4, 21],
  deload: null,
  sessions: [],
  source: 'invented for this test',
  ...more,
});

const CONTENT: ProgrammeContent = {
  programme: idOf<'programme'>('flight'),
  name: 'Flight',
  number: 1,
  follows: null,
  phases: [
    phase({}),
    phase({ name: 'main flight', flightDays: [29, null], deload: { everyWeeks: 4, fewerSets: 1, loadBy: 0.9 } }),
  ],
};

test('a version is known by its content: the same content has the same identity, other content another', () => {
  expect(takeUp({ ...CONTENT })).toEqual(takeUp(CONTENT));
  expect(takeUp({ ...CONTENT, number: 2 }).id).not.toBe(takeUp(CONTENT).id);
});

test.each([
  { flightDay: -3, expected: null },
  { flightDay: 3, expected: null },
  { flightDay: 4, expected: ['first flight weeks', 1] },
  { flightDay: 10, expected: ['first flight weeks', 1] },
  { flightDay: 11, expected: ['first flight weeks', 2] },
  { flightDay: 21, expected: ['first flight weeks', 3] },
  { flightDay: 22, expected: null },
  { flightDay: 29, expected: ['main flight', 1] },
  { flightDay: 36, expected: ['main flight', 2] },
  { flightDay: 900, expected: ['main flight', 125] },
])('flight day $flightDay is $expected', ({ flightDay, expected }) => {
  const found = phaseAt(takeUp(CONTENT), flightDay);
  expect(found && [found.phase.name, found.week]).toEqual(expected);
});

test('the days of a programme week run from 1 to 7, and flight day 1 is the first', () => {
  expect([1, 2, 7, 8, 14, 15].map(programmeWeekday)).toEqual([1, 2, 7, 1, 7, 1]);
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 2000 }), (flightDay) => {
      expect(programmeWeekday(flightDay + 7)).toBe(programmeWeekday(flightDay));
    }),
  );
});

test('every fourth week is lighter where the phase says so', () => {
  const [first, main] = CONTENT.phases;
  expect([1, 2, 3, 4, 5, 8].map((week) => main && isDeloadWeek(main, week))).toEqual([
    false,
    false,
    false,
    true,
    false,
    true,
  ]);
  expect(first && isDeloadWeek(first, 4)).toBe(false);
});
