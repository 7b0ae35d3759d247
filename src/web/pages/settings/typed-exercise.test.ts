import { expect, test } from 'vitest';
import type { Problem } from '#contract/problem.ts';
import { SHIPPED_EXERCISES } from '#shipped/exercises/shipped-exercises.ts';
import { backSquat } from '#shipped/exercises/lower-body.ts';
import { copyOf, emptySubstitute, exerciseOf, typedExerciseOf, type TypedExercise } from './typed-exercise.ts';

const read = (typed: TypedExercise, id: (typeof backSquat)['id'] | null = backSquat.id) => {
  const problems: Problem[] = [];
  return { exercise: exerciseOf(typed, id, SHIPPED_EXERCISES, problems), fields: problems.map(({ field }) => field) };
};

test('every shipped exercise comes out of the fields as it went in', () => {
  for (const each of SHIPPED_EXERCISES)
    expect(read(typedExerciseOf(each), each.id)).toEqual({ exercise: each, fields: [] });
});

test('a copy has everything but name, spellings and identity, and says where it came from', () => {
  const { exercise, fields } = read({ ...copyOf(backSquat), name: 'Front squat, arms crossed' }, null);
  expect(fields).toEqual([]);
  expect(exercise).toMatchObject({ id: 'front-squat-arms-crossed', alsoKnownAs: [], cues: backSquat.cues });
  expect(exercise?.source).toMatch(/^Copied from back squat: /);
});

test('an identity that is taken gets a number', () => {
  expect(read({ ...copyOf(backSquat), name: 'Back  Squat!' }, null).exercise?.id).toBe('back-squat-2');
});

test('all that cannot be read is told at once, each at its field', () => {
  const typed = {
    ...typedExerciseOf(backSquat),
    name: ' ',
    capacity: 'ratio',
    ratioTo: '',
    ratio: 'half',
    roundKg: '',
    seconds: '4 s',
    substitutes: [{ ...emptySubstitute('one'), covers: { ...emptySubstitute('one').covers, grip: 'x' } }],
  };
  expect(read(typed)).toEqual({
    exercise: null,
    fields: [
      'entry.exercise.name',
      'entry.exercise.capacity.to',
      'entry.exercise.capacity.ratio',
      'entry.exercise.roundTo.kg',
      'entry.exercise.secondsPerRepetition',
      'entry.exercise.substitutes.0.exercise',
      'entry.exercise.substitutes.0.covers.grip',
    ],
  });
});

test('lines without words are no lines; spellings may stand one a line or with commas', () => {
  const typed = { ...typedExerciseOf(backSquat), cues: '\n Heels down. \n\n', alsoKnownAs: 'BS, squat\nBS' };
  expect(read(typed).exercise).toMatchObject({ cues: ['Heels down.'], alsoKnownAs: ['BS', 'squat'] });
});
