import fc from 'fast-check';
import { expect, test } from 'vitest';
import { addDays, type Day } from '#units/day.ts';
import type { MissionDates } from '#domain/mission-day.ts';
import { idOf } from '#domain/identity.ts';
import { inventedRoad, LANDING, LAUNCH, PERSON, withDates } from './invented-road.setup.ts';
import { planContext } from './plan-context.ts';
import { roadEnds } from './road-layout.ts';
import { cutUnheld, phaseSpans, staySpans, type DaySpan, type PhaseSpan } from './road-spans.ts';

const { known } = inventedRoad({
  kind: 'stays',
  person: PERSON,
  site: idOf('ground'),
  from: addDays(LAUNCH, -300),
  until: addDays(LAUNCH, -200),
});

const anyDates: fc.Arbitrary<MissionDates> = fc
  .record({
    slip: fc.integer({ min: -400, max: 400 }),
    flight: fc.integer({ min: 1, max: 400 }),
    range: fc.integer({ min: 0, max: 40 }),
    isDated: fc.boolean(),
  })
  .map(({ slip, flight, range, isDated }) => {
    const launch = addDays(LAUNCH, slip);
    const earliest = addDays(launch, flight);
    return { launch, landing: isDated ? { earliest, latest: addDays(earliest, range) } : null };
  });

const anyToday = fc.integer({ min: -800, max: 500 }).map((days) => addDays(LAUNCH, days));

const laidOut = (dates: MissionDates, today: Day) => {
  const dated = withDates(known, dates);
  const ends = roadEnds(dated, today);
  if (!ends) throw new Error('There is no mission.');
  const context = planContext(dated);
  return { ends, phases: phaseSpans(context, ends), stays: staySpans(context, ends) };
};

const covers = (spans: readonly DaySpan[], { first, last }: DaySpan): void => {
  expect([spans[0]?.first, spans.at(-1)?.last]).toEqual([first, last]);
  for (const [place, next] of spans.slice(1).entries()) expect(next.first).toBe((spans[place]?.last ?? 0) + 1);
  for (const span of spans) expect(span.last).toBeGreaterThanOrEqual(span.first);
};

test('phases and stays cover the road from end to end, none over another, whatever its dates', () => {
  fc.assert(
    fc.property(anyDates, anyToday, (dates, today) => {
      const { ends, phases, stays } = laidOut(dates, today);
      covers(phases, ends);
      covers(
        phases.flatMap((span) => cutUnheld(span, today)),
        ends,
      );
      covers(stays, ends);
      expect([ends.first <= today, ends.last >= today]).toEqual([true, true]);
    }),
  );
});

const heldFrom = (phases: readonly PhaseSpan[], launch: Day) =>
  phases.flatMap(({ first, last, held }) => (held ? [[held.phase.name, first - launch, last - launch]] : []));

test('when launch and landing slip together, every phase keeps its days on the mission’s calendar', () => {
  fc.assert(
    fc.property(fc.integer({ min: -200, max: 200 }), (slip) => {
      const moved = {
        launch: addDays(LAUNCH, slip),
        landing: { earliest: addDays(LANDING.earliest, slip), latest: addDays(LANDING.latest, slip) },
      };
      const before = laidOut({ launch: LAUNCH, landing: LANDING }, addDays(LAUNCH, -100));
      const after = laidOut(moved, addDays(LAUNCH, -100));
      expect(heldFrom(after.phases, moved.launch)).toEqual(heldFrom(before.phases, LAUNCH));
    }),
  );
});

const BEFORE_LAUNCH = [
  ['general preparation', -730, -181],
  ['flight-specific preparation', -180, -15],
  ['taper', -14, -8],
  ['quarantine', -7, -2],
];

test('the shipped programmes one after the other: preparation to two days before launch, flight to landing', () => {
  const { phases } = laidOut({ launch: LAUNCH, landing: LANDING }, addDays(LAUNCH, -700));
  expect(heldFrom(phases, LAUNCH)).toEqual([
    ...BEFORE_LAUNCH,
    ['first flight weeks', 0, 13],
    ['main flight', 14, 165],
    ['last flight weeks', 166, 179],
  ]);
});

test('a landing that may be earlier is still flight until its latest day', () => {
  const early = { earliest: addDays(LAUNCH, 100), latest: LANDING.latest };
  const { phases } = laidOut({ launch: LAUNCH, landing: early }, LAUNCH);
  expect(heldFrom(phases, LAUNCH).at(-1)).toEqual(['last flight weeks', 166, 179]);
});

test('without a landing the flight goes on to the end of the drawing, half a year and the week it ends in', () => {
  const { phases, ends } = laidOut({ launch: LAUNCH, landing: null }, addDays(LAUNCH, -700));
  const last = phases.at(-1);
  expect([last?.held?.phase.name, last?.side, last?.last]).toEqual(['main flight', 'in flight', ends.last]);
  expect(ends.last - LAUNCH).toBeGreaterThanOrEqual(182);
  expect(ends.last - LAUNCH).toBeLessThan(182 + 7);
});

test('where somebody is said to stay is told apart from where they are only taken to be', () => {
  const { stays } = laidOut({ launch: LAUNCH, landing: LANDING }, addDays(LAUNCH, -700));
  expect(stays.map(({ isSaid, first, last }) => [isSaid, first - LAUNCH, last - LAUNCH]).slice(1, 4)).toEqual([
    [true, -300, -200],
    [false, -199, -1],
    [true, 0, 179],
  ]);
});
