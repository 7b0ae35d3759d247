import { evidenceFaults, type GateEvidence } from './gate-evidence.ts';
import { GATE_ITEMS, type GateItem } from './gate-items.table.ts';
import { percent } from './inputs.ts';
import { method } from '../method.ts';
import { OUR_OWN_DESIGN } from '../sources.ts';
import { redFlagsOf } from './stage-gate.ts';

/** Whether a person should go back to the stage before. Down is cheap: the newest test alone decides. */

/** Typical errors below the line of the passed gate from which on the stage is left backwards. */
export const BACK_AT_ERRORS = 2;

export type StageRegression =
  | { readonly kind: 'stay' }
  | { readonly kind: 'go back'; readonly reasons: readonly string[] }
  | { readonly kind: 'refused'; readonly reasons: readonly string[] };

const fallenBelow = (item: GateItem, { gate, scores, enteredStage }: GateEvidence): readonly string[] => {
  const requirement = item.gates[gate];
  const newest = (scores[item.key] ?? [])
    .filter(({ on }) => on >= enteredStage)
    .toSorted((a, b) => a.on - b.on)
    .at(-1);
  if (!newest || item.typicalError === null || requirement?.kind !== 'over') return [];
  const floor = requirement.line - BACK_AT_ERRORS * item.typicalError;
  return newest.score <= floor
    ? [
        `${item.name}: ${newest.score.toFixed(1)} %, two typical errors or more below the line of ${requirement.line} %.`,
      ]
    : [];
};

/** Whether to go back one stage. */
export const stageRegression = method(
  {
    id: 'return/stage-regression',
    revision: 1,
    title: 'Going back one stage of the return',
    equations: ['back where x_newest ≤ Y − 2 · TE in any item of the passed gate, or a red flag stands in 48 h'],
    inputs: [percent('newest score since the gate', 'x_newest'), percent('line of the passed gate', 'Y')],
    outputs: [{ name: 'go back', symbol: '', unit: 'yes or no, with the reasons' }],
    refuses: ['A day before landing or after today, a score or report that cannot be.'],
    source: OUR_OWN_DESIGN,
    doesNotKnow:
      'A bad day from a true loss: about one test in forty-four of a person exactly on the line falls so low by chance. It proposes; the specialist decides. The two typical errors are our own, and editable.',
  },
  /** `evidence.gate` is the gate that was passed, `enteredStage` the day on which it was. */
  (evidence: GateEvidence, items: readonly GateItem[] = GATE_ITEMS): StageRegression => {
    const faults = evidenceFaults(evidence);
    if (faults.length > 0) return { kind: 'refused', reasons: faults };
    const reasons = [...redFlagsOf(evidence), ...items.flatMap((item) => fallenBelow(item, evidence))];
    return reasons.length > 0 ? { kind: 'go back', reasons } : { kind: 'stay' };
  },
);
