import { method } from '../method.ts';
import { add, inverse, multiply, subtract, transpose, type Matrix2, type Vector2 } from '../numeric/two-by-two.ts';
import type { Curve } from '../plot.ts';
import { EXAMPLE_OBSERVATIONS, EXAMPLE_PRIOR } from './example-series.ts';
import { levelDrawn, readingsDrawn, TREND_FILTER, TREND_SMOOTHER, TREND_SMOOTHER_AXES } from './filter-records.ts';
import { DRIFT_PER_DAY } from './local-level.ts';
import {
  logDensity,
  requireOrdered,
  treatObservation,
  type Observation,
  type Treatment,
  type Widening,
} from './observation.ts';
import type { Day } from '#units/day.ts';

/**
 * A level with a trend, both drifting at random (Durbin & Koopman 2012), and its smoother (Rauch, Tung & Striebel 1965).
 * It draws the history; no load is made from it. At a widening the trend starts again from nothing.
 */

/** Variance of the drift of the trend, per day cubed: over four weeks about ± 0.37 % a week; our own design. */
export const TREND_DRIFT = 1e-8;
/** Standard deviation of a trend before anything is known: 0.7 % a week covers trained people and most novices. */
export const TREND_SD = 0.001;

export interface TrendPrior {
  readonly day: Day;
  readonly level: number;
  readonly variance: number;
}

export interface TrendOptions {
  /** Without one the first observation is the level, with its variance. */
  readonly prior?: TrendPrior;
  readonly widenings?: readonly Widening[];
  readonly driftPerDay?: number;
  readonly trendDrift?: number;
  readonly trendSd?: number;
}

interface State {
  readonly mean: Vector2;
  readonly covariance: Matrix2;
}

export interface TrendStep {
  readonly day: Day;
  readonly transition: Matrix2;
  readonly predicted: State;
  readonly innovation: number;
  readonly innovationVariance: number;
  readonly treatment: Treatment | 'start';
  readonly filtered: State;
}

export interface FilteredTrend {
  readonly steps: readonly TrendStep[];
  readonly logLikelihood: number;
}

interface Settings {
  readonly widenings: readonly Widening[];
  readonly driftPerDay: number;
  readonly trendDrift: number;
  readonly trendSd: number;
}

interface Step {
  readonly state: State;
  readonly transition: Matrix2;
}

const IDENTITY: Matrix2 = [1, 0, 0, 1];

const apply = ([a, b, c, d]: Matrix2, [level, trend]: Vector2): Vector2 => [
  a * level + b * trend,
  c * level + d * trend,
];

const move = ({ state, transition }: Step, by: Matrix2, noise: Matrix2): Step => ({
  state: {
    mean: apply(by, state.mean),
    covariance: add(multiply(multiply(by, state.covariance), transpose(by)), noise),
  },
  transition: multiply(by, transition),
});

const moveDays = (step: Step, days: number, { driftPerDay, trendDrift }: Settings): Step => {
  const cross = (trendDrift * days ** 2) / 2;
  const noise: Matrix2 = [driftPerDay * days + (trendDrift * days ** 3) / 3, cross, cross, trendDrift * days];
  return move(step, [1, days, 0, 1], noise);
};

/** Adds variance to the level and starts the trend again. */
const widen = (step: Step, variance: number, { trendSd }: Settings): Step =>
  move(step, [1, 0, 0, 0], [variance, 0, 0, trendSd ** 2]);

const predict = (state: State, from: Day, to: Day, settings: Settings): Step => {
  let step: Step = { state, transition: IDENTITY };
  let at = from;
  for (const { day, variance } of settings.widenings.toSorted((a, b) => a.day - b.day)) {
    if (day <= from || day > to) continue;
    step = widen(moveDays(step, day - at, settings), variance, settings);
    at = day;
  }
  return moveDays(step, to - at, settings);
};

