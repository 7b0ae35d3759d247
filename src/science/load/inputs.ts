import type { FormulaInput } from '../formula.ts';

/** The inputs that the formulas of training load share. */

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

/** Load of a session or a day; a rest day is a zero that somebody wrote, a day not reported is no number at all. */
export const arbitrary = input('arbitrary units', [0, 100_000]);
export const minutes = input('min', [0, 1440]);
export const beats = input('1/min', [25, 240]);
/** Rating of exertion from 0 to 10. */
export const rating = input('RPE', [0, 10]);
export const timeConstant = input('d', [0.5, 200]);
/** Performance, in whatever unit it is tested. */
export const performance = input('unit of the test', [-1e6, 1e6]);
/** Performance for each unit of load. */
export const gain = input('unit of the test per arbitrary unit', [1e-9, 1e6]);
export const factor = input('1', [0, 1000]);
