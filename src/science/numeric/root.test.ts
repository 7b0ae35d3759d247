import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bisect } from './root.ts';

const line = (zero: number, slope: number) => (at: number) => slope * (at - zero);

test('the root of a line is found within the width asked for, rising or falling', () => {
  const zero = fc.double({ min: -9, max: 9, noNaN: true });
  const slope = fc.double({ min: 0.1, max: 5, noNaN: true });
  fc.assert(
    fc.property(zero, slope, fc.boolean(), (at, steep, falls) => {
      const found = bisect(line(at, falls ? -steep : steep), { low: -10, high: 10, within: 1e-9 });
      expect(found.kind).toBe('converged');
      expect(found.kind === 'converged' && Math.abs(found.root - at)).toBeLessThanOrEqual(0.5e-9);
    }),
  );
});

test('each halving halves: a bracket of 20 is narrower than 1 after five', () => {
  expect(bisect(line(3, 1), { low: -10, high: 10, within: 1 })).toMatchObject({ kind: 'converged', iterations: 5 });
  // 20 / 2⁵ = 0.625: the middle of the last bracket, [2.5, 3.125].
  expect(bisect(line(3, 1), { low: -10, high: 10, within: 1 })).toMatchObject({ root: 2.8125 });
});

test('a root at an end of the bracket is a root', () => {
  const low = bisect(line(0, 1), { low: 0, high: 1, within: 1e-6 });
  const high = bisect(line(1, 1), { low: 0, high: 1, within: 1e-6 });
  expect(low.kind === 'converged' && low.root).toBeCloseTo(0, 6);
  expect(high.kind === 'converged' && high.root).toBeCloseTo(1, 6);
});

test('a function that keeps its sign is told with the values at both ends', () => {
  expect(bisect((at) => at + 20, { low: -10, high: 10, within: 1e-6 })).toEqual({
    kind: 'not bracketed',
    valueAtLow: 10,
    valueAtHigh: 30,
  });
  expect(bisect(() => Number.NaN, { low: 0, high: 1, within: 1e-6 }).kind).toBe('not bracketed');
});

test('a search that may not go on long enough says how far it came', () => {
  expect(bisect(line(3, 1), { low: -10, high: 10, within: 1e-9, iterations: 4 })).toEqual({
    kind: 'iteration limit',
    best: 3.125,
    width: 1.25,
  });
});

test('a bracket of exactly the width asked for is narrow enough', () => {
  expect(bisect(line(3, 1), { low: -10, high: 10, within: 1.25 })).toMatchObject({ kind: 'converged', iterations: 4 });
});

test('a function that is nothing everywhere has a root', () => {
  expect(bisect(() => 0, { low: -1, high: 1, within: 1e-6 }).kind).toBe('converged');
});
