import type { Day } from '#units/day.ts';
import type { SetEstimate } from '../strength/set-estimate.ts';
import type { Observation } from './observation.ts';

export type SessionReading =
  | { readonly kind: 'observation'; readonly observation: Observation }
  | { readonly kind: 'none'; readonly reason: string };

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

/**
 * One observation from the work sets of a session: the mean of what they say, with the mean of their variances, because
 * sets of one day share the day's error. Bounds count only where nothing else is known.
 */
export const sessionObservation = (day: Day, sets: readonly SetEstimate[]): SessionReading => {
  const known = sets.filter((set) => !set.lowerBound);
  const used = known.length > 0 ? known : sets;
  if (used.length === 0) return { kind: 'none', reason: 'No work set of the session says anything of a maximum.' };
  return {
    kind: 'observation',
    observation: {
      day,
      y: mean(used.map((set) => set.logMaximum)),
      variance: mean(used.map((set) => set.logSd ** 2)),
      lowerBound: known.length === 0,
    },
  };
};
