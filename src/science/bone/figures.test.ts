import { expect, test } from 'vitest';
import { figure, signed } from './figures.ts';
import { impossible } from './impossible.ts';

test('a number stands with a true minus sign, and nought without one', () => {
  expect([-1.25, -0.04, 0, 0.04, 1.25].map((value) => figure(value, 1))).toEqual(['−1.3', '0.0', '0.0', '0.0', '1.3']);
});

test('a change shows its sign, and none where it is nought', () => {
  expect([-1.24, -0.04, 0, 0.04, 1.24].map((value) => signed(value, 1))).toEqual(['−1.2', '0.0', '0.0', '0.0', '+1.2']);
});

test('both ends of what is possible are possible', () => {
  const input = { name: 'rest', symbol: 't', unit: 'h', possible: [1, 3], valid: [1, 3] } as const;
  expect(impossible([1, 2, 3].map((value) => [input, value]))).toEqual([]);
  expect(impossible([0.999, 3.001].map((value) => [input, value]))).toEqual([
    'rest must lie in 1 to 3 h; it is 0.999.',
    'rest must lie in 1 to 3 h; it is 3.001.',
  ]);
});
