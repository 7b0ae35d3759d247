import { count, load as loadInput } from '../inputs.ts';
import { method, type MethodRecord } from '../method.ts';
import { spaced, type Curve } from '../plot.ts';
import { OUR_OWN_DESIGN } from '../sources.ts';
import { logSdOfMaximum, noviceReserveSd, reserveSd, UNKNOWN_RESERVE_SD } from './estimate-spread.ts';
import { effectiveRepetitions } from './effort.ts';
import { repetitionMaximum } from './repetition-maximum.ts';
import { oneRepMaxBrzycki, oneRepMaxEpley, oneRepMaxWathan } from './one-rep-max.ts';
import { BRZYCKI_1993, EPLEY_1985, LESUER_1997, WATHAN_1994 } from './sources.ts';
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

const READING: MethodRecord = {
  id: 'estimate/read-set',
  revision: 1,
  title: 'Maximum read from one set',
  equations: [
    'n_eff = n + r',
    'r = 0 at failure; the planned reserve where none was told; 0 where none was planned either, and then a lower bound',
    'R = w · f(n_eff) / f(m)',
    'f = 1 where n ≤ 1, else 100 / (48.8 + 53.8 e^(−0.075 n))',
    "σ = √(0.03² + (0.01 (n_eff − m))² + (f'(n_eff) σ_r)²)",
    'σ_r = 0 where r = 0, 2 where the reserve is the planned one, else 0.5 + 0.5 r; times 1.5 in the first six months',
    'low and high: the least and the most of Epley, Brzycki and Wathan',
  ],
  inputs: [
    loadInput('load weighed in 1 g, or its bar-equivalent', 'w', [0.001, 1000], [1, 400]),
    count('repetitions completed', 'n', [1, 15], [1, 12]),
    count('repetitions in reserve', 'r', [0, 14], [0, 4]),
    count('repetitions of the maximum', 'm', [1, 50], [1, 15]),
  ],
  outputs: [
    { name: 'm-repetition maximum', symbol: 'R', unit: 'kg' },
    { name: 'log standard deviation', symbol: 'σ', unit: 'ln' },
  ],
  refuses: [
    'The load, less the share of body weight, is not above zero.',
    'No repetition was completed.',
    'More than 15 effective repetitions.',
  ],
  source: WATHAN_1994,
  restsOn: [EPLEY_1985, BRZYCKI_1993, LESUER_1997, OUR_OWN_DESIGN],
  doesNotKnow:
    'This person’s own line of repetitions against load; all lines fall short for the deadlift. Above 12 effective repetitions the formulas part, and the reading says so. A load of a machine in flight must lose the share of body weight first.',
  plot: {
    says: 'The same 100 kg, done for more and more repetitions: what is read from it rises, and three authors part from ten repetitions on.',
    x: { name: 'effective repetitions', unit: 'repetitions' },
    y: { name: 'one-repetition maximum', unit: 'kg' },
    curves: () => readingsOfHundred(),
  },
};

const readingsOfHundred = (): readonly Curve[] => {
  const hundred = barLoad(100);
  const single = repetitions(1);
  const reads = spaced(1, LOW_CONFIDENCE_UP_TO, LOW_CONFIDENCE_UP_TO).map((done) => {
    const effective = repetitions(done);
    return {
      done,
      maximum: repetitionMaximum(hundred, effective, single),
      logSd: logSdOfMaximum(effective, single, repetitions(0)),
      range: intervalOfFormulas(hundred, effective, single),
    };
  });
  return [
    {
      label: 'Wathan, ± standard deviation of a set to failure',
      points: reads.map(({ done, maximum }) => [done, maximum]),
      band: reads.map(({ maximum, logSd }) => [maximum / Math.exp(logSd), maximum * Math.exp(logSd)]),
    },
    { label: 'least of three authors', points: reads.map(({ done, range }) => [done, range.low]) },
    { label: 'most of three authors', points: reads.map(({ done, range }) => [done, range.high]) },
  ];
};

/** Reads a maximum from one set. */
export const readSet = method(READING, (set: PerformedSet): SetReading => {
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
});

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
