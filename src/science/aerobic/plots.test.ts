import { expect, test } from 'vitest';
import { callWith, type AnyFormula, type EntryRecord } from '../formula.ts';
import type { Curve } from '../plot.ts';
import { AEROBIC } from './chapters.ts';
import { uptakeOfLegCycling } from './cycling.ts';
import { targetHeartRate } from './effort-reserve.ts';
import { runningPeakOnEarth, runningPeakUnderHarness } from './ground-force.ts';
import {
  fixedPulleyLine,
  rollingTrolleyLine,
  runningCostFactor,
  sdOfRunningCostFactor,
  sdOfWalkingCostFactor,
  walkingCostFactor,
} from './harness-cost.ts';
import {
  heartRateReserveCycling,
  heartRateReserveCyclingOfReserve,
  heartRateReserveTreadmill,
  heartRateReserveTreadmillOfReserve,
} from './intensity-lines.ts';
import { intensityZone } from './intensity-zone.ts';
import {
  maximalRateGellish,
  maximalRateGellishCurved,
  maximalRateGellishUnrounded,
  maximalRateTanaka,
} from './maximal-rate-of-age.ts';
import { uptakeOfPercentile, uptakePercentile } from './uptake-percentile.ts';
import { uptakeOfRunning, uptakeOfWalking } from './walking-and-running.ts';

/** What is drawn is what the formulas give: every joined point against the formula it stands for. */

const curvesOf = ({ record }: { readonly record: EntryRecord }): ReadonlyMap<string, Curve> =>
  new Map((record.plot?.curves() ?? []).map((curve) => [curve.label, curve]));

const expectDrawn = (curve: Curve | undefined, formula: AnyFormula, given: (x: number) => readonly number[]): void => {
  expect(curve?.points.length).toBeGreaterThan(20);
  for (const [x, y] of curve?.points ?? []) expect(y).toBeCloseTo(callWith(formula, given(x)), 10);
};

type Drawn = readonly [
  entry: { readonly record: EntryRecord },
  label: string,
  formula: AnyFormula,
  given: (x: number) => readonly number[],
];

const DRAWN: readonly Drawn[] = [
  [uptakeOfWalking, 'grade 0 %', uptakeOfWalking, (x) => [x, 0]],
  [uptakeOfWalking, 'grade 10 %', uptakeOfWalking, (x) => [x, 0.1]],
  [uptakeOfRunning, 'grade 5 %', uptakeOfRunning, (x) => [x, 0.05]],
  [uptakeOfRunning, 'walking, grade 0 %', uptakeOfWalking, (x) => [x, 0]],
  [uptakeOfLegCycling, 'body mass 60 kg', uptakeOfLegCycling, (x) => [x, 60]],
  [uptakeOfLegCycling, 'body mass 100 kg', uptakeOfLegCycling, (x) => [x, 100]],
  [maximalRateTanaka, 'Tanaka', maximalRateTanaka, (x) => [x]],
  [maximalRateTanaka, 'Gellish', maximalRateGellish, (x) => [x]],
  [maximalRateTanaka, 'Gellish, before rounding', maximalRateGellishUnrounded, (x) => [x]],
  [maximalRateTanaka, 'Gellish, curved', maximalRateGellishCurved, (x) => [x]],
  [heartRateReserveCycling, 'cycling, of the maximum', heartRateReserveCycling, (x) => [x]],
  [heartRateReserveCycling, 'running, of the maximum', heartRateReserveTreadmill, (x) => [x]],
  [heartRateReserveCycling, 'cycling, of the reserve', heartRateReserveCyclingOfReserve, (x) => [x]],
  [heartRateReserveCycling, 'running, of the reserve', heartRateReserveTreadmillOfReserve, (x) => [x]],
  [runningCostFactor, 'used here', runningCostFactor, (x) => [x]],
  [runningCostFactor, 'rolling trolley 2007', rollingTrolleyLine, (x) => [x]],
  [runningCostFactor, 'fixed pulley 2007', fixedPulleyLine, (x) => [x]],
  [walkingCostFactor, 'walking', walkingCostFactor, (x) => [x]],
  [walkingCostFactor, 'running', runningCostFactor, (x) => [x]],
  [runningPeakUnderHarness, 'in 1 g', runningPeakOnEarth, (x) => [x]],
  [runningPeakUnderHarness, 'load 0.7', runningPeakUnderHarness, (x) => [0.7, x]],
  [runningPeakUnderHarness, 'load 0.5', runningPeakUnderHarness, (x) => [0.5, x]],
];

const NAMED = DRAWN.map((drawn) => [drawn[0].record.id, drawn[1], drawn] as const);

