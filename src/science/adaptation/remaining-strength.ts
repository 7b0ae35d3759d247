import { impossibilities } from '../evaluate.ts';
import type { FormulaInput } from '../formula.ts';
import { method } from '../method.ts';
import { BOSQUET_2013, OUR_OWN_DESIGN } from '../sources.ts';
import { strengthCarried, strengthUnloaded } from './pause.ts';
import { DE_BOER_2007 } from './sources.ts';
import { daySpan, exertion, type Exertion, type Fraction } from '#units/quantity.ts';

/** One rule for whatever was missed: how much is left, and how the first session back begins. */

/** What the legs did while the lift was missed. */
export type WhileMissed =
  /** Up and about in 1 g, or running in the harness weightless. */
  | 'still loaded'
  /** In bed, or weightless without anything. */
  | 'unloaded';

export interface DaysMissed {
  readonly days: number;
  readonly legs: WhileMissed;
  readonly ill: boolean;
}

export interface RemainingStrength {
  readonly kind: 'remaining';
  readonly fraction: Fraction;
  readonly curve: 'carried' | 'unloaded';
  /** "As planned" after a few days; else a cap for the first session back. */
  readonly firstSession: { readonly kind: 'as planned' } | { readonly kind: 'capped'; readonly exertion: Exertion };
  readonly cautions: readonly string[];
}

export type StrengthAfterDays = RemainingStrength | { readonly kind: 'refused'; readonly reason: string };

const FIRST_SESSION = exertion(6);
/** Fewer days are how programmes are lived; our own. */
const NO_PAUSE_UP_TO = 3;
const UNLOADED_MEASURED_TO = 23;
const LONG_PAUSE = 28;

const days: FormulaInput = {
  name: 'days missed',
  symbol: 'D',
  unit: 'd',
  possible: [0, 365],
  valid: [0, 84],
};

const cautionsOf = ({ days: missed, legs, ill }: DaysMissed): readonly string[] => [
  ...(ill ? ['After illness the physician says when.'] : []),
  ...(legs === 'unloaded' && missed > UNLOADED_MEASURED_TO
    ? [
        `Unloaded strength was measured for ${UNLOADED_MEASURED_TO} days only; beyond, the curve says more than bed rest took.`,
      ]
    : []),
  ...(missed > LONG_PAUSE ? ['After more than four weeks, test again before loading.'] : []),
];

/** Strength left after days missed, and the first session back. */
export const remainingStrength = method(
  {
    id: 'pause/remaining-strength',
    revision: 1,
    title: 'Strength left after days missed, and the first session back',
    equations: [
      'S = 1 − 0.15 (1 − exp(−max(0, D − 14) / 60)) where the legs were still loaded',
      'S = 1 − 0.368514 (1 − exp(−D / 27.262923)) where they were not',
    ],
    inputs: [days],
    outputs: [
      { name: 'strength left', symbol: 'S', unit: '1' },
      { name: 'most effort of the first session back', symbol: 'RPE', unit: 'RPE' },
    ],
    refuses: ['Days that cannot be, or more than a year.'],
    source: OUR_OWN_DESIGN,
    restsOn: [BOSQUET_2013, DE_BOER_2007],
    doesNotKnow:
      'How much anybody keeps while training something else. The curves, the three days that are no pause and RPE 6 for the first session back are our own and editable; a physician’s word goes before all of it.',
  },
  (missed: DaysMissed): StrengthAfterDays => {
    const [reason] = impossibilities({ inputs: [days] }, [missed.days]);
    if (reason !== undefined) return { kind: 'refused', reason };
    const span = daySpan(missed.days);
    const isPause = missed.days > NO_PAUSE_UP_TO || missed.ill;
    return {
      kind: 'remaining',
      fraction: missed.legs === 'unloaded' ? strengthUnloaded(span) : strengthCarried(span),
      curve: missed.legs === 'unloaded' ? 'unloaded' : 'carried',
      firstSession: isPause ? { kind: 'capped', exertion: FIRST_SESSION } : { kind: 'as planned' },
      cautions: cautionsOf(missed),
    };
  },
);
