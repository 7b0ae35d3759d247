import type { Plot } from './plot.ts';

/**
 * A formula is a small paper: a plain function with a record of its meaning, units, ranges, source and limits.
 * Outside *possible* a value is refused where it is typed; outside *valid* it is computed and flagged.
 */

/** How far the source was checked by whoever wrote the formula down. */
export type SourceStatus = 'seen' | 'from memory' | 'common practice' | 'our own design';

export interface Source {
  /** Authors, year, title, where; or "common practice, no source". */
  readonly text: string;
  readonly status: SourceStatus;
  readonly doi?: string;
  /** What was seen and what was not: "the equation seen in several independent pages, the paper not". */
  readonly note?: string;
}

export interface FormulaInput {
  readonly name: string;
  readonly symbol: string;
  readonly unit: string;
  readonly possible: readonly [number, number];
  readonly valid: readonly [number, number];
}

export interface FormulaOutput {
  readonly name: string;
  readonly symbol: string;
  readonly unit: string;
}

/** What inputs must satisfy together, where each alone is possible. */
export interface Condition {
  /** "The maximal heart rate lies above the resting one." */
  readonly says: string;
  readonly holds: (...given: readonly number[]) => boolean;
}

/** How far the result lies from a measurement, as published. */
export interface StandardError {
  readonly value: number;
  readonly unit: string;
  /** Of whom, and where it was printed. */
  readonly of: string;
}

/** What every entry of the textbook says of itself, be it a formula, a method or a table. */
export interface EntryRecord {
  /** Path-like: 'one-rep-max/wathan'. Never changes. */
  readonly id: string;
  /** Goes up when a result moves. */
  readonly revision: number;
  readonly title: string;
  readonly source: Source;
  /** The paper was seen; this equation, or the constants in it, was not. */
  readonly equationFromMemory?: true;
  /** Further papers that the numbers or the choice of form rest on. */
  readonly restsOn?: readonly Source[];
  readonly doesNotKnow: string;
  /** A curve, where it explains better than the equation. */
  readonly plot?: Plot;
}

/** How far an entry was checked, where its equation is another matter than its paper. */
export const checkedAs = (record: EntryRecord): string =>
  record.equationFromMemory
    ? `paper seen, ${'equation' in record || 'equations' in record ? 'equation' : 'figures'} from memory`
    : record.source.status;

export interface FormulaRecord extends EntryRecord {
  /** Readable by itself: 'bar + added'. */
  readonly equation: string;
  readonly inputs: readonly FormulaInput[];
  readonly output: FormulaOutput;
  readonly conditions?: readonly Condition[];
  readonly standardError?: StandardError;
}

export type Formula<Given extends readonly number[], Result extends number> = ((...given: Given) => Result) & {
  readonly record: FormulaRecord;
};

/** Any formula, where only its record and its numbers matter. */
export type AnyFormula = ((...given: never[]) => number) & { readonly record: FormulaRecord };

/** Makes a formula of a record and a computation. The function is not wrapped: a call costs what a call costs. */
export const formula = <Given extends readonly number[], Result extends number>(
  record: FormulaRecord,
  compute: (...given: Given) => Result,
): Formula<Given, Result> => Object.assign(compute, { record });

/** Calls a formula with plain numbers: the brands exist only for the compiler. */
export const callWith = (computed: AnyFormula, given: readonly number[]): number =>
  (computed as unknown as (...given: readonly number[]) => number)(...given);
