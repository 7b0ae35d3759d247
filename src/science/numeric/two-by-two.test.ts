import fc from 'fast-check';
import { expect, test } from 'vitest';
import { add, inverse, multiply, subtract, transpose, type Matrix2 } from './two-by-two.ts';

const IDENTITY: Matrix2 = [1, 0, 0, 1];
const A: Matrix2 = [1, 2, 3, 4];
const B: Matrix2 = [5, 6, 7, 8];

test('the usual matrices add, subtract, turn over and multiply as by hand', () => {
  expect(add(A, B)).toEqual([6, 8, 10, 12]);
  expect(subtract(B, A)).toEqual([4, 4, 4, 4]);
  expect(transpose(A)).toEqual([1, 3, 2, 4]);
  expect(multiply(A, B)).toEqual([19, 22, 43, 50]);
  expect(inverse(A)).toEqual([-2, 1, 1.5, -0.5]);
});

const entry = fc.integer({ min: -20, max: 20 });
const anyMatrix = fc.tuple(entry, entry, entry, entry);

test('a matrix times its inverse is nothing but itself', () => {
  fc.assert(
    fc.property(anyMatrix, ([a, b, c, d]) => {
      fc.pre(a * d !== b * c);
      const product = multiply([a, b, c, d], inverse([a, b, c, d]));
      for (const [place, value] of product.entries()) expect(value).toBeCloseTo(IDENTITY[place] ?? Number.NaN, 9);
    }),
  );
});

test('a product turned over is the product of the turned, the other way round', () => {
  fc.assert(
    fc.property(anyMatrix, anyMatrix, (a, b) => {
      expect(transpose(multiply(a, b))).toEqual(multiply(transpose(b), transpose(a)));
    }),
  );
});

test.each([{ matrix: [1, 2, 2, 4] }, { matrix: [0, 0, 0, 0] }, { matrix: [Number.NaN, 0, 0, 1] }] as const)(
  '$matrix has no inverse and is refused',
  ({ matrix }) => {
    expect(() => inverse(matrix)).toThrow('A matrix without an inverse cannot be inverted.');
  },
);
