import fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { EXAMPLE_FIT, EXAMPLE_LOADS, exampleFit, foretold, KNOWN_MODEL, regionCurves } from './fit-example.ts';
import { holdOut } from './hold-out.ts';
import { daysToBaseline, daysToPeak, impulseResponse, type ImpulseResponse } from './impulse-response.ts';
import { fitAt, impulseResponseFit, type FittedModel, type ImpulseResponseFit } from './impulse-response-fit.ts';
import { fitThree } from './least-squares-three.ts';
import { steadyChange, steadyOptimum, variableDose, PUBLISHED_DOSE } from './variable-dose.ts';

/** Models of load and performance against NumPy and SciPy. */

type Numbers = readonly number[];

interface Node {
  readonly slow: number;
  readonly fast: number;
  readonly base: number;
  readonly gain: number;
  readonly fatigue: number;
  readonly residual: number;
}

interface GridFit {
  readonly usual: Node;
  readonly best: Node;
  readonly quantile: number;
  readonly bound: number;
  readonly nodes: number;
  readonly inRegion: number;
  readonly spans: Readonly<Record<'slow' | 'fast' | 'gain' | 'fatigue', readonly [number, number]>>;
  readonly nullResidual: number;
}

interface Fitted {
  readonly loads: Numbers;
  readonly tests: readonly (readonly [day: number, level: number])[];
  readonly fit: GridFit;
  readonly holdOut: Readonly<Record<'heldOut' | 'model' | 'lastValue' | 'meanValue', number>>;
}

interface Fixture {
  readonly made: Readonly<Record<string, string | number>>;
  readonly courses: readonly { readonly loads: Numbers; readonly model: Numbers; readonly performance: Numbers }[];
  readonly printedFit: Fitted & {
    readonly fit: GridFit & { readonly dayAfterRest: Readonly<Record<'best' | 'usual' | 'truth', number>> };
  };
  readonly fits: readonly Fitted[];
  readonly doses: readonly { readonly loads: Numbers; readonly model: Numbers; readonly performance: Numbers }[];
  readonly optima: readonly { readonly constants: Numbers; readonly load: number; readonly change: number }[];
}

const FILE = join(import.meta.dirname, '../../../test/fixtures/science/impulse-response.json');
// Written by the script that stands beside the file.
const fixture = JSON.parse(readFileSync(FILE, 'utf8')) as Fixture;

const isAs = (ours: number | undefined, theirs: number | undefined, within = 1e-9): boolean =>
  ours !== undefined && theirs !== undefined && Math.abs(ours - theirs) <= within * Math.max(1, Math.abs(theirs));

test('the reference says what made it', () => {
  expect(Object.keys(fixture.made)).toEqual(expect.arrayContaining(['by', 'seed', 'numpy', 'scipy']));
});

const modelOf = ([base = 0, gain = 0, fatigue = 0, gainFades = 0, fatigueFades = 0]: Numbers): ImpulseResponse => ({
  base,
  gain,
  fatigue,
  gainFades,
  fatigueFades,
});

test('courses of performance are the sums written out', () => {
  const off = fixture.courses.filter(({ loads, model, performance }) => {
    const course = impulseResponse(loads, modelOf(model));
    return (
      course.kind !== 'estimate' ||
      course.days.length !== performance.length ||
      !course.days.every((day, place) => day.day === place && isAs(day.performance, performance[place]))
    );
  });
  expect(fixture.courses.length).toBeGreaterThan(20);
  expect(off).toEqual([]);
});

/** Columns of gain and fatigue are much alike, so that a few of the sixteen digits go in telling them apart. */
const CONDITIONED = 1e-7;

const sameNode = (ours: FittedModel, theirs: Node): boolean =>
  ours.gainFades === theirs.slow &&
  ours.fatigueFades === theirs.fast &&
  isAs(ours.base, theirs.base, CONDITIONED) &&
  isAs(ours.gain, theirs.gain, CONDITIONED) &&
  isAs(ours.fatigue, theirs.fatigue, CONDITIONED) &&
  isAs(ours.residual, theirs.residual, CONDITIONED);

