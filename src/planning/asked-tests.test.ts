import fc from 'fast-check';
import { expect, test } from 'vitest';
import { addDays, weekdayOf, type Day } from '#units/day.ts';
import { idOf } from '#domain/identity.ts';
import type { Known } from '#domain/known.ts';
import { showMissionDay } from '#domain/mission-day.ts';
import { askedTests, testDays, type AskedTest } from './asked-tests.ts';
import { inventedRoad, LANDING, LAUNCH, PERSON, tested, withDates } from './invented-road.setup.ts';
import { planContext } from './plan-context.ts';
import { roadEnds } from './road-layout.ts';
import { phaseSpans } from './road-spans.ts';

const asks = (known: Known, today: Day): readonly AskedTest[] => {
  const ends = roadEnds(known, today);
  if (!ends) throw new Error('There is no mission.');
  return askedTests(known, phaseSpans(planContext(known), ends), ends, today);
};

const FAR_BEFORE = addDays(LAUNCH, -730);
const { known } = inventedRoad();

test('every 13 weeks back from a week before the taper, and in flight, and after landing', () => {
  const days = asks(known, FAR_BEFORE).map(({ day, occasion }) => [day - LAUNCH, occasion]);
  // Launch is a Monday: L−21, and every 91 days before it, are Mondays too. R+7 is a Saturday, R+30 a Monday.
  expect(days.slice(-8)).toEqual([
    [-203, 'before launch'],
    [-112, 'before launch'],
    [-21, 'last before launch'],
    [29, 'in flight'],
    [89, 'in flight'],
    [156, 'last in flight'],
    [180 + 6, 'after landing'],
    [180 + 30, 'after landing'],
  ]);
});

test('no test is asked for in a taper, in quarantine, at a weekend on the ground, or twice at once', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: -60, max: 400 }),
      fc.option(fc.tuple(fc.integer({ min: 1, max: 300 }), fc.integer({ min: 0, max: 30 })), { nil: null }),
      (slip, flight) => {
        const launch = addDays(LAUNCH, slip);
        const landing = flight && {
          earliest: addDays(launch, flight[0]),
          latest: addDays(launch, flight[0] + flight[1]),
        };
        const moved = withDates(known, { launch, landing });
        const asked = asks(moved, FAR_BEFORE);
        for (const { day, occasion } of asked) {
          const isOnGround = day < launch || (landing !== null && day > landing.latest);
          if (isOnGround) expect(weekdayOf(day)).toBeLessThan(5);
          expect(day >= addDays(launch, -14) && day < launch).toBe(false);
          expect(occasion.includes('flight')).toBe(!isOnGround);
        }
        for (const [place, next] of asked.slice(1).entries())
          expect(next.day - (asked[place]?.day ?? next.day)).toBeGreaterThan(6);
      },
    ),
  );
});

test('a launch that slips by whole weeks takes every asked test before it along', () => {
  fc.assert(
    fc.property(fc.integer({ min: -10, max: 26 }), (weeks) => {
      const slip = 7 * weeks;
      const dates = { launch: addDays(LAUNCH, slip), landing: null };
      const labels = (one: Known): readonly string[] =>
        asks(one, FAR_BEFORE)
          .filter(({ day }) => one.mission !== null && day < one.mission.launch)
          .map(({ day }) => (one.mission ? showMissionDay(one.mission, day) : ''));
      const [before, after] = [
        labels(withDates(known, { launch: LAUNCH, landing: null })),
        labels(withDates(known, dates)),
      ];
      const shared = Math.min(before.length, after.length);
      expect(shared).toBeGreaterThan(5);
      expect(after.slice(-shared)).toEqual(before.slice(-shared));
    }),
  );
});

test.each([
  { today: -100, first: -112 },
  { today: -91, first: -112 },
  { today: -90, first: -21 },
])('who is first known at L$today is asked for the test about L$first, and for none before', ({ today, first }) => {
  const unknown = { ...known, facts: known.facts.filter(({ kind }) => kind !== 'measured') };
  expect(asks(unknown, addDays(LAUNCH, today))[0]?.day).toBe(addDays(LAUNCH, first));
});

