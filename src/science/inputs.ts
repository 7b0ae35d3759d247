import type { FormulaInput } from './formula.ts';

/** The inputs that many formulas share. Where a range is not given, every possible value is valid. */

type Range = readonly [number, number];

/** Heaviest load that a person or a machine of this trade handles, with room [kg]. */
const HEAVIEST_LOAD = 1000;

const input =
  (unit: string, widest: Range) =>
  (name: string, symbol: string, possible: Range = widest, valid: Range = possible): FormulaInput => ({
    name,
    symbol,
    unit,
    possible,
    valid,
  });

/** A load on a bar or of a machine [kg]. */
export const load = input('kg', [0, HEAVIEST_LOAD]);
/** Mass of a person [kg]; adults between 40 and 150 kg are what the segment tables were made for. */
export const bodyMass = (symbol = 'W'): FormulaInput =>
  input('kg', [25, 300])('body mass', symbol, [25, 300], [40, 150]);
/** A pure ratio. */
export const ratio = input('1', [0, 1]);
/** Repetitions; halves occur where effort is rated in half steps. */
export const count = input('repetitions', [0, 100]);
/** An angle from the vertical [°]. */
export const angle = input('degrees', [0, 180]);
/** A length as a fraction of stature. */
export const length = input('stature', [0, 1]);
