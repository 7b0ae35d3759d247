import { method } from '../method.ts';
import { spaced, type Curve } from '../plot.ts';
import { EXAMPLE_OBSERVATIONS, EXAMPLE_PRIOR } from './example-series.ts';
import {
  LEVEL_FILTER,
  LEVEL_FILTER_AXES,
  LEVEL_SMOOTHER,
  LEVEL_SMOOTHER_AXES,
  levelDrawn,
  readingsDrawn,
} from './filter-records.ts';
import {
  logDensity,
  requireOrdered,
  treatObservation,
  type Observation,
  type Treatment,
  type Widening,
} from './observation.ts';
import { day, type Day } from '#units/day.ts';

/**
 * A level on the log scale that drifts at random, seen through noisy readings (Kalman 1960; Durbin & Koopman 2012). Loads
 * are made from its filtered value: the level at a day knows only what was read up to that day.
 */

/** Variance of the drift for each day: 0.4 % of a level in one day, about 1 % in a week; our own design. */
export const DRIFT_PER_DAY = 1.6e-5;

/** A level known on a day before any reading of this series. */
export interface Prior {
  readonly day: Day;
  readonly level: number;
  readonly variance: number;
}

export interface LevelOptions {
  /** Without one the first observation is the level, with its variance. */
  readonly prior?: Prior;
  readonly widenings?: readonly Widening[];
  readonly driftPerDay?: number;
}

export interface LevelStep {
  readonly day: Day;
  readonly predictedLevel: number;
  readonly predictedVariance: number;
  readonly innovation: number;
  readonly innovationVariance: number;
  readonly treatment: Treatment | 'start';
  readonly level: number;
  readonly variance: number;
}

export interface FilteredLevel {
  /** One for each observation. */
  readonly steps: readonly LevelStep[];
  readonly logLikelihood: number;
  readonly prior: Prior | null;
  readonly widenings: readonly Widening[];
  readonly driftPerDay: number;
}

/** Variance that comes in between two days: drift, and whatever was added after the first and up to the second. */
const varianceBetween = (
  { widenings, driftPerDay }: Pick<FilteredLevel, 'widenings' | 'driftPerDay'>,
  from: Day,
  to: Day,
): number => {
  let added = driftPerDay * (to - from);
  for (const { day: on, variance } of widenings) if (on > from && on <= to) added += variance;
  return added;
};

const startAt = ({ day: on, y, variance }: Observation): LevelStep => ({
  day: on,
  predictedLevel: y,
  predictedVariance: variance,
  innovation: 0,
  innovationVariance: variance,
  treatment: 'start',
  level: y,
  variance,
});

const update = (observation: Observation, predictedLevel: number, predictedVariance: number): LevelStep => {
  const { treatment, variance } = treatObservation(observation, predictedLevel, predictedVariance);
  const innovation = observation.y - predictedLevel;
  const innovationVariance = predictedVariance + variance;
  const gain = treatment === 'bound not above' ? 0 : predictedVariance / innovationVariance;
  return {
    day: observation.day,
    predictedLevel,
    predictedVariance,
    innovation,
    innovationVariance,
    treatment,
    level: predictedLevel + gain * innovation,
    // The Joseph form: it cannot become negative.
    variance: (1 - gain) ** 2 * predictedVariance + gain * gain * variance,
  };
};

/** Days that the example is drawn over: a week more than its readings. */
const DRAWN_DAYS = 28;

const knownOnTheDay = (): readonly Curve[] => {
  const filtered = filterLocalLevel(EXAMPLE_OBSERVATIONS, { prior: EXAMPLE_PRIOR });
  const days = spaced(0, DRAWN_DAYS, DRAWN_DAYS + 1).map((on) => ({ on, at: levelAt(filtered, day(on)) }));
  const known = days.flatMap(({ on, at }) => (at.kind === 'level' ? [{ day: on, ...at }] : []));
  return [levelDrawn('level known on the day, 95 %', known), readingsDrawn()];
};

/** One pass over the observations, in order of their days. */
export const filterLocalLevel = method(
  { ...LEVEL_FILTER, plot: { ...LEVEL_FILTER_AXES, curves: knownOnTheDay } },
  (
    observations: readonly Observation[],
    { prior, widenings = [], driftPerDay = DRIFT_PER_DAY }: LevelOptions = {},
  ): FilteredLevel => {
    requireOrdered(observations, prior);
    const growth = { widenings, driftPerDay };
    const steps: LevelStep[] = [];
    let logLikelihood = 0;
    let last: Prior | null = prior ?? null;
    for (const observation of observations) {
      const step: LevelStep = last
        ? update(observation, last.level, last.variance + varianceBetween(growth, last.day, observation.day))
        : startAt(observation);
      if (step.treatment === 'used' || step.treatment === 'widened')
        logLikelihood += logDensity(step.innovation, step.innovationVariance);
      steps.push(step);
      last = step;
    }
    return { steps, logLikelihood, prior: prior ?? null, ...growth };
  },
);

export type LevelAt =
  | {
      readonly kind: 'level';
      readonly level: number;
      readonly variance: number;
      /** Day of the newest observation behind it; null where only a prior is. */
      readonly newest: Day | null;
    }
  | { readonly kind: 'nothing yet' };

/** Number of steps on or before a day. */
const stepsUntil = (steps: readonly LevelStep[], last: Day): number => {
  let [low, high] = [0, steps.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((steps[middle] as LevelStep).day <= last) low = middle + 1;
    else high = middle;
  }
  return low;
};

/** The level that was known on a day: after the newest observation it is held, and only its variance grows. */
export const levelAt = (filtered: FilteredLevel, on: Day): LevelAt => {
  const count = stepsUntil(filtered.steps, on);
  const step = filtered.steps[count - 1];
  const from = step ?? (filtered.prior && filtered.prior.day <= on ? filtered.prior : null);
  if (!from) return { kind: 'nothing yet' };
  return {
    kind: 'level',
    level: from.level,
    variance: from.variance + varianceBetween(filtered, from.day, on),
    newest: step?.day ?? null,
  };
};

export interface SmoothedLevel {
  readonly day: Day;
  readonly level: number;
  readonly variance: number;
}

const seenFromTheEnd = (): readonly Curve[] => {
  const filtered = filterLocalLevel(EXAMPLE_OBSERVATIONS, { prior: EXAMPLE_PRIOR });
  return [
    levelDrawn('seen from the last reading, 95 %', smoothLocalLevel(filtered)),
    levelDrawn('known on the day, 95 %', filtered.steps),
    readingsDrawn(),
  ];
};

/** What each level was, seen from the last observation. For the history, never for loads. */
export const smoothLocalLevel = method(
  { ...LEVEL_SMOOTHER, plot: { ...LEVEL_SMOOTHER_AXES, curves: seenFromTheEnd } },
  ({ steps }: FilteredLevel): readonly SmoothedLevel[] => {
    const smoothed: SmoothedLevel[] = [];
    let next: { readonly step: LevelStep; readonly level: number; readonly variance: number } | null = null;
    for (const step of steps.toReversed()) {
      const gain: number = next ? step.variance / next.step.predictedVariance : 0;
      const level: number = next ? step.level + gain * (next.level - next.step.predictedLevel) : step.level;
      const variance: number = next
        ? step.variance + gain * gain * (next.variance - next.step.predictedVariance)
        : step.variance;
      smoothed.push({ day: step.day, level, variance });
      next = { step, level, variance };
    }
    return smoothed.toReversed();
  },
);