const LIFTS = ['back-squat', 'deadlift', 'heel-raise', 'bench-press'];

test.each([
  { lifts: LIFTS, on: -30, today: -40, state: 'due' },
  { lifts: [], on: 0, today: -43, state: 'ahead' },
  { lifts: [], on: 0, today: -42, state: 'due' },
  { lifts: [], on: 0, today: 1, state: 'not tested' },
  { lifts: ['back-squat'], on: -30, today: -25, state: 'due' },
  { lifts: ['back-squat'], on: -30, today: 1, state: 'part tested' },
  { lifts: LIFTS, on: -30, today: -25, state: 'tested' },
  { lifts: LIFTS, on: -43, today: 1, state: 'not tested' },
])('with $lifts tested at L$on, the last ask before launch is $state at L$today', ({ lifts, on, today, state }) => {
  const isKnown = on <= today;
  const { known: one } = inventedRoad(...(isKnown ? lifts : []).map((lift) => tested(addDays(LAUNCH, on), lift)));
  const last = asks(one, addDays(LAUNCH, today)).find(({ occasion }) => occasion === 'last before launch');
  expect([last?.state, last?.lifts.toSorted()]).toEqual([state, LIFTS.toSorted().map((lift) => idOf(lift))]);
});

test('a short flight, over before the ramps are, is asked for no test; one of three months for one', () => {
  const inFlight = (days: number): number =>
    asks(
      withDates(known, { launch: LAUNCH, landing: { earliest: addDays(LAUNCH, days), latest: LANDING.latest } }),
      FAR_BEFORE,
    ).filter(({ occasion }) => occasion.includes('in flight')).length;
  expect([inFlight(40), inFlight(60), inFlight(130)]).toEqual([0, 1, 2]);
});

test('who follows no programme is asked for the lifts that were ever tested', () => {
  const { known: one } = inventedRoad(tested(addDays(LAUNCH, -300), 'deadlift'), tested(addDays(LAUNCH, -30)));
  const alone = { ...one, facts: one.facts.filter(({ kind }) => kind !== 'decided') };
  const last = asks(alone, addDays(LAUNCH, 1)).find(({ occasion }) => occasion === 'last before launch');
  expect([last?.lifts, last?.tested, last?.state]).toEqual([['deadlift', 'back-squat'], ['back-squat'], 'part tested']);
});

test('tests of one day are one day of testing', () => {
  const { known: one } = inventedRoad(
    tested(addDays(LAUNCH, -30), 'deadlift'),
    tested(addDays(LAUNCH, -40)),
    tested(addDays(LAUNCH, -30)),
    tested(addDays(LAUNCH, -30)),
  );
  expect(testDays(one)).toEqual([
    { day: addDays(LAUNCH, -40), lifts: ['back-squat'], others: [] },
    { day: addDays(LAUNCH, -30), lifts: ['deadlift', 'back-squat'], others: [] },
  ]);
});

test('tests of endurance and hands are days of testing too', () => {
  const rest = { what: 'resting heart rate', value: { text: '52', unit: '1/min' } } as const;
  const one = inventedRoad({ kind: 'tested', person: PERSON, day: addDays(LAUNCH, -30), test: rest }).known;
  expect(testDays(one)).toEqual([{ day: addDays(LAUNCH, -30), lifts: [], others: ['resting heart rate'] }]);
});

test('a day about an asked test that is set aside for tests is named', () => {
  const aside = (day: Day) =>
    inventedRoad({
      kind: 'set aside',
      person: PERSON,
      from: day,
      until: day,
      what: 'test',
      minutes: 0,
      text: '',
    }).known;
  const at = (day: Day) => asks(aside(day), FAR_BEFORE).find((ask) => ask.day === addDays(LAUNCH, -112))?.setAsideOn;
  expect(at(addDays(LAUNCH, -110))).toBe(addDays(LAUNCH, -110));
  expect(at(addDays(LAUNCH, -60))).toBeNull();
});
