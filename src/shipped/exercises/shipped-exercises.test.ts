import { stepsNotOver } from '#units/rounding.ts';
import { expect, test } from 'vitest';
import { SHIPPED_EXERCISES } from './shipped-exercises.ts';

test('there are at least fifteen, each with an identity of its own', () => {
  expect(SHIPPED_EXERCISES.length).toBeGreaterThanOrEqual(15);
  expect(new Set(SHIPPED_EXERCISES.map(({ id }) => id)).size).toBe(SHIPPED_EXERCISES.length);
});

test('no spelling stands for two exercises', () => {
  const spellings = SHIPPED_EXERCISES.flatMap(({ name, alsoKnownAs }) => [name, ...alsoKnownAs]).map((spelling) =>
    spelling.toLowerCase(),
  );
  expect(spellings.filter((spelling, place) => spellings.indexOf(spelling) !== place)).toEqual([]);
});

test('neither upright rows nor good mornings ship', () => {
  const spellings = SHIPPED_EXERCISES.flatMap(({ name, alsoKnownAs }) => [name, ...alsoKnownAs]).join(' ');
  expect(spellings).not.toMatch(/upright|good.?morning/i);
});

test('cues fit a card line and say something', () => {
  for (const { name, cues } of SHIPPED_EXERCISES) {
    expect({ name, cues: cues.length }).not.toEqual({ name, cues: 0 });
    for (const cue of cues) expect(cue).toMatch(/^[A-Z0-9][\x20-\x7e]{8,58}\.$/);
  }
});

test('ratios rest on a shipped exercise with a tested maximum, and are those of common practice', () => {
  const ratios = SHIPPED_EXERCISES.flatMap(({ id, capacity }) =>
    capacity.kind === 'ratio' ? [{ id, ...capacity }] : [],
  );
  expect(ratios.map(({ id, to, ratio }) => [id, to, ratio])).toEqual([
    ['romanian-deadlift', 'deadlift', 0.75],
    ['single-leg-squat', 'back-squat', 0.37],
    ['shoulder-press', 'bench-press', 0.65],
  ]);
  for (const { to } of ratios)
    expect(SHIPPED_EXERCISES.find(({ id }) => id === to)?.capacity.kind).toBe('one-repetition maximum');
});

test('squat, deadlift and bench press are tested for one repetition, heel raises for twelve', () => {
  const capacities = Object.fromEntries(SHIPPED_EXERCISES.map(({ id, capacity }) => [id, capacity]));
  for (const id of ['back-squat', 'deadlift', 'bench-press'])
    expect(capacities[id]).toEqual({ kind: 'one-repetition maximum' });
  expect(capacities['heel-raise']).toEqual({ kind: 'repetition maximum', of: 12 });
});

test('whatever is carried on the shoulders loads shoulder and neck, so that a restriction of either reaches it', () => {
  const carried = SHIPPED_EXERCISES.filter(({ carriedAt }) => carriedAt === 'shoulders');
  expect(carried.map(({ id }) => id)).toContain('back-squat');
  for (const { loads } of carried) expect(loads).toEqual(expect.arrayContaining(['shoulder', 'neck']));
});

test('every rounding step holds at least one increment of a machine in steps of 1 lb or 0.5 kg', () => {
  for (const { roundTo } of SHIPPED_EXERCISES) {
    expect(stepsNotOver(Number(roundTo.lb), 1)).toBeGreaterThanOrEqual(1);
    expect(stepsNotOver(Number(roundTo.kg), 0.5)).toBeGreaterThanOrEqual(1);
  }
});

test('every exercise says what its capacity and its share rest on', () => {
  for (const { source } of SHIPPED_EXERCISES) {
    expect(source).toMatch(/^Capacity: /);
    expect(source).toMatch(/(Share|share) of body weight/);
  }
});
