import fc from 'fast-check';
import { expect, test } from 'vitest';
import { addDays, weekdayOf, type Day } from '#units/day.ts';
import { derive } from './derive.ts';
import {
  assigned,
  ASSIGNED_IN,
  dated,
  DATED_IN,
  inventedRoad,
  LANDING,
  LAUNCH,
  tested,
  type InventedRoad,
} from './invented-road.setup.ts';
import { roadEnds, roadLayout, type RoadLayout } from './road-layout.ts';
import { sumOf } from './road-weeks.ts';

const layoutOf = ({ log, known }: InventedRoad, today: Day): RoadLayout => {
  const ends = roadEnds(known, today);
  const layout = ends && roadLayout(known, derive(known, today, ends.last), log);
  if (!layout) throw new Error('There is no road.');
  return layout;
};

const TESTS = ['back-squat', 'deadlift', 'bench-press', 'heel-raise'].map((lift) =>
  tested(addDays(LAUNCH, -730), lift),
);
const EARLY = addDays(LAUNCH, -700);
const road = layoutOf(inventedRoad(...TESTS), EARLY);

test('a road is drawn in whole weeks, from the week before anything is known to six weeks after landing', () => {
  expect([weekdayOf(road.first), weekdayOf(road.last)]).toEqual([0, 6]);
  expect(road.first - LAUNCH).toBeLessThanOrEqual(-730);
  expect(road.first - LAUNCH).toBeGreaterThan(-730 - 14);
  expect(road.last - LANDING.latest).toBeGreaterThanOrEqual(45);
  expect(road.weeks).toHaveLength((road.last - road.first + 1) / 7);
});

test('every card of the road stands in one week and in one phase, with its minutes', () => {
  const inWeeks = road.weeks.reduce((sum, { cards }) => sum + sumOf(cards), 0);
  const inPhases = road.phases.reduce((sum, { time }) => sum + sumOf(time.cards), 0);
  expect(inWeeks).toBe(inPhases);
  // Five sessions a week for 102 weeks before the taper and seven for 25 in flight, less cut weeks and launch day.
  expect(inWeeks).toBeGreaterThan(650);
  for (const { cards, minutes } of road.weeks) expect(sumOf(minutes) > 0).toBe(sumOf(cards) > 0);
});

test('what practice asks for: 240 minutes a week before launch, 150 a day in flight, a part of each where launch cuts', () => {
  const practiceAt = (day: number): number | null | undefined =>
    road.weeks.find(({ first, last }) => first <= addDays(LAUNCH, day) && last >= addDays(LAUNCH, day))?.practice;
  expect([practiceAt(-400), practiceAt(-100), practiceAt(10), practiceAt(100)]).toEqual([240, 240, 1050, 1050]);
  // L−14 to L−8 is the taper: a week that is meant to hold less. L−7 to L−2 quarantine, L−1 nothing.
  expect(practiceAt(-10)).toBeNull();
  expect(practiceAt(-1)).toBeCloseTo(240 / 7, 9);
});

test('reserved minutes are the programme’s blocks, true ones fit inside them', () => {
  const held = road.phases.filter(({ held: phase }) => phase !== null);
  expect(held.map(({ time }) => [time.sessionsAWeek, time.reservedAWeek])).toEqual([
    [5, 300],
    [5, 435],
    [4, 240],
    [4, 240],
    [7, 570],
    [7, 840],
    [7, 840],
  ]);
  for (const { time } of held) expect(time.trueAWeek ?? Infinity).toBeLessThanOrEqual(time.reservedAWeek);
});

test('beyond the horizon cards are expected, inside it they can be issued or wait', () => {
  const counts = road.weeks.map(({ first, cards }) => ({ ahead: first - EARLY, cards }));
  for (const { ahead, cards } of counts) {
    expect(cards.issued).toBe(0);
    if (ahead >= 14) expect(cards['can be issued'] + cards.waiting).toBe(0);
    if (ahead < 0) expect(cards.expected).toBe(0);
  }
  expect(
    sumOf(counts.find(({ ahead }) => ahead >= 0)?.cards ?? { issued: 0, 'can be issued': 0, waiting: 0, expected: 0 }),
  ).toBe(5);
});

