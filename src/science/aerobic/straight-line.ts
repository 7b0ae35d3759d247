import { method } from '../method.ts';
import { COMMON_PRACTICE } from '../sources.ts';
import { refused, type Refused } from './estimate.ts';

/** A straight line through measured pairs by ordinary least squares, and how sure it is at a place. */

export interface Pair {
  readonly x: number;
  readonly y: number;
}

export interface Line {
  readonly kind: 'line';
  readonly slope: number;
  readonly intercept: number;
  readonly count: number;
  readonly meanX: number;
  /** Sum of squared distances of x from their mean. */
  readonly spreadX: number;
  /** Residual standard deviation, on count − 2 degrees of freedom. */
  readonly residualSd: number;
  /** Least and largest x that the line was fitted to. */
  readonly from: number;
  readonly to: number;
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

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
      { name: 'x of a pair', symbol: 'x_i', unit: 'any', possible: [-1e6, 1e6], valid: [-1e6, 1e6] },
      { name: 'y of a pair', symbol: 'y_i', unit: 'any', possible: [-1e6, 1e6], valid: [-1e6, 1e6] },
    ],
    outputs: [
      { name: 'slope', symbol: 'b', unit: 'y over x' },
      { name: 'intercept', symbol: 'a', unit: 'of y' },
      { name: 'residual standard deviation', symbol: 's', unit: 'of y' },
    ],
    refuses: ['Fewer than three pairs.', 'Pairs that all have the same x.', 'A number that is not finite.'],
    source: COMMON_PRACTICE,
    doesNotKnow: 'Errors in x, and a curve: look at the residuals.',
  },
  (pairs: readonly Pair[]): Line | Refused => {
    if (pairs.length < 3) return refused(`A line needs three pairs to say how sure it is; there are ${pairs.length}.`);
    const [xs, ys] = [pairs.map(({ x }) => x), pairs.map(({ y }) => y)];
    if (![...xs, ...ys].every((value) => Math.abs(value) <= 1e6))
      return refused('Every number of a pair must be finite and no larger than a million.');
    const [from, to] = [Math.min(...xs), Math.max(...xs)];
    if (from === to) return refused('All pairs have the same x: a line needs at least two different ones.');
    const [meanX, meanY] = [sum(xs) / pairs.length, sum(ys) / pairs.length];
    const spreadX = sum(xs.map((x) => (x - meanX) ** 2));
    const slope = sum(pairs.map(({ x, y }) => (x - meanX) * (y - meanY))) / spreadX;
    if (!Number.isFinite(slope)) return refused('The x of these pairs lie too close together for a line.');
    const residuals = pairs.map(({ x, y }) => y - meanY - slope * (x - meanX));
    const residualSd = Math.sqrt(sum(residuals.map((each) => each ** 2)) / (pairs.length - 2));
    const intercept = meanY - slope * meanX;
    return { kind: 'line', slope, intercept, count: pairs.length, meanX, spreadX, residualSd, from, to };
  },
);

/** y on the line at x. */
export const onLine = ({ slope, intercept }: Line, x: number): number => intercept + slope * x;

/** Standard error of the line itself at x. */
export const lineSd = ({ residualSd, count, meanX, spreadX }: Line, x: number): number =>
  residualSd * Math.sqrt(1 / count + (x - meanX) ** 2 / spreadX);

/** Standard error of one further reading at x. */
export const readingSd = (line: Line, x: number): number => Math.hypot(line.residualSd, lineSd(line, x));

/** x at which the line has y, with the standard error of reading it back on one occasion (to first order). */
export const whereOnLine = (line: Line, y: number): { readonly x: number; readonly sd: number } => {
  const x = (y - line.intercept) / line.slope;
  return { x, sd: readingSd(line, x) / Math.abs(line.slope) };
};
