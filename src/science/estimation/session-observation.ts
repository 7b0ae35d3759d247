import { method } from '../method.ts';
import { OUR_OWN_DESIGN } from '../sources.ts';
import type { SetEstimate } from '../strength/set-estimate.ts';
import type { Observation } from './observation.ts';
import { DURBIN_KOOPMAN_2012 } from './sources.ts';
import type { Day } from '#units/day.ts';

export type SessionReading =
  | { readonly kind: 'observation'; readonly observation: Observation }
  | { readonly kind: 'none'; readonly reason: string };

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

/**
 * One observation from the work sets of a session: the mean of what they say, with the mean of their variances, because
 * sets of one day share the day's error. Bounds count only where nothing else is known.
 */
export const sessionObservation = method(
  {
    id: 'level/session-observation',
    revision: 1,
    title: 'One reading from the sets of a session',
    equations: [
      'y = (1 / n) sum_(i=1)^n y_i',
      'R_y = (1 / n) sum_(i=1)^n σ_i²',
      'over the sets with a known or planned effort; over those that are lower bounds where there is no other',
    ],
    inputs: [
      {
        name: 'logarithm of the maximum of a set',
        symbol: 'y_i',
        unit: 'ln kg',
        possible: [-10, 10],
        valid: [1.6, 6.2],
      },
      { name: 'log standard deviation of a set', symbol: 'σ_i', unit: 'ln', possible: [1e-6, 10], valid: [0.03, 0.25] },
    ],
    outputs: [
      { name: 'logarithm of the maximum read', symbol: 'y', unit: 'ln kg' },
      { name: 'variance of the reading', symbol: 'R_y', unit: 'ln²' },
    ],
    refuses: ['No work set of the session says anything of a maximum.'],
    source: OUR_OWN_DESIGN,
    restsOn: [DURBIN_KOOPMAN_2012],
    doesNotKnow:
      'How much of the error sets of one day share: it is taken as all of it, so four sets are no surer than one. The best set of a day would hide a true loss.',
  },
  (day: Day, sets: readonly SetEstimate[]): SessionReading => {
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
  },
);
