import { curveOf, type Curve } from '../plot.ts';
import { formula, type FormulaRecord } from '../formula.ts';
import { heartRate, type HeartRate } from '#units/quantity.ts';
import { age } from './inputs.ts';
import { ACSM_HANDBOOK, GELLISH_2007, JACKSON_2007, TANAKA_2001 } from './sources.ts';

/** Maximal heart rate read off the age, as four lines print it. People of one age differ by 7 to 10 beats about each. */

/** Standard deviation of a person about the line [1/min]; from memory, the cautious end of 7 to 10. */
export const MAXIMAL_RATE_SD = 10;

const shared = {
  revision: 1,
  inputs: [age([20, 75])],
  output: { name: 'maximal heart rate', symbol: 'HR_max', unit: '1/min' },
  standardError: { value: MAXIMAL_RATE_SD, unit: '1/min', of: 'people about the line, from memory' },
  doesNotKnow:
    'This person: one in three lies more than ten beats off. A measured peak replaces every line; medicines that slow the heart make it wrong.',
} as const satisfies Partial<FormulaRecord>;

/** Maximal heart rate of an age, Tanaka [1/min]. */
export const maximalRateTanaka = formula(
  {
    id: 'maximal-heart-rate/tanaka',
    title: 'Maximal heart rate of an age, Tanaka [1/min]',
    equation: '208 − 0.7 · age',
    source: TANAKA_2001,
    ...shared,
    plot: {
      says: 'Four lines within three beats of each other in middle age; the band is one standard deviation of people.',
      x: { name: 'age', unit: 'years' },
      y: { name: 'maximal heart rate', unit: '1/min' },
      curves: (): readonly Curve[] => {
        const tanaka = curveOf('Tanaka', maximalRateTanaka, [20, 75], (years) => [years]);
        return [
          { ...tanaka, band: tanaka.points.map(([, y]) => [y - MAXIMAL_RATE_SD, y + MAXIMAL_RATE_SD] as const) },
          curveOf('Gellish', maximalRateGellish, [20, 75], (years) => [years]),
          curveOf('Gellish, before rounding', maximalRateGellishUnrounded, [20, 75], (years) => [years]),
          curveOf('Gellish, curved', maximalRateGellishCurved, [20, 75], (years) => [years]),
        ];
      },
    },
  },
  (years: number): HeartRate => heartRate(208 - 0.7 * years),
);

/** Maximal heart rate of an age, Gellish [1/min]. */
export const maximalRateGellish = formula(
  {
    id: 'maximal-heart-rate/gellish',
    title: 'Maximal heart rate of an age, Gellish [1/min]',
    equation: '207 − 0.7 · age',
    source: GELLISH_2007,
    ...shared,
  },
  (years: number): HeartRate => heartRate(207 - 0.7 * years),
);

/** Maximal heart rate of an age, Gellish before rounding [1/min]. */
export const maximalRateGellishUnrounded = formula(
  {
    id: 'maximal-heart-rate/gellish-unrounded',
    title: 'Maximal heart rate of an age, Gellish before rounding [1/min]',
    equation: '206.9 − 0.67 · age',
    source: JACKSON_2007,
    restsOn: [GELLISH_2007, ACSM_HANDBOOK],
    ...shared,
  },
  (years: number): HeartRate => heartRate(206.9 - 0.67 * years),
);

/** Maximal heart rate of an age, Gellish curved [1/min]. */
export const maximalRateGellishCurved = formula(
  {
    id: 'maximal-heart-rate/gellish-curved',
    title: 'Maximal heart rate of an age, Gellish curved [1/min]',
    equation: '192 − 0.007 · age^(2)',
    source: GELLISH_2007,
    equationFromMemory: true,
    ...shared,
    inputs: [age([30, 75])],
  },
  (years: number): HeartRate => heartRate(192 - 0.007 * years ** 2),
);
