import { impossibilities, outsideValidRange } from '../evaluate.ts';
import type { FormulaRecord } from '../formula.ts';
import type { MethodRecord } from '../method.ts';

/** What a method of this folder gives: a number with its standard deviation and what to be careful about, or why not. */
export interface Estimate {
  readonly kind: 'estimate';
  readonly value: number;
  readonly sd: number;
  readonly cautions: readonly string[];
}

export interface Refused {
  readonly kind: 'refused';
  readonly reason: string;
}

export type Estimated = Estimate | Refused;

export const refused = (reason: string): Refused => ({ kind: 'refused', reason });

/** All refusals among these as one: a person puts everything right at once. */
export const refusedTogether = (...given: readonly ({ readonly kind: string } | Refused | undefined)[]): Refused =>
  refused(given.flatMap((each) => (each && 'reason' in each ? [each.reason] : [])).join(' '));

/** Every reason why a method cannot take these numbers, in the order of its inputs, as one text; none if it can. */
export const refusalOf = (record: Pick<MethodRecord, 'inputs'>, given: readonly number[]): Refused | undefined => {
  const reasons = impossibilities(record, given);
  return reasons.length > 0 ? refused(reasons.join(' ')) : undefined;
};

/** What of a formula's inputs lies outside its validated range, as sentences. */
export const cautionsOf = (formula: { readonly record: FormulaRecord }, given: readonly number[]): readonly string[] =>
  outsideValidRange(formula.record, given).map((caution) => `${caution}.`);

/** A sentence if something is so. */
export const cautionIf = (so: boolean, caution: string): readonly string[] => (so ? [caution] : []);
