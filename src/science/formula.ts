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

export interface FormulaRecord {
  /** Path-like: 'one-rep-max/wathan'. Never changes. */
  readonly id: string;
  /** Goes up when a result moves. */
  readonly revision: number;
  readonly title: string;
  /** Readable by itself: 'bar + added'. */
  readonly equation: string;
  readonly inputs: readonly FormulaInput[];
  readonly output: { readonly name: string; readonly symbol: string; readonly unit: string };
  readonly source: Source;
  /** Further papers that the numbers or the choice of form rest on. */
  readonly restsOn?: readonly Source[];
  readonly doesNotKnow: string;
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

/** A printed value of something that is no single formula: a filter, a reckoning, a search for a root. */
export interface SeriesCheck extends Printed {
  readonly kind: 'series';
  readonly title: string;
  readonly compute: () => number;
}

export type Check = FormulaCheck | SeriesCheck;

/** What a check gives today, and whether it holds. */
export const recompute = (check: Check): { readonly value: number; readonly holds: boolean } => {
  const value = check.kind === 'series' ? check.compute() : callWith(check.formula, check.given);
  return { value, holds: Math.abs(value - check.printed) <= check.within };
};

// Any formula takes plain numbers at run time: the brands exist only for the compiler.
const callWith = (computed: AnyFormula, given: readonly number[]): number =>
  (computed as unknown as (...given: readonly number[]) => number)(...given);

/** The inputs of a call that lie outside their valid range, as sentences. */
export const outsideValidRange = (record: FormulaRecord, given: readonly number[]): readonly string[] =>
  record.inputs.flatMap((input, place) => {
    const value = given[place];
    if (value === undefined) return [`${input.name} is missing`];
    const [low, high] = input.valid;
    return value >= low && value <= high
      ? []
      : [`${input.name} ${round(value)} ${input.unit} is outside ${low} to ${high}`];
  });

/** Throws a sentence where an input cannot be. For entry points, not for loops. */
export const requirePossible = (record: FormulaRecord, given: readonly number[]): void => {
  for (const [place, input] of record.inputs.entries()) {
    const value = given[place];
    const [low, high] = input.possible;
    if (value === undefined || !(value >= low && value <= high))
      throw new RangeError(
        `${record.title}: ${input.name} must lie in ${low} to ${high} ${input.unit}; it is ${value}.`,
      );
  }
};

const round = (value: number): string => String(Number(value.toPrecision(6)));
