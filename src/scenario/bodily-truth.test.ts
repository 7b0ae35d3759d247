import { backSquat, deadlift, singleLegSquat } from '#shipped/exercises/lower-body.ts';
import { bicepsCurl } from '#shipped/exercises/upper-body.ts';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { barToFailure, feltEffort, trueMaximum, truePossible } from './bodily-truth.ts';
import { ANSELM, INES, WEN_LI } from './people.ts';
import { randomStream } from './random.ts';

const aMaximum = fc.double({ min: 20, max: 300, noNaN: true });

test('the bar for so many repetitions to failure gives just so many', () => {
  fc.assert(
    fc.property(aMaximum, fc.integer({ min: 1, max: 30 }), (maximum, repetitions) => {
      // Binary fractions only.
      expect(truePossible(maximum, barToFailure(maximum, repetitions), 0)).toBeCloseTo(repetitions, 9);
    }),
  );
});

test('a heavier bar or more sets before never give more repetitions', () => {
  fc.assert(
    fc.property(aMaximum, aMaximum, aMaximum, fc.nat(6), (maximum, one, other, before) => {
      const [light, heavy] = [Math.min(one, other), Math.max(one, other)];
      expect(truePossible(maximum, heavy, before)).toBeLessThanOrEqual(truePossible(maximum, light, before));
      expect(truePossible(maximum, light, before + 1)).toBeLessThanOrEqual(truePossible(maximum, light, before));
    }),
  );
});

test('legs lose 5 % in half a year of flight, and are weaker before launch than at it', () => {
  const at = (day: number): number => trueMaximum(INES, backSquat.id, day, null) ?? Number.NaN;
  expect(at(180) / at(0)).toBeCloseTo(Math.exp(-0.05), 9);
  expect(at(-100)).toBeLessThan(at(0));
});

test('sides differ by what the person says, the pair of legs does not', () => {
  const legs = (side: 'left' | 'right' | null): number => trueMaximum(WEN_LI, singleLegSquat.id, 0, side) ?? Number.NaN;
  expect(legs('right') - legs('left')).toBeCloseTo(0.09 * legs(null), 9);
});

test('there is no maximum where nobody trained it, nor for an exercise that nobody was asked about', () => {
  expect(trueMaximum(ANSELM, deadlift.id, 0, null)).toBeNull();
  expect(trueMaximum(INES, bicepsCurl.id, 0, null)).toBeNull();
});

test('effort feels like ten less the reserve near failure, on average, and stays between 3 and 10', () => {
  const random = randomStream(1, 'felt');
  const many = Array.from({ length: 4000 }, () => feltEffort(2, random));
  // Standard error of a mean of 4,000 ratings that spread by about 0.5: 0.008.
  expect(Math.abs(many.reduce((sum, rating) => sum + rating, 0) / many.length - 8)).toBeLessThan(0.05);
  expect([0, 5, 40].map((reserve) => feltEffort(reserve, random)).every((rating) => rating >= 3 && rating <= 10)).toBe(
    true,
  );
});
