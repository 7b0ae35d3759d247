import fc from 'fast-check';
import { expect, test } from 'vitest';
import { LOOSE_KINDS, MACHINE_KINDS, QUALITIES, type Exercise } from '#domain/catalogue.ts';
import { QUALITIES as RATED_QUALITIES, substitute } from '#science/resuming/substitutes.table.ts';
import { SHIPPED_EXERCISES } from '#shipped/exercises/shipped-exercises.ts';
import { insteadOf, showCoverage, type Means } from './substitutes.ts';

const SHIPPED = new Map(SHIPPED_EXERCISES.map((exercise) => [exercise.id, exercise] as const));

const named = (name: string): Exercise => {
  const found = SHIPPED_EXERCISES.find((exercise) => exercise.name === name);
  if (!found) throw new Error(`There is no ${name}.`);
  return found;
};

const said = (name: string, ...there: readonly Means[]): readonly string[] =>
  insteadOf(named(name), there, SHIPPED).map(({ says }) => says);

test('where another machine is there for the same exercise, that comes first, with a load of its own', () => {
  expect(said('Back squat', 'free bar', 'body weight')[0]).toBe(
    'the same with the free bar, with a load of its own, first session at RPE 6 or less',
  );
});

test('without a bar it is done with what there is, and how much that covers is said', () => {
  const there = ['dumbbells', 'body weight'] as const;
  expect(said('Front squat', ...there)[0]).toBe('Box squat with dumbbells, covers strength 0.8, power 0.6');
  expect(said('Deadlift', 'dumbbells')).toContain(
    'Romanian deadlift with dumbbells, covers strength 0.8, power 0.3, grip 1',
  );
  expect(said('Chin-up', 'cable column')[0]).toBe('Pull-down on the cable column, covers strength 0.9, grip 0.8');
});

test('gear that nobody enters comes last, and only if it is there', () => {
  const found = insteadOf(named('Back squat'), ['body weight'], SHIPPED);
  expect(found.map(({ ifThere }) => ifThere)).toEqual(
    found.map(({ ifThere }) => ifThere).toSorted((one, other) => Number(one) - Number(other)),
  );
  expect(found.filter(({ ifThere }) => ifThere).map(({ says }) => says)).toContain(
    'Cord squat with a band, if it is there, covers strength 0.6, power uncovered',
  );
});

test('weightless, a body has no weight to lift: nothing is offered that asks for it', () => {
  for (const exercise of SHIPPED_EXERCISES)
    for (const { on } of insteadOf(exercise, ['cycle', 'treadmill'], SHIPPED))
      expect(['body weight', 'hanging bar']).not.toContain(on);
  expect(said('Body-weight squat', 'cycle')).toEqual([]);
});

test('what is rated under load is not rated with the weight of the body alone, and comes after what is', () => {
  const found = insteadOf(named('Back squat'), ['body weight'], SHIPPED).filter(({ ifThere }) => !ifThere);
  expect(found.map(({ says }) => says)).toEqual([
    'Body-weight squat with body weight alone, covers strength 0.2, power 0.1',
    'Box squat with body weight alone, not rated without a load',
    'Single-leg squat with body weight alone, not rated without a load',
    'Split squat with body weight alone, not rated without a load',
  ]);
  expect(found.map(({ covers }) => Object.keys(covers).length)).toEqual([2, 0, 0, 0]);
});

test('an exercise that names nothing, or names what the house does not know, has no substitute', () => {
  const squat = named('Back squat');
  expect(insteadOf({ ...squat, machineKinds: [], substitutes: [] }, [...MACHINE_KINDS], SHIPPED)).toEqual([]);
  expect(insteadOf({ ...squat, machineKinds: [] }, [...MACHINE_KINDS], new Map())).toEqual([]);
});

test('whatever is there, what is offered can be done with it and is the exercise itself or one it names', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...SHIPPED_EXERCISES),
      fc.subarray([...MACHINE_KINDS, 'body weight' as const]),
      (exercise, there) => {
        const names = new Set([exercise.id, ...exercise.substitutes.map((each) => each.exercise)]);
        for (const each of insteadOf(exercise, there, SHIPPED)) {
          expect(names).toContain(each.exercise.id);
          expect(each.exercise.machineKinds).toContain(each.on);
          expect(each.ifThere || there.includes(each.on as (typeof there)[number])).toBe(true);
          expect(each.uncovered).toEqual(QUALITIES.filter((quality) => each.covers[quality] === 0));
          for (const quality of each.uncovered) expect(each.says).toContain(`${quality} uncovered`);
        }
      },
    ),
  );
});

test('coverage is a sentence', () => {
  expect(showCoverage({ strength: 0.6, power: 0 })).toBe('covers strength 0.6, power uncovered');
  expect(showCoverage({ grip: 0 })).toBe('grip uncovered');
  expect(showCoverage({})).toBe('not rated');
});

test('the qualities are those that coverage of a plan is reckoned in', () => {
  expect(QUALITIES).toEqual(RATED_QUALITIES);
  expect(LOOSE_KINDS.filter((kind) => (MACHINE_KINDS as readonly string[]).includes(kind))).toEqual([]);
});

test('cords and isometric pushes for a bar or a machine are rated as in the table of substitutes', () => {
  const rated = (name: string, by: string) => named(name).substitutes.find(({ exercise }) => exercise === by)?.covers;
  const [cords, pushes] = [substitute('elastic cords').covers, substitute('isometric pushes').covers];
  expect(rated('Back squat', 'cord-squat')?.strength).toBe(cords.strength);
  expect(rated('Bent-over row', 'cord-row')).toEqual({ strength: cords.strength, grip: cords.grip });
  expect(rated('Seated row', 'cord-row')).toEqual({ strength: cords.strength, grip: cords.grip });
  expect(rated('Back squat', 'isometric-squat-push')?.strength).toBe(pushes.strength);
});
