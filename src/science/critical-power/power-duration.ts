import { formula, type Condition, type FormulaInput, type FormulaRecord } from '../formula.ts';
import { curveOf, type Curve } from '../plot.ts';
import { MONOD_SCHERRER_1965 } from './sources.ts';
import { joules, seconds, watts, type Joules, type Seconds, type Watts } from '#units/quantity.ts';

/** Two numbers for hard work on a cycle: a power that can be kept, and a store of work above it that empties. */
export interface PowerDuration {
  readonly criticalPower: Watts;
  /** Work above critical power that a rested person has, W'_0. */
  readonly capacity: Joules;
}

const input =
  (name: string, symbol: string, unit: string, possible: readonly [number, number], valid: readonly [number, number]) =>
  (): FormulaInput => ({ name, symbol, unit, possible, valid });

export const powerInput = input('power', 'P', 'W', [0, 2500], [0, 1500]);
export const criticalPowerInput = input('critical power', 'CP', 'W', [20, 600], [80, 450]);
export const capacityInput = input('work above critical power, rested', "W'_0", 'J', [500, 80_000], [5000, 35_000]);
/** Trials to exhaustion of 2 to 30 minutes are what the model was shown to hold for. */
const time = input('time to exhaustion', 't', 's', [1, 86_400], [120, 1800]);

const record = (written: Pick<FormulaRecord, 'id' | 'title' | 'equation' | 'inputs' | 'output'>): FormulaRecord => ({
  revision: 1,
  source: MONOD_SCHERRER_1965,
  doesNotKnow:
    'Work under two minutes and over half an hour: the model gives any power for an instant and critical power for ever. Made on the ground, on a cycle; that it holds weightless is an assumption.',
  ...written,
});

const ABOVE: Condition = {
  says: 'The power lies above critical power.',
  holds: (power, critical) => (power ?? 0) > (critical ?? 0),
};

/** Time to exhaustion [s] at a power. */
export const timeToExhaustion = formula(
  {
    ...record({
      id: 'critical-power/time-to-exhaustion',
      title: 'Time to exhaustion [s] at a power',
      equation: "W'_0 / (P − CP)",
      inputs: [powerInput(), criticalPowerInput(), capacityInput()],
      output: { name: 'time to exhaustion', symbol: 't', unit: 's' },
    }),
    conditions: [ABOVE],
    plot: {
      says: 'A little above critical power a person lasts long; twice as far above it, half as long.',
      x: { name: 'power', unit: 'W' },
      y: { name: 'time to exhaustion', unit: 's' },
      curves: (): readonly Curve[] =>
        [180, 220, 260].map((critical) =>
          curveOf(`critical power ${critical} W`, timeToExhaustion, [critical + 10, critical + 150], (power) => [
            power,
            critical,
            18_000,
          ]),
        ),
    },
  },
  (power: Watts, criticalPower: Watts, capacity: Joules): Seconds => seconds(capacity / (power - criticalPower)),
);

/** Power [W] that empties the store in a time. */
export const powerForTime = formula(
  record({
    id: 'critical-power/power-for-time',
    title: 'Power [W] that empties the store in a time',
    equation: "CP + W'_0 / t",
    inputs: [time(), criticalPowerInput(), capacityInput()],
    output: { name: 'power', symbol: 'P', unit: 'W' },
  }),
  (duration: Seconds, criticalPower: Watts, capacity: Joules): Watts => watts(criticalPower + capacity / duration),
);

/** Work [J] done until exhaustion. */
export const workUntilExhaustion = formula(
  record({
    id: 'critical-power/work-until-exhaustion',
    title: 'Work [J] done until exhaustion',
    equation: "W'_0 + CP · t",
    inputs: [time(), criticalPowerInput(), capacityInput()],
    output: { name: 'work', symbol: 'P · t', unit: 'J' },
  }),
  (duration: Seconds, criticalPower: Watts, capacity: Joules): Joules => joules(capacity + criticalPower * duration),
);
