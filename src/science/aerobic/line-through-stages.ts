import { method } from '../method.ts';
import { straightLine, type StraightLine } from '../numeric/straight-line.ts';
import { COMMON_PRACTICE } from '../sources.ts';
import { refusalOf, refused, type Refused } from './estimate.ts';

/** A straight line through measured pairs by ordinary least squares, and how sure it is at a place. */

export interface Pair {
  readonly x: number;
  readonly y: number;
}

export interface Line extends StraightLine {
  /** Least and largest x that the line was fitted to. */
  readonly from: number;
  readonly to: number;
}

/** Larger numbers are no measurement of this folder. */
const ANY = [-1e6, 1e6] as const;

/** The line of least squares through three or more pairs. */
export const lineOfLeastSquares = method(
  {
    id: 'straight-line/least-squares',
    revision: 1,
    title: 'Straight line of least squares with its residual standard deviation',
    equations: [
      'b = sum_(i=1)^n (x_i − x_mean) · (y_i − y_mean) / S_xx',
      'a = y_mean − b · x_mean',
      'S_xx = sum_(i=1)^n (x_i − x_mean)^2',
      's = √(sum_(i=1)^n (y_i − a − b · x_i)^2 / (n − 2))',
    ],
    inputs: [
      { name: 'x of a pair', symbol: 'x_i', unit: 'any', possible: ANY, valid: ANY },
      { name: 'y of a pair', symbol: 'y_i', unit: 'any', possible: ANY, valid: ANY },
    ],
    outputs: [
      { name: 'slope', symbol: 'b', unit: 'y over x' },
      { name: 'intercept', symbol: 'a', unit: 'of y' },
      { name: 'residual standard deviation', symbol: 's', unit: 'of y' },
    ],
    refuses: [
      'Fewer than three pairs.',
      'Pairs that all have the same x.',
      'A number that is not finite, or larger than a million.',
    ],
    source: COMMON_PRACTICE,
    doesNotKnow: 'Errors in x, and a curve: look at the residuals.',
  },
  (pairs: readonly Pair[]): Line | Refused => {
    const reasons = pairs.flatMap(({ x, y }, place) => {
      const reason = refusalOf(lineOfLeastSquares.record, [x, y])?.reason;
      return reason ? [`Pair ${place + 1}: ${reason}`] : [];
    });
    if (reasons.length > 0) return refused(reasons.join(' '));
    const xs = pairs.map(({ x }) => x);
    const line = straightLine(pairs.map(({ x, y }) => [x, y]));
    if (line.kind === 'none') return refused(line.reason);
    return { ...line, from: Math.min(...xs), to: Math.max(...xs) };
  },
);

/** y on the line at x. */
export const onLine = ({ slope, intercept }: Line, x: number): number => intercept + slope * x;

/** Standard error of the line itself at x. */
export const lineSd = ({ residualSd, count, meanX, sumOfSquaresX }: Line, x: number): number =>
  residualSd * Math.sqrt(1 / count + (x - meanX) ** 2 / sumOfSquaresX);

/** Standard error of one further reading at x. */
export const readingSd = (line: Line, x: number): number => Math.hypot(line.residualSd, lineSd(line, x));

/** x at which the line has y, with the standard error of reading it back on one occasion (to first order). */
export const whereOnLine = (line: Line, y: number): { readonly x: number; readonly sd: number } => {
  const x = (y - line.intercept) / line.slope;
  return { x, sd: readingSd(line, x) / Math.abs(line.slope) };
};
