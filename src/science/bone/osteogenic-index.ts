import { formula, type FormulaInput } from '../formula.ts';
import { method } from '../method.ts';
import { curveOf, type Curve } from '../plot.ts';
import { impossible, refused, type Refused } from './impossible.ts';
import { cyclesInput, forceInput, type LoadGroup } from './load-stimulus.ts';
import { ROBLING_2001, TURNER_ROBLING_2003, UMEMURA_1997 } from './sources.ts';

/** An index of sessions in which cycles saturate and rest restores. From rodents: no dose for people in flight. */

const FROM_RODENTS =
  'Whether people in flight answer as rodents do: nobody has validated it as a dose. That order and splitting matter is a property of the index.';

/** Osteogenic index of one session. */
export const osteogenicIndex = formula(
  {
    id: 'bone/osteogenic-index',
    revision: 1,
    title: 'Osteogenic index of one session',
    equation: 'F · ln(N + 1)',
    inputs: [forceInput, { ...cyclesInput, symbol: 'N' }],
    output: { name: 'osteogenic index', symbol: 'OI', unit: 'BW' },
    source: TURNER_ROBLING_2003,
    restsOn: [UMEMURA_1997],
    doesNotKnow: FROM_RODENTS,
    plot: {
      says: 'The first tens of cycles do most of what a session can do; force counts in full.',
      x: { name: 'cycles in the session', unit: 'cycles' },
      y: { name: 'osteogenic index', unit: 'BW' },
      curves: (): readonly Curve[] =>
        [1, 2, 3].map((force) => curveOf(`${force} BW`, osteogenicIndex, [0, 600], (cycles) => [force, cycles])),
    },
  },
  (force: number, cycles: number): number => force * Math.log(cycles + 1),
);

/** Hours in which a fraction of 1 − 1/e of the sensitivity returns. */
const RECOVERY_HOURS = 6;

export const restInput: FormulaInput = {
  name: 'hours of rest',
  symbol: 't',
  unit: 'h',
  possible: [0, 1000],
  valid: [0, 168],
};

/** Sensitivity of bone after rest. */
export const sensitivityAfterRest = formula(
  {
    id: 'bone/sensitivity-after-rest',
    revision: 1,
    title: 'Sensitivity of bone after rest',
    equation: '1 − exp(−t / 6)',
    inputs: [restInput],
    output: { name: 'sensitivity', symbol: 's', unit: '1' },
    source: TURNER_ROBLING_2003,
    equationFromMemory: true,
    restsOn: [ROBLING_2001],
    doesNotKnow: FROM_RODENTS,
    plot: {
      says: 'After eight hours about three quarters are back; the next day counts nearly in full.',
      x: { name: 'rest since the session before', unit: 'h' },
      y: { name: 'sensitivity', unit: '1' },
      curves: (): readonly Curve[] => [curveOf('sensitivity', sensitivityAfterRest, [0, 24], (hours) => [hours])],
    },
  },
  (hours: number): number => 1 - Math.exp(-hours / RECOVERY_HOURS),
);

/** A session of one force, at an hour of the week. */
export interface LoadSession extends LoadGroup {
  readonly atHour: number;
}

export type OsteogenicWeek =
  { readonly kind: 'estimate'; readonly value: number; readonly sessions: readonly number[] } | Refused;

const hourOfWeek: FormulaInput = {
  name: 'hour of the week',
  symbol: 'h',
  unit: 'h',
  possible: [0, 168],
  valid: [0, 168],
};

/** Osteogenic index of a week. */
export const osteogenicWeek = method(
  {
    id: 'bone/osteogenic-week',
    revision: 1,
    title: 'Osteogenic index of a week',
    equations: [
      'OI_1 = F_1 · ln(N_1 + 1)',
      'OI_i = F_i · ln(N_i + 1) · (1 − exp(−t_i / 6)), t_i hours after session i − 1',
      'week = sum_i OI_i',
    ],
    inputs: [forceInput, cyclesInput, hourOfWeek],
    outputs: [{ name: 'osteogenic index of the week', symbol: 'OI_week', unit: 'BW' }],
    refuses: ['Sessions that do not stand in the order of time.', 'A force, cycles or an hour that cannot be.'],
    source: TURNER_ROBLING_2003,
    equationFromMemory: true,
    restsOn: [ROBLING_2001],
    doesNotKnow: `${FROM_RODENTS} The first session of the week counts in full, whatever the evening before held.`,
  },
  (sessions: readonly LoadSession[]): OsteogenicWeek => {
    const reasons = [
      ...impossible(
        sessions.flatMap(({ atHour, cycles, force }) => [
          [hourOfWeek, atHour] as const,
          [cyclesInput, cycles] as const,
          [forceInput, force] as const,
        ]),
      ),
      ...outOfOrder(sessions),
    ];
    if (reasons.length > 0) return refused(reasons);
    const values = sessions.map(({ atHour, force, cycles }, place) => {
      const before = sessions[place - 1];
      return osteogenicIndex(force, cycles) * (before ? sensitivityAfterRest(atHour - before.atHour) : 1);
    });
    return { kind: 'estimate', value: values.reduce((sum, value) => sum + value, 0), sessions: values };
  },
);

const outOfOrder = (sessions: readonly LoadSession[]): readonly string[] =>
  sessions.flatMap(({ atHour }, place) => {
    const before = sessions[place - 1];
    return before && atHour < before.atHour
      ? [
          `Session ${place + 1}, at hour ${atHour}, stands after one at hour ${before.atHour}: put them in the order of time.`,
        ]
      : [];
  });
