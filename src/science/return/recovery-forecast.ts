import type { FormulaInput } from '../formula.ts';
import { days, percent } from './inputs.ts';
import { method } from '../method.ts';
import type { Curve } from '../plot.ts';
import { recoveredLevel, timeToLevel } from './recovery-curve.ts';
import {
  clipped,
  logSdInput,
  overCurves,
  posteriorMean,
  posteriorQuantiles,
  posteriorShare,
  recoveryPosterior,
  sigmaInput,
  timeConstantInput,
  type Posterior,
  type RecoveryPrior,
  type RecoveryTest,
} from './recovery-posterior.ts';
import { OUR_OWN_DESIGN } from '../sources.ts';

/** When a person is likely to be back, and how surely, from one test or more after landing. */

/** Standard deviations by which the newest test may miss the curve before no date is given. */
export const OFF_THE_CURVE = 2.5;
/** Typical error of a test where none is known [%]. */
export const DEFAULT_SIGMA = 2;

/** Four in five: from the tenth to the ninetieth of a hundred. */
const SHARES = [0.1, 0.5, 0.9] as const;

export interface Spread {
  readonly q10: number;
  readonly q50: number;
  readonly q90: number;
}

export interface ForecastRequest {
  /** In any order. */
  readonly tests: readonly RecoveryTest[];
  readonly prior: RecoveryPrior;
  readonly sigma?: number;
  /** Level that is to be reached [%]. */
  readonly level: number;
  /** Days since landing for which the level is asked. */
  readonly on?: readonly number[];
}

export interface LevelOnDay extends Spread {
  readonly day: number;
  /** That the level is reached on this day. */
  readonly probability: number;
}

interface Fitted {
  /** Expected loss on landing day [%]. */
  readonly loss: number;
  readonly timeConstant: number;
  /** Newest test less the expected curve, in typical errors. */
  readonly newestResidual: number;
  readonly levels: readonly LevelOnDay[];
}

export type RecoveryForecast =
  | (Fitted & {
      readonly kind: 'forecast';
      /** Days since landing; 0 where the level was never lost. */ readonly time: Spread;
    })
  | (Fitted & { readonly kind: 'off the expected curve'; readonly reason: string })
  | { readonly kind: 'none'; readonly reason: string }
  | { readonly kind: 'refused'; readonly reasons: readonly string[] };

const levelInput: FormulaInput = {
  name: 'level to reach',
  symbol: 'Y',
  unit: '%',
  possible: [50, 99.9],
  valid: [50, 99],
};
const dayInput = days('day of a test, or asked for', 't', [0, 2000], [0, 1000]);
const testInput = percent('level of a test', 'y_k', [0, 200], [50, 130]);

const outside = ({ name, unit, possible: [low, high] }: FormulaInput, values: readonly number[]): readonly string[] =>
  values
    .filter((value) => !(value >= low && value <= high))
    .map((value) => `The ${name} must lie in ${low} to ${high} ${unit}; it is ${value}.`);

const faultsOf = ({ tests, prior, sigma = DEFAULT_SIGMA, level, on = [] }: ForecastRequest): readonly string[] => [
  ...outside(timeConstantInput, [prior.timeConstant]),
  ...outside(logSdInput, [prior.logSd]),
  ...outside(sigmaInput, [sigma]),
  ...outside(levelInput, [level]),
  ...outside(dayInput, [...tests.map(({ day }) => day), ...on]),
  ...outside(
    testInput,
    tests.map((test) => test.level),
  ),
];

const spreadOf = (posterior: Posterior, values: Float64Array): Spread => {
  const [q10 = 0, q50 = 0, q90 = 0] = posteriorQuantiles(posterior, values, SHARES);
  return { q10, q50, q90 };
};

const levelOn = (posterior: Posterior, day: number, level: number): LevelOnDay => {
  const values = overCurves(posterior, (loss, tau) => recoveredLevel(loss, tau, day));
  return { day, ...spreadOf(posterior, values), probability: posteriorShare(posterior, values, level) };
};

