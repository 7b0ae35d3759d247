import type { FormulaInput } from '../formula.ts';
import { evidenceFaults, type GateEvidence } from './gate-evidence.ts';
import { DWELL, GATE_ITEMS, type GateItem } from './gate-items.table.ts';
import { days, percent } from './inputs.ts';
import { readItem, type ItemReading } from './item-reading.ts';
import { method } from '../method.ts';
import { OUR_OWN_DESIGN } from '../sources.ts';
import { PETERSEN_2017, RECONDITIONING_2011 } from './sources.ts';

/** Whether a person may leave a stage of the return. It advises: the specialist signs, and the physician releases. */

/** Probability of being over the line at which an item passes. */
export const ACCEPT_AT = 0.5;
/** Hours over which a red flag holds a gate shut. */
export const RED_FLAG_HOURS = 48;
/** Pain from which on it is a red flag, of 10. */
export const RED_FLAG_PAIN = 5;
const HOURS_PER_DAY = 24;

export interface GateOptions {
  /** From above 0 to below 1. */
  readonly acceptAt?: number;
  readonly items?: readonly GateItem[];
}

export type GateReading =
  | {
      readonly kind: 'passed' | 'not passed';
      readonly items: readonly ItemReading[];
      /** Everything that blocks, each as a sentence. */
      readonly blocking: readonly string[];
      /** Items that passed by judgement or were not required: shown with the gate. */
      readonly cautions: readonly string[];
    }
  | { readonly kind: 'refused'; readonly reasons: readonly string[] };

/** Red flags of the last 48 hours, pain of 5 or more with them. */
export const redFlagsOf = ({ redFlags, pain, today }: GateEvidence): readonly string[] => {
  const recent = ({ on }: { readonly on: number }): boolean => today - on <= RED_FLAG_HOURS / HOURS_PER_DAY;
  return [
    ...redFlags.filter(recent).map(({ what, on }) => `Red flag on day ${Math.floor(on)}: ${what}.`),
    ...pain
      .filter((report) => recent(report) && report.value >= RED_FLAG_PAIN)
      .map(({ value, on }) => `Red flag on day ${Math.floor(on)}: pain of ${value} of 10.`),
  ];
};

const dwellOf = ({ gate, today, enteredStage }: GateEvidence): readonly string[] => {
  const inStage = today - enteredStage;
  return inStage >= DWELL[gate] ? [] : [`${Math.floor(inStage)} of at least ${DWELL[gate]} days in this stage.`];
};

/** An item whose forerunners have not passed waits for them, whatever was measured. */
const waiting = (reading: ItemReading, items: readonly GateItem[], all: readonly ItemReading[]): ItemReading => {
  const after = items.find(({ key }) => key === reading.key)?.onlyAfter ?? [];
  const open = all.filter(({ key, passes }) => after.includes(key) && !passes).map(({ name }) => name.toLowerCase());
  return open.length === 0
    ? reading
    : { ...reading, passes: false, basis: 'waits', says: `${reading.name}: waits for ${open.join(', ')}.` };
};

const probability: FormulaInput = {
  name: 'probability at which an item passes',
  symbol: 'P_accept',
  unit: '1',
  possible: [0.01, 0.99],
  valid: [0.5, 0.95],
};

/** Whether a stage of the return may be left, with everything that blocks. */
export const stageGate = method(
  {
    id: 'return/stage-gate',
    revision: 1,
    title: 'Gate of a stage of the return',
    equations: [
      'an item over a line passes where P ≥ P_accept, from the last two or three tests together',
      'stand test, falls, motion sickness and pain pass or do not',
      'the gate passes where every item passes, the stage has lasted its days, and no red flag stands in 48 h',
    ],
    inputs: [percent('scores of the tests', 'x_k'), days('day of each', 't', [0, 1000]), probability],
    outputs: [{ name: 'passed', symbol: '', unit: 'yes or no, with every item and what blocks' }],
    refuses: [
      'A day before landing or after today, a score or report that cannot be.',
      'A judgement without a name or a reason.',
    ],
    source: OUR_OWN_DESIGN,
    restsOn: [RECONDITIONING_2011, PETERSEN_2017],
    doesNotKnow:
      'Whether the lines are right: they are our own, and editable. Release by the physician is always separate. At a true 100 % in all ten scored items a person passes the last gate within two rounds of three tests in more than nine of ten cases, of two tests in about three of four: ask for three where the answer matters; somebody one typical error below a single line gets over that line in one round of twenty-four. A judgement never stands for a stand test, a fall, a red flag or a test that the physician asked for.',
  },
  (evidence: GateEvidence, { acceptAt = ACCEPT_AT, items = GATE_ITEMS }: GateOptions = {}): GateReading => {
    const [low, high] = probability.possible;
    const reasons = [
      ...(acceptAt >= low && acceptAt <= high
        ? []
        : [`The probability at which an item passes must lie in ${low} to ${high}; it is ${acceptAt}.`]),
      ...evidenceFaults(evidence),
    ];
    if (reasons.length > 0) return { kind: 'refused', reasons };
    const alone = items.flatMap((item) => readItem(item, evidence, acceptAt) ?? []);
    const read = alone.map((reading) => waiting(reading, items, alone));
    const blocking = [
      ...redFlagsOf(evidence),
      ...dwellOf(evidence),
      ...read.filter(({ passes }) => !passes).map(({ says }) => says),
    ];
    return {
      kind: blocking.length === 0 ? 'passed' : 'not passed',
      items: read,
      blocking,
      cautions: read.filter(({ basis }) => basis === 'judgement' || basis === 'not required').map(({ says }) => says),
    };
  },
);
