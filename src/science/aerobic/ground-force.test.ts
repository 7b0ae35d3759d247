import fc from 'fast-check';
import { expect, test } from 'vitest';
import { callWith } from '../formula.ts';
import { evaluate } from '../evaluate.ts';
import {
  halfSinePeak,
  loadingCycles,
  runningPeakOnEarth,
  runningPeakUnderHarness,
  walkingPeakUnderHarness,
} from './ground-force.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

test('a peak under a harness is the share of the one on Earth that the load is of body weight', () => {
  fc.assert(
    fc.property(between(0.3, 1.1), between(2.5, 5), (load, pace) => {
      const [under, onEarth] = [callWith(runningPeakUnderHarness, [load, pace]), callWith(runningPeakOnEarth, [pace])];
      expect(under / onEarth).toBeCloseTo(load, 12);
      expect(callWith(runningPeakOnEarth, [pace + 0.1])).toBeGreaterThan(onEarth);
      expect(callWith(walkingPeakUnderHarness, [load])).toBeLessThan(under);
    }),
  );
});

test('over whole strides a half-sine with that peak pushes back exactly the mean load', () => {
  fc.assert(
    fc.property(between(0.3, 1.1), between(0.15, 0.3), between(0.62, 0.95), (load, contact, stride) => {
      const peak = callWith(halfSinePeak, [load, contact, stride]);
      // Two contacts a stride, summed at the middles of a thousand slices each: midpoints of a sine err by (π/2000)²/6.
      const slices = Array.from({ length: 1000 }, (_, place) => Math.sin((Math.PI * (place + 0.5)) / 1000));
      const impulse = 2 * peak * (contact / 1000) * slices.reduce((total, each) => total + each, 0);
      expect(impulse / stride).toBeCloseTo(load, 5);
    }),
  );
});

test('a longer contact is a lower peak', () => {
  fc.assert(
    fc.property(between(0.3, 1.1), between(0.15, 0.29), (load, contact) => {
      expect(callWith(halfSinePeak, [load, contact + 0.02, 0.75])).toBeLessThan(
        callWith(halfSinePeak, [load, contact, 0.75]),
      );
    }),
  );
});

test('a contact of more than half a stride is no run, and is refused', () => {
  expect(evaluate(halfSinePeak, [0.7, 0.36, 0.72]).kind).toBe('value');
  expect(evaluate(halfSinePeak, [0.7, 0.361, 0.72])).toMatchObject({
    reasons: ['A foot is on the ground for at most half of a run’s stride.'],
  });
});

test('the proportional model and the half-sine agree within one standard deviation at an ordinary run', () => {
  const ratio = callWith(runningPeakUnderHarness, [0.7, 2.67]) / callWith(halfSinePeak, [0.7, 0.33 * 0.72, 0.72]);
  expect(Math.abs(Math.log(ratio))).toBeLessThan(0.15);
});

test('each step loads one leg', () => {
  expect(callWith(loadingCycles, [160, 30])).toBe(2400);
  expect(callWith(loadingCycles, [110, 10])).toBe(550);
});

test('a force below the printed speeds is computed and flagged', () => {
  expect(evaluate(runningPeakOnEarth, [2])).toMatchObject({
    kind: 'value',
    cautions: ['running speed 2 m/s is outside 2.5 to 5'],
  });
});