const spanOf = (values: Numbers): readonly [number, number] => [Math.min(...values), Math.max(...values)];

const fitOf = ({ loads, tests, fit }: Fitted): ImpulseResponseFit =>
  impulseResponseFit({ loads, tests: tests.map(([day, level]) => ({ day, level })), fQuantile: fit.quantile });

test.each([fixture.printedFit, ...fixture.fits].map((each, place) => ({ name: `fit ${place + 1}`, each })))(
  '$name: pairs, region and bound are as NumPy and SciPy have them',
  ({ each }) => {
    const found = fitOf(each);
    if (found.kind !== 'estimate') throw new Error('There is a fit.');
    const { fit } = each;
    expect(sameNode(found.usual, fit.usual)).toBe(true);
    expect(sameNode(found.best, fit.best)).toBe(true);
    expect([found.pairs, found.region.length]).toEqual([fit.nodes, fit.inRegion]);
    expect(isAs(found.bound, fit.bound, CONDITIONED)).toBe(true);
    expect(isAs(found.explained, 1 - fit.best.residual / fit.nullResidual)).toBe(true);
    expect(spanOf(found.region.map(({ gainFades }) => gainFades))).toEqual(fit.spans.slow);
    expect(spanOf(found.region.map(({ fatigueFades }) => fatigueFades))).toEqual(fit.spans.fast);
    const gains = spanOf(found.region.map(({ gain }) => gain));
    const fatigues = spanOf(found.region.map(({ fatigue }) => fatigue));
    for (const place of [0, 1] as const) {
      expect(isAs(gains[place], fit.spans.gain[place], CONDITIONED)).toBe(true);
      expect(isAs(fatigues[place], fit.spans.fatigue[place], CONDITIONED)).toBe(true);
    }
  },
);

test('the worked tests are those of the reference', () => {
  expect(EXAMPLE_LOADS.every((load, day) => isAs(load, fixture.printedFit.loads[day], 1e-12))).toBe(true);
  const off = EXAMPLE_FIT.tests.filter(({ day, level }, place) => {
    const [theirDay, theirLevel] = fixture.printedFit.tests[place] ?? [];
    return day !== theirDay || !isAs(level, theirLevel);
  });
  expect(EXAMPLE_FIT.tests).toHaveLength(29);
  expect(off).toEqual([]);
  expect(isAs(EXAMPLE_FIT.fQuantile, fixture.printedFit.fit.quantile, 1e-12)).toBe(true);
});

test('wrong constants fit the worked tests better than the true ones, and still foretell much the same', () => {
  const fit = exampleFit();
  if (fit.kind !== 'estimate') throw new Error('There is a fit.');
  const truth = fitAt(EXAMPLE_LOADS, EXAMPLE_FIT.tests, KNOWN_MODEL);
  expect(fit.best.residual).toBeLessThan(truth?.residual ?? 0);
  expect(fit.best.gainFades).not.toBe(KNOWN_MODEL.gainFades);
  const { best, usual, truth: real } = fixture.printedFit.fit.dayAfterRest;
  expect(isAs(foretold(fit.best, 126), best, CONDITIONED)).toBe(true);
  expect(isAs(foretold(fit.usual, 126), usual, CONDITIONED)).toBe(true);
  expect(isAs(foretold(KNOWN_MODEL, 126), real)).toBe(true);
  expect(Math.abs(best - real)).toBeLessThan(0.2);
});

test('the cautions name the region, and say where it touches the end of the grid', () => {
  const fit = impulseResponseFit(EXAMPLE_FIT);
  expect(fit.kind === 'estimate' && fit.cautions).toEqual([
    '329 pairs of time constants fit as well: gain 20 to 66 days, fatigue 4 to 18 days.',
    'The region touches the end of the grid: it goes further.',
  ]);
});

