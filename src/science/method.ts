import type { EntryRecord, FormulaInput, FormulaOutput } from './formula.ts';

/** A computation that is more than one expression: a filter, a fit, a march through a day. It has a record all the same. */

export interface MethodRecord extends EntryRecord {
  /** In the order in which they are used, each readable by itself. */
  readonly equations: readonly string[];
  /** Each number of a series counts as an input: "heart rate of a stage". */
  readonly inputs: readonly FormulaInput[];
  readonly outputs: readonly FormulaOutput[];
  /** What is refused, in the words in which it is refused or a summary of them. */
  readonly refuses: readonly string[];
}

export type Method<Given extends readonly unknown[], Result> = ((...given: Given) => Result) & {
  readonly record: MethodRecord;
};

/** Any method, where only its record matters. */
export type AnyMethod = ((...given: never[]) => unknown) & { readonly record: MethodRecord };

/** Makes a method of a record and a computation; the function is not wrapped. */
export const method = <Given extends readonly unknown[], Result>(
  record: MethodRecord,
  compute: (...given: Given) => Result,
): Method<Given, Result> => Object.assign(compute, { record });
