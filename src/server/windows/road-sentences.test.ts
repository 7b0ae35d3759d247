import { expect, test } from 'vitest';
import { addDays, type Day } from '#units/day.ts';
import type { FactBody } from '#domain/fact.ts';
import type { Line } from '#domain/invented-log.setup.ts';
import { derive } from '#planning/derive.ts';
import { LIFTS_ONLY } from '#planning/dose/counted-programme.setup.ts';
import { assigned, ASSIGNED_IN, decided, inventedRoad, LAUNCH, PERSON, tested } from '#planning/invented-road.setup.ts';
import { roadEnds, roadLayout } from '#planning/road-layout.ts';
import { roadSentences } from './road-sentences.ts';

/** A Monday in general preparation. */
const MONDAY = addDays(LAUNCH, -364);

const FOLLOWS: readonly FactBody[] = [
  { kind: 'catalogued', entry: { kind: 'programme', version: LIFTS_ONLY } },
  ...[-730, 0].map((days) =>
    decided({ kind: 'follow', person: PERSON, programme: LIFTS_ONLY.id, from: { from: 'launch', days } }),
  ),
  ...['back-squat', 'deadlift'].map((lift) => tested(addDays(LAUNCH, -400), lift)),
];

const said = (kind: string, today: Day, ...more: readonly Line[]): readonly string[] => {
  const { known, log } = inventedRoad(...FOLLOWS, ...more);
  const ends = roadEnds(known, today);
  const layout = ends && roadLayout(known, derive(known, today, ends.last), log);
  if (!layout) throw new Error('There is no road.');
  return roadSentences(layout, log, known)
    .filter((sentence) => sentence.kind === kind)
    .map(({ says }) => says);
};

test('a backup prepares on the same road, and one who becomes prime is told that nothing else changes', () => {
  expect(said('seat', MONDAY)).toEqual([]);
  const backup: Line = { corrects: ASSIGNED_IN, by: assigned('backup') };
  expect(said('seat', MONDAY, backup)).toEqual(['Backup: prepares on the same road, ready to take the seat any day.']);
  expect(said('seat', MONDAY, backup, assigned('prime'))).toEqual([
    'Was backup and is prime now: nothing else on the road has changed.',
  ]);
});

const held = (from: Day, until: Day | null): FactBody => ({
  kind: 'road holds',
  person: PERSON,
  from,
  until,
  text: '',
});

test('a hold says what goes on, and where it ends by itself', () => {
  expect(said('hold', MONDAY, held(addDays(LAUNCH, -300), null))).toEqual([
    'The road holds from 2028-05-09: general preparation goes on and its weeks count on; it ends by itself on 2029-03-04.',
  ]);
  expect(said('hold', MONDAY, held(addDays(LAUNCH, -300), addDays(LAUNCH, -200)))).toEqual([
    'The road holds from 2028-05-09 to 2028-08-17: general preparation goes on and its weeks count on.',
  ]);
});

test('a space walk asks for a look once it is over, and for a date where it has none in flight', () => {
  const walk = (day: Day): FactBody => ({ kind: 'space walk', person: PERSON, day, text: '' });
  const [after, out] = [addDays(LAUNCH, 30), addDays(LAUNCH, 28)];
  expect(said('walk', MONDAY, walk(out))).toEqual([]);
  expect(said('walk', after, walk(out))).toEqual([
    'Space walk on flight day 29; hands and shoulders are to be looked at.',
  ]);
  const look = {
    kind: 'looked at',
    person: PERSON,
    day: after,
    what: 'hands and shoulders',
    observedBy: 'Maud Arkwright',
  } as const;
  expect(said('walk', after, walk(out), { ...look, passed: false })).toEqual([
    'Space walk on flight day 29; looked at, grip and pressing stay out, by Maud Arkwright on flight day 31.',
  ]);
  expect(said('walk', after, walk(out), { ...look, passed: true })).toEqual([]);
  expect(said('walk', MONDAY, walk(addDays(LAUNCH, -1)))).toEqual([
    'Space walk on L−1; its day does not lie in flight any more.',
  ]);
});

const available = (minutes: readonly number[], from: Day, until: Day | null): FactBody => ({
  kind: 'available',
  person: PERSON,
  from,
  until,
  minutes,
});

test('weeks with less time than practice asks for are said, and sessions without a place', () => {
  const fortnight = addDays(MONDAY, 13);
  const week = (...minutes: readonly number[]) => said('window', MONDAY, available(minutes, MONDAY, fortnight));
  expect(week(0, 120, 0, 120, 0, 0, 0)).toEqual([]);
  expect(week(60, 60, 60, 60, 0, 0, 0)).toEqual([]);
  expect(week(0, 90, 60, 0, 119, 0, 0)).toEqual([
    '3 single hours a week where practice asks for four, or for two blocks of two: 2 weeks, from that of 2028-03-06 to that of 2028-03-13.',
  ]);
  expect(week(0, 0, 0, 0, 0, 0, 0)).toEqual([
    'No single hour a week where practice asks for four, or for two blocks of two: 2 weeks, from that of 2028-03-06 to that of 2028-03-13.',
    'Lifts has no place in 2 weeks, from that of 2028-03-06 to that of 2028-03-13.',
  ]);
});

test('in flight six days of two and a half hours are asked for', () => {
  const monday = addDays(LAUNCH, 28);
  const week = (...minutes: readonly number[]) =>
    said('window', monday, available(minutes, monday, addDays(monday, 6)));
  expect(week(150, 150, 150, 150, 150, 150, 0)).toEqual([]);
  expect(week(150, 150, 150, 150, 150, 149, 60)).toEqual([
    '5 days a week with 150 minutes where practice asks for six: the week of 2029-04-02.',
  ]);
});

test('a programme that reserves less than practice asks for is said, with what it lacks', () => {
  expect(said('time', MONDAY)).toEqual([
    'Minutes a week that are reserved, of those that practice asks for: main flight 240 of 1050. Their programmes hold no endurance: main flight.',
  ]);
});

test('too little of something over the same weeks is one sentence, with how much and against what', () => {
  const [first, ...others] = said('dose', MONDAY);
  expect(first).toMatch(
    /^77 weeks, from that of 2028-03-06 to that of 2029-08-20 \(L−364 to flight day 175\): .*calf 0 to 2 of at least 8 sets a week;.*endurance 0 of at least 150 min a week/,
  );
  expect([first, ...others].some((each) => each?.includes('grip') === true)).toBe(false);
});
