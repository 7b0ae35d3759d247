import type { FormulaInput } from '../formula.ts';

/** The inputs that the formulas of the hand share. */

type Range = readonly [number, number];

const input =
  (unit: string, widest: Range) =>
  (name: string, symbol: string, possible: Range = widest, valid: Range = possible): FormulaInput => ({
    name,
    symbol,
    unit,
    possible,
    valid,
  });

/** A grip force [N]; the strongest hands measured lie under 1 000 N. */
export const force = input('N', [0, 2000]);
/** A time [s]; a space walk with its preparation is shorter than ten hours. */
export const time = input('s', [0, 36_000]);
/** A share of something, 0 to 1. */
export const share = input('1', [0, 1]);
/** An impulse above the critical force [N s]. */
export const impulse = input('N s', [0, 200_000]);

/** Share of a cycle that is under load. From a hundredth, because it stands in denominators. */
export const duty = input('1', [0.01, 1])('share of the cycle under load', 'd', [0.01, 1], [0.1, 1]);
/** How fast active muscle tires [1/s]; tables of all joints lie in 0.004 to 0.04. */
export const fatigueRate = input('1/s', [0.0005, 0.2])('rate of fatigue', 'F', [0.0005, 0.2], [0.004, 0.04]);
/** How fast tired muscle comes back under load [1/s]. */
export const recoveryRate = input('1/s', [0.00002, 0.1])('rate of recovery', 'R', [0.00002, 0.1], [0.0002, 0.006]);
/** How many times faster it comes back at rest. */
export const restMultiplier = input('1', [1, 100])('recovery at rest over that under load', 'r', [1, 100], [5, 40]);
/** Force asked for as a share of the maximum in the same glove. */
export const target = share('force asked for, of the maximum in the same glove', 'I');
/** Share of the muscle that is tired. */
export const tired = share('share tired at the start', 'M_0');
