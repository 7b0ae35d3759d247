import fc from 'fast-check';
import { expect, test } from 'vitest';
import { randomStream } from '../random.ts';
import { fillNormals } from './normal-draws.ts';
import { takeQuantiles } from './order-statistics.ts';

/** The definition itself, over sorted values. */
const bySorting = (values: readonly number[], levels: readonly number[]): readonly number[] => {
  const sorted = values.toSorted((a, b) => a - b);
  return levels.map((level) => {
    const rank = level * (sorted.length - 1);
    const whole = Math.floor(rank);
    const [lower = Number.NaN, upper = lower] = sorted.slice(whole, whole + 2);
    return lower + (rank - whole) * (upper - lower);
  });
};

const value = fc.oneof(fc.double({ min: -1e6, max: 1e6, noNaN: true }), fc.integer({ min: 0, max: 3 }));
const levels = fc
  .uniqueArray(fc.oneof(fc.double({ min: 0, max: 1, noNaN: true }), fc.constantFrom(0, 0.25, 0.5, 1)), {
    minLength: 1,
    maxLength: 7,
  })
  .map((drawn) => drawn.toSorted((a, b) => a - b));

test('quantiles are those of the sorted values, many equal ones among them', () => {
  fc.assert(
    fc.property(fc.array(value, { minLength: 1, maxLength: 200 }), levels, (values, at) => {
      expect(takeQuantiles(Float64Array.from(values), at)).toEqual(bySorting(values, at));
    }),
  );
});

test.each([
  ['in order', (place: number) => place],
  ['backwards', (place: number) => 5000 - place],
  ['all alike', () => 7],
  ['up and down', (place: number) => Math.abs(place - 2500)],
])('5,000 values %s', (_, make) => {
  const values = Array.from({ length: 5000 }, (__, place) => make(place));
  const at = [0, 0.05, 0.5, 0.9999, 1];
  expect(takeQuantiles(Float64Array.from(values), at)).toEqual(bySorting(values, at));
});

test('NumPy’s own example: quantiles of 1 to 4', () => {
  // numpy.quantile([4, 1, 3, 2], [0.1, 0.25, 0.5, 0.9]) by its default method.
  const quantiles = takeQuantiles(Float64Array.of(4, 1, 3, 2), [0.1, 0.25, 0.5, 0.9]);
  for (const [place, printed] of [1.3, 1.75, 2.5, 3.7].entries()) expect(quantiles[place]).toBeCloseTo(printed, 12);
});

const drawn = (count: number): Float64Array => {
  const row = new Float64Array(count);
  fillNormals(randomStream(11, 'row'), row);
  return row;
};

test('a longer row of normal numbers begins with the shorter one, also where that is odd', () => {
  expect(drawn(1000).slice(0, 7)).toEqual(drawn(7));
  expect(drawn(8).slice(0, 7)).toEqual(drawn(7));
});

test('normal numbers have mean 0, variance 1, no bond between neighbours, and the right share beyond 1.645', () => {
  const count = 200_000;
  const row = drawn(count);
  const mean = row.reduce((sum, each) => sum + each, 0) / count;
  const variance = row.reduce((sum, each) => sum + each * each, 0) / count;
  const neighbours = row.reduce((sum, each, place) => sum + each * (row[place - 1] ?? 0), 0) / count;
  const beyond = row.filter((each) => each > 1.6448536269514722).length / count;
  // Five standard errors each: a right generator fails this once in half a million seeds, and the seed is fixed.
  expect(Math.abs(mean)).toBeLessThan(5 / Math.sqrt(count));
  expect(Math.abs(variance - 1)).toBeLessThan(5 * Math.sqrt(2 / count));
  expect(Math.abs(neighbours)).toBeLessThan(5 / Math.sqrt(count));
  expect(Math.abs(beyond - 0.05)).toBeLessThan(5 * Math.sqrt((0.05 * 0.95) / count));
});
