/** Matrices of two rows and columns, row by row. */
export type Matrix2 = readonly [number, number, number, number];
export type Vector2 = readonly [number, number];

export const add = (a: Matrix2, b: Matrix2): Matrix2 => [a[0] + b[0], a[1] + b[1], a[2] + b[2], a[3] + b[3]];
export const subtract = (a: Matrix2, b: Matrix2): Matrix2 => [a[0] - b[0], a[1] - b[1], a[2] - b[2], a[3] - b[3]];
export const transpose = ([a, b, c, d]: Matrix2): Matrix2 => [a, c, b, d];
export const multiply = (a: Matrix2, b: Matrix2): Matrix2 => [
  a[0] * b[0] + a[1] * b[2],
  a[0] * b[1] + a[1] * b[3],
  a[2] * b[0] + a[3] * b[2],
  a[2] * b[1] + a[3] * b[3],
];

/** Refuses a matrix that has no inverse. */
export const inverse = ([a, b, c, d]: Matrix2): Matrix2 => {
  const determinant = a * d - b * c;
  if (!(Math.abs(determinant) > 0)) throw new RangeError('A matrix without an inverse cannot be inverted.');
  return [d / determinant, -b / determinant, -c / determinant, a / determinant];
};
