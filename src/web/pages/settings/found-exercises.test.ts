import { expect, test } from 'vitest';
import { SHIPPED_EXERCISES } from '#shipped/exercises/shipped-exercises.ts';
import { foundExercises } from './found-exercises.ts';

const settings = SHIPPED_EXERCISES.map((exercise) => ({ exercise }));
const found = (text: string, kind = '') =>
  foundExercises(settings, { text, kind }).map(({ exercise }) => exercise.name);

test('an exercise is found by words of its name, its spellings and its pattern, in any order and case', () => {
  expect(found('DL romanian')).toEqual(found('romanian dl'));
  expect(found('BARBELL squat')).toContain('Back squat');
  expect(found('hip hinge deadlift')).toContain('Deadlift');
  expect(found('no such thing')).toEqual([]);
});

test('nothing typed finds everything; a kind keeps what is done on it', () => {
  expect(found('')).toHaveLength(SHIPPED_EXERCISES.length);
  expect(found('', 'hanging bar').length).toBeGreaterThan(0);
  expect(found('back squat', 'hanging bar')).toEqual([]);
});