test.each(NAMED)('in the plot of %s the curve "%s" is its formula', (_, __, [entry, label, formula, given]) => {
  expect.hasAssertions();
  expectDrawn(curvesOf(entry).get(label), formula, given);
});

const bandOf = (entry: { readonly record: EntryRecord }, label: string): readonly (readonly number[])[] => {
  const curve = curvesOf(entry).get(label);
  return (curve?.band ?? []).map(([low, high], place) => [...(curve?.points[place] ?? []), low, high]);
};

test('the factors are drawn over the loads that they are valid for', () => {
  for (const [entry, label] of [
    [runningCostFactor, 'used here'],
    [walkingCostFactor, 'walking'],
  ] as const) {
    const loads = curvesOf(entry)
      .get(label)
      ?.points.map(([load]) => load);
    expect(loads?.[0]).toBeCloseTo(0.3, 10);
    expect(loads?.at(-1)).toBeCloseTo(1.1, 10);
  }
});

test('a band of a factor, and of a maximal heart rate, is one standard deviation to each side', () => {
  const bands: readonly (readonly [readonly (readonly number[])[], (x: number) => number])[] = [
    [bandOf(runningCostFactor, 'used here'), (x) => callWith(sdOfRunningCostFactor, [x])],
    [bandOf(walkingCostFactor, 'walking'), (x) => callWith(sdOfWalkingCostFactor, [x])],
    [bandOf(maximalRateTanaka, 'Tanaka'), () => 10],
  ];
  for (const [rows, sd] of bands) {
    expect(rows.length).toBeGreaterThan(20);
    for (const [x = 0, y = 0, low = 0, high = 0] of rows) {
      expect(y - low).toBeCloseTo(sd(x), 10);
      expect(high - y).toBeCloseTo(sd(x), 10);
    }
  }
});

test('a band of a peak force is one standard deviation on the log scale', () => {
  const peaks = bandOf(runningPeakUnderHarness, 'load 0.7');
  expect(peaks.length).toBeGreaterThan(20);
  for (const [, y = 0, low = 0, high = 0] of peaks) {
    expect(Math.log(high / y)).toBeCloseTo(0.15, 10);
    expect(Math.log(y / low)).toBeCloseTo(0.15, 10);
  }
});

test('the bands of the zones lie on one another from rest to the maximum', () => {
  const curves = [...curvesOf(intensityZone).values()];
  expect(curves.map(({ label }) => label)).toEqual([
    'very light',
    'light',
    'moderate',
    'vigorous',
    'near maximal to maximal',
  ]);
  for (const [place, curve] of curves.entries())
    for (const [column, [years, middle]] of curve.points.entries()) {
      const [low, high] = curve.band?.[column] ?? [Number.NaN, Number.NaN];
      expect(middle).toBeCloseTo((low + high) / 2, 10);
      expect(low).toBeCloseTo(place === 0 ? 60 : (curves[place - 1]?.band?.[column]?.[1] ?? Number.NaN), 10);
      if (place === 4) expect(high).toBeCloseTo(callWith(maximalRateTanaka, [years]), 10);
      if (place === 2) {
        expect(low).toBeCloseTo(callWith(targetHeartRate, [0.4, 60, callWith(maximalRateTanaka, [years])]), 10);
      }
    }
});

test('the norms are drawn by sex, medians with their middle half', () => {
  const curves = curvesOf(uptakePercentile);
  expect([...curves.keys()]).toEqual(['female', 'male']);
  for (const sex of ['female', 'male'] as const) {
    const { points = [], band = [] } = curves.get(sex) ?? {};
    expect(points).toHaveLength(6);
    for (const [place, [years, median]] of points.entries()) {
      const at = (percentile: number): number => {
        const found = uptakeOfPercentile(sex, years, percentile);
        return found.kind === 'uptake' ? found.value : Number.NaN;
      };
      expect([median, ...(band[place] ?? [])]).toEqual([at(50), at(25), at(75)]);
    }
  }
});

test('points of studies are not joined, and every other curve is', () => {
  const curves = AEROBIC.chapters
    .flatMap(({ formulas = [], methods = [] }) => [...formulas, ...methods])
    .flatMap(({ record }) => record.plot?.curves() ?? []);
  expect(curves.filter(({ scattered }) => scattered).map(({ label }) => label)).toEqual([
    'Farley and McMahon 1992',
    'extrapolated to no weight',
    'Farley and McMahon 1992, walking',
    'printed in 1 g',
    'highest in flight',
  ]);
  for (const { points, scattered = false } of curves) expect(points.length > 5).toBe(!scattered);
});