test('without noise the true pair fits exactly, and a region of one size less touches nothing', () => {
  const model = { ...KNOWN_MODEL, gainFades: 45, fatigueFades: 10 };
  const course = impulseResponse(EXAMPLE_LOADS, model);
  if (course.kind !== 'estimate') throw new Error('There is a course.');
  const tests = course.days
    .filter(({ day }) => day % 4 === 0)
    .map(({ day, performance }) => ({ day, level: performance }));
  const fit = impulseResponseFit({ loads: EXAMPLE_LOADS, tests, fQuantile: 2.62 });
  if (fit.kind !== 'estimate') throw new Error('There is a fit.');
  expect([fit.best.gainFades, fit.best.fatigueFades]).toEqual([45, 10]);
  expect(fit.best.gain).toBeCloseTo(0.1, 6);
  expect(fit.best.fatigue).toBeCloseTo(0.25, 6);
  expect(fit.explained).toBeCloseTo(1, 9);
  expect(fit.region).toHaveLength(1);
  expect(fit.cautions).toEqual(['1 pairs of time constants fit as well: gain 45 to 45 days, fatigue 10 to 10 days.']);
});

test('the plot of the region shows all its pairs, the best and the true one', () => {
  const [region, best, truth] = regionCurves();
  expect(region?.points).toHaveLength(329);
  expect([best?.points, truth?.points]).toEqual([[[22, 18]], [[42, 7]]]);
});

const spread = (count: number, every: number): readonly { readonly day: number; readonly level: number }[] =>
  Array.from({ length: count }, (_, place) => ({ day: place * every, level: 100 + (place % 5) }));

test('a fit needs 15 tests over 8 weeks on days of the loads, all told at once', () => {
  const loads = EXAMPLE_LOADS;
  expect(impulseResponseFit({ loads, tests: spread(14, 1), fQuantile: 0 })).toEqual({
    kind: 'refused',
    reasons: [
      '14 tests; the model needs 15.',
      'Tests over 13 days; the model needs 56.',
      'The F quantile must lie in 1 to 1000; it is 0.',
    ],
  });
  expect(impulseResponseFit({ loads, tests: [], fQuantile: 2 })).toMatchObject({
    reasons: ['0 tests; the model needs 15.', 'Tests over 0 days; the model needs 56.'],
  });
  const wrong = [...spread(15, 4), { day: 113, level: 1e7 }, { day: 1.5, level: 100 }, { day: -1, level: 100 }];
  expect(impulseResponseFit({ loads: [-1, ...loads.slice(1)], tests: wrong, fQuantile: 1001 })).toMatchObject({
    reasons: [
      'The load of day 1 must lie in 0 to 100000; it is -1.',
      'A test must lie on a day from 0 to 112; one is on 113.',
      'A test must be a number of at most a million; one is 10000000.',
      'A test must lie on a day from 0 to 112; one is on 1.5.',
      'A test must lie on a day from 0 to 112; one is on -1.',
      'The F quantile must lie in 1 to 1000; it is 1001.',
    ],
  });
  expect(impulseResponseFit({ loads, tests: spread(15, 4), fQuantile: 3.3 }).kind).toBe('estimate');
  expect(impulseResponseFit({ loads, tests: [...spread(15, 3), { day: 112, level: 90 }], fQuantile: 1 }).kind).toBe(
    'estimate',
  );
  expect(impulseResponseFit({ loads, tests: spread(15, 4), fQuantile: 1000 }).kind).toBe('estimate');
});

test('a day that was not reported leaves no fit, and says how many were', () => {
  const gap = EXAMPLE_LOADS.map((load, day) => (day === 3 ? null : load));
  const reason = '111 of 112 days were reported; the model needs every one.';
  expect(impulseResponseFit({ ...EXAMPLE_FIT, loads: gap })).toEqual({ kind: 'none', reason });
  expect(holdOut(gap, EXAMPLE_FIT.tests)).toEqual({ kind: 'none', reason });
  expect(impulseResponse(gap, KNOWN_MODEL)).toEqual({ kind: 'none', reason });
  expect(variableDose(gap, { base: 250, ...PUBLISHED_DOSE })).toEqual({ kind: 'none', reason });
});