test('weeks ahead that no programme holds are gaps; a day between two phases is none', () => {
  expect(road.gaps.map(({ first, last, side }) => [first, last, side])).toEqual([
    [LANDING.latest, road.last, 'after landing'],
  ]);
  const later = addDays(LANDING.latest, 10);
  expect(layoutOf(inventedRoad(), later).gaps.map(({ first }) => first)).toEqual([later]);
});

test.each([11, 150])('a launch that slips by %i days is a road laid out anew around the new day', (days) => {
  const landing = { earliest: addDays(LANDING.earliest, days), latest: addDays(LANDING.latest, days) };
  const slipped = layoutOf(
    inventedRoad(...TESTS, { corrects: DATED_IN, by: dated(addDays(LAUNCH, days), landing) }),
    EARLY,
  );
  expect(slipped.mission.launch - LAUNCH).toBe(days);
  const heldIn = ({ phases, mission }: RoadLayout) =>
    phases.flatMap(({ held, first, last }) =>
      held ? [[held.phase.name, first - mission.launch, last - mission.launch]] : [],
    );
  expect(heldIn(slipped)).toEqual(heldIn(road));
  expect(slipped.tests).toEqual(road.tests);
});

test('a landing as a range plans the flight to its latest day, an unknown one leaves the flight open', () => {
  const wide = layoutOf(
    inventedRoad({ corrects: DATED_IN, by: dated(LAUNCH, { earliest: addDays(LAUNCH, 120), latest: LANDING.latest }) }),
    EARLY,
  );
  expect(wide.phases.map(({ last }) => last)).toEqual(layoutOf(inventedRoad(), EARLY).phases.map(({ last }) => last));
  const open = layoutOf(inventedRoad({ corrects: DATED_IN, by: dated(LAUNCH, null) }), EARLY);
  expect([open.phases.at(-1)?.held?.phase.name, open.gaps]).toEqual(['main flight', []]);
  expect(open.asked.filter(({ occasion }) => occasion.includes('landing') || occasion === 'last in flight')).toEqual(
    [],
  );
});

test('a backup walks the same road as the prime, before and after flying in their place', () => {
  const backup = inventedRoad(...TESTS, { corrects: ASSIGNED_IN, by: assigned('backup') });
  const prime = inventedRoad(...TESTS, { corrects: ASSIGNED_IN, by: assigned('backup') }, assigned('prime'));
  const plain = ({ phases, asked, weeks, gaps, moved }: RoadLayout) => ({ phases, asked, weeks, gaps, moved });
  expect(plain(layoutOf(backup, EARLY))).toEqual(plain(road));
  expect(plain(layoutOf(prime, EARLY))).toEqual(plain(road));
});

test('whatever the dates, weeks and phases count the same cards', () => {
  fc.assert(
    fc.property(fc.integer({ min: -300, max: 300 }), fc.integer({ min: 10, max: 300 }), (slip, flight) => {
      const launch = addDays(LAUNCH, slip);
      const landing = { earliest: addDays(launch, flight), latest: addDays(launch, flight + 7) };
      const one = layoutOf(
        inventedRoad(...TESTS, { corrects: DATED_IN, by: dated(launch, landing) }),
        addDays(LAUNCH, -20),
      );
      const count = (parts: readonly { readonly cards: Parameters<typeof sumOf>[0] }[]): number =>
        parts.reduce((sum, { cards }) => sum + sumOf(cards), 0);
      expect(count(one.weeks)).toBe(count(one.phases.map(({ time }) => time)));
    }),
    { numRuns: 8 },
  );
});
