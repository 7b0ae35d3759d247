import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { CardLift, CardSet } from '#domain/card.ts';
import type { Exercise, Machine } from '#domain/catalogue.ts';
import { idOf } from '#domain/identity.ts';
import { SHIPPED_EXERCISES } from '#shipped/exercises/shipped-exercises.ts';
import { chooseWithin } from './leave-out.ts';
import { sessionMinutes, totalOf, type Means } from './minutes.ts';
import { inTurn, together, turnsOf } from './supersets.ts';

const machine = (name: string): Machine => ({
  id: idOf(name),
  name,
  kind: 'resistive machine',
  gravity: '0 g',
  site: idOf('aboard'),
  groundUnitOf: null,
  unit: 'kg',
  increment: '1',
  least: '5',
  ceiling: '250',
  limits: [],
  mostWatts: null,
  mostSpeed: null,
  minutes: { setUp: 6, stow: 4, changeExercise: 2, changeLoad: 0.5 },
  outOfService: null,
});
const [ONE, OTHER] = [machine('one'), machine('other')];

const lift = (
  of: Means['exercise'],
  on: Machine,
  sets: readonly CardSet[],
  more: Partial<CardLift> = {},
): CardLift => ({
  kind: 'lift',
  item: idOf(of.id),
  track: idOf(of.id),
  leading: true,
  place: 1,
  exercise: of.id,
  exerciseName: of.name,
  carriedAtShoulders: false,
  machine: on.id,
  machineName: on.name,
  unit: 'kg',
  increment: '1',
  priority: 1,
  basis: 'fixed',
  asWritten: null,
  settings: [],
  last: null,
  cues: [],
  sets,
  tempo: null,
  superset: null,
  reserve: null,
  shouldFeel: [6, 7],
  ramp: null,
  rule: null,
  limits: [],
  raise: null,
  row: null,
  says: [],
  ...more,
});

const named = (name: string): Exercise => {
  const found = SHIPPED_EXERCISES.find((each) => each.name === name);
  if (!found) throw new Error(`No exercise is called ${name}.`);
  return found;
};
const [BACK_SQUAT, BENCH_PRESS, SINGLE_LEG_SQUAT] = ['Back squat', 'Bench press', 'Single-leg squat'].map(named) as [
  Exercise,
  Exercise,
  Exercise,
];
const EXERCISES = [BACK_SQUAT, BENCH_PRESS, SINGLE_LEG_SQUAT];
const meansOf = (item: { readonly exercise: string; readonly machine?: string }): Means => ({
  exercise: EXERCISES.find(({ id }) => id === item.exercise) ?? BACK_SQUAT,
  machine: [ONE, OTHER].find(({ id }) => id === item.machine) ?? null,
});
const minutesOf = (items: readonly CardLift[]): number => totalOf(sessionMinutes(items, (item) => meansOf(item)));

const set = (repetitions: number, rest: number, more: Partial<CardSet> = {}): CardSet => ({
  kind: 'work',
  load: { kind: 'set', increments: 100 },
  repetitions,
  side: null,
  rest,
  ...more,
});
const sets = (count: number, repetitions: number, rest: number, more: Partial<CardSet> = {}): readonly CardSet[] =>
  Array.from({ length: count }, () => set(repetitions, rest, more));
const A = { letter: 'A', inTurnWith: [] };

/** Of the exercise itself, by its catalogue. */
const SECONDS = BACK_SQUAT.secondsPerRepetition;
const OVERHEAD = ONE.minutes.setUp + ONE.minutes.stow + ONE.minutes.changeLoad;

test('minutes take the most of a range, and every set that may be left out', () => {
  const ranged = [set(6, 120, { most: 8 }), set(6, 120, { most: 8, optional: true })];
  expect(minutesOf([lift(BACK_SQUAT, ONE, ranged)])).toBeCloseTo(OVERHEAD + (2 * (8 * SECONDS + 120)) / 60, 9);
});

test('a tempo gives the seconds of a repetition; one written as zeros still takes one', () => {
  const slow = lift(BACK_SQUAT, ONE, sets(2, 6, 60), { tempo: [3, 1, 1] });
  expect(minutesOf([slow])).toBeCloseTo(OVERHEAD + (2 * (6 * 5 + 60)) / 60, 9);
  const quick = lift(BACK_SQUAT, ONE, sets(2, 6, 60), { tempo: [0, 0, 0] });
  expect(minutesOf([quick])).toBeCloseTo(OVERHEAD + (2 * (6 * 1 + 60)) / 60, 9);
});

test('a set that goes on has room for five more', () => {
  expect(minutesOf([lift(BACK_SQUAT, ONE, [set(6, 60, { orMore: true })])])).toBeCloseTo(
    OVERHEAD + (11 * SECONDS + 60) / 60,
    9,
  );
});

test('on two machines a superset takes the work of both and the longer rest once', () => {
  const [squat, bench] = [
    lift(BACK_SQUAT, ONE, sets(3, 6, 120), { superset: A }),
    lift(BENCH_PRESS, OTHER, sets(3, 8, 90), { superset: A }),
  ];
  const work = 3 * 6 * SECONDS + 3 * 8 * BENCH_PRESS.secondsPerRepetition;
  expect(minutesOf([squat, bench])).toBeCloseTo(2 * OVERHEAD + (work + 3 * 120) / 60, 9);
  const apart = [
    { ...squat, superset: null },
    { ...bench, superset: null },
  ];
  expect(minutesOf(apart)).toBeCloseTo(2 * OVERHEAD + (work + 3 * 120 + 3 * 90) / 60, 9);
});

