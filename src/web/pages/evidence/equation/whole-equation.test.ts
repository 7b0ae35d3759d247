import { expect, test } from 'vitest';
import { wholeEquation } from './whole-equation.ts';

test.each([
  ['f', '1 + n / 30', 'f = 1 + n / 30'],
  ['SD', 'SD = √(a + b)', 'SD = √(a + b)'],
  ['Φ', 'Φ(z) = 1/2 + z', 'Φ(z) = 1/2 + z'],
  ['I', 'T · x, x = a / b', 'I = T · x, x = a / b'],
  ['x', 'x · y, y = 2', 'x = x · y, y = 2'],
  ['p', '1 where n = 0, else 2', 'p = 1 where n = 0, else 2'],
])('%s and "%s"', (symbol, equation, whole) => {
  expect(wholeEquation(symbol, equation)).toBe(whole);
});
