import fc from 'fast-check';
import { expect, test } from 'vitest';
import { roundedLoad, stepsNearest, stepsNotOver, stepsNotUnder } from './rounding.ts';

test.each([
  { value: 272, step: 5, nearest: 54 },
  { value: 272.5, step: 5, nearest: 54 }, // a half goes down
  { value: 272.51, step: 5, nearest: 55 },
  { value: 2.5, step: 1, nearest: 2 },
  { value: 101.25, step: 2.5, nearest: 40 },
  { value: 0.3, step: 0.1, nearest: 3 },
  { value: 0, step: 2.5, nearest: 0 },
])('$value in steps of $step is nearest to $nearest', ({ value, step, nearest }) => {
  expect(stepsNearest(value, step)).toBe(nearest);
});

test('binary fractions make no difference: 0.1 + 0.2 is three tenths, 0.15 is a half step and goes down', () => {
  expect(stepsNotOver(0.1 + 0.2, 0.1)).toBe(3);
  expect(stepsNotUnder(0.1 + 0.2, 0.1)).toBe(3);
  expect(stepsNotOver(0.3, 0.1)).toBe(3); // 0.3 / 0.1 is 2.9999999999999996
  expect(stepsNearest(0.15, 0.1)).toBe(1);
});

/** Values in thousandths of a step: what is asked is asked in whole numbers, without binary fractions. */
const THOUSANDTHS = 1000;
const anySteps = fc.integer({ min: 0, max: 300 * THOUSANDTHS });
const anyStep = fc.constantFrom(0.5, 1, 1.25, 2.5, 5, 0.45359237);

/** The whole number of steps nearest to so many thousandths, found by looking: of two equally near, the lower. */
const nearestByLooking = (thousandths: number): number =>
  [-1, 0, 1]
    .map((more) => Math.floor(thousandths / THOUSANDTHS) + more)
    .reduce((best, steps) =>
      Math.abs(steps * THOUSANDTHS - thousandths) < Math.abs(best * THOUSANDTHS - thousandths) ? steps : best,
    );

test('nearest, not over and not under are what looking finds', () => {
  fc.assert(
    fc.property(anySteps, anyStep, (thousandths, step) => {
      const value = (thousandths / THOUSANDTHS) * step;
      expect(stepsNearest(value, step)).toBe(nearestByLooking(thousandths));
      expect(stepsNotOver(value, step)).toBe(Math.floor(thousandths / THOUSANDTHS));
      expect(stepsNotUnder(value, step)).toBe(Math.ceil(thousandths / THOUSANDTHS));
    }),
  );
});

/** A load by the rule in words: to nearest, then under every limit, then not under the least or not at all. */
const loadByLooking = (target: number, limits: readonly number[], least: number): number | null => {
  const allowed = Array.from({ length: 302 }, (_, steps) => steps).filter(
    (steps) => steps * THOUSANDTHS >= least && limits.every((limit) => steps * THOUSANDTHS <= limit),
  );
  const wanted = nearestByLooking(target);
  return allowed.findLast((steps) => steps <= wanted) ?? allowed[0] ?? null;
};

test('a load is the target to nearest, every limit down, and never under the least of the machine', () => {
  fc.assert(
    fc.property(
      anySteps,
      fc.array(anySteps, { maxLength: 4 }),
      fc.integer({ min: 0, max: 40 * THOUSANDTHS }),
      anyStep,
      (target, limits, least, step) => {
        const inUnit = (thousandths: number): number => (thousandths / THOUSANDTHS) * step;
        const found = roundedLoad(inUnit(target), limits.map(inUnit), step, inUnit(least));
        expect(found).toBe(loadByLooking(target, limits, least));
      },
    ),
  );
});

test('a load never passes a limit by more than a millionth of a step', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 700, noNaN: true }),
      fc.array(fc.double({ min: 0, max: 700, noNaN: true }), { minLength: 1, maxLength: 4 }),
      anyStep,
      (target, limits, step) => {
        const steps = roundedLoad(target, limits, step, 0);
        // The tolerance, and the rounding of the division beside it.
        for (const limit of limits) expect((steps ?? 0) - limit / step).toBeLessThanOrEqual(1.000_001e-6);
      },
    ),
  );
});

test('a higher target is never a lower load', () => {
  fc.assert(
    fc.property(anySteps, anySteps, fc.array(anySteps, { maxLength: 3 }), anyStep, (one, other, limits, step) => {
      const load = (thousandths: number): number =>
        roundedLoad(
          (thousandths / THOUSANDTHS) * step,
          limits.map((limit) => (limit / THOUSANDTHS) * step),
          step,
          0,
        ) ?? 0;
      expect(load(Math.min(one, other))).toBeLessThanOrEqual(load(Math.max(one, other)));
    }),
  );
});

test.each([
  { target: 8, limits: [600], least: 10, load: 10 },
  { target: 8, limits: [9], least: 10, load: null },
  { target: 900, limits: [600, 580.9], least: 10, load: 580 },
  { target: 270, limits: [], least: 10, load: 270 },
])('target $target, limits $limits, least $least: $load', ({ target, limits, least, load }) => {
  expect(roundedLoad(target, limits, 1, least)).toBe(load);
});

test("under the machine's least the least is taken, also where it is all that the limits allow", () => {
  expect(roundedLoad(3, [20], 5, 20)).toBe(4);
  expect(roundedLoad(3, [19], 5, 20)).toBeNull();
});
