import fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import {
  bandOf,
  INVENTED,
  recoveryForecast,
  type ForecastRequest,
  type RecoveryForecast,
} from './recovery-forecast.ts';
import { recoveredLevel } from './recovery-curve.ts';
import { LOSSES, recoveryPosterior } from './recovery-posterior.ts';

/** The forecast against NumPy on the same grid and SciPy’s quadrature without one. */

interface Case {
  readonly tests: readonly (readonly [day: number, level: number])[];
  readonly tau0: number;
  readonly logSd: number;
  readonly sigma: number;
  readonly level: number;
  readonly on: number;
  readonly nodes: number;
  readonly loss: number;
  readonly timeConstant: number;
  readonly time: readonly number[];
  readonly onDay: readonly number[];
  readonly probability: number;
  readonly newestResidual: number;
}

const FILE = join(import.meta.dirname, '../../../test/fixtures/science/recovery-forecast.json');
// Written by the script that stands beside the file.
const { made, cases, smoothLoss } = JSON.parse(readFileSync(FILE, 'utf8')) as {
  readonly made: Readonly<Record<string, string | number>>;
  readonly cases: readonly Case[];
  readonly smoothLoss: readonly number[];
};

const requestOf = ({ tests, tau0, logSd, sigma, level, on }: Case): ForecastRequest => ({
  tests: tests.map(([day, test]) => ({ day, level: test })),
  prior: { timeConstant: tau0, logSd },
  sigma,
  level,
  on: [on],
});

type Given = Extract<RecoveryForecast, { readonly levels: unknown }>;

const given = (request: ForecastRequest): Given => {
  const found = recoveryForecast(request);
  if (found.kind === 'none' || found.kind === 'refused') throw new Error(`No forecast: ${found.kind}.`);
  return found;
};

/** Sums of 4819 doubles in one order or another. */
const isAs = (ours: number | undefined, theirs: number | undefined): boolean =>
  ours !== undefined && theirs !== undefined && Math.abs(ours - theirs) <= 1e-9 * Math.max(1, Math.abs(theirs));

test('the reference says what made it', () => {
  expect(Object.keys(made)).toEqual(expect.arrayContaining(['by', 'seed', 'numpy', 'scipy']));
  expect(cases.length).toBeGreaterThan(60);
});

test.each(cases.map((each, place) => ({ name: `case ${place + 1}, ${each.tests.length} tests`, each })))(
  '$name: the forecast is as NumPy has it',
  ({ each }) => {
    const found = given(requestOf(each));
    const [on] = found.levels;
    expect(found.kind).toBe(Math.abs(each.newestResidual) > 2.5 ? 'off the expected curve' : 'forecast');
    const pairs: readonly (readonly [number | undefined, number | undefined])[] = [
      [found.loss, each.loss],
      [found.timeConstant, each.timeConstant],
      [found.newestResidual, each.newestResidual],
      [on?.q10, each.onDay[0]],
      [on?.q50, each.onDay[1]],
      [on?.q90, each.onDay[2]],
      [on?.probability, each.probability],
      ...(found.kind === 'forecast'
        ? ([
            [found.time.q10, each.time[0]],
            [found.time.q50, each.time[1]],
            [found.time.q90, each.time[2]],
          ] as const)
        : []),
    ];
    expect(pairs.filter(([ours, theirs]) => !isAs(ours, theirs))).toEqual([]);
  },
);

test('both kinds of outcome are among the cases', () => {
  const off = cases.filter(({ newestResidual }) => Math.abs(newestResidual) > 2.5);
  expect(off.length).toBeGreaterThan(0);
  expect(off.length).toBeLessThan(cases.length / 2);
});

test('the grid stands for the integral: the expected loss is within a thousandth of a percent of SciPy’s quadrature', () => {
  const off = smoothLoss.filter((loss, place) => {
    const each = cases[place];
    return !each || Math.abs(given(requestOf(each)).loss - loss) > 1e-3;
  });
  expect(off).toEqual([]);
});

const level = fc.double({ min: 60, max: 110, noNaN: true });
const tests = fc.array(fc.record({ day: fc.integer({ min: 0, max: 60 }), level }), { minLength: 1, maxLength: 6 });

test('the weights are a belief: none below zero, all together one', () => {
  fc.assert(
    fc.property(tests, (each) => {
      const { weight } = recoveryPosterior(each, 3, { timeConstant: 10, logSd: 0.5 });
      expect(weight.every((share) => share >= 0)).toBe(true);
      expect(weight.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 10);
    }),
  );
});

test('the order of the tests does not matter', () => {
  fc.assert(
    fc.property(tests, (each) => {
      const unlike = new Map(each.map((test) => [test.day, test]));
      const once = [...unlike.values()];
      const request = { ...INVENTED, tests: once };
      const turned = { ...INVENTED, tests: once.toReversed() };
      const [a, b] = [given(request), given(turned)];
      expect(b.kind).toBe(a.kind);
      expect(b.loss).toBeCloseTo(a.loss, 8);
      expect(b.newestResidual).toBeCloseTo(a.newestResidual, 8);
    }),
  );
});

