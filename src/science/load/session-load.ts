import { formula } from '../formula.ts';
import { minutes, rating } from './inputs.ts';
import { sum } from './daily-loads.ts';
import { method } from '../method.ts';
import { FOSTER_2001 } from './sources.ts';

/** How much a session asked of a person, as one number: how hard times how long. */

const ratingInput = rating('rating of the whole session', 'RPE');
const timeInput = minutes('length of the session without set-up and stowage', 'T', [0, 240], [5, 240]);
const DOES_NOT_KNOW =
  'What the work was: an hour of walking and ten minutes of sprints may be the same number. Valid within one person; not between people, and not in place of a heart-rate score. Harnessing and stowage do not belong in it.';

/** Load of a session (arbitrary units). */
export const sessionLoad = formula(
  {
    id: 'load/session-load',
    revision: 1,
    title: 'Load of a session (arbitrary units)',
    equation: 'RPE · T',
    inputs: [ratingInput, timeInput],
    output: { name: 'session load', symbol: 'L_s', unit: 'arbitrary units' },
    source: FOSTER_2001,
    doesNotKnow: DOES_NOT_KNOW,
  },
  (rated: number, time: number): number => rated * time,
);

export interface Session {
  /** 0 to 10; null where the person was not asked. */
  readonly rating: number | null;
  /** Without set-up and stowage [min]. */
  readonly minutes: number;
}

export type DayLoad =
  | { readonly kind: 'estimate'; readonly value: number }
  | { readonly kind: 'none'; readonly reason: string }
  | { readonly kind: 'refused'; readonly reasons: readonly string[] };

const faultsOf = ({ rating: rated, minutes: time }: Session, place: number): readonly string[] => [
  ...(rated === null || (rated >= 0 && rated <= 10)
    ? []
    : [`The rating of session ${place + 1} must lie in 0 to 10; it is ${rated}.`]),
  ...(time > 0 && time <= 240 ? [] : [`The length of session ${place + 1} must lie in 0 to 240 min; it is ${time}.`]),
];

/** Load of a day (arbitrary units). */
export const dayLoad = method(
  {
    id: 'load/day-load',
    revision: 1,
    title: 'Load of a day (arbitrary units)',
    equations: ['L = sum_s RPE_s · T_s'],
    inputs: [ratingInput, timeInput],
    outputs: [{ name: 'load of the day', symbol: 'L', unit: 'arbitrary units' }],
    refuses: [
      'A rating outside 0 to 10, or a length outside 0 to 240 min.',
      'A day with a session that was not rated.',
    ],
    source: FOSTER_2001,
    doesNotKnow: `${DOES_NOT_KNOW} A day of rest is no session at all and a load of 0; a day of which nothing is known is something else.`,
  },
  (sessions: readonly Session[]): DayLoad => {
    const reasons = sessions.flatMap(faultsOf);
    if (reasons.length > 0) return { kind: 'refused', reasons };
    const loads = sessions.flatMap(({ rating: rated, minutes: time }) =>
      rated === null ? [] : sessionLoad(rated, time),
    );
    return loads.length === sessions.length
      ? { kind: 'estimate', value: sum(loads) }
      : { kind: 'none', reason: `${loads.length} of ${sessions.length} sessions were rated.` };
  },
);
