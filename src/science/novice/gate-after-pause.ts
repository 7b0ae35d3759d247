import { impossibilities } from '../evaluate.ts';
import type { FormulaInput } from '../formula.ts';
import { method } from '../method.ts';
import { COMMON_PRACTICE } from '../sources.ts';
import type { SquatGateName } from './squat-gates.table.ts';

/** What stands before the next load of somebody who had passed gates and then did not squat. */

export interface SquatPause {
  readonly daysOff: number;
  readonly because: 'days off' | 'landing' | 'injury';
}

export type AfterSquatPause =
  | { readonly kind: 'go on' }
  | { readonly kind: 'check session'; readonly reason: string }
  /** Between six and eight weeks: a check session or the first gates. */
  | { readonly kind: 'specialist chooses'; readonly reason: string }
  | { readonly kind: 'back to gates'; readonly from: SquatGateName; readonly reason: string }
  | { readonly kind: 'refused'; readonly reason: string };

export const CHECK_SESSION_AFTER = 14;
export const GATES_AFTER = [42, 56] as const;

const days: FormulaInput = { name: 'days off', symbol: 'D', unit: 'd', possible: [0, 10_000], valid: [0, 365] };

const AGAIN: SquatGateName = 'first squat gate';

/** What stands before the next loaded squat after days without. */
export const gateAfterPause = method(
  {
    id: 'novice/gate-after-pause',
    revision: 1,
    title: 'What stands before the next loaded squat after days without',
    equations: [
      'back to the first squat gate where somebody landed or was injured, or D ≥ 56',
      'a check session or the first squat gate, as the specialist chooses, where 42 ≤ D < 56',
      'one check session where 14 ≤ D < 42',
      'nothing where D < 14',
    ],
    inputs: [days],
    outputs: [{ name: 'what stands before the next load', symbol: 'next', unit: 'words' }],
    refuses: ['Days off that cannot be.'],
    source: COMMON_PRACTICE,
    doesNotKnow: 'What the person did instead. The days are practice without a study, and editable.',
  },
  ({ daysOff, because }: SquatPause): AfterSquatPause => {
    const [reason] = impossibilities({ inputs: [days] }, [daysOff]);
    if (reason !== undefined) return { kind: 'refused', reason };
    if (because !== 'days off')
      return {
        kind: 'back to gates',
        from: AGAIN,
        reason: `After ${because === 'landing' ? 'landing' : 'an injury'}.`,
      };
    const off = `${daysOff} days without a squat`;
    if (daysOff >= GATES_AFTER[1])
      return { kind: 'back to gates', from: AGAIN, reason: `${off}: eight weeks or more.` };
    if (daysOff >= GATES_AFTER[0])
      return {
        kind: 'specialist chooses',
        reason: `${off}: six to eight weeks; a check session, or the first gates again.`,
      };
    if (daysOff >= CHECK_SESSION_AFTER)
      return { kind: 'check session', reason: `${off}: two weeks or more; one session without load is watched first.` };
    return { kind: 'go on' };
  },
);
