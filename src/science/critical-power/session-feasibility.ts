import { method } from '../method.ts';
import { OUR_OWN_DESIGN, SKIBA_2015 } from '../sources.ts';
import { balanceAlong, type Stretch } from './balance-along.ts';
import type { PowerDuration } from './power-duration.ts';
import type { RecoveryModel } from './w-prime-balance.ts';
import { fraction, joules, type Fraction, type Joules } from '#units/quantity.ts';

/** Whether a planned session empties the store, and how much of it is left at the worst moment. */
export type SessionFeasibility =
  | { readonly kind: 'feasible'; readonly least: Joules; readonly reserve: Fraction; readonly leastAt: number }
  | {
      readonly kind: 'emptied';
      /** The first stretch that ends below zero, counted from 0. */
      readonly stretch: number;
      /** How much work is asked above what the store holds, at the worst moment. */
      readonly missing: Joules;
      readonly reason: string;
    }
  | { readonly kind: 'refused'; readonly reason: string };

/** Whether a session of constant stretches empties the store. */
export const sessionFeasibility = method(
  {
    id: 'critical-power/session-feasibility',
    revision: 1,
    title: 'Whether a session of constant stretches empties the store',
    equations: ["least of W' after each stretch ≥ 0", "reserve = least / W'_0"],
    inputs: balanceAlong.record.inputs,
    outputs: [
      { name: 'least balance', symbol: "W'_least", unit: 'J' },
      { name: 'reserve', symbol: 'r', unit: '1' },
    ],
    refuses: ['whatever the balance along a session refuses'],
    source: OUR_OWN_DESIGN,
    restsOn: [SKIBA_2015],
    doesNotKnow:
      'Today’s critical power, the error of the test it came from, heat, and the will to go on. A reserve is a reason to try, an empty store a reason to change the plan; neither is a promise.',
  },
  (stretches: readonly Stretch[], person: PowerDuration, model: RecoveryModel = 'by distance'): SessionFeasibility => {
    const along = balanceAlong(stretches, person, model);
    if (along.kind === 'refused') return along;
    const { least, leastAt, after } = along;
    if (least >= 0) return { kind: 'feasible', least, leastAt, reserve: fraction(least / person.capacity) };
    const stretch = after.findIndex((value) => value < 0);
    return {
      kind: 'emptied',
      stretch,
      missing: joules(0 - least),
      reason: `Stretch ${stretch + 1} empties the store. Shorten it, lower its power, or lengthen the recovery before it.`,
    };
  },
);
