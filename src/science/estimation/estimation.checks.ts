import { printedResults, type Check } from '../check.ts';
import type { AnyMethod } from '../method.ts';
import { EXAMPLE_OBSERVATIONS, EXAMPLE_PRIOR, EXAMPLE_SETS } from './example-series.ts';
import { filterLocalLevel, smoothLocalLevel } from './local-level.ts';
import { filterLocalTrend, smoothLocalTrend } from './local-trend.ts';
import { readSet, type SetEstimate } from '../strength/set-estimate.ts';
import { COUNTED_BY_HAND, NUMPY, OUR_OWN_DESIGN, STATSMODELS } from '../sources.ts';
import { machineTransfer } from './machine-transfer.ts';
import { sessionObservation } from './session-observation.ts';
import { DURBIN_KOOPMAN_2012, RAUCH_TUNG_STRIEBEL_1965 } from './sources.ts';
import { day } from '#units/day.ts';
import { barLoad, repetitions } from '#units/quantity.ts';

const observations = EXAMPLE_OBSERVATIONS;
const PRIOR = EXAMPLE_PRIOR;

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

const isSmoothed = (title: string): boolean => title.includes('smoothed');

const checksOf = (
  model: string,
  filter: AnyMethod,
  smoother: AnyMethod,
  columns: readonly Column[],
): readonly Check[] =>
  columns.flatMap(([title, values, printed, within, because]) =>
    printedResults(
      isSmoothed(title) ? smoother : filter,
      isSmoothed(title) ? RAUCH_TUNG_STRIEBEL_1965 : DURBIN_KOOPMAN_2012,
      within,
      because,
      printed.map((value, place) => [
        `${model}, ${title}${printed.length > 1 ? `, day ${EXAMPLE_SETS[place]?.[0] ?? '?'}` : ''}`,
        () => values()[place] ?? Number.NaN,
        value,
      ]),
    ),
  );

/** Two readings two days apart, filtered and smoothed by statsmodels day by day. */
const PAIR = [
  { day: day(0), y: 4.513485321705542, variance: 0.0032862095739042713 },
  { day: day(2), y: 4.5920495526538385, variance: 0.004951134940276192 },
];
const PAIR_OPTIONS = { prior: { day: day(0), level: 4.6, variance: 0.01 } };

const pairLevel = () => filterLocalLevel(PAIR, PAIR_OPTIONS);
const pairTrend = () => filterLocalTrend(PAIR, PAIR_OPTIONS);

const TEN = 'doubles against doubles, compared to ten decimals';
const HALF_OF_TEN = halfOf(10);

const againstStatsmodels = (
  method: AnyMethod,
  ...results: readonly (readonly [title: string, compute: () => number | undefined, printed: number])[]
): readonly Check[] =>
  printedResults(
    method,
    STATSMODELS,
    HALF_OF_TEN,
    TEN,
    results.map(([title, compute, printed]) => [`Two readings, ${title}`, () => compute() ?? Number.NaN, printed]),
  );

export const trendModelChecks: readonly Check[] = [
  ...checksOf('Level and trend', filterLocalTrend, smoothLocalTrend, TREND),
  ...againstStatsmodels(
    filterLocalTrend,
    ['filtered level', () => pairTrend().steps[1]?.filtered.mean[0], 4.554112041585806],
    ['filtered trend', () => pairTrend().steps[1]?.filtered.mean[1], 1.5478021359109092e-5],
    ['log-likelihood', () => pairTrend().logLikelihood, 2.2710116483794174],
  ),
  ...againstStatsmodels(
    smoothLocalTrend,
    ['smoothed level', () => smoothLocalTrend(pairTrend())[0]?.level, 4.553835991330279],
    ['smoothed variance', () => smoothLocalTrend(pairTrend())[0]?.variance, 0.001653393189335644],
  ),
];

export const levelModelChecks: readonly Check[] = [
  ...checksOf('Level alone', filterLocalLevel, smoothLocalLevel, LEVEL),
  ...againstStatsmodels(
    filterLocalLevel,
    ['filtered level', () => pairLevel().steps[1]?.level, 4.554091554625627],
    ['filtered variance', () => pairLevel().steps[1]?.variance, 0.0016635836701499162],
    ['log-likelihood', () => pairLevel().logLikelihood, 2.271163313775406],
  ),
  ...againstStatsmodels(
    smoothLocalLevel,
    ['smoothed level', () => smoothLocalLevel(pairLevel())[0]?.level, 4.553846225837065],
    ['smoothed variance', () => smoothLocalLevel(pairLevel())[0]?.variance, 0.0016529503710473118],
  ),
];

const setOf = (load: number, isTold = true): SetEstimate => {
  const found = readSet({
    load: barLoad(load),
    completed: repetitions(5),
    effort: isTold ? { kind: 'reserve', reserve: repetitions(2) } : { kind: 'unrecorded' },
    novice: false,
    of: repetitions(1),
  });
  if (found.kind === 'none') throw new RangeError(found.reason);
  return found;
};

const readingOf = (...sets: readonly SetEstimate[]) => {
  const found = sessionObservation(day(0), sets);
  if (found.kind === 'none') throw new RangeError(found.reason);
  return found.observation;
};

/** 100 and 102.5 kg, five repetitions each with two in reserve: the first two readings above, as sets of one day. */
export const sessionChecks: readonly Check[] = printedResults(
  sessionObservation,
  OUR_OWN_DESIGN,
  1e-6,
  'the mean of two values printed to six decimals',
  [
    ['Two sets of one session, reading', () => readingOf(setOf(100), setOf(102.5)).y, (4.820523 + 4.845216) / 2],
    ['Two sets of one session, variance', () => readingOf(setOf(100), setOf(102.5)).variance, 0.00647215],
    ['A set without effort changes nothing', () => readingOf(setOf(100), setOf(140, false)).y, 4.820523],
  ],
);

const ONE = [{ logRatio: -0.023932, variance: 0.009337 }];
const ONE_RATIO = 0.9876999976321653;

const BOTH = [
  { logRatio: 0.08, variance: 0.0025 },
  { logRatio: 0.04, variance: 0.0025 },
];

/** Two lifts: precision 100 + 400 + 400 = 900, mean (32 + 16) / 900. */
export const transferChecks: readonly Check[] = [
  ...printedResults(machineTransfer, COUNTED_BY_HAND, 1e-9, 'exact fractions', [
    ['Two lifts on both, logarithm of the ratio', () => Math.log(machineTransfer(BOTH).ratio), 48 / 900],
    ['Two lifts on both, standard deviation', () => machineTransfer(BOTH).logSd, 1 / 30],
  ]),
  ...printedResults(machineTransfer, NUMPY, 1e-12, 'doubles on both sides', [
    ['One lift on both by least squares, ratio', () => machineTransfer(ONE).ratio, ONE_RATIO],
  ]),
];