test('loads or tests that never change are told, not fitted', () => {
  const none = { kind: 'none', reason: 'Loads or tests never change: gain and fatigue cannot be told apart.' };
  const rest = EXAMPLE_LOADS.map(() => 0);
  expect(impulseResponseFit({ ...EXAMPLE_FIT, loads: rest })).toEqual(none);
  expect(holdOut(rest, EXAMPLE_FIT.tests)).toEqual(none);
  const flat = EXAMPLE_FIT.tests.map(({ day }) => ({ day, level: 100 }));
  expect(impulseResponseFit({ ...EXAMPLE_FIT, tests: flat })).toEqual(none);
});

test.each([fixture.printedFit, ...fixture.fits].map((each, place) => ({ name: `tests ${place + 1}`, each })))(
  '$name: errors over the tests held out are as NumPy has them',
  ({ each }) => {
    const tests = each.tests.map(([day, level]) => ({ day, level }));
    const found = holdOut(each.loads, tests.toReversed());
    if (found.kind !== 'estimate') throw new Error('Tests are held out.');
    const { heldOut, model, lastValue, meanValue } = each.holdOut;
    expect(found.heldOut).toBe(heldOut);
    expect(isAs(found.model, model, CONDITIONED)).toBe(true);
    expect(isAs(found.lastValue, lastValue)).toBe(true);
    expect(isAs(found.meanValue, meanValue)).toBe(true);
    expect(found.beatsBoth).toBe(model < lastValue && model < meanValue);
  },
);

test('the model wins some and loses some of the tests held out', () => {
  const won = fixture.fits.filter(
    (each) => each.holdOut.model < Math.min(each.holdOut.lastValue, each.holdOut.meanValue),
  );
  expect(won.length).toBeGreaterThan(0);
  expect(won.length).toBeLessThan(fixture.fits.length);
});

test('what cannot be fitted cannot be held out', () => {
  expect(holdOut(EXAMPLE_LOADS, [])).toMatchObject({ kind: 'refused' });
});

test('models that cannot be are refused, all at once', () => {
  const wrong = { base: Number.NaN, gain: 2e6, fatigue: 0.2, gainFades: 7, fatigueFades: 7 };
  const twice = 'Base, gain and fatigue must be numbers of at most a million; one is';
  expect(impulseResponse([5, -1], wrong)).toEqual({
    kind: 'refused',
    reasons: [
      'The load of day 2 must lie in 0 to 100000; it is -1.',
      `${twice} NaN.`,
      `${twice} 2000000.`,
      'The gain must fade more slowly than the fatigue, within 0.5 to 200 d; they are 7 and 7.',
    ],
  });
  expect(impulseResponse([5], { ...KNOWN_MODEL, fatigueFades: 0.4 }).kind).toBe('refused');
  expect(impulseResponse([5], { ...KNOWN_MODEL, gainFades: 201 }).kind).toBe('refused');
  expect(impulseResponse([5], { ...KNOWN_MODEL, gainFades: 200, fatigueFades: 0.5 }).kind).toBe('estimate');
  expect(impulseResponse([5], { ...KNOWN_MODEL, base: -1e6, gain: 1e6 }).kind).toBe('estimate');
  expect(variableDose([-1], { ...wrong, growthFades: 0 })).toEqual({
    kind: 'refused',
    reasons: [
      'The load of day 1 must lie in 0 to 100000; it is -1.',
      `${twice} NaN.`,
      `${twice} 2000000.`,
      'A time constant must lie in 0.5 to 200 d; one is 0.',
    ],
  });
  expect(variableDose([1], { base: 0, ...PUBLISHED_DOSE, gainFades: 200, growthFades: 0.5 }).kind).toBe('estimate');
  expect(variableDose([1], { base: 1e6, ...PUBLISHED_DOSE, gainFades: 201 }).kind).toBe('refused');
});

