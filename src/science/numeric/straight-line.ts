/** The line of least squares through points, and how far the points lie from it. */
export interface StraightLine {
  readonly kind: 'line';
  readonly intercept: number;
  readonly slope: number;
  /** Part of the variance of y that the line explains; 0 where y does not vary. */
  readonly determination: number;
  /** Of the points about the line, with two degrees of freedom spent on it. */
  readonly residualSd: number;
  readonly count: number;
  readonly meanX: number;
  /** Of the distances of x from its mean. */
  readonly sumOfSquaresX: number;
}

export type LineFit = StraightLine | { readonly kind: 'none'; readonly reason: string };

type PointOfLine = readonly [x: number, y: number];

const LEAST_POINTS = 3;

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;
const sumOf = (points: readonly PointOfLine[], of: (x: number, y: number) => number): number =>
  points.reduce((sum, [x, y]) => sum + of(x, y), 0);

/** Ordinary least squares of y on x. */
export const straightLine = (points: readonly PointOfLine[]): LineFit => {
  if (points.length < LEAST_POINTS)
    return { kind: 'none', reason: `A line with an error needs at least three points; there are ${points.length}.` };
  const [meanX, meanY] = [mean(points.map(([x]) => x)), mean(points.map(([, y]) => y))];
  const sumOfSquaresX = sumOf(points, (x) => (x - meanX) ** 2);
  if (!(sumOfSquaresX > 0)) return { kind: 'none', reason: 'All points stand at the same place: no line is told.' };
  const slope = sumOf(points, (x, y) => (x - meanX) * (y - meanY)) / sumOfSquaresX;
  const intercept = meanY - slope * meanX;
  const unexplained = sumOf(points, (x, y) => (y - (intercept + slope * x)) ** 2);
  const whole = sumOf(points, (_, y) => (y - meanY) ** 2);
  return {
    kind: 'line',
    intercept,
    slope,
    determination: whole > 0 ? 1 - unexplained / whole : 0,
    residualSd: Math.sqrt(unexplained / (points.length - 2)),
    count: points.length,
    meanX,
    sumOfSquaresX,
  };
};
