import { inverse, type Matrix2, type Vector2 } from '../numeric/two-by-two.ts';
import { sumOf, workTimeFit, type Trial, type TrialFit } from './trial-fits.ts';
import { joules, watts } from '#units/quantity.ts';

/** Time on power by least squares: time is what varies when a power is kept until exhaustion. */

export type HyperbolicFit =
  | { readonly kind: 'converged'; readonly fit: TrialFit; readonly iterations: number }
  | { readonly kind: 'none'; readonly reason: string };

/** Critical power [W] and store [J] while they are searched for. */
type Place = Vector2;

const ITERATIONS = 200;
/** Steps are halved no further than this. */
const LEAST_SHARE = 1e-6;
/** A relative step below which the search has ended. */
const SETTLED = 1e-12;
/** Where rounding lets no step make the fit better, a step this small is an end too. */
const STALLED = 1e-6;
/** A line may put critical power above the easiest trial, where the hyperbola has no time. */
const BELOW_THE_EASIEST = 0.99;

const residuals = (trials: readonly Trial[], [critical, capacity]: Place): readonly number[] =>
  trials.map(({ power, time }) => time - capacity / (power - critical));

const squares = (trials: readonly Trial[], at: Place): number => sumOf(residuals(trials, at).map((off) => off * off));

/** Change of each modelled time with critical power and with the store. */
const derivatives = (trials: readonly Trial[], [critical, capacity]: Place): readonly Vector2[] =>
  trials.map(({ power }) => [capacity / (power - critical) ** 2, 1 / (power - critical)]);

/** Below this share of its greatest value a determinant is rounding: the two derivatives run alike. */
const SINGULAR = 1e-14;

/** The inverse of the normal equations, covariance but for the variance of the residuals; null where there is none. */
const spreadAt = (jacobian: readonly Vector2[]): Matrix2 | null => {
  const mixed = sumOf(jacobian.map(([p, q]) => p * q));
  const [first, second] = [sumOf(jacobian.map(([p]) => p * p)), sumOf(jacobian.map(([, q]) => q * q))];
  return first * second - mixed * mixed > SINGULAR * first * second ? inverse([first, mixed, mixed, second]) : null;
};

/** The step of Gauss and Newton. */
const stepFrom = (trials: readonly Trial[], at: Place, [a, b, c, d]: Matrix2): Vector2 => {
  const jacobian = derivatives(trials, at);
  const off = residuals(trials, at);
  const along = (which: 0 | 1): number => sumOf(jacobian.map((each, place) => each[which] * (off[place] as number)));
  const [p, q] = [along(0), along(1)];
  return [a * p + b * q, c * p + d * q];
};

const moved = ([critical, capacity]: Place, [dCritical, dCapacity]: Vector2, share: number): Place => [
  critical + share * dCritical,
  capacity + share * dCapacity,
];

/** All of a step, or half of it and half again, until the fit is better and every trial has a time; else no step. */
const better = (trials: readonly Trial[], at: Place, step: Vector2, easiest: number): Place | null => {
  const now = squares(trials, at);
  for (let share = 1; share >= LEAST_SHARE; share /= 2) {
    const next = moved(at, step, share);
    if (next[0] < easiest && squares(trials, next) < now) return next;
  }
  return null;
};

const relativeSize = ([critical, capacity]: Place, [dCritical, dCapacity]: Vector2): number =>
  Math.max(Math.abs(dCritical / critical), Math.abs(dCapacity / capacity));

const described = (trials: readonly Trial[], at: Place, [criticalSpread, , , capacitySpread]: Matrix2): TrialFit => {
  const variance = squares(trials, at) / (trials.length - 2);
  return {
    criticalPower: watts(at[0]),
    capacity: joules(at[1]),
    criticalPowerSd: watts(Math.sqrt(variance * criticalSpread)),
    capacitySd: joules(Math.sqrt(variance * capacitySpread)),
  };
};

const NOWHERE = 'The hyperbola has no best place in these trials; look at the two straight lines.';

/** By Gauss and Newton with halved steps, from the line of work on time. */
export const hyperbolicFit = (trials: readonly Trial[]): HyperbolicFit => {
  const easiest = Math.min(...trials.map(({ power }) => power));
  const start = workTimeFit(trials);
  let at: Place = [Math.min(start.criticalPower, BELOW_THE_EASIEST * easiest), start.capacity];
  for (let iterations = 1; iterations <= ITERATIONS; iterations += 1) {
    const spread = spreadAt(derivatives(trials, at));
    if (!spread) break;
    const step = stepFrom(trials, at, spread);
    const size = relativeSize(at, step);
    if (size <= SETTLED) return { kind: 'converged', fit: described(trials, at, spread), iterations };
    const next = better(trials, at, step, easiest);
    if (!next) {
      if (size > STALLED) break;
      return { kind: 'converged', fit: described(trials, at, spread), iterations };
    }
    at = next;
  }
  return { kind: 'none', reason: NOWHERE };
};
