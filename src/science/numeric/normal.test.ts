import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { normalCdf, normalDensity, normalQuantile } from './normal.ts';

const FILE = join(import.meta.dirname, '../../../test/fixtures/science/normal.json');
type Pairs = readonly (readonly [given: number, value: number])[];
// Written by the script that stands beside the file.
const reference = JSON.parse(readFileSync(FILE, 'utf8')) as { readonly cdf: Pairs; readonly quantile: Pairs };

/** Squaring z = 37 leaves an error of 700 · 1e-16 in the exponent; elsewhere both agree to a few units in the last place. */
const RELATIVE = 2e-13;

const relativeError = (ours: number, theirs: number): number => Math.abs(ours / theirs - 1);

test('probabilities are those of SciPy, in the far tails too', () => {
  const off = reference.cdf.filter(([z, p]) => !(relativeError(normalCdf(z), p) <= RELATIVE));
  expect(reference.cdf.length).toBeGreaterThan(150);
  expect(off).toEqual([]);
});

test('within eight standard deviations they agree to fourteen digits', () => {
  const near = reference.cdf.filter(([z]) => Math.abs(z) <= 8);
  expect(near.filter(([z, p]) => !(relativeError(normalCdf(z), p) <= 2e-14))).toEqual([]);
});

test('quantiles are those of SciPy, to a few units in the last place', () => {
  const off = reference.quantile.filter(([p, z]) => !(Math.abs(normalQuantile(p) - z) <= 1e-14 * Math.max(1, -z)));
  expect(reference.quantile.length).toBeGreaterThan(20);
  expect(off).toEqual([]);
});

test('beyond any number a probability is nothing or all', () => {
  expect(normalCdf(-60)).toBe(0);
  expect(normalCdf(60)).toBe(1);
  expect(normalCdf(Number.NEGATIVE_INFINITY)).toBe(0);
  expect(normalCdf(Number.POSITIVE_INFINITY)).toBe(1);
});

test('what lies below −z lies above z', () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 38, noNaN: true }), (z) => {
      expect(Math.abs(normalCdf(z) + normalCdf(-z) - 1)).toBeLessThan(1e-15);
    }),
  );
});

test('probabilities rise with z, across the seams of series and fraction too', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -37, max: 8, noNaN: true }),
      fc.double({ min: 1e-6, max: 3, noNaN: true }),
      (z, more) => {
        expect(normalCdf(z + more)).toBeGreaterThanOrEqual(normalCdf(z));
      },
    ),
  );
});

test('the quantile undoes the probability', () => {
  fc.assert(
    fc.property(fc.double({ min: -37, max: 3, noNaN: true }), (z) => {
      expect(Math.abs(normalQuantile(normalCdf(z)) - z)).toBeLessThan(1e-12 * Math.max(1, Math.abs(z)));
    }),
  );
});

test('the density is the slope of the probability', () => {
  fc.assert(
    fc.property(fc.double({ min: -6, max: 6, noNaN: true }), (z) => {
      const slope = (normalCdf(z + 1e-5) - normalCdf(z - 1e-5)) / 2e-5;
      // The third derivative over six times 1e-10, and rounding of the difference: both below 1e-10.
      expect(Math.abs(slope - normalDensity(z))).toBeLessThan(1e-10);
    }),
  );
});
