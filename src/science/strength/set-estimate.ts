import { logSdOfMaximum, noviceReserveSd, reserveSd, UNKNOWN_RESERVE_SD } from './estimate-spread.ts';
import { effectiveRepetitions } from './effort.ts';
import { repetitionMaximum } from './repetition-maximum.ts';
import { oneRepMaxBrzycki, oneRepMaxEpley, oneRepMaxWathan } from './one-rep-max.ts';
import { barLoad, logRatio, repetitions, type BarLoad, type LogRatio, type Repetitions } from '#units/quantity.ts';

/** What one set says of a maximum: a value with an interval, a bound, or nothing and why. */

const ONE_KILOGRAM = barLoad(1);
const USABLE_UP_TO = 12;
const LOW_CONFIDENCE_UP_TO = 15;

export type RepetitionRange =
  | { readonly kind: 'usable' }
  | { readonly kind: 'low confidence'; readonly reason: string }
  | { readonly kind: 'none'; readonly reason: string };

/** Whether a maximum may be read from so many repetitions. */
export const rangeOfRepetitions = (effective: Repetitions): RepetitionRange => {
  if (!(effective > 0)) return { kind: 'none', reason: 'No repetition was completed.' };
  if (effective <= USABLE_UP_TO) return { kind: 'usable' };
  const many = `${effective} effective repetitions`;
  return effective <= LOW_CONFIDENCE_UP_TO
    ? { kind: 'low confidence', reason: `${many}: above 12 the formulas part.` }
    : { kind: 'none', reason: `${many}: above 15 no maximum is read from a set.` };
};

/** How hard the set was, as far as it was told. */
export type Effort =
  | { readonly kind: 'failure' }
  | { readonly kind: 'reserve'; readonly reserve: Repetitions }
  /** Nothing was recorded, the set was planned with this many in reserve and completed. */
  | { readonly kind: 'unrecorded, target'; readonly target: Repetitions }
  /** Nothing was recorded and nothing was planned: the set is a lower bound. */
  | { readonly kind: 'unrecorded' };

export interface PerformedSet {
  /** Weighed in 1 g; in flight the bar-equivalent. */
  readonly load: BarLoad;
  readonly completed: Repetitions;
  readonly effort: Effort;
  /** Less than six months of training: the reserve is judged worse. */
  readonly novice: boolean;
  /** Repetitions of the maximum that is read: 1 unless capacity is kept as an n-repetition maximum. */
  readonly of: Repetitions;
}

export interface SetEstimate {
  readonly kind: 'estimate';
  readonly effective: Repetitions;
  readonly maximum: BarLoad;
  /** Least and most of three formulas. */
  readonly low: BarLoad;
  readonly high: BarLoad;
  /** ln of the maximum in kilograms. */
  readonly logMaximum: LogRatio;
  readonly logSd: LogRatio;
  /** The true maximum is this or more. */
  readonly lowerBound: boolean;
  /** The reserve is the planned one, not a reported one. */
  readonly assumedReserve: boolean;
  readonly range: Exclude<RepetitionRange, { kind: 'none' }>;
}

export type SetReading = SetEstimate | { readonly kind: 'none'; readonly reason: string };

/** The repetitions that were left: reported, planned, or taken as none. */
const reserveOf = (effort: Effort): Repetitions => {
  switch (effort.kind) {
    case 'reserve':
      return effort.reserve;
    case 'unrecorded, target':
      return effort.target;
    case 'failure':
    case 'unrecorded':
      return repetitions(0);
  }
};

const logSdOf = (effective: Repetitions, { effort, novice, of }: PerformedSet): LogRatio => {
  const sd = effort.kind === 'unrecorded, target' ? UNKNOWN_RESERVE_SD : reserveSd(reserveOf(effort));
  return logSdOfMaximum(effective, of, novice ? noviceReserveSd(sd) : sd);
};

/** Reads a maximum from one set. */
export const readSet = (set: PerformedSet): SetReading => {
  if (!(set.load > 0)) return { kind: 'none', reason: 'The load, less the share of body weight, is not above zero.' };
  if (!(set.completed >= 1)) return { kind: 'none', reason: 'No repetition was completed.' };
  const effective = effectiveRepetitions(set.completed, reserveOf(set.effort));
  const range = rangeOfRepetitions(effective);
  if (range.kind === 'none') return range;
  const maximum = repetitionMaximum(set.load, effective, set.of);
  return {
    kind: 'estimate',
    effective,
    maximum,
    ...intervalOfFormulas(set.load, effective, set.of),
    logMaximum: logRatio(Math.log(maximum)),
    logSd: logSdOf(effective, set),
    lowerBound: set.effort.kind === 'unrecorded',
    assumedReserve: set.effort.kind === 'unrecorded, target',
    range,
  };
};

/** Least and most of Epley, Brzycki and Wathan, each back at the same number of repetitions. */
export const intervalOfFormulas = (
  load: BarLoad,
  effective: Repetitions,
  of: Repetitions,
): { readonly low: BarLoad; readonly high: BarLoad } => {
  const three = [oneRepMaxEpley, oneRepMaxBrzycki, oneRepMaxWathan].map(
    (maximum) => maximum(load, effective) / maximum(ONE_KILOGRAM, of),
  );
  // The least and the most of three bar loads are bar loads.
  return { low: Math.min(...three) as BarLoad, high: Math.max(...three) as BarLoad };
};

/** Half a width of two-sided 95 % of a normal distribution. */
const NORMAL_95 = 1.96;

/** Interval of a maximum from its log level and variance: exp(level ± 1.96 SD). */
export const intervalOfLevel = (
  level: LogRatio,
  variance: number,
): { readonly median: BarLoad; readonly low: BarLoad; readonly high: BarLoad } => {
  const half = NORMAL_95 * Math.sqrt(variance);
  // The logarithm was taken of kilograms on a bar.
  const [low, median, high] = [level - half, level, level + half].map(Math.exp) as [BarLoad, BarLoad, BarLoad];
  return { median, low, high };
};
