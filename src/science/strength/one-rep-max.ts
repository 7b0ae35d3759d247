import { count, load as loadInput } from '../inputs.ts';
import { formula, type AnyFormula, type Formula, type FormulaRecord } from '../formula.ts';
import {
  multiplierBrzycki,
  multiplierBrzyckiRounded,
  multiplierEpley,
  multiplierLander,
  multiplierLombardi,
  multiplierMayhew,
  multiplierOConner,
  multiplierWathan,
} from './repetition-multiplier.ts';
import { barLoad, type BarLoad, type Fraction, type Repetitions } from '#units/quantity.ts';

/**
 * One-repetition maximum of a set, each variant named by its author. One rule holds for all: a set of which no more
 * than one repetition was possible *is* the maximum. It takes loads weighed in 1 g: in flight, take the share of body
 * weight off first.
 */

type Multiplier = Formula<[Repetitions], Fraction>;

const authorOf = (multiplier: AnyFormula): string => multiplier.record.title.split(', ')[1] as string;

/** A sum outside brackets is bracketed before it is multiplied. */
const asFactor = (equation: string): string => (/^[^(]* [+−] /.test(equation) ? `(${equation})` : equation);

const record = (multiplier: Multiplier): FormulaRecord => ({
  ...multiplier.record,
  id: multiplier.record.id.replace('repetition-multiplier', 'one-rep-max'),
  title: `One-repetition maximum [kg] of a set, ${authorOf(multiplier)}`,
  equation: `w where n_eff ≤ 1, else w · ${asFactor(multiplier.record.equation.replaceAll(/\bn\b/g, 'n_eff'))}`,
  inputs: [
    loadInput('load', 'w'),
    ...multiplier.record.inputs.map((input) => count('effective repetitions', 'n_eff', input.possible, input.valid)),
  ],
  output: { name: 'one-repetition maximum', symbol: '1RM', unit: 'kg' },
});

const oneRepMax = (multiplier: Multiplier): Formula<[BarLoad, Repetitions], BarLoad> =>
  formula(record(multiplier), (load: BarLoad, effective: Repetitions): BarLoad =>
    effective <= 1 ? load : barLoad(load * multiplier(effective)),
  );

export const oneRepMaxEpley = oneRepMax(multiplierEpley);
export const oneRepMaxBrzycki = oneRepMax(multiplierBrzycki);
export const oneRepMaxBrzyckiRounded = oneRepMax(multiplierBrzyckiRounded);
export const oneRepMaxLombardi = oneRepMax(multiplierLombardi);
export const oneRepMaxMayhew = oneRepMax(multiplierMayhew);
export const oneRepMaxOConner = oneRepMax(multiplierOConner);
/** The one that loads are made from. */
export const oneRepMaxWathan = oneRepMax(multiplierWathan);
export const oneRepMaxLander = oneRepMax(multiplierLander);
