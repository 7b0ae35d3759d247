import type { FormulaInput } from '../formula.ts';

/**
 * What the tests say of a recovery: every loss on landing day against every time constant, weighed by how well the
 * curve of the two meets the tests. A grid, so that the same tests give the same answer everywhere.
 */

export interface RecoveryPrior {
  /** Middle of the time constant [d]. */
  readonly timeConstant: number;
  /** Standard deviation of its logarithm. */
  readonly logSd: number;
}

/** A test on a day since landing, as percent of before flight. */
export interface RecoveryTest {
  readonly day: number;
  readonly level: number;
}

/** Losses 1, 1.5, … 40 %, each as likely as the other. */
export const LOSSES: readonly number[] = Array.from({ length: 79 }, (_, place) => 1 + 0.5 * place);
/** Standardised log time constants −3, −2.9, … 3. */
export const CONSTANT_STEPS: readonly number[] = Array.from({ length: 61 }, (_, place) => (place - 30) / 10);

/** Tests are taken as this at least and at most [%]: one typing slip must not move the curve to the moon. */
export const CLIP: readonly [number, number] = [50, 130];

/** One curve of the grid with its share of the belief. */
export interface Posterior {
  readonly loss: Float64Array;
  readonly timeConstant: Float64Array;
  /** They add up to 1. */
  readonly weight: Float64Array;
}

export const clipped = (level: number): number => Math.min(CLIP[1], Math.max(CLIP[0], level));

/** Log weight of one curve, less a constant. */
const logWeight = (loss: number, decays: readonly number[], levels: readonly number[], sigma: number): number => {
  let squares = 0;
  for (let place = 0; place < decays.length; place += 1) {
    const residual = ((levels[place] ?? 0) - (100 - loss * (decays[place] ?? 0))) / sigma;
    squares += residual * residual;
  }
  return -squares / 2;
};

/** The whole grid, weighed by the tests. Tests are clipped to 50 to 130 %. */
export const recoveryPosterior = (
  tests: readonly RecoveryTest[],
  sigma: number,
  { timeConstant: middle, logSd }: RecoveryPrior,
): Posterior => {
  const nodes = LOSSES.length * CONSTANT_STEPS.length;
  const [loss, timeConstant, weight] = [new Float64Array(nodes), new Float64Array(nodes), new Float64Array(nodes)];
  const levels = tests.map(({ level }) => clipped(level));
  let node = 0;
  for (const z of CONSTANT_STEPS) {
    const tau = middle * Math.exp(logSd * z);
    const decays = tests.map(({ day }) => Math.exp(-day / tau));
    for (const each of LOSSES) {
      loss[node] = each;
      timeConstant[node] = tau;
      weight[node] = logWeight(each, decays, levels, sigma) - (z * z) / 2;
      node += 1;
    }
  }
  return { loss, timeConstant, weight: sharesOf(weight) };
};

/** Log weights as shares of one. Plain loops over a grid this large take a third of the time of `map` and `reduce`. */
const sharesOf = (logWeights: Float64Array): Float64Array => {
  let largest = -Infinity;
  for (const each of logWeights) largest = Math.max(largest, each);
  const shares = new Float64Array(logWeights.length);
  let total = 0;
  for (let node = 0; node < shares.length; node += 1) {
    const raw = Math.exp((logWeights[node] ?? 0) - largest);
    shares[node] = raw;
    total += raw;
  }
  for (let node = 0; node < shares.length; node += 1) shares[node] = (shares[node] ?? 0) / total;
  return shares;
};

/** What each curve of the grid gives for something. */
export const overCurves = (
  { loss, timeConstant }: Posterior,
  of: (loss: number, timeConstant: number) => number,
): Float64Array => {
  const values = new Float64Array(loss.length);
  for (let node = 0; node < values.length; node += 1) values[node] = of(loss[node] ?? 0, timeConstant[node] ?? 0);
  return values;
};

export const posteriorMean = ({ weight }: Posterior, values: Float64Array): number => {
  let sum = 0;
  for (let node = 0; node < values.length; node += 1) sum += (values[node] ?? 0) * (weight[node] ?? 0);
  return sum;
};

/** Share of the belief in values at or over a bound. */
export const posteriorShare = ({ weight }: Posterior, values: Float64Array, atLeast: number): number => {
  let sum = 0;
  for (let node = 0; node < values.length; node += 1) if ((values[node] ?? 0) >= atLeast) sum += weight[node] ?? 0;
  return sum;
};

/** Share of the belief in values up to and with a bound. */
const shareUpTo = (weight: Float64Array, values: Float64Array, bound: number): number => {
  let sum = 0;
  for (let node = 0; node < values.length; node += 1) if ((values[node] ?? 0) <= bound) sum += weight[node] ?? 0;
  return sum;
};

/** The first value in order at which the belief so far reaches a share. */
const quantileOf = (weight: Float64Array, values: Float64Array, sorted: Float64Array, share: number): number => {
  // Rounding may leave the whole sum a hair short of 1: then the last value stands.
  let [low, high] = [0, sorted.length - 1];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (shareUpTo(weight, values, sorted[middle] ?? 0) >= share) high = middle;
    else low = middle + 1;
  }
  return sorted[low] ?? 0;
};

/** The values below which each share of the belief lies. */
export const posteriorQuantiles = (
  { weight }: Posterior,
  values: Float64Array,
  shares: readonly number[],
): readonly number[] => {
  const sorted = values.toSorted();
  return shares.map((share) => quantileOf(weight, values, sorted, share));
};

export const timeConstantInput: FormulaInput = {
  name: 'middle of the time constant before any test',
  symbol: 'τ_0',
  unit: 'd',
  possible: [0.1, 2000],
  valid: [1, 500],
};
export const logSdInput: FormulaInput = {
  name: 'standard deviation of its logarithm',
  symbol: 's',
  unit: 'ln',
  possible: [0.01, 2],
  valid: [0.2, 1],
};
export const sigmaInput: FormulaInput = {
  name: 'typical error of one test',
  symbol: 'σ',
  unit: '%',
  possible: [0.1, 50],
  valid: [1, 15],
};
