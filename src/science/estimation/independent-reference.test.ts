import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { day } from '#units/day.ts';
import { filterLocalLevel, smoothLocalLevel } from './local-level.ts';
import { filterLocalTrend, smoothLocalTrend } from './local-trend.ts';

/** Filter and smoother against statsmodels, which walks the same series one day at a time. */

interface Row {
  readonly filteredLevel: number;
  readonly filteredVariance: number;
  readonly smoothedLevel: number;
  readonly smoothedVariance: number;
  readonly innovation: number;
  readonly innovationVariance: number;
  readonly filteredTrend?: number;
  readonly smoothedTrend?: number;
  readonly smoothedTrendVariance?: number;
}

interface Reference {
  readonly logLikelihood: number;
  readonly rows: readonly Row[];
}

interface Fixture {
  readonly made: Readonly<Record<string, string | number>>;
  readonly series: readonly {
    readonly readings: readonly { readonly day: number; readonly y: number; readonly variance: number }[];
    readonly widenings: readonly { readonly day: number; readonly variance: number }[];
    readonly prior: { readonly day: number; readonly level: number; readonly variance: number };
    readonly localLevel: Reference;
    readonly localTrend: Reference;
  }[];
}

const FILE = join(import.meta.dirname, '../../../test/fixtures/science/local-level.json');
// Written by the script that stands beside the file.
const { made, series } = JSON.parse(readFileSync(FILE, 'utf8')) as Fixture;

/** Both programs use doubles; some four hundred daily steps of one against forty of the other leave less than this. */
const WITHIN = 1e-10;

const far = (ours: number, theirs: number | undefined): boolean => !(Math.abs(ours - (theirs ?? Number.NaN)) <= WITHIN);

const cases = series.map((each, place) => ({
  name: `series ${place + 1}, ${each.readings.length} readings, ${each.widenings.length} widenings`,
  observations: each.readings.map((reading) => ({ ...reading, day: day(reading.day) })),
  options: {
    prior: { ...each.prior, day: day(each.prior.day) },
    widenings: each.widenings.map((widening) => ({ ...widening, day: day(widening.day) })),
  },
  localLevel: each.localLevel,
  localTrend: each.localTrend,
}));

test('the reference says what made it', () => {
  expect(Object.keys(made)).toEqual(expect.arrayContaining(['by', 'seed', 'numpy', 'statsmodels']));
});

test.each(cases)('a level alone is as statsmodels has it: $name', ({ observations, options, localLevel }) => {
  const filtered = filterLocalLevel(observations, options);
  const smoothed = smoothLocalLevel(filtered);
  expect(filtered.steps.every(({ treatment }) => treatment === 'used')).toBe(true);
  const off = localLevel.rows.filter((row, place) => {
    const [step, back] = [filtered.steps[place], smoothed[place]];
    if (!step || !back) return true;
    return (
      far(step.level, row.filteredLevel) ||
      far(step.variance, row.filteredVariance) ||
      far(step.innovation, row.innovation) ||
      far(step.innovationVariance, row.innovationVariance) ||
      far(back.level, row.smoothedLevel) ||
      far(back.variance, row.smoothedVariance)
    );
  });
  expect(off).toEqual([]);
  expect(filtered.logLikelihood).toBeCloseTo(localLevel.logLikelihood, 8);
});

test.each(cases)('a level with a trend is as statsmodels has it: $name', ({ observations, options, localTrend }) => {
  const filtered = filterLocalTrend(observations, options);
  const smoothed = smoothLocalTrend(filtered);
  expect(filtered.steps.every(({ treatment }) => treatment === 'used')).toBe(true);
  const off = localTrend.rows.filter((row, place) => {
    const [step, back] = [filtered.steps[place], smoothed[place]];
    if (!step || !back) return true;
    return (
      far(step.filtered.mean[0], row.filteredLevel) ||
      far(step.filtered.covariance[0], row.filteredVariance) ||
      far(step.filtered.mean[1], row.filteredTrend) ||
      far(step.innovation, row.innovation) ||
      far(back.level, row.smoothedLevel) ||
      far(back.variance, row.smoothedVariance) ||
      far(back.trend, row.smoothedTrend) ||
      far(back.trendVariance, row.smoothedTrendVariance)
    );
  });
  expect(off).toEqual([]);
  expect(filtered.logLikelihood).toBeCloseTo(localTrend.logLikelihood, 8);
});
