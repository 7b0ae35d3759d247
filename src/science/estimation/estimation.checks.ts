import type { Check } from '../check.ts';
import { filterLocalLevel, smoothLocalLevel } from './local-level.ts';
import { filterLocalTrend, smoothLocalTrend } from './local-trend.ts';
import type { Observation } from './observation.ts';
import { estimateLogSd } from '../strength/estimate-spread.ts';
import { oneRepMaxWathan } from '../strength/one-rep-max.ts';
import { DURBIN_KOOPMAN_2012, RAUCH_TUNG_STRIEBEL_1965 } from './sources.ts';
import { day } from '#units/day.ts';
import { barLoad, repetitions } from '#units/quantity.ts';

/** Six sets in three weeks, from a prior of 120 kg known to 0.15 on the log scale. Loads in kilograms. */
const SETS: readonly (readonly [on: number, load: number, completed: number, reserve: number])[] = [
  [0, 100, 5, 2],
  [3, 102.5, 5, 2],
  [7, 105, 5, 1],
  [10, 110, 3, 1],
  [14, 105, 8, 0],
  [21, 122.5, 1, 0],
];
const PRIOR = { day: day(0), level: Math.log(120), variance: 0.15 ** 2 };

const observations: readonly Observation[] = SETS.map(([on, load, completed, reserve]) => {
  const effective = repetitions(completed + reserve);
  return {
    day: day(on),
    y: Math.log(oneRepMaxWathan(barLoad(load), effective)),
    variance: estimateLogSd(effective, repetitions(reserve)) ** 2,
  };
});

const trend = () => filterLocalTrend(observations, { prior: PRIOR });
const level = () => filterLocalLevel(observations, { prior: PRIOR });

type Column = readonly [
  title: string,
  values: () => readonly number[],
  printed: readonly number[],
  within: number,
  because: string,
];

const SIX = 'printed to six decimals';
const EIGHT = 'printed to eight decimals';
const FOUR = 'printed to four decimals';
const halfOf = (digits: number): number => 0.5 * 10 ** -digits + 1e-12;

const TREND: readonly Column[] = [
  [
    'observation',
    () => observations.map(({ y }) => y),
    [4.820523, 4.845216, 4.839033, 4.820887, 4.89825, 4.808111],
    halfOf(6),
    SIX,
  ],
  [
    'its variance',
    () => observations.map(({ variance }) => variance),
    [0.00647215, 0.00647215, 0.00435851, 0.00293686, 0.0058, 0.0009],
    halfOf(8),
    EIGHT,
  ],
  [
    'innovation',
    () => trend().steps.map(({ innovation }) => innovation),
    [0.033031, 0.032072, 0.011746, -0.011187, 0.07047, -0.032732],
    halfOf(6),
    SIX,
  ],
  [
    'its variance expected',
    () => trend().steps.map(({ innovationVariance }) => innovationVariance),
    [0.02897215, 0.01155556, 0.0073, 0.0047719, 0.00704424, 0.00219113],
    halfOf(8),
    EIGHT,
  ],
  [
    'filtered level',
    () => trend().steps.map(({ filtered }) => filtered.mean[0]),
    [4.813144, 4.827253, 4.83202, 4.827772, 4.840227, 4.821556],
    halfOf(6),
    SIX,
  ],
  [
    'its standard deviation',
    () => trend().steps.map(({ filtered }) => Math.sqrt(filtered.covariance[0])),
    [0.070897, 0.053359, 0.041907, 0.033606, 0.032007, 0.023029],
    halfOf(6),
    SIX,
  ],
  [
    'filtered trend',
    () => trend().steps.map(({ filtered }) => filtered.mean[1]),
    [0, 0.00000845, 0.00001795, 0.0000021, 0.00008794, -0.00013779],
    halfOf(8),
    EIGHT,
  ],
  [
    'smoothed level',
    () => smoothLocalTrend(trend()).map((each) => each.level),
    [4.826158, 4.825924, 4.825404, 4.824851, 4.824185, 4.821556],
    halfOf(6),
    SIX,
  ],
  [
    'its standard deviation, smoothed',
    () => smoothLocalTrend(trend()).map((each) => Math.sqrt(each.variance)),
    [0.027562, 0.02575, 0.023794, 0.022798, 0.022318, 0.023029],
    halfOf(6),
    SIX,
  ],
  [
    'smoothed trend',
    () => smoothLocalTrend(trend()).map((each) => each.trend),
    [-0.0001176, -0.00012124, -0.00012622, -0.00012978, -0.00013414, -0.00013779],
    halfOf(8),
    EIGHT,
  ],
  [
    'filtered maximum [kg]',
    () => trend().steps.map(({ filtered }) => Math.exp(filtered.mean[0])),
    [123.1181, 124.8675, 125.4641, 124.9323, 126.4981, 124.1581],
    halfOf(4),
    FOUR,
  ],
  [
    'smoothed maximum [kg]',
    () => smoothLocalTrend(trend()).map((each) => Math.exp(each.level)),
    [124.7309, 124.7017, 124.6369, 124.568, 124.4849, 124.1581],
    halfOf(4),
    FOUR,
  ],
  ['log-likelihood', () => [trend().logLikelihood], [8.476392], halfOf(6), SIX],
];

const LEVEL: readonly Column[] = [
  [
    'filtered level',
    () => level().steps.map((step) => step.level),
    [4.813144, 4.827239, 4.831959, 4.827763, 4.839654, 4.822373],
    halfOf(6),
    SIX,
  ],
  [
    'smoothed level',
    () => smoothLocalLevel(level()).map((each) => each.level),
    [4.824499, 4.824608, 4.824549, 4.824345, 4.824148, 4.822373],
    halfOf(6),
    SIX,
  ],
  [
    'last standard deviation',
    () =>
      level()
        .steps.slice(-1)
        .map((step) => Math.sqrt(step.variance)),
    [0.022205],
    halfOf(6),
    SIX,
  ],
  ['log-likelihood', () => [level().logLikelihood], [8.527343], halfOf(6), SIX],
];

const checksOf = (model: string, columns: readonly Column[]): readonly Check[] =>
  columns.flatMap(([title, values, printed, within, because]) =>
    printed.map((value, place) => ({
      kind: 'series',
      title: `${model}, ${title}${printed.length > 1 ? `, day ${SETS[place]?.[0] ?? '?'}` : ''}`,
      compute: () => values()[place] ?? Number.NaN,
      printed: value,
      within,
      because,
      source: title.includes('smoothed') ? RAUCH_TUNG_STRIEBEL_1965 : DURBIN_KOOPMAN_2012,
    })),
  );

export const trendModelChecks: readonly Check[] = checksOf('Level and trend', TREND);
export const levelModelChecks: readonly Check[] = checksOf('Level alone', LEVEL);
