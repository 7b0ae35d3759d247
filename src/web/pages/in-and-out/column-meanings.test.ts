import { expect, test } from 'vitest';
import { columnMeaning, type ColumnMeaning } from '#contract/bring-in.ts';
import type { ExerciseLine } from '#contract/windows/house-window.ts';
import { idOf } from '#domain/identity.ts';
import { keyOfMeaning, meaningChoices, meaningOfKey } from './column-meanings.ts';

const squat: ExerciseLine = {
  id: idOf('back-squat'),
  name: 'Back squat',
  bodyPart: 'lower body',
  perSide: false,
  settingFields: [],
  machineKinds: [],
};
const press: ExerciseLine = {
  id: idOf('bench-press'),
  name: 'Bench press',
  bodyPart: 'upper body',
  perSide: false,
  settingFields: [],
  machineKinds: [],
};
const exercises = [squat, press];
const LEFT_OUT: ColumnMeaning = { is: 'left out' };

test('every choice stands for a meaning that the program accepts, and is found again', () => {
  const keys = meaningChoices(exercises).flatMap(({ options }) => options.map(({ value }) => value));
  expect(new Set(keys).size).toBe(keys.length);
  for (const key of keys) {
    const meaning = meaningOfKey(key, LEFT_OUT, exercises);
    expect(columnMeaning.parse(meaning)).toEqual(meaning);
    expect(keyOfMeaning(meaning)).toBe(key);
  }
});

test('another lift keeps what the header said of the column', () => {
  const before: ColumnMeaning = {
    is: 'lift',
    exercise: squat.id,
    repetitions: 5,
    unit: 'lb',
    counted: 'per side',
    side: null,
  };
  expect(meaningOfKey('lift: bench-press', before, exercises)).toEqual({ ...before, exercise: press.id });
});
