import fc from 'fast-check';
import { expect, test } from 'vitest';
import { idOf } from './identity.ts';
import type { MissionDates } from './mission-day.ts';
import {
  daysOfPhase,
  isDeloadWeek,
  placeInProgramme,
  takeUp,
  type ProgrammeContent,
  type ProgrammePhase,
  type RoadEdge,
} from './programme.ts';
import { addDays, isoDay, weekdayOf } from '#units/day.ts';

const launch = (days: number): RoadEdge => ({ from: 'launch', days });
const landing = (days: number): RoadEdge => ({ from: 'landing', days });

const phase = (more: Partial<ProgrammePhase>): ProgrammePhase => ({
  name: 'first flight weeks',
  span: { first: launch(3), last: launch(20) },
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
    phase({ name: 'general preparation', span: { first: launch(-100), last: launch(-31) } }),
    phase({}),
    phase({
      name: 'main flight',
      span: { first: launch(28), last: landing(-8) },
      deload: { everyWeeks: 4, fewerSets: 1, loadBy: 0.9 },
    }),
    phase({ name: 'last flight weeks', span: { first: landing(-7), last: null } }),
    phase({ name: 'first return stage', span: { first: landing(0), last: landing(9) } }),
    phase({ name: 'second return stage', span: { first: landing(10), last: null } }),
  ],
};
const VERSION = takeUp(CONTENT);

/** A Monday. */
const LAUNCH = isoDay('2027-03-01');
const DATES: MissionDates = {
  launch: LAUNCH,
  landing: { earliest: addDays(LAUNCH, 170), latest: addDays(LAUNCH, 180) },
};

test('a version is known by its content: the same content has the same identity, other content another', () => {
  expect(takeUp({ ...CONTENT })).toEqual(VERSION);
  expect(takeUp({ ...CONTENT, number: 2 }).id).not.toBe(VERSION.id);
});

test.each([
  { on: -101, expected: null },
  { on: -100, expected: ['general preparation', 1, 6] },
  { on: -98, expected: ['general preparation', 2, 1] },
  { on: -31, expected: ['general preparation', 11, 5] },
  { on: -30, expected: null },
  { on: 2, expected: null },
  { on: 3, expected: ['first flight weeks', 1, 4] },
  { on: 9, expected: ['first flight weeks', 1, 3] },
  { on: 10, expected: ['first flight weeks', 2, 4] },
  { on: 20, expected: ['first flight weeks', 3, 7] },
  { on: 21, expected: null },
  { on: 28, expected: ['main flight', 1, 1] },
  { on: 35, expected: ['main flight', 2, 1] },
  { on: 172, expected: ['main flight', 21, 5] },
  { on: 173, expected: ['last flight weeks', 1, 6] },
  { on: 179, expected: ['last flight weeks', 1, 5] },
  { on: 180, expected: ['first return stage', 1, 1] },
  { on: 189, expected: ['first return stage', 2, 3] },
  { on: 190, expected: ['second return stage', 1, 4] },
  { on: 900, expected: ['second return stage', 102, 7] },
])('launch plus $on days is $expected', ({ on, expected }) => {
  const found = placeInProgramme(VERSION, DATES, addDays(LAUNCH, on));
  expect(found && [found.phase.name, found.week, found.weekday]).toEqual(expected);
});

test('before launch weekdays are those of the calendar, in flight they count from launch day', () => {
  fc.assert(
    fc.property(fc.integer({ min: -100, max: -31 }), fc.integer({ min: 0, max: 6 }), (days, shift) => {
      const dates = { ...DATES, launch: addDays(LAUNCH, shift) };
      const on = addDays(dates.launch, days);
      expect(placeInProgramme(VERSION, dates, on)?.weekday).toBe(weekdayOf(on) + 1);
      expect(placeInProgramme(VERSION, dates, addDays(dates.launch, 3))?.weekday).toBe(4);
    }),
  );
});

test('a launch that slips takes the whole road before and after it along', () => {
  fc.assert(
    fc.property(fc.integer({ min: -100, max: 172 }), fc.integer({ min: -50, max: 50 }), (days, weeks) => {
      const slip = 7 * weeks;
      const dates = {
        launch: addDays(LAUNCH, slip),
        landing: { earliest: addDays(LAUNCH, 170 + slip), latest: addDays(LAUNCH, 180 + slip) },
      };
      expect(placeInProgramme(VERSION, dates, addDays(LAUNCH, days + slip))).toEqual(
        placeInProgramme(VERSION, DATES, addDays(LAUNCH, days)),
      );
    }),
  );
});

test('without a landing the flight goes on, and nothing that counts from landing is placed', () => {
  const open = { launch: LAUNCH, landing: null };
  expect(placeInProgramme(VERSION, open, addDays(LAUNCH, 900))?.phase.name).toBe('main flight');
  expect(VERSION.phases.map((each) => daysOfPhase(each, open) !== null)).toEqual([
    true,
    true,
    true,
    false,
    false,
    false,
  ]);
});

test('a flight too short for its phases leaves some of them no day', () => {
  const short = { launch: LAUNCH, landing: { earliest: addDays(LAUNCH, 20), latest: addDays(LAUNCH, 20) } };
  expect(VERSION.phases.map((each) => daysOfPhase(each, short) !== null)).toEqual([
    true,
    true,
    false,
    true,
    true,
    true,
  ]);
});

test('every fourth week is lighter where the phase says so', () => {
  const [, first, main] = CONTENT.phases;
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
