import { expect, test } from 'vitest';
import { barChangeText, shouldersText, timeText } from './outcome-text.ts';
import { cellOf } from './invented-sheet.setup.ts';

const cell = cellOf('heavy', 'a');

test.each([
  { from: '295', to: '280', atTheBar: -0.0824, says: 'from 295, −8.2\u00a0% at the bar' },
  { from: '295', to: '305', atTheBar: 0.055, says: 'from 295, +5.5\u00a0% at the bar' },
  { from: '150', to: '160', atTheBar: null, says: 'from 150' },
  { from: '295', to: '295', atTheBar: 0, says: 'as in use' },
])('$from to $to is "$says"', ({ says, ...change }) => {
  expect(barChangeText({ ...change, unit: 'lb' }, cell)).toBe(says);
});

test('without a load in use: effort decides, a first load, or nothing to say', () => {
  const startAt = { kind: 'start at', increments: 34, rpe: [6, 8] } as const;
  const byEffort = cellOf('heavy', 'a', {
    sets: [{ id: null, load: startAt, repetitions: 8, asks: '8', isOpen: false, side: null, result: null }],
  });
  expect([byEffort, cell].map((each) => barChangeText(null, each))).toEqual(['by effort', '–']);
});

test('minutes and shoulders are told where they change', () => {
  expect(timeText({ was: 62, is: 66, block: 90 })).toBe('66 of 90 min, was 62');
  expect(timeText({ was: 66, is: 66, block: 90 })).toBe('66 of 90 min');
  expect(shouldersText(0.344)).toEqual(['shoulders +34\u00a0% against the ground']);
  expect(shouldersText(-0.05)).toEqual(['shoulders −5\u00a0% against the ground']);
  expect([shouldersText(0.001), shouldersText(null)]).toEqual([[], []]);
});
