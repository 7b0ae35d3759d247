import { normalCdf } from '../numeric/normal.ts';
import { bisect } from '../numeric/root.ts';

/** One of several normal distributions that a value may come from. */
export interface Component {
  /** All weights of a mixture add up to 1. */
  readonly weight: number;
  readonly mean: number;
  readonly sd: number;
}

/** Standard deviations beyond which nothing is left in double precision. */
const EVERYTHING = 38;
/** Standard deviations within which every quantile that is asked for lies. */
const SEARCHED = 10;
const WITHIN = 1e-12;

const below = ({ mean, sd }: Component, value: number): number => {
  if (sd === 0) return mean <= value ? 1 : 0;
  const z = (value - mean) / sd;
  if (Math.abs(z) > EVERYTHING) return z > 0 ? 1 : 0;
  return normalCdf(z);
};

/** Probability that a value of a mixture lies below another. */
export const mixtureBelow = (components: readonly Component[], value: number): number =>
  components.reduce((sum, component) => sum + component.weight * below(component, value), 0);

/** Value below which a share of a mixture lies; shares from 0.0001 to 0.9999, at least one component. */
export const mixtureQuantile = (components: readonly Component[], share: number): number => {
  const low = Math.min(...components.map(({ mean, sd }) => mean - SEARCHED * sd));
  const high = Math.max(...components.map(({ mean, sd }) => mean + SEARCHED * sd));
  const found = bisect((value) => mixtureBelow(components, value) - share, { low, high, within: WITHIN });
  // Ten standard deviations to either side the probability is 0 and 1: there is a bracket, unless nothing is spread.
  return found.kind === 'converged' ? found.root : low;
};

/** Mean and variance of a mixture: what its components say on average, and how far they lie apart. */
export const mixtureMoments = (components: readonly Component[]): { readonly mean: number; readonly sd: number } => {
  const mean = components.reduce((sum, each) => sum + each.weight * each.mean, 0);
  const variance = components.reduce((sum, each) => sum + each.weight * (each.sd ** 2 + (each.mean - mean) ** 2), 0);
  return { mean, sd: Math.sqrt(variance) };
};
