import type { FormulaInput } from '../formula.ts';

/** What the formulas of this folder take in. Where no valid range is given, every possible value is valid. */

type Range = readonly [number, number];

const input =
  (unit: string, widest: Range) =>
  (name: string, symbol: string, valid: Range = widest, possible: Range = widest): FormulaInput => ({
    name,
    symbol,
    unit,
    possible,
    valid,
  });

/** Oxygen taken up per kilogram, gross; the highest ever measured lie just under 100. */
export const uptake = input('mL/(kg min)', [0, 100]);
/** Oxygen taken up by the whole body. */
export const flow = input('L/min', [0, 10]);
/** Maximal oxygen uptake; less than 7 leaves nothing to train with. */
export const maximalUptake = (valid: Range = [15, 90]): FormulaInput =>
  input('mL/(kg min)', [7, 100])('maximal oxygen uptake', 'VO2_max', valid);
export const beltSpeed = input('m/min', [0, 450]);
/** Metres climbed for each metre of belt: 0.05 is 5 %. Downhill the equations fall below rest, so it is refused. */
export const grade = input('1', [0, 0.4])('grade', 'G', [0, 0.25]);
export const power = input('W', [0, 1500]);
/** Work rate as the old tables have it: one kilogram of force through one metre each minute. */
export const workRate = input('kg m/min', [0, 9000]);
export const heartRateInput = input('1/min', [25, 250]);
export const restingRate = heartRateInput('resting heart rate', 'HR_rest', [35, 100], [25, 130]);
export const maximalRate = heartRateInput('maximal heart rate', 'HR_max', [120, 220], [80, 240]);
export const age = (valid: Range): FormulaInput => input('years', [10, 100])('age', 'age', valid);
export const minutesInput = input('min', [0, 1440]);
/** A fraction of a reserve or of a maximum. */
export const share = input('1', [0, 1]);
/** Mean force of the harness over the body's weight in 1 g. */
export const harnessLoad = (valid: Range = [0.3, 1.1]): FormulaInput =>
  input('1', [0.1, 1.5])('effective harness load over body weight', 'f', valid);
/** Sex where an equation has it as a number. */
export const sexAsNumber = (name: string, range: Range): FormulaInput => input('1', range)(name, 'sex');