const update = (observation: Observation, { state, transition }: Step): TrendStep => {
  const [level, trend] = state.mean;
  const [p11, p12, p21, p22] = state.covariance;
  const { treatment, variance } = treatObservation(observation, level, p11);
  const innovation = observation.y - level;
  const innovationVariance = p11 + variance;
  const used = treatment === 'bound not above' ? 0 : 1;
  const [gain, trendGain] = [(used * p11) / innovationVariance, (used * p21) / innovationVariance];
  const kept: Matrix2 = [1 - gain, 0, -trendGain, 1];
  const noise: Matrix2 = [gain * gain, gain * trendGain, gain * trendGain, trendGain * trendGain];
  const scaled = noise.map((each) => each * variance) as unknown as Matrix2; // four numbers stay four
  return {
    day: observation.day,
    transition,
    predicted: state,
    innovation,
    innovationVariance,
    treatment,
    filtered: {
      mean: [level + gain * innovation, trend + trendGain * innovation],
      covariance: add(multiply(multiply(kept, [p11, p12, p21, p22]), transpose(kept)), scaled),
    },
  };
};

const startAt = ({ day, y, variance }: Observation, { trendSd }: Settings): TrendStep => {
  const state: State = { mean: [y, 0], covariance: [variance, 0, 0, trendSd ** 2] };
  return {
    day,
    transition: IDENTITY,
    predicted: state,
    innovation: 0,
    innovationVariance: variance,
    treatment: 'start',
    filtered: state,
  };
};

/** One pass over the observations, in order of their days. */
export const filterLocalTrend = method(
  TREND_FILTER,
  (
    observations: readonly Observation[],
    {
      prior,
      widenings = [],
      driftPerDay = DRIFT_PER_DAY,
      trendDrift = TREND_DRIFT,
      trendSd = TREND_SD,
    }: TrendOptions = {},
  ): FilteredTrend => {
    requireOrdered(observations, prior);
    const settings: Settings = { widenings, driftPerDay, trendDrift, trendSd };
    const steps: TrendStep[] = [];
    let logLikelihood = 0;
    let last: { readonly day: Day; readonly state: State } | null = prior
      ? { day: prior.day, state: { mean: [prior.level, 0], covariance: [prior.variance, 0, 0, trendSd ** 2] } }
      : null;
    for (const observation of observations) {
      const step: TrendStep = last
        ? update(observation, predict(last.state, last.day, observation.day, settings))
        : startAt(observation, settings);
      if (step.treatment === 'used' || step.treatment === 'widened')
        logLikelihood += logDensity(step.innovation, step.innovationVariance);
      steps.push(step);
      last = { day: step.day, state: step.filtered };
    }
    return { steps, logLikelihood };
  },
);

export interface SmoothedTrend {
  readonly day: Day;
  readonly level: number;
  readonly variance: number;
  /** Per day. */
  readonly trend: number;
  readonly trendVariance: number;
}

const smoothOne = (step: TrendStep, next: TrendStep, after: State): State => {
  const { mean, covariance } = step.filtered;
  const gain = multiply(multiply(covariance, transpose(next.transition)), inverse(next.predicted.covariance));
  const [level, trend] = apply(gain, [after.mean[0] - next.predicted.mean[0], after.mean[1] - next.predicted.mean[1]]);
  const change = subtract(after.covariance, next.predicted.covariance);
  return {
    mean: [mean[0] + level, mean[1] + trend],
    covariance: add(covariance, multiply(multiply(gain, change), transpose(gain))),
  };
};

const history = (): readonly Curve[] => [
  levelDrawn(
    'level with a trend, seen from the last reading, 95 %',
    smoothLocalTrend(filterLocalTrend(EXAMPLE_OBSERVATIONS, { prior: EXAMPLE_PRIOR })),
  ),
  readingsDrawn(),
];

/** Level and trend as they were, seen from the last observation. */
export const smoothLocalTrend = method(
  { ...TREND_SMOOTHER, plot: { ...TREND_SMOOTHER_AXES, curves: history } },
  ({ steps }: FilteredTrend): readonly SmoothedTrend[] => {
    const states: State[] = [];
    for (const [back, step] of steps.toReversed().entries()) {
      const next = steps[steps.length - back];
      const after = states[back - 1];
      states.push(next && after ? smoothOne(step, next, after) : step.filtered);
    }
    return states.toReversed().map(({ mean, covariance }, place) => ({
      // One state for each step.
      day: (steps[place] as TrendStep).day,
      level: mean[0],
      variance: covariance[0],
      trend: mean[1],
      trendVariance: covariance[3],
    }));
  },
);
