import { callWith, type AnyFormula } from './formula.ts';

/** A curve as numbers: whoever draws it decides how it looks. */

export interface Axis {
  readonly name: string;
  readonly unit: string;
}

export interface Curve {
  /** What sets this curve apart from the others of its plot: "grade 5 %". */
  readonly label: string;
  readonly points: readonly (readonly [x: number, y: number])[];
  /** Single values, as of a study or a table, not joined by a line. */
  readonly scattered?: boolean;
  /** Lower and upper bound at the same x as the points. */
  readonly band?: readonly (readonly [low: number, high: number])[];
}

export interface Plot {
  /** What to see in it, in a sentence. */
  readonly says: string;
  readonly x: Axis;
  readonly y: Axis;
  /** Computed when it is drawn, by the formulas themselves. */
  readonly curves: () => readonly Curve[];
}

const POINTS = 61;

/** Evenly spaced values, both ends with them. */
export const spaced = (from: number, to: number, count: number = POINTS): readonly number[] =>
  Array.from({ length: count }, (_, place) => from + ((to - from) * place) / (count - 1));

/** The curve of a formula while one of its inputs runs: `given` makes the inputs of x. */
export const curveOf = (
  label: string,
  formula: AnyFormula,
  [from, to]: readonly [number, number],
  given: (x: number) => readonly number[],
): Curve => ({ label, points: spaced(from, to).map((x) => [x, callWith(formula, given(x))] as const) });
