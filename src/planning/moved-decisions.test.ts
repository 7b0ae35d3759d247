import fc from 'fast-check';
import { expect, test } from 'vitest';
import { addDays, type Day } from '#units/day.ts';
import type { Decision } from '#domain/decision.ts';
import type { FactBody } from '#domain/fact.ts';
import { idOf } from '#domain/identity.ts';
import type { Line } from '#domain/invented-log.setup.ts';
import { derive } from './derive.ts';
import { ADDED_FROM, dated, DATED_IN, decided, inventedRoad, LANDING, LAUNCH, PERSON } from './invented-road.setup.ts';
import { movedDecisions } from './moved-decisions.ts';
import { planContext } from './plan-context.ts';

const TODAY = addDays(LAUNCH, -40);

const movedIn = (...lines: readonly Line[]) => {
  const { log, known } = inventedRoad(...lines);
  return movedDecisions(planContext(known), derive(known, TODAY, TODAY), log, TODAY).map(
    ({ fact, which, was, now }) => [fact.kind, which, was.phase, was.missionDay, now.phase, now.missionDay],
  );
};

const slip = (days: number, landing = LANDING): Line => ({
  corrects: DATED_IN,
  by: dated(
    addDays(LAUNCH, days),
    landing && {
      earliest: addDays(landing.earliest, days),
      latest: addDays(landing.latest, days),
    },
  ),
});

const adjust = (
  from: number,
  until: number | null,
  change: Extract<Decision, { kind: 'adjust' }>['change'] = { kind: 'hold' },
) =>
  decided({
    kind: 'adjust',
    person: PERSON,
    track: idOf('squat heavy'),
    change,
    from: addDays(LAUNCH, from),
    until: until === null ? null : addDays(LAUNCH, until),
    reason: 'invented',
  });

test('a hold signed for the taper lies in flight-specific preparation once launch slips by eleven days', () => {
  expect(movedIn(adjust(-13, -9), slip(11))).toEqual([
    ['decided', 'first day', 'taper', 'L−13', 'flight-specific preparation', 'L−24'],
    ['decided', 'last day', 'taper', 'L−9', 'flight-specific preparation', 'L−20'],
  ]);
});

test('signed after the slip, it was meant for where it lies', () => {
  expect(movedIn(slip(11), adjust(-13, -9))).toEqual([]);
});

test('a slip of months takes flight days back before launch, and a slip back brings them home', () => {
  const inFlight = adjust(20, 20);
  expect(movedIn(inFlight, slip(150))).toEqual([
    ['decided', 'day', 'main flight', 'flight day 21', 'flight-specific preparation', 'L−130'],
  ]);
  expect(movedIn(inFlight, slip(150), { corrects: ADDED_FROM + 1, by: dated(LAUNCH, LANDING) })).toEqual([]);
});

test('a landing that comes earlier leaves a flight day after it', () => {
  const early = { earliest: addDays(LAUNCH, 90), latest: addDays(LAUNCH, 100) };
  expect(movedIn(adjust(120, 120), { corrects: DATED_IN, by: dated(LAUNCH, early) })).toEqual([
    ['decided', 'day', 'main flight', 'flight day 121', null, 'R+20'],
  ]);
});

const stay = (from: number, until: number | null): FactBody => ({
  kind: 'stays',
  person: PERSON,
  site: idOf('ground'),
  from: addDays(LAUNCH, from),
  until: until === null ? null : addDays(LAUNCH, until),
});

test('a stay to the eve of launch ends too early after a slip', () => {
  expect(movedIn(stay(-170, -2), slip(30))).toEqual([
    ['stays', 'first day', 'flight-specific preparation', 'L−170', 'general preparation', 'L−200'],
    ['stays', 'last day', 'quarantine', 'L−2', 'flight-specific preparation', 'L−32'],
  ]);
});

