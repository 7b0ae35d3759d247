import fc from 'fast-check';
import { expect, test } from 'vitest';
import { addDays, type Day } from '#units/day.ts';
import { entered } from '#units/entered.ts';
import type { Card } from '#domain/card.ts';
import { SET_ASIDE, type FactBody } from '#domain/fact.ts';
import { idOf, type TrackId } from '#domain/identity.ts';
import type { Known } from '#domain/known.ts';
import type { Road } from '#domain/road.ts';
import { derive } from './derive.ts';
import { decided, FLIGHT_PROGRAMME, inventedRoad, LANDING, LAUNCH, PERSON, tested } from './invented-road.setup.ts';
import { planCard } from './plan-card.ts';

const BEGIN = addDays(LAUNCH, -730);
const TESTS: readonly FactBody[] = ['back-squat', 'deadlift', 'bench-press'].map((lift) => tested(BEGIN, lift));

/** Days whose card is another one where every day is planned on its own, and what else is. */
const differences = (known: Known, today: Day, until: Day): readonly (string | Day)[] => {
  const [road, other] = [derive(known, today, until), derive(known, today, until, planCard)];
  const days = other.cards.flatMap((card, place) => (isSame(card, road.cards[place]) ? [] : [card.day]));
  const parts = (['lifts', 'tracks', 'proposals', 'gaps', 'unlaid', 'rows', 'pieces'] as const).filter(
    (part) => !isSame(other[part], road[part]),
  );
  return [...days, ...parts, ...(road.cards.length === other.cards.length ? [] : ['another number of cards'])];
};

const isSame = (one: unknown, other: unknown): boolean => JSON.stringify(one) === JSON.stringify(other);

const UNEVENTFUL = inventedRoad(...TESTS).known;

test('a road that repeats its cards is the road whose days are planned one by one', () => {
  expect(differences(UNEVENTFUL, BEGIN, addDays(LANDING.latest, 45))).toEqual([]);
});

const cardsOf = (road: Road): readonly Card[] =>
  road.cards.flatMap((each) => (each.state === 'issued' ? [] : [each.card]));

test('a session comes out the same a week later, with rows of its own, where nothing is near', () => {
  const cards = cardsOf(derive(UNEVENTFUL, BEGIN, addDays(BEGIN, 80)));
  const again = cards.filter((card) =>
    cards.some(({ day, minutes }) => day === addDays(card.day, -7) && minutes === card.minutes),
  );
  expect(again.length).toBeGreaterThan(20);
  const rows = cards.flatMap(({ items }) => items.flatMap((item) => (item.kind === 'lift' ? (item.row ?? []) : [])));
  expect(rows.length).toBeGreaterThan(cards.length);
  expect(new Set(rows).size).toBe(rows.length);
});

test('what can be issued is never taken from another day', () => {
  const today = addDays(BEGIN, 40);
  const minutes = cardsOf(derive(UNEVENTFUL, today, addDays(today, 13))).map((card) => card.minutes);
  expect(minutes.length).toBeGreaterThan(7);
  expect(new Set(minutes).size).toBe(minutes.length);
});

const SPAN = 190;
const aDay = fc.integer({ min: 0, max: SPAN }).map((days) => addDays(LAUNCH, days - 50));
const aSpan = fc
  .tuple(aDay, fc.oneof(fc.integer({ min: 0, max: 10 }), fc.constant(300)))
  .map(([from, days]) => ({ from, until: addDays(from, days) }));
const tracks: readonly TrackId[] = [
  ...new Set(
    FLIGHT_PROGRAMME.phases.flatMap(({ sessions }) => sessions.flatMap(({ items }) => items.map(({ track }) => track))),
  ),
];
const person = PERSON;

const anyEvent: fc.Arbitrary<FactBody> = fc.oneof(
  fc
    .record({
      kind: fc.constant('set aside' as const),
      person: fc.constant(person),
      what: fc.constantFrom(...SET_ASIDE),
      minutes: fc.constantFrom(0, 30, 60),
      text: fc.constant(''),
    })
    .chain((fact) => aSpan.map((span) => ({ ...fact, ...span }))),
  aDay.map((day): FactBody => ({ kind: 'space walk', person, day, text: '' })),
  fc.tuple(aDay, fc.boolean()).map(([day, passed]): FactBody => ({
    kind: 'looked at',
    person,
    day,
    what: 'hands and shoulders',
    passed,
    observedBy: 'Maud Arkwright',
  })),
  aSpan.map((span): FactBody => ({ kind: 'road holds', person, text: '', ...span })),
  aSpan.map((span): FactBody => ({ kind: 'available', person, minutes: [60, 0, 90, 45, 120, 0, 60], ...span })),
  fc.tuple(aDay, fc.constantFrom('back-squat', 'deadlift', 'row')).map(([day, lift]) => tested(day, lift)),
  aDay.map((day): FactBody => ({
    kind: 'tested',
    person,
    day,
    test: { what: 'greatest heart rate', value: entered('182', '1/min') },
  })),
  fc
    .tuple(aDay, fc.constantFrom('hip hinge' as const, 'running', 'squat', 'trunk'), fc.boolean())
    .map(([from, pattern, hard]): FactBody => ({
      kind: 'restricted',
      person,
      medicalReason: null,
      restriction: {
        scope: { kind: 'pattern', pattern },
        limit: hard ? { kind: 'forbidden' } : { kind: 'RPE at most', rpe: 6 },
        toldBy: 'the physician',
        toldOn: from,
        confirmed: true,
        from,
        reviewOn: null,
      },
    })),
  fc
    .tuple(
      aSpan,
      fc.constantFrom(...tracks),
      fc.constantFrom(
        { kind: 'hold' } as const,
        { kind: 'keep' } as const,
        { kind: 'leave out' } as const,
        { kind: 'sets by', by: 1 } as const,
        { kind: 'back off', by: 0.1 } as const,
        { kind: 'as written', line: '4 × 6 @ 75 %' } as const,
      ),
    )
    .map(([span, track, change]) => decided({ kind: 'adjust', person, track, change, reason: '', ...span })),
  aDay.map((from) => decided({ kind: 'fix body mass', person, mass: entered('72', 'kg'), from, reason: 'weighed' })),
  aDay.map((from) => decided({ kind: 're-base', person, exercise: idOf('back-squat'), from })),
);

test('so it is whatever was entered for the days ahead', () => {
  fc.assert(
    fc.property(
      fc.array(anyEvent, { minLength: 2, maxLength: 6 }),
      fc.integer({ min: -60, max: 30 }),
      (events, days) => {
        const today = addDays(LAUNCH, days);
        expect(differences(inventedRoad(...TESTS, ...events).known, today, addDays(today, 120))).toEqual([]);
      },
    ),
    { numRuns: 15 },
  );
});