test('on one machine every change from one to the other is counted, with its load', () => {
  const items = [
    lift(BACK_SQUAT, ONE, sets(2, 6, 0), { superset: A }),
    lift(BENCH_PRESS, ONE, sets(2, 8, 0), { superset: A }),
  ];
  const work = (2 * 6 * SECONDS + 2 * 8 * BENCH_PRESS.secondsPerRepetition) / 60;
  const { setUp, stow, changeExercise, changeLoad } = ONE.minutes;
  // Squat, bench, squat, bench: four times a load, three changes after the first.
  expect(minutesOf(items)).toBeCloseTo(setUp + stow + work + 4 * changeLoad + 3 * changeExercise, 9);
});

test('who has more sets goes on alone, with a rest of their own', () => {
  const [longer, shorter] = [
    lift(BACK_SQUAT, ONE, sets(3, 6, 100), { superset: A }),
    lift(BENCH_PRESS, OTHER, sets(2, 8, 150), { superset: { ...A, letter: 'A2' }, place: 2 }),
  ];
  const [first, second] = inTurn([longer, shorter]) as readonly CardLift[];
  expect(first?.sets.map(({ rest }) => rest)).toEqual([150, 150, 100]);
  expect(second?.sets.map(({ rest }) => rest)).toEqual([150, 150]);
  expect([first?.superset, second?.superset]).toEqual([
    { letter: 'A', inTurnWith: [2] },
    { letter: 'A2', inTurnWith: [1] },
  ]);
});

test('left and right of a set belong to one round; between them there is the rest of their own', () => {
  const bySide = [1, 2].flatMap(() => [set(8, 30, { side: 'left' }), set(8, 30, { side: 'right' })]);
  const items = [
    lift(SINGLE_LEG_SQUAT, ONE, bySide, { superset: A }),
    lift(BENCH_PRESS, OTHER, sets(2, 8, 90), { superset: A }),
  ];
  expect(turnsOf(items).map((turn) => turn.sets.map(({ rest }) => rest))).toEqual([[30, 0], [90], [30, 0], [90]]);
});

test('whose partner is not there stands alone, without a letter', () => {
  const alone = lift(BACK_SQUAT, ONE, sets(3, 6, 120), { superset: A });
  expect(inTurn([alone])).toEqual([{ ...alone, superset: null }]);
});

test('what is done in turn stands together on the card', () => {
  const [squat, bench, legs] = [
    lift(BACK_SQUAT, ONE, sets(3, 6, 120), { superset: A }),
    lift(BENCH_PRESS, OTHER, sets(3, 6, 120)),
    lift(SINGLE_LEG_SQUAT, ONE, sets(3, 6, 120), { superset: A }),
  ];
  expect(together([squat, bench, legs])).toEqual([squat, legs, bench]);
});

const anySets = fc
  .array(
    fc.record({
      repetitions: fc.integer({ min: 1, max: 20 }),
      rest: fc.integer({ min: 0, max: 300 }),
      increments: fc.constantFrom(80, 100),
      isWarmUp: fc.boolean(),
    }),
    { minLength: 1, maxLength: 5 },
  )
  .map((found) =>
    found
      .toSorted((a, b) => Number(b.isWarmUp) - Number(a.isWarmUp))
      .map(({ repetitions, rest, increments, isWarmUp }) =>
        set(repetitions, rest, { kind: isWarmUp ? 'warm-up' : 'work', load: { kind: 'set', increments } }),
      ),
  );
const anySession = fc
  .array(
    fc.record({
      of: fc.constantFrom(...EXERCISES),
      on: fc.constantFrom(ONE, OTHER),
      sets: anySets,
      letter: fc.constantFrom('A', 'B', null),
      priority: fc.integer({ min: 1, max: 3 }),
    }),
    { minLength: 1, maxLength: 6 },
  )
  .map((found) =>
    found.map(({ of, on, sets: some, letter, priority }, place) =>
      lift(of, on, some, {
        place: place + 1,
        priority,
        superset: letter === null ? null : { letter, inTurnWith: [] },
      }),
    ),
  );

test('leaving an exercise out never takes longer, whatever is done in turn with what', () => {
  fc.assert(
    fc.property(anySession, fc.nat(), (items, which) => {
      const fewer = items.filter((_, place) => place !== which % items.length);
      expect(minutesOf(fewer)).toBeLessThanOrEqual(minutesOf(items) + 1e-9);
    }),
    { numRuns: 500 },
  );
});

test('every set is done once, a card takes the minutes it was chosen by, and its block holds them', () => {
  fc.assert(
    fc.property(anySession, fc.integer({ min: 5, max: 150 }), (items, block) => {
      const { kept } = chooseWithin(items, block, (some) => minutesOf(some));
      const shown = inTurn(together(kept).map((item, place) => ({ ...item, place: place + 1 }))) as readonly CardLift[];
      expect(minutesOf(shown)).toBeCloseTo(minutesOf(kept), 9);
      if (kept.length > 1) expect(minutesOf(shown)).toBeLessThanOrEqual(block + 1e-9);
      for (const item of shown)
        expect(turnsOf(shown).flatMap((turn) => (turn.item === item ? turn.sets : []))).toHaveLength(item.sets.length);
    }),
  );
});
