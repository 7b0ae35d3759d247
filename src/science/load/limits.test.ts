import fc from 'fast-check';
import { expect, test } from 'vitest';
import { evaluate } from '../evaluate.ts';
import { EXAMPLE_FIT, EXAMPLE_LOADS, KNOWN_MODEL, regionCurves } from './fit-example.ts';
import { impulseOfMan } from './heart-rate-impulse.ts';
import { holdOut } from './hold-out.ts';
import { daysToBaseline, daysToPeak, impulseResponse } from './impulse-response.ts';
import { impulseResponseFit, type ImpulseResponseFit } from './impulse-response-fit.ts';
import { fitThree } from './least-squares-three.ts';
import { PUBLISHED_DOSE, variableDose } from './variable-dose.ts';
import { volumeLoad } from './volume-load.ts';
import { weeklyLoad } from './weekly-load.ts';

/** Where each score and model of load stops, and that it goes up to there. */

test('the largest load, level and constants that are possible are possible', () => {
  expect(weeklyLoad([100_000, 0, 0, 0, 0, 0, 0]).kind).toBe('estimate');
  expect(volumeLoad([{ machine: 'a', pattern: 'b', sets: 0, repetitions: 0, load: 0 }]).kind).toBe('estimate');
  expect(variableDose([1], { base: 1e6, ...PUBLISHED_DOSE }).kind).toBe('estimate');
  const tests = EXAMPLE_FIT.tests.map(({ day }, place) => ({ day, level: place === 3 ? 1e6 : -1e6 }));
  expect(impulseResponseFit({ ...EXAMPLE_FIT, tests }).kind).toBe('estimate');
});

test('a maximal heart rate that is no more than the resting one has no impulse', () => {
  expect(evaluate(impulseOfMan, [30, 110, 100, 100])).toEqual({
    kind: 'refused',
    reasons: ['The maximal heart rate lies above the resting one.'],
  });
  expect(evaluate(impulseOfMan, [30, 110, 100, 101]).kind).toBe('value');
});

test('days to baseline and peak need a gain that fades more slowly and a fatigue that outweighs it', () => {
  for (const formula of [daysToBaseline, daysToPeak]) {
    expect(evaluate(formula, [10.1, 10, 0.1, 0.2]).kind).toBe('value');
    expect(evaluate(formula, [10.09, 10, 0.1, 0.2])).toMatchObject({
      reasons: ['The gain fades more slowly than the fatigue, by a hundredth at least.'],
    });
    expect(evaluate(formula, [42, 7, 0.2, 0.2])).toMatchObject({ reasons: ['Fatigue outweighs gain at first.'] });
  }
});

test('tests late in a season count the days between them, not from its start', () => {
  const late = Array.from({ length: 18 }, (_, place) => ({ day: 50 + 3 * place, level: 100 + place }));
  expect(impulseResponseFit({ ...EXAMPLE_FIT, tests: late })).toMatchObject({
    reasons: ['Tests over 51 days; the model needs 56.'],
  });
});

test('a model that beats the last value and not the mean does not stay on', () => {
  // Tests that know nothing of the loads, the last one before those held out far off.
  const tests = Array.from({ length: 25 }, (_, place) => ({
    day: 4 * place,
    level: 100 + (place === 19 ? 20 : 2 * Math.sin(7 * place)),
  }));
  const found = holdOut(EXAMPLE_LOADS, tests);
  if (found.kind !== 'estimate') throw new Error('Tests are held out.');
  expect(found.model).toBeLessThan(found.lastValue);
  expect(found.model).toBeGreaterThan(found.meanValue);
  expect(found.beatsBoth).toBe(false);
});

const fitted = (fQuantile: number, gainFades: number, fatigueFades: number): ImpulseResponseFit => {
  const course = impulseResponse(EXAMPLE_LOADS, { ...KNOWN_MODEL, gainFades, fatigueFades });
  if (course.kind !== 'estimate') throw new Error('There is a course.');
  const tests = course.days
    .filter(({ day }) => day % 4 === 0)
    .map(({ day, performance }) => ({ day, level: performance + 0.001 * Math.sin(13 * day) }));
  return impulseResponseFit({ loads: EXAMPLE_LOADS, tests, fQuantile });
};

test.each([
  [45, 10, false],
  [20, 10, true],
  [70, 10, true],
  [45, 2, true],
  [45, 18, true],
])('a best pair of %i and %i days touches the end of the grid: %s', (gainFades, fatigueFades, touches) => {
  const fit = fitted(1, gainFades, fatigueFades);
  expect(fit.kind === 'estimate' && fit.cautions.length).toBe(touches ? 2 : 1);
});

test('the plot of the region is of single points', () => {
  expect(regionCurves().map(({ scattered }) => scattered)).toEqual([true, true, true]);
});

test('the plot of one hard week dips below the start, comes back and rises over it', () => {
  const curves = impulseResponse.record.plot?.curves() ?? [];
  expect(curves.map(({ label }) => label)).toEqual(['τ_1 42 d, τ_2 7 d', 'τ_1 30 d, τ_2 15 d']);
  for (const [place, fades] of [
    [42, 7],
    [30, 15],
  ].entries()) {
    const [slow = 1, fast = 1] = fades;
    const written = (day: number): number => {
      let level = 100;
      for (let on = 10; on < Math.min(17, day); on += 1)
        level += 8 * (0.1 * Math.exp((on - day) / slow) - 0.25 * Math.exp((on - day) / fast));
      return level;
    };
    const off = (curves[place]?.points ?? []).filter(([day, level]) => Math.abs(level - written(day)) > 1e-9);
    expect(curves[place]?.points).toHaveLength(91);
    expect(off).toEqual([]);
  }
});

test('the unit of a column does not matter to least squares', () => {
  const column = fc.array(fc.integer({ min: -50, max: 50 }), { minLength: 6, maxLength: 6 });
  const scale = fc.constantFrom(1e-8, 1e-4, 1, 1e4, 1e8);
  fc.assert(
    fc.property(column, column, column, scale, scale, (y, a, b, byA, byB) => {
      const [level, first, second] = [y, a, b].map((values) => Float64Array.from(values)) as [
        Float64Array,
        Float64Array,
        Float64Array,
      ];
      const once = fitThree(level, first, second);
      const scaled = fitThree(
        level,
        first.map((value) => value * byA),
        second.map((value) => value * byB),
      );
      expect(scaled === null).toBe(once === null);
      if (!once || !scaled) return;
      expect(scaled.first * byA).toBeCloseTo(once.first, 6);
      expect(scaled.second * byB).toBeCloseTo(once.second, 6);
      expect(scaled.residual).toBeCloseTo(once.residual, 6);
    }),
  );
});

test('a column that is flat but for rounding gives no least squares', () => {
  const [y, b] = [Float64Array.of(1, 2, 4, 3), Float64Array.of(1, 3, 2, 5)];
  expect(fitThree(y, Float64Array.of(5, 5 + 1e-9, 5, 5), b)).toBeNull();
  expect(fitThree(y, Float64Array.of(5, 5.01, 5, 5), b)).not.toBeNull();
});