const restricted = (from: number): FactBody => ({
  kind: 'restricted',
  person: PERSON,
  medicalReason: null,
  restriction: {
    scope: { kind: 'all' },
    limit: { kind: 'no straining' },
    toldBy: 'Dr. A. Lowe',
    toldOn: addDays(LAUNCH, from),
    confirmed: true,
    from: addDays(LAUNCH, from),
    reviewOn: null,
  },
});

test('a restriction that binds is listed, one that was lifted is not', () => {
  expect(movedIn(restricted(-7), slip(14)).map(([kind, which]) => [kind, which])).toEqual([
    ['restricted', 'first day'],
  ]);
  const lifted: FactBody = {
    kind: 'restriction lifted',
    person: PERSON,
    restriction: idOf(`f-${ADDED_FROM}`),
    toldBy: 'Dr. A. Lowe',
    on: TODAY,
  };
  expect(movedIn(restricted(-7), lifted, slip(14))).toEqual([]);
});

test.each([
  { name: 'is over', lines: [adjust(-60, -50)] },
  {
    name: 'was ended by signature',
    lines: [
      adjust(-13, null),
      decided({ kind: 'end adjustment', person: PERSON, adjustment: idOf(`f-${ADDED_FROM}`) }),
    ],
  },
  { name: 'happened on a past day', lines: [adjust(-45, null, { kind: 'back off', by: 0.1 })] },
  {
    name: 'raised on a past day',
    lines: [decided({ kind: 'raise', person: PERSON, from: addDays(LAUNCH, -41), raises: [] })],
  },
  { name: 'lies in the same phase still', lines: [adjust(-100, -30)] },
])('a decision that $name is not listed', ({ lines }) => {
  expect(movedIn(...lines, slip(11))).toEqual([]);
});

const SINGLE: readonly ((from: Day) => Decision)[] = [
  (from) => ({ kind: 'raise', person: PERSON, from, raises: [] }),
  (from) => ({ kind: 're-base', person: PERSON, exercise: idOf('back-squat'), from }),
  (from) => ({ kind: 'fix body mass', person: PERSON, mass: { text: '70', unit: 'kg' }, from, reason: 'invented' }),
  (from) => ({ kind: 'limit shoulders', person: PERSON, load: { text: '70', unit: 'kg' }, from, reason: 'invented' }),
];

test.each(SINGLE.map((decisionOn) => ({ kind: decisionOn(TODAY).kind, decisionOn })))(
  'a signed day of “$kind” that is still to come is listed',
  ({ decisionOn }) => {
    expect(movedIn(decided(decisionOn(LAUNCH)), slip(3))).toEqual([
      ['decided', 'day', 'first flight weeks', 'flight day 1', 'quarantine', 'L−3'],
    ]);
  },
);

test('what counts from launch moves with it and is never listed', () => {
  fc.assert(
    fc.property(fc.integer({ min: -30, max: 200 }), (days) => {
      expect(movedIn(slip(days))).toEqual([]);
    }),
    { numRuns: 15 },
  );
});

test('a follow on a day of the calendar stays there', () => {
  const onDay = decided({
    kind: 'follow',
    person: PERSON,
    programme: idOf('an unknown programme'),
    from: { on: addDays(LAUNCH, 5) },
  });
  expect(movedIn(onDay, slip(11)).map(([kind, which]) => [kind, which])).toEqual([['decided', 'first day']]);
});

test('space walks and days set aside stay where they are when the launch slips, and are told where they lie now', () => {
  const walk: FactBody = { kind: 'space walk', person: PERSON, day: addDays(LAUNCH, 5), text: '' };
  const travel: FactBody = {
    kind: 'set aside',
    person: PERSON,
    from: addDays(LAUNCH, -10),
    until: addDays(LAUNCH, -10),
    what: 'travel',
    minutes: 0,
    text: '',
  };
  expect(movedIn(walk, travel, slip(11)).map(([kind, which, was, , now]) => [kind, which, was, now])).toEqual([
    ['space walk', 'day', 'first flight weeks', 'quarantine'],
    ['set aside', 'day', 'taper', 'flight-specific preparation'],
  ]);
});
