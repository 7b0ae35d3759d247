import { expect, test } from 'vitest';
import { shownNumber, shownRange } from './shown-number.ts';

test.each([
  [0, '0'],
  [102.5, '102.5'],
  [-0.075, '−0.075'],
  [0.1 + 0.2, '0.3'],
  [1 / 3, '0.333333'],
  [1.5e-9, '1.5 · 10⁻⁹'],
  [-2e21, '−2 · 10²¹'],
  [Infinity, '∞'],
])('%d is shown as %s', (value, shown) => {
  expect(shownNumber(value)).toBe(shown);
});

test.each([
  [[0, 100], '0 to 100'],
  [[-Infinity, 1], 'at most 1'],
  [[0, Infinity], 'at least 0'],
  [[-Infinity, Infinity], 'any'],
] as const)('%j is shown as "%s"', (range, shown) => {
  expect(shownRange(range)).toBe(shown);
});
