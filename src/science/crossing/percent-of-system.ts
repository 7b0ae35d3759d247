import { formula, type FormulaRecord } from '../formula.ts';
import { bodyMass, load, ratio } from '../inputs.ts';
import { curveOf, type Curve } from '../plot.ts';
import { OUR_OWN_DESIGN } from '../sources.ts';
import {
  fraction,
  kilograms,
  machineLoad,
  type BarLoad,
  type Fraction,
  type Kilograms,
  type MachineLoad,
} from '#units/quantity.ts';

/**
 * Two readings of "70 %": of the bar, with the share of body weight added whole (what loads are made by), or of bar and
 * share together. The second is some fifteen points lighter; these formulas translate.
 */

const part = ratio('prescribed fraction', 'p', [0, 1.5], [0.3, 1]);
const maximum = load('maximum', 'R', [0.1, 1000], [10, 400]);
const share = ratio('share of body weight', 's', [0, 1]);
const inputs = [part, maximum, share, bodyMass()];

const record = (id: string, title: string, equation: string, symbol: string, unit: string): FormulaRecord => ({
  id: `percent-of-system/${id}`,
  revision: 1,
  title,
  equation,
  inputs,
  output: { name: title, symbol, unit },
  source: OUR_OWN_DESIGN,
  doesNotKnow:
    'Tables of repetitions against percent were made with the load on the bar; they fit neither 0 g nor percent of system.',
});

type Given = [part: Fraction, maximum: BarLoad, share: Fraction, mass: Kilograms];

/** Machine load by percent of the bar, share added whole [kg]. */
export const machineLoadByBar = formula<Given, MachineLoad>(
  record('by-bar', 'Machine load by percent of the bar, share added whole [kg]', 'p R + s W', 'L_A', 'kg'),
  (p, of, s, mass) => machineLoad(p * of + s * mass),
);

/** Machine load by percent of bar and share together [kg]. */
export const machineLoadBySystem = formula<Given, MachineLoad>(
  record('by-system', 'Machine load by percent of bar and share together [kg]', 'p (R + s W)', 'L_B', 'kg'),
  (p, of, s, mass) => machineLoad(p * (of + s * mass)),
);

/** Difference between the two readings of a percent [kg]. */
export const differenceOfReadings = formula<[part: Fraction, share: Fraction, mass: Kilograms], Kilograms>(
  {
    ...record('difference', 'Difference between the two readings of a percent [kg]', '(1 − p) s W', 'L_A − L_B', 'kg'),
    inputs: [part, share, bodyMass()],
    plot: {
      says: 'Both readings meet at 100 %. At 70 % that of the system is lighter by some fifteen points: 70 % of the one is 56 % of the other.',
      x: { name: 'prescribed fraction', unit: '1' },
      y: { name: 'machine load', unit: 'kg' },
      curves: (): readonly Curve[] =>
        (
          [
            ['of the bar, share added whole', machineLoadByBar],
            ['of bar and share together', machineLoadBySystem],
          ] as const
        ).map(([label, of]) => curveOf(label, of, [0.3, 1], (p) => [p, 136, 0.72, 91])),
    },
  },
  (p, s, mass) => kilograms((1 - p) * s * mass),
);

/** Fraction of the bar that gives the load of a fraction of the system. */
export const barFractionOfSystemFraction = formula<Given, Fraction>(
  record(
    'bar-of-system',
    'Fraction of the bar that gives the load of a fraction of the system',
    'p − (1 − p) s W / R',
    'p_A',
    '1',
  ),
  (p, of, s, mass) => fraction(p - ((1 - p) * s * mass) / of),
);

/** Fraction of the system that gives the load of a fraction of the bar. */
export const systemFractionOfBarFraction = formula<Given, Fraction>(
  record(
    'system-of-bar',
    'Fraction of the system that gives the load of a fraction of the bar',
    '(p R + s W) / (R + s W)',
    'p_B',
    '1',
  ),
  (p, of, s, mass) => fraction((p * of + s * mass) / (of + s * mass)),
);
