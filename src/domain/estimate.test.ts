import { ISSUED_CARD } from '#contract/facts/any-issued-card.setup.ts';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { intervalOf, type Estimate } from './estimate.ts';

const [INVENTED] = ISSUED_CARD.basis.estimates;
const estimate = (median: number, logSd: number): Estimate => {
  if (!INVENTED) throw new Error('The invented card rests on an estimate.');
  return { ...INVENTED, median, logSd };
};

test('a median of 100 kg with a spread of 0.05 lies between 90.665 and 110.296 kg', () => {
  const [low, high] = intervalOf(estimate(100, 0.05));
  // 100 × exp(±0.098), to the decimals written.
  expect(low).toBeCloseTo(90.665, 3);
  expect(high).toBeCloseTo(110.296, 3);
});

test('an interval lies around its median by the same factor either way', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1, max: 500, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      (median, sd) => {
        const [low, high] = intervalOf(estimate(median, sd));
        expect(low).toBeLessThanOrEqual(median);
        expect(high).toBeGreaterThanOrEqual(median);
        // Two roundings of the exponential and two products: a few units in the last place.
        expect((low * high) / median ** 2).toBeCloseTo(1, 12);
      },
    ),
  );
});
