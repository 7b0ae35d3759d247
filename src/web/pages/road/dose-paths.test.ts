import { expect, test } from 'vitest';
import type { RoadDoseLine } from '#contract/windows/road-window.ts';
import { barPath, doseInWords, floorPath, isShort } from './dose-paths.ts';

const CALF: RoadDoseLine = {
  id: 'calf',
  label: 'Calf',
  unit: 'sets',
  planned: [4, 8, 0, 10],
  done: [[0, 3.5]],
  floors: [
    [0, 1, 8],
    [3, 3, 8],
  ],
};

test('a week is short where it lies under a floor that holds for it', () => {
  expect([0, 1, 2, 3].map((week) => isShort(CALF, week))).toEqual([true, false, false, false]);
});

test('bars stand on the ground, the highest under the top; a week of nothing that should hold something is seen', () => {
  // 10 is the most: it is drawn at 10 / 11 of the height.
  expect(barPath(CALF, [null, null, null, 10])).toBe('M3.14 100V9.1H3.86V100Z');
  expect(barPath(CALF, [null, null, null, 0])).toBe('M3.14 100V96.0H3.86V100Z');
});

test('a floor is a line over the weeks that it holds for', () => {
  expect(floorPath(CALF)).toBe('M0 27.3H2M3 27.3H4');
});

test('a week in words: what it holds, what it should, what was done', () => {
  expect(doseInWords([CALF], 0)).toBe('calf 4 of at least 8 sets, done 3.5');
  expect(doseInWords([CALF], 2)).toBe('');
});
