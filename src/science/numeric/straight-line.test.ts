import fc from 'fast-check';
import { expect, test } from 'vitest';
import { straightLine } from './straight-line.ts';

const lineOf = (points: readonly (readonly [number, number])[]) => {
  const found = straightLine(points);
  if (found.kind === 'none') throw new Error(found.reason);
  return found;
};

test('three points worked by hand', () => {
  // Means 2 and 4; sum of squares 2; slope 3 / 2; residuals 0.5, −1, 0.5.
  const line = lineOf([
    [1, 3],
    [2, 3],
    [3, 6],
  ]);
  expect(line).toMatchObject({ intercept: 1, slope: 1.5, count: 3, meanX: 2, sumOfSquaresX: 2 });
  expect(line.residualSd).toBeCloseTo(Math.sqrt(1.5), 12);
  expect(line.determination).toBeCloseTo(0.75, 12);
});

test('points of one height are a level line that explains nothing', () => {
  expect(
    lineOf([
      [1, 5],
      [2, 5],
      [4, 5],
    ]),
  ).toMatchObject({ intercept: 5, slope: 0, determination: 0, residualSd: 0 });
});

test('too few points, or points above one another, are no line', () => {
  expect(
    straightLine([
      [1, 2],
      [2, 3],
    ]),
  ).toEqual({ kind: 'none', reason: 'A line with an error needs at least three points; there are 2.' });
  expect(
    straightLine([
      [1, 2],
      [1, 3],
      [1, 4],
    ]),
  ).toEqual({ kind: 'none', reason: 'All points stand at the same place: no line is told.' });
});

const anyPoints = fc
  .uniqueArray(fc.integer({ min: -50, max: 50 }), { minLength: 3, maxLength: 12 })
  .chain((places) =>
    fc
      .array(fc.integer({ min: -50, max: 50 }), { minLength: places.length, maxLength: places.length })
      .map((heights) => places.map((x, place) => [x, heights[place] ?? 0] as const)),
  );

test('a line passes through the means, and its distances from the points add up to nothing', () => {
  fc.assert(
    fc.property(anyPoints, (points) => {
      const { intercept, slope, meanX } = lineOf(points);
      const distances = points.map(([x, y]) => y - intercept - slope * x);
      const meanY = points.reduce((sum, [, y]) => sum + y, 0) / points.length;
      expect(intercept + slope * meanX).toBeCloseTo(meanY, 9);
      expect(distances.reduce((sum, each) => sum + each, 0)).toBeCloseTo(0, 8);
      expect(distances.reduce((sum, each, place) => sum + each * (points[place]?.[0] ?? 0), 0)).toBeCloseTo(0, 6);
    }),
  );
});

test('no other line lies nearer', () => {
  fc.assert(
    fc.property(anyPoints, fc.double({ min: -1, max: 1, noNaN: true }), (points, turn) => {
      const { intercept, slope, residualSd, count } = lineOf(points);
      const squares = (a: number, b: number): number => points.reduce((sum, [x, y]) => sum + (y - a - b * x) ** 2, 0);
      expect(squares(intercept + turn, slope)).toBeGreaterThanOrEqual(squares(intercept, slope) - 1e-9);
      expect(squares(intercept, slope + turn)).toBeGreaterThanOrEqual(squares(intercept, slope) - 1e-9);
      expect(residualSd ** 2 * (count - 2)).toBeCloseTo(squares(intercept, slope), 6);
    }),
  );
});

test('the explained part of the variance lies between nothing and all of it', () => {
  fc.assert(
    fc.property(anyPoints, (points) => {
      const { determination } = lineOf(points);
      expect(determination).toBeGreaterThanOrEqual(-1e-12);
      expect(determination).toBeLessThanOrEqual(1 + 1e-12);
    }),
  );
});
