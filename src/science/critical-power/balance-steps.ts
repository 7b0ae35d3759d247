import { formula, type Condition, type FormulaInput, type FormulaRecord } from '../formula.ts';
import type { Curve } from '../plot.ts';
import { SKIBA_2015 } from '../sources.ts';
import { capacityInput, criticalPowerInput, powerInput } from './power-duration.ts';
import { BARTRAM_2018, CHORLEY_2022, SKIBA_2012, SKIBA_CLARKE_2021, WEIGEND_2021 } from './sources.ts';
import { fraction, joules, seconds, type Fraction, type Joules, type Seconds, type Watts } from '#units/quantity.ts';

/** What the store above critical power does in one stretch of constant power. Exact: no steps, so no sampling. */

const duration: FormulaInput = { name: 'duration', symbol: 'd', unit: 's', possible: [0, 86_400], valid: [0, 7200] };
const tau: FormulaInput = { name: 'time constant', symbol: 'τ', unit: 's', possible: [1, 1e9], valid: [10, 5000] };
const balance: FormulaInput = {
  name: 'balance before',
  symbol: "W'",
  unit: 'J',
  possible: [-500_000, 80_000],
  valid: [0, 35_000],
};
const below: FormulaInput = {
  name: 'power below critical power',
  symbol: 'D',
  unit: 'W',
  possible: [0.1, 600],
  valid: [10, 300],
};

const condition = (says: string, holds: (a: number, b: number, c: number) => boolean): Condition => ({ says, holds });

type Written = Pick<FormulaRecord, 'id' | 'title' | 'equation' | 'inputs' | 'output' | 'source'> &
  Partial<FormulaRecord>;

const record = (written: Written): FormulaRecord => ({
  revision: 1,
  restsOn: [SKIBA_CLARKE_2021],
  doesNotKnow:
    'That recovery slows from bout to bout, and differs between people and with training. Good for comparing sessions, not for promising a finish.',
  ...written,
});

const joulesOf = (name: string): FormulaRecord['output'] => ({ name, symbol: "W'", unit: 'J' });
const secondsOf: FormulaRecord['output'] = { name: 'time constant', symbol: 'τ', unit: 's' };

/** What is left of one after a time, falling exponentially. */
const left = (time: number, constant: number): number => Math.exp(-time / constant);

/** Balance [J] after work at or above critical power. */
export const balanceAfterWork = formula(
  record({
    id: 'critical-power/balance-after-work',
    title: 'Balance [J] after work at or above critical power',
    equation: "W' − (P − CP) · d",
    inputs: [balance, powerInput(), criticalPowerInput(), duration],
    output: joulesOf('balance after'),
    conditions: [condition('The power is at or above critical power.', (_, power, critical) => power >= critical)],
    source: SKIBA_2015,
  }),
  (before: Joules, power: Watts, criticalPower: Watts, lasting: Seconds): Joules =>
    joules(before - (power - criticalPower) * lasting),
);

/** Balance [J] after recovery below critical power. */
export const balanceAfterRecovery = formula(
  record({
    id: 'critical-power/balance-after-recovery',
    title: 'Balance [J] after recovery below critical power',
    equation: "W'_0 − (W'_0 − W') · exp(−d / τ)",
    inputs: [balance, capacityInput(), tau, duration],
    output: joulesOf('balance after'),
    conditions: [
      condition('The balance is not above the store of a rested person.', (before, rested) => before <= rested),
    ],
    source: SKIBA_2015,
  }),
  (before: Joules, capacity: Joules, constant: Seconds, lasting: Seconds): Joules =>
    joules(capacity - (capacity - before) * left(lasting, constant)),
);

/** Recovery [s] until a balance is reached again. */
export const recoveryNeeded = formula(
  record({
    id: 'critical-power/recovery-needed',
    title: 'Recovery [s] until a balance is reached again',
    equation: "τ · ln((W'_0 − W') / (W'_0 − W'_wanted))",
    inputs: [balance, { ...balance, name: 'balance wanted', symbol: "W'_wanted" }, capacityInput(), tau],
    output: { name: 'recovery', symbol: 'd', unit: 's' },
    conditions: [
      condition('The balance wanted is not below the balance before.', (before, wanted) => wanted >= before),
      condition(
        'The balance wanted lies below the store of a rested person, which is never quite reached.',
        (_, wanted, rested) => wanted < rested,
      ),
    ],
    source: SKIBA_2015,
  }),
  (before: Joules, wanted: Joules, capacity: Joules, constant: Seconds): Seconds =>
    seconds(constant * Math.log((capacity - before) / (capacity - wanted))),
);

