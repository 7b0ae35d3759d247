import type { FormulaInput } from '../formula.ts';

/** The inputs that the formulas of the return share. */

type Range = FormulaInput['possible'];

const input =
  (unit: string, widest: Range) =>
  (name: string, symbol: string, possible: Range = widest, valid: Range = possible): FormulaInput => ({
    name,
    symbol,
    unit,
    possible,
    valid,
  });

/** Percent of the value before flight; 100 is fully recovered, more is allowed. */
export const percent = input('%', [0, 200]);
/** Days since landing, or a time constant in days. */
export const days = input('d', [0, 2000]);
/** A measurement whose unit does not matter since it is compared with its like. */
export const measured = input('unit of the test', [0.001, 100_000]);
/** A lean of the body from the vertical, forwards positive [°]. */
export const lean = input('°', [-15, 15]);
/** A number of things, from one. */
export const number = input('1', [1, 100]);
