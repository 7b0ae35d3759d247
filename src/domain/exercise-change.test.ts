import { expect, test } from 'vitest';
import { backSquat } from '#shipped/exercises/lower-body.ts';
import { SET_PROGRAMME } from '#shipped/set-programme.ts';
import { exerciseWarnings, usesByExercise, type Described } from './exercise-change.ts';

const uses = usesByExercise([SET_PROGRAMME]).get(backSquat.id) ?? [];
const described = (change: Partial<Described>): Described => ({
  ...backSquat,
  capacity: backSquat.capacity.kind,
  ...change,
});
const fieldsOf = (change: Partial<Described>) =>
  exerciseWarnings(backSquat, described(change), uses).map(({ field }) => field);

test('an exercise is found in every line that asks for it, with what it is done on there', () => {
  const asked = [SET_PROGRAMME]
    .flatMap(({ phases }) => phases)
    .flatMap(({ sessions }) => sessions)
    .flatMap(({ items }) => items)
    .filter(({ exercise }) => exercise === backSquat.id);
  expect(asked.length).toBeGreaterThan(1);
  expect(uses.map(({ machineKind }) => machineKind)).toEqual(asked.map(({ machineKind }) => machineKind));
});

test('what a programme needs is not lost without a word', () => {
  expect(fieldsOf({ machineKinds: ['free bar'] })).toEqual(['machineKinds']);
  expect(fieldsOf({ machineKinds: ['dumbbells'] })).toEqual(['machineKinds', 'machineKinds']);
  expect(fieldsOf({ capacity: 'none' })).toEqual(['capacity.kind']);
  expect(fieldsOf({ shareModel: 'none' })).toEqual(['shareModel']);
});

test('an exercise that no programme asks for loses what it likes; the gates are told all the same', () => {
  const warnings = exerciseWarnings(backSquat, described({ machineKinds: ['dumbbells'], pattern: 'leg' }), []);
  expect(warnings.map(({ field }) => field)).toEqual(['pattern']);
});

test('where no kind was ever said, the first that is said takes away the others', () => {
  const silent = { ...backSquat, machineKinds: [] };
  const warnings = exerciseWarnings(silent, described({ machineKinds: ['free bar'] }), uses);
  expect(warnings.map(({ says }) => says).join(' ')).toContain('with the resistive machine');
});

test('what stays and what is added warns of nothing', () => {
  expect(fieldsOf({})).toEqual([]);
  expect(fieldsOf({ machineKinds: [...backSquat.machineKinds, 'dumbbells'], pattern: 'hip hinge' })).toEqual([]);
});
