import { expect, test } from 'vitest';
import { evaluate } from '../evaluate.ts';
import { timeConstantOfLogTime } from './recovery-curve.ts';

test('once failed: a share a hair above that of landing day has no time constant, and says why', () => {
  const met = evaluate(timeConstantOfLogTime, [0.1, 99.99999999999993, 0.010000000000000009]);
  expect(met).toEqual({ kind: 'refused', reasons: ['The share lies above that of landing day.'] });
  expect(evaluate(timeConstantOfLogTime, [15, 1.48, 0.95]).kind).toBe('value');
});
