import type { FormulaInput } from '../formula.ts';

/** Why values cannot be, one sentence for each that lies outside what its input says is possible. */
export const impossible = (given: readonly (readonly [FormulaInput, number])[]): readonly string[] =>
  given.flatMap(([{ name, unit, possible }, value]) => {
    const [low, high] = possible;
    return value >= low && value <= high ? [] : [`${name} must lie in ${low} to ${high} ${unit}; it is ${value}.`];
  });

export interface Refused {
  readonly kind: 'refused';
  readonly reason: string;
}

export const refused = (reasons: readonly string[]): Refused => ({ kind: 'refused', reason: reasons.join(' ') });