test('performance is linear in the loads: two seasons add up', () => {
  const season = fc.array(fc.double({ min: 0, max: 10, noNaN: true }), { minLength: 5, maxLength: 5 });
  const of = (loads: Numbers): Numbers => {
    const course = impulseResponse(loads, { ...KNOWN_MODEL, base: 0 });
    return course.kind === 'estimate' ? course.days.map(({ performance }) => performance) : [];
  };
  fc.assert(
    fc.property(season, season, (a, b) => {
      const both = of(a.map((load, day) => load + (b[day] ?? 0)));
      const apart = of(a).map((level, day) => level + (of(b)[day] ?? Number.NaN));
      expect(both.every((level, day) => isAs(level, apart[day]))).toBe(true);
    }),
  );
});

test('after one load performance is back where it was, and highest, on the days that the formulas give', () => {
  const at = (day: number): number => {
    const [gained, tired] = [0.1 * Math.exp(-day / 42), 0.25 * Math.exp(-day / 7)];
    return gained - tired;
  };
  expect(at(daysToBaseline(42, 7, 0.1, 0.25))).toBeCloseTo(0, 12);
  const peak = daysToPeak(42, 7, 0.1, 0.25);
  expect(at(peak)).toBeGreaterThan(at(peak - 0.1));
  expect(at(peak)).toBeGreaterThan(at(peak + 0.1));
});

test('variable dose is the double sum as printed', () => {
  const off = fixture.doses.filter(({ loads, model, performance }) => {
    const [base = 0, gain = 0, fatigue = 0, gainFades = 0, fatigueFades = 0, growthFades = 0] = model;
    const course = variableDose(loads, { base, gain, fatigue, gainFades, fatigueFades, growthFades });
    return (
      course.kind !== 'estimate' ||
      course.performance.length !== performance.length ||
      !course.performance.every((level, place) => isAs(level, performance[place]))
    );
  });
  expect(off).toEqual([]);
});

test('the best steady load is where SciPy finds the top, and a little more or less is worse', () => {
  for (const { constants, load, change } of fixture.optima) {
    const of = constants as [number, number, number, number, number];
    // A search for a top stops where the curve is flat to the digits of a double: the square root of them.
    expect(Math.abs(steadyOptimum(...of) / load - 1)).toBeLessThan(1e-6);
    expect(Math.abs(steadyChange(steadyOptimum(...of), ...of) / change - 1)).toBeLessThan(1e-9);
    expect(steadyChange(1.01 * load, ...of)).toBeLessThan(change);
    expect(steadyChange(0.99 * load, ...of)).toBeLessThan(change);
  }
});

test('least squares of three: residuals are square to all columns, and columns alike give none', () => {
  const column = fc.array(fc.double({ min: -10, max: 10, noNaN: true }), { minLength: 8, maxLength: 8 });
  fc.assert(
    fc.property(column, column, column, (y, a, b) => {
      const fitted = fitThree(Float64Array.from(y), Float64Array.from(a), Float64Array.from(b));
      if (!fitted || Math.abs(fitted.first) + Math.abs(fitted.second) > 1e3) return;
      const residuals = y.map(
        (level, row) => level - fitted.constant - fitted.first * (a[row] ?? 0) - fitted.second * (b[row] ?? 0),
      );
      for (const by of [y.map(() => 1), a, b])
        expect(Math.abs(residuals.reduce((sum, residual, row) => sum + residual * (by[row] ?? 0), 0))).toBeLessThan(
          1e-6,
        );
      expect(residuals.reduce((sum, residual) => sum + residual ** 2, 0)).toBeCloseTo(fitted.residual, 8);
    }),
  );
  const [y, a, flat] = [Float64Array.of(1, 2, 4), Float64Array.of(1, 2, 3), Float64Array.of(5, 5, 5)];
  expect(fitThree(y, a, Float64Array.of(2, 4, 6))).toBeNull();
  expect(fitThree(y, flat, a)).toBeNull();
  expect(fitThree(y, a, flat)).toBeNull();
  expect(fitThree(y, a, new Float64Array(3))).toBeNull();
  expect(fitThree(y, Float64Array.of(1000, 1000.1, 1000.3), a)).not.toBeNull();
});