test('quantiles rise, and the level is the likelier the later', () => {
  fc.assert(
    fc.property(tests, (each) => {
      const { levels } = given({ ...INVENTED, tests: each, on: [1, 5, 20, 60, 200] });
      for (const { q10, q50, q90 } of levels) {
        expect(q10).toBeLessThanOrEqual(q50);
        expect(q50).toBeLessThanOrEqual(q90);
      }
      const probabilities = levels.map(({ probability }) => probability);
      expect(probabilities).toEqual(probabilities.toSorted((a, b) => a - b));
    }),
  );
});

test('many exact tests of one curve bring the forecast to that curve', () => {
  const exact = Array.from({ length: 30 }, (_, day) => ({ day, level: recoveredLevel(20, 7, day) }));
  const found = given({ ...INVENTED, tests: exact, sigma: 0.3 });
  expect(found.loss).toBeCloseTo(20, 1);
  expect(found.timeConstant).toBeCloseTo(7, 1);
});

test('a level that was never lost is reached at once', () => {
  const found = recoveryForecast({ ...INVENTED, tests: [{ day: 2, level: 100 }], level: 55 });
  expect(found).toMatchObject({ kind: 'forecast', time: { q10: 0, q50: 0, q90: 0 } });
});

test('without a test there is no date', () => {
  expect(recoveryForecast({ ...INVENTED, tests: [] })).toEqual({
    kind: 'none',
    reason: 'No test since landing: a date needs one at least.',
  });
});

test('a newest test far from the curve gets no date, in either direction', () => {
  for (const newest of [80, 120]) {
    const found = recoveryForecast({ ...INVENTED, tests: [...INVENTED.tests, { day: 14, level: newest }] });
    expect(found).toMatchObject({ kind: 'off the expected curve' });
    expect(found).not.toHaveProperty('time');
    expect(found.kind === 'off the expected curve' && found.reason).toMatch(/day 14 is (80|120) %.*No date/);
  }
});

test('the newest test decides, not the last that was told', () => {
  const wild = { day: 0.5, level: 60 };
  expect(recoveryForecast({ ...INVENTED, tests: [...INVENTED.tests, wild] }).kind).toBe('forecast');
});

test('the typical error is 2 % where none is told', () => {
  const { sigma: _, ...untold } = INVENTED;
  expect(recoveryForecast(untold)).toEqual(recoveryForecast(INVENTED));
});

test('everything impossible is told at once', () => {
  const found = recoveryForecast({
    tests: [
      { day: -1, level: 82 },
      { day: 3, level: Number.NaN },
    ],
    prior: { timeConstant: 0, logSd: -1 },
    sigma: 0,
    level: 100,
    on: [5000],
  });
  expect(found.kind === 'refused' && found.reasons).toEqual([
    'The middle of the time constant before any test must lie in 0.1 to 2000 d; it is 0.',
    'The standard deviation of its logarithm must lie in 0.01 to 2 ln; it is -1.',
    'The typical error of one test must lie in 0.1 to 50 %; it is 0.',
    'The level to reach must lie in 50 to 99.9 %; it is 100.',
    'The day of a test, or asked for must lie in 0 to 2000 d; it is -1.',
    'The day of a test, or asked for must lie in 0 to 2000 d; it is 5000.',
    'The level of a test must lie in 0 to 200 %; it is NaN.',
  ]);
});

test('the widest possible inputs give numbers', () => {
  for (const timeConstant of [0.1, 2000])
    for (const sigma of [0.1, 50])
      for (const only of [0, 200]) {
        const found = given({
          tests: [{ day: 2000, level: only }],
          prior: { timeConstant, logSd: 2 },
          sigma,
          level: 99.9,
          on: [0, 2000],
        });
        const numbers = [found.loss, found.timeConstant, ...found.levels.flatMap(({ q10, q90 }) => [q10, q90])];
        expect(numbers.every(Number.isFinite)).toBe(true);
      }
});

test('the band of a plot holds its middle, and nothing is drawn of what is refused', () => {
  const [curve, scattered] = bandOf(INVENTED);
  expect(curve?.points).toHaveLength(curve?.band?.length ?? -1);
  for (const [place, [, middle]] of (curve?.points ?? []).entries()) {
    const [low, high] = curve?.band?.[place] ?? [Number.NaN, Number.NaN];
    expect(low).toBeLessThanOrEqual(middle);
    expect(high).toBeGreaterThanOrEqual(middle);
  }
  expect(scattered).toMatchObject({
    scattered: true,
    points: [
      [1, 82],
      [3, 87],
      [6, 91.5],
      [10, 95],
    ],
  });
  expect(bandOf({ ...INVENTED, level: 100 })).toEqual([]);
  expect(bandOf({ ...INVENTED, tests: [] })).toEqual([]);
});

test('losses run from 1 to 40 % in halves', () => {
  expect([LOSSES.at(0), LOSSES.at(1), LOSSES.at(-1), LOSSES.length]).toEqual([1, 1.5, 40, 79]);
});
