import type { Day } from '#units/day.ts';

/** One reading of a log level on a day: what filters take in. */
export interface Observation {
  readonly day: Day;
  /** Natural logarithm of what was read. */
  readonly y: number;
  readonly variance: number;
  /** The truth is this or more: moves the level up, never down. */
  readonly lowerBound?: boolean;
}

/** Variance added on a day, before that day's observations: launch, landing, a known gap without this lift. */
export interface Widening {
  readonly day: Day;
  readonly variance: number;
}

/** What became of an observation. */
export type Treatment =
  | 'used'
  /** Too far from what was expected: its variance was made nine times larger. */
  | 'widened'
  /** A lower bound below the level: it says nothing new. */
  | 'bound not above';

/** Standardised innovations beyond this are doubted; our own design. */
const GATE = 3;
const GATE_FACTOR = 9;

/** The variance that an observation is used with, and why. */
export const treatObservation = (
  { y, variance, lowerBound = false }: Observation,
  level: number,
  levelVariance: number,
): { readonly treatment: Treatment; readonly variance: number } => {
  const innovation = y - level;
  if (lowerBound && innovation <= 0) return { treatment: 'bound not above', variance };
  return Math.abs(innovation) > GATE * Math.sqrt(levelVariance + variance)
    ? { treatment: 'widened', variance: GATE_FACTOR * variance }
    : { treatment: 'used', variance };
};

/** Throws where days go backwards or a variance is not above zero: an error of the program, not of a person. */
export const requireOrdered = (
  observations: readonly Observation[],
  prior: { readonly day: Day } | undefined,
): void => {
  const first = observations[0];
  if (prior && first && first.day < prior.day) throw new RangeError('An observation lies before the prior it follows.');
  for (const [place, { day, y, variance }] of observations.entries()) {
    const before = observations[place - 1];
    if (before && before.day > day) throw new RangeError(`Observation ${place + 1} lies before the one ahead of it.`);
    if (!Number.isFinite(y) || !(variance > 0))
      throw new RangeError(`Observation ${place + 1} needs a finite value and a variance above zero.`);
  }
};

/** Logarithm of the normal density of an innovation. */
export const logDensity = (innovation: number, variance: number): number =>
  -0.5 * (Math.log(2 * Math.PI) + Math.log(variance) + (innovation * innovation) / variance);