/** When a recovery reaches a level, with its uncertainty. */
export const recoveryForecast = method(
  {
    id: 'return/recovery-forecast',
    revision: 1,
    title: 'When a recovery reaches a level, with its uncertainty',
    equations: [
      'y(t) = 100 − δ · exp(−t / τ) + ε, ε normal with standard deviation σ',
      'δ = 1, 1.5, … 40, each as likely; ln τ = ln τ_0 + s · z, z = −3, −2.9, … 3, with weight exp(−z² / 2)',
      'ln w = −1/2 · sum_k ((y_k − ŷ(t_k)) / σ)² − z² / 2',
      'T = τ · ln(δ / (100 − Y)) where δ > 100 − Y, else 0',
      'q_p = the first value in order at which the weights so far reach p',
      'P(t) = sum of the weights of the curves with ŷ(t) ≥ Y',
    ],
    inputs: [testInput, dayInput, timeConstantInput, logSdInput, sigmaInput, levelInput],
    outputs: [
      { name: 'time to the level: tenth, fiftieth and ninetieth of a hundred', symbol: 'T', unit: 'd' },
      { name: 'level on a day: the same', symbol: 'y', unit: '%' },
      { name: 'probability of having reached the level', symbol: 'P', unit: '1' },
      { name: 'expected loss and time constant', symbol: 'δ, τ', unit: '%, d' },
    ],
    refuses: [
      'A date without a single test: the prior alone gives silly widths.',
      'A date where the newest test misses the expected curve by more than 2.5 typical errors.',
      'A level of 100 % or more: the curve never gets there. A test, a day, a prior or an error that cannot be.',
    ],
    source: OUR_OWN_DESIGN,
    doesNotKnow:
      'A setback, an illness, or a person who stops short of full recovery: every curve of the grid ends at 100 %, and the loss is one of 1 to 40 %. The residual of the newest test is taken from the curve expected with that test in it. Levels are of the true value; a single test scatters more.',
    plot: {
      says: 'Four tests of an invented person, the middle curve, and the band that holds four curves in five.',
      x: { name: 'time since landing', unit: 'd' },
      y: { name: 'level', unit: '% of before flight' },
      curves: () => bandOf(INVENTED),
    },
  },
  (request: ForecastRequest): RecoveryForecast => {
    const reasons = faultsOf(request);
    if (reasons.length > 0) return { kind: 'refused', reasons };
    const newest = request.tests.toSorted((a, b) => a.day - b.day).at(-1);
    if (!newest) return { kind: 'none', reason: 'No test since landing: a date needs one at least.' };
    const { prior, sigma = DEFAULT_SIGMA, level, on = [] } = request;
    const posterior = recoveryPosterior(request.tests, sigma, prior);
    const expected = posteriorMean(
      posterior,
      overCurves(posterior, (loss, tau) => recoveredLevel(loss, tau, newest.day)),
    );
    const fitted: Fitted = {
      loss: posteriorMean(posterior, posterior.loss),
      timeConstant: posteriorMean(posterior, posterior.timeConstant),
      newestResidual: (clipped(newest.level) - expected) / sigma,
      levels: on.map((day) => levelOn(posterior, day, level)),
    };
    if (Math.abs(fitted.newestResidual) > OFF_THE_CURVE)
      return {
        ...fitted,
        kind: 'off the expected curve',
        reason: `Off the expected curve: the test of day ${newest.day} is ${newest.level} %, expected were ${expected.toFixed(1)} %. No date is given.`,
      };
    const times = overCurves(posterior, (loss, tau) => timeToLevel(loss, tau, level));
    return { ...fitted, kind: 'forecast', time: spreadOf(posterior, times) };
  },
);

/** Four tests of an invented person, for the plot and the checks. */
export const INVENTED: ForecastRequest = {
  tests: [
    { day: 1, level: 82 },
    { day: 3, level: 87 },
    { day: 6, level: 91.5 },
    { day: 10, level: 95 },
  ],
  prior: { timeConstant: 7, logSd: 0.5 },
  sigma: 2,
  level: 97,
  on: [14, 21],
};

/** Days at which the band is drawn. */
const BAND_DAYS: readonly number[] = [0, 2, 4, 7, 10, 14, 18, 24, 30];

/** Band, middle and tests of a recovery, for a plot; nothing where the request is refused. */
export const bandOf = (request: ForecastRequest): readonly Curve[] => {
  const forecast = recoveryForecast({ ...request, on: BAND_DAYS });
  if (forecast.kind === 'refused' || forecast.kind === 'none') return [];
  return [
    {
      label: 'expected: the middle, and four in five',
      points: forecast.levels.map(({ day, q50 }) => [day, q50] as const),
      band: forecast.levels.map(({ q10, q90 }) => [q10, q90] as const),
    },
    {
      label: 'tests',
      points: request.tests.map(({ day, level }) => [day, level] as const),
      scattered: true,
    },
  ];
};
