import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mixtureBelow, mixtureMoments, mixtureQuantile, type Component } from './mixture.ts';

const mixture: fc.Arbitrary<readonly Component[]> = fc
  .array(
    fc.record({
      weight: fc.double({ min: 0.01, max: 1, noNaN: true }),
      mean: fc.double({ min: -5, max: 5, noNaN: true }),
      sd: fc.double({ min: 0.01, max: 2, noNaN: true }),
    }),
    { minLength: 1, maxLength: 6 },
  )
  .map((drawn) => {
    const total = drawn.reduce((sum, { weight }) => sum + weight, 0);
    return drawn.map((each) => ({ ...each, weight: each.weight / total }));
  });

test('a quantile has its share below it', () => {
  fc.assert(
    fc.property(mixture, fc.double({ min: 0.001, max: 0.999, noNaN: true }), (components, share) => {
      expect(mixtureBelow(components, mixtureQuantile(components, share))).toBeCloseTo(share, 9);
    }),
  );
});

test('one component alone is a normal distribution', () => {
  const alone = [{ weight: 1, mean: 3, sd: 2 }];
  expect(mixtureQuantile(alone, 0.975)).toBeCloseTo(3 + 2 * 1.959963984540054, 9);
  expect(mixtureMoments(alone)).toEqual({ mean: 3, sd: 2 });
});

test('a wide component is searched as far as it reaches', () => {
  expect(mixtureQuantile([{ weight: 1, mean: 0, sd: 100 }], 0.001)).toBeCloseTo(-309.02323061678, 8);
  expect(mixtureQuantile([{ weight: 1, mean: 0, sd: 100 }], 0.999)).toBeCloseTo(309.02323061678, 8);
});

test('what has no spread is a step', () => {
  const certain = [{ weight: 1, mean: 3, sd: 0 }];
  expect(mixtureBelow(certain, 2.999)).toBe(0);
  expect(mixtureBelow(certain, 3)).toBe(1);
  expect(mixtureQuantile(certain, 0.05)).toBe(3);
});

test('a thousand standard deviations out there is nothing, or everything', () => {
  const narrow = [{ weight: 1, mean: 0, sd: 0.001 }];
  expect(mixtureBelow(narrow, -1)).toBe(0);
  expect(mixtureBelow(narrow, 1)).toBe(1);
  // 38 standard deviations: the last place that is computed.
  expect(mixtureBelow(narrow, -0.038)).toBeLessThan(1e-300);
});

test('moments: within and between', () => {
  const { mean, sd } = mixtureMoments([
    { weight: 0.5, mean: -1, sd: 2 },
    { weight: 0.5, mean: 1, sd: 4 },
  ]);
  expect(mean).toBe(0);
  expect(sd).toBeCloseTo(Math.sqrt(0.5 * 4 + 0.5 * 16 + 1), 12);
});
