import { formula, type FormulaInput, type FormulaOutput } from '../formula.ts';
import { load } from '../inputs.ts';
import { BANYARD_2017, HUGHES_2019, VENABLES_RIPLEY_2002 } from './sources.ts';
import {
  barLoad,
  kilograms,
  metresPerSecond,
  type BarLoad,
  type Kilograms,
  type MetresPerSecond,
  type Quantity,
} from '#units/quantity.ts';

/** The straight line of bar velocity over bar load, once its two numbers are known. */

/** Change of velocity for a kilogram more on the bar [(m/s)/kg]; below zero. */
export type VelocitySlope = Quantity<'(m/s)/kg'>;

const intercept: FormulaInput = {
  name: 'velocity without load',
  symbol: 'a',
  unit: 'm/s',
  possible: [0.05, 5],
  valid: [0.8, 2.5],
};
const slope: FormulaInput = {
  name: 'slope of the line',
  symbol: 'b',
  unit: '(m/s)/kg',
  possible: [-0.5, -0.0005],
  valid: [-0.05, -0.003],
};
const velocity: FormulaInput = {
  name: 'mean velocity of the rise',
  symbol: 'v',
  unit: 'm/s',
  possible: [0, 3],
  valid: [0, 1.5],
};
const loadOutput: FormulaOutput = { name: 'load', symbol: 'L', unit: 'kg' };
const ONE_PLACE =
  'Any other exercise, machine or gravity: a line holds for the person, the lift and the place where it was measured.';

/** Mean velocity [m/s] with which a load is lifted. */
export const velocityOfLoad = formula(
  {
    id: 'load-velocity/velocity-of-load',
    revision: 1,
    title: 'Mean velocity [m/s] with which a load is lifted',
    equation: 'a + b L',
    inputs: [intercept, slope, load('load', 'L', [0, 1000], [0, 400])],
    output: { name: 'mean velocity of the rise', symbol: 'v', unit: 'm/s' },
    source: BANYARD_2017,
    doesNotKnow: ONE_PLACE,
  },
  (a: MetresPerSecond, b: VelocitySlope, of: BarLoad): MetresPerSecond => metresPerSecond(a + b * of),
);

/** Load [kg] that is lifted at a mean velocity. */
export const loadOfVelocity = formula(
  {
    id: 'load-velocity/load-of-velocity',
    revision: 1,
    title: 'Load [kg] that is lifted at a mean velocity',
    equation: '(v − a) / b',
    inputs: [velocity, intercept, slope],
    conditions: [
      {
        says: 'The velocity must lie below that without load.',
        holds: (v = 0, a = 0) => v < a,
      },
    ],
    output: loadOutput,
    source: BANYARD_2017,
    restsOn: [HUGHES_2019],
    doesNotKnow: `${ONE_PLACE} At the velocity of the last possible repetition it is the maximum; at velocity 0 it is a load that nobody lifts.`,
  },
  (v: MetresPerSecond, a: MetresPerSecond, b: VelocitySlope): BarLoad => barLoad((v - a) / b),
);

/** Standard error [kg] of a load read from the line at a known velocity. */
export const standardErrorOfLoad = formula(
  {
    id: 'load-velocity/standard-error',
    revision: 1,
    title: 'Standard error [kg] of a load read from the line at a known velocity',
    equation: '(s / |b|) √(1 / k + (L − L_mean)² / S_LL)',
    inputs: [
      { name: 'standard deviation about the line', symbol: 's', unit: 'm/s', possible: [0, 1], valid: [0, 0.1] },
      slope,
      { name: 'number of loads', symbol: 'k', unit: '1', possible: [3, 50], valid: [4, 12] },
      load('load read from the line', 'L', [0, 1000], [10, 400]),
      load('mean of the loads', 'L_mean', [0, 1000], [10, 300]),
      {
        name: 'sum of squares of the loads',
        symbol: 'S_LL',
        unit: 'kg²',
        possible: [1, 1e7],
        valid: [100, 1e6],
      },
    ],
    output: { name: 'standard error', symbol: 'SE', unit: 'kg' },
    source: VENABLES_RIPLEY_2002,
    restsOn: [BANYARD_2017],
    doesNotKnow:
      'Whether the line is straight up to the maximum, and what the person does on another day: published errors of the whole method are five to ten times larger. It stands on k − 2 degrees of freedom.',
  },
  (s: MetresPerSecond, b: VelocitySlope, k: number, at: BarLoad, mean: BarLoad, squares: number): Kilograms =>
    kilograms((s / Math.abs(b)) * Math.sqrt(1 / k + (at - mean) ** 2 / squares)),
);

/** Standard error [kg] with the spread of the velocity itself. */
export const standardErrorWithThreshold = formula(
  {
    id: 'load-velocity/standard-error-with-threshold',
    revision: 1,
    title: 'Standard error [kg] with the spread of the velocity itself',
    equation: '√(SE² + (τ / b)²)',
    inputs: [
      load('standard error at a known velocity', 'SE', [0, 1000], [0, 50]),
      { name: 'standard deviation of the velocity', symbol: 'τ', unit: 'm/s', possible: [0, 1], valid: [0, 0.1] },
      slope,
    ],
    output: { name: 'standard error', symbol: 'SE', unit: 'kg' },
    source: VENABLES_RIPLEY_2002,
    restsOn: [BANYARD_2017],
    doesNotKnow: 'Whether the threshold of a group is that of this person.',
  },
  (known: Kilograms, spread: MetresPerSecond, b: VelocitySlope): Kilograms => kilograms(Math.hypot(known, spread / b)),
);
