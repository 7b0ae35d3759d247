import fc from 'fast-check';
import { expect, test } from 'vitest';
import { normalCdf } from '../numeric/normal.ts';
import { randomStream } from '../random.ts';
import { fillNormals } from './normal-draws.ts';
import { quantilesOf } from './order-statistics.ts';

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
      expect(quantilesOf(Float64Array.from(values), at)).toEqual(bySorting(values, at));
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
  expect(quantilesOf(Float64Array.from(values), at)).toEqual(bySorting(values, at));
});

test('NumPy’s own example: quantiles of 1 to 4', () => {
  // numpy.quantile([4, 1, 3, 2], [0.1, 0.25, 0.5, 0.9]) by its default method.
  const quantiles = quantilesOf(Float64Array.of(4, 1, 3, 2), [0.1, 0.25, 0.5, 0.9]);
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

const COUNT = 400_000;
const ROW = drawn(COUNT);

test('normal numbers have mean 0, variance 1, and no bond between neighbours', () => {
  const mean = ROW.reduce((sum, each) => sum + each, 0) / COUNT;
  const variance = ROW.reduce((sum, each) => sum + each * each, 0) / COUNT;
  const neighbours = ROW.reduce((sum, each, place) => sum + each * (ROW[place - 1] ?? 0), 0) / COUNT;
  // Five standard errors each: a right generator fails this once in half a million seeds, and the seed is fixed.
  expect(Math.abs(mean)).toBeLessThan(5 / Math.sqrt(COUNT));
  expect(Math.abs(variance - 1)).toBeLessThan(5 * Math.sqrt(2 / COUNT));
  expect(Math.abs(neighbours)).toBeLessThan(5 / Math.sqrt(COUNT));
});

test('nowhere are they further from the normal distribution than chance takes them', () => {
  const sorted = ROW.toSorted();
  const farthest = sorted.reduce(
    (most, each, place) => Math.max(most, Math.abs(normalCdf(each) - (place + 0.5) / COUNT)),
    0,
  );
  // Kolmogorov and Smirnov: 2.3/√n is passed by chance once in twenty thousand seeds.
  expect(farthest * Math.sqrt(COUNT)).toBeLessThan(2.3);
});

test('no narrow band holds more or fewer than it should: the corners of all layers, and the tail', () => {
  const [bands, draws, rounds] = [500, 1_000_000, 8];
  const [from, width] = [-5, 10 / bands];
  const counts = new Float64Array(bands);
  const row = new Float64Array(draws);
  for (let round = 0; round < rounds; round += 1) {
    fillNormals(randomStream(3, `round ${round}`), row);
    for (const each of row) {
      const band = Math.floor((each - from) / width);
      if (band >= 0 && band < bands) counts[band] = (counts[band] ?? 0) + 1;
    }
  }
  let [squares, free] = [0, 0];
  for (const [band, count] of counts.entries()) {
    const [low, high] = [from + band * width, from + (band + 1) * width];
    // From the nearer tail, so that far out digits are left.
    const share = low > 0 ? normalCdf(-low) - normalCdf(-high) : normalCdf(high) - normalCdf(low);
    const expected = rounds * draws * share;
    // The approximation by chi-square asks for five or more.
    if (expected < 5) continue;
    squares += (count - expected) ** 2 / expected;
    free += 1;
  }
  expect(free).toBeGreaterThan(430);
  // Beyond 4 the tail has its own shape: some five hundred of eight million.
  const beyond = counts.reduce((sum, count, band) => (band < 50 || band >= 450 ? sum + count : sum), 0);
  const expectedBeyond = 2 * rounds * draws * (normalCdf(-4) - normalCdf(-5));
  expect(Math.abs(beyond - expectedBeyond)).toBeLessThan(5 * Math.sqrt(expectedBeyond));
  // Chi-square of so many bands: five of its standard deviations, passed once in a million seeds.
  expect(squares).toBeLessThan(free + 5 * Math.sqrt(2 * free));
});
