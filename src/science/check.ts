import { callWith, type AnyFormula, type Source } from './formula.ts';
import type { AnyMethod } from './method.ts';

interface Printed {
  readonly printed: number;
  readonly within: number;
  /** Why this tolerance: "printed to one decimal". */
  readonly because: string;
  readonly source: Source;
}

/** A printed value that a formula must reproduce. It stands in `name.checks.ts` beside `name.ts`. */
export interface FormulaCheck extends Printed {
  readonly kind: 'formula';
  readonly formula: AnyFormula;
  readonly given: readonly number[];
}

/** A printed value of a method: `title` says which of its results, of what. */
export interface MethodCheck extends Printed {
  readonly kind: 'method';
  readonly method: AnyMethod;
  readonly title: string;
  readonly compute: () => number;
}

/** A printed value of neither: a table against a formula, a whole reckoning, a law of common practice. */
export interface SeriesCheck extends Printed {
  readonly kind: 'series';
  readonly title: string;
  readonly compute: () => number;
}

export type Check = FormulaCheck | MethodCheck | SeriesCheck;

/** What a check gives today, and whether it holds. */
export const recompute = (check: Check): { readonly value: number; readonly holds: boolean } => {
  const value = check.kind === 'formula' ? callWith(check.formula, check.given) : check.compute();
  return { value, holds: Math.abs(value - check.printed) <= check.within };
};

export type PrintedRow = readonly [formula: AnyFormula, given: readonly number[], printed: number];

/** Checks of formulas that share their tolerance, its reason and where they were printed. */
export const printedRows = (
  source: Source,
  within: number,
  because: string,
  rows: readonly PrintedRow[],
): readonly FormulaCheck[] =>
  rows.map(([formula, given, printed]) => ({ kind: 'formula', formula, given, printed, within, because, source }));

export type PrintedResult = readonly [title: string, compute: () => number, printed: number];

/** Checks of one method that share their tolerance, its reason and where they were printed. */
export const printedResults = (
  method: AnyMethod,
  source: Source,
  within: number,
  because: string,
  results: readonly PrintedResult[],
): readonly MethodCheck[] =>
  results.map(([title, compute, printed]) => ({
    kind: 'method',
    method,
    title,
    compute,
    printed,
    within,
    because,
    source,
  }));
