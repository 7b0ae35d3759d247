import { expect, test } from 'vitest';
import { SHIPPED_EXERCISES } from '#shipped/exercises/shipped-exercises.ts';
import { backSquat } from '#shipped/exercises/lower-body.ts';
import { FREE_BAR } from '#shipped/shipped-house.ts';
import { exercise, machine } from './catalogue.schema.ts';

/** An entry as the first program wrote it. */
const asWrittenFirst = () => {
  const { faults, cautions, machineKinds, substitutes, ...before } = backSquat;
  expect([faults, cautions, machineKinds, substitutes].every(({ length }) => length > 0)).toBe(true);
  return before;
};

test('an exercise of the first program is read; what it never said is empty', () => {
  const before = asWrittenFirst();
  expect(exercise.parse(before)).toEqual({ ...before, faults: [], cautions: [], machineKinds: [], substitutes: [] });
});

test('every shipped exercise comes back as it was', () => {
  for (const each of SHIPPED_EXERCISES) expect(exercise.parse(each)).toEqual(each);
});

test.each([
  [{ covers: { strength: 1.01 } }, 'covers.strength'],
  [{ covers: { strength: -0.01 } }, 'covers.strength'],
  [{ covers: { endurance: 0.5 } }, 'covers'],
  [{ covers: { strength: 0.5 }, exercise: '' }, 'exercise'],
])('a substitute of %j is refused', (more, where) => {
  const substitutes = [{ exercise: 'deadlift', ...more }];
  const { error } = exercise.safeParse({ ...backSquat, substitutes });
  expect(error?.issues.map(({ path }) => path.join('.'))).toEqual([`substitutes.0.${where}`]);
});

test('a pattern or a kind of machine that nobody knows is refused; the new kinds are read', () => {
  expect(exercise.safeParse({ ...backSquat, pattern: 'wave' }).success).toBe(false);
  expect(exercise.safeParse({ ...backSquat, machineKinds: ['trampoline'] }).success).toBe(false);
  for (const kind of ['rower', 'dumbbells', 'cable column'])
    expect(machine.parse({ ...FREE_BAR, kind }).kind).toBe(kind);
  expect(machine.safeParse({ ...FREE_BAR, kind: 'band' }).success).toBe(false);
});