/** Time constant [s] of recovery, from the distance below critical power. */
export const recoveryTimeConstant = formula(
  record({
    id: 'critical-power/time-constant',
    title: 'Time constant [s] of recovery, from the distance below critical power',
    equation: "W'_0 / D",
    inputs: [below, capacityInput()],
    output: secondsOf,
    source: SKIBA_2015,
  }),
  (distance: Watts, capacity: Joules): Seconds => seconds(capacity / distance),
);

/** Time constant [s] of recovery in elite cyclists. */
export const recoveryTimeConstantOfElite = formula(
  record({
    id: 'critical-power/time-constant-elite',
    title: 'Time constant [s] of recovery in elite cyclists',
    equation: '2287.2 · D^(−0.688)',
    inputs: [below],
    output: secondsOf,
    source: BARTRAM_2018,
    doesNotKnow: 'Anybody but the four elite cyclists it was fitted to; R² 0.433.',
  }),
  (distance: Watts): Seconds => seconds(2287.2 * distance ** -0.688),
);

/** Time constant [s] of the integral form, from the mean distance below critical power. */
export const timeConstantOfIntegral = formula(
  record({
    id: 'critical-power/time-constant-integral',
    title: 'Time constant [s] of the integral form, from the mean distance below critical power',
    equation: '546 · exp(−0.01 · D) + 316',
    inputs: [below],
    output: secondsOf,
    source: SKIBA_2012,
    equationFromMemory: true,
    doesNotKnow:
      'When the recovery came: one number stands for all of it. It needs the whole record before it can say anything.',
  }),
  (distance: Watts): Seconds => seconds(546 * Math.exp(-0.01 * distance) + 316),
);

/** Deficit [J] of the integral form after a stretch of constant power. */
export const deficitAfter = formula(
  record({
    id: 'critical-power/deficit-integral',
    title: 'Deficit [J] of the integral form after a stretch of constant power',
    equation: 'E · exp(−d / τ) + max(P − CP, 0) · τ · (1 − exp(−d / τ))',
    inputs: [
      { name: 'deficit before', symbol: 'E', unit: 'J', possible: [0, 500_000], valid: [0, 35_000] },
      powerInput(),
      criticalPowerInput(),
      tau,
      duration,
    ],
    output: { name: 'deficit after', symbol: 'E', unit: 'J' },
    source: SKIBA_2012,
    equationFromMemory: true,
    doesNotKnow: 'Where recovery stops: in this form the store refills even during work above critical power.',
  }),
  (before: Joules, power: Watts, criticalPower: Watts, constant: Seconds, lasting: Seconds): Joules =>
    joules(
      before * left(lasting, constant) - Math.max(power - criticalPower, 0) * constant * (left(lasting, constant) - 1),
    ),
);

/** Fraction of a deficit recovered in two parts. */
export const recoveredInTwoParts = formula(
  record({
    id: 'critical-power/recovered-two-parts',
    title: 'Fraction of a deficit recovered in two parts',
    equation: '1 − 0.5067 · exp(−d / 21.5) − 0.4933 · exp(−d / 388)',
    inputs: [duration],
    output: { name: 'recovered fraction', symbol: 'r', unit: '1' },
    source: CHORLEY_2022,
    restsOn: [WEIGEND_2021],
    doesNotKnow: 'How hard the recovery was, and anybody but the trained cyclists it was measured in.',
    plot: {
      says: 'Half of the deficit comes back within the first minute, the other half takes a quarter of an hour.',
      x: { name: 'recovery', unit: 's' },
      y: { name: 'recovered fraction', unit: '1' },
      curves: (): readonly Curve[] => [
        {
          label: 'two parts',
          points: Array.from(
            { length: 61 },
            (_, place) => [place * 15, recoveredInTwoParts(seconds(place * 15))] as const,
          ),
        },
        {
          label: 'one part, 100 W below critical power, 20 kJ',
          points: Array.from({ length: 61 }, (_, place) => [place * 15, 1 - Math.exp((-place * 15) / 200)] as const),
        },
      ],
    },
  }),
  (lasting: Seconds): Fraction => fraction(1 - 0.5067 * left(lasting, 21.5) - 0.4933 * left(lasting, 388)),
);
