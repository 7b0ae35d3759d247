/** Least squares of a constant and two columns, by the sums of squares and products around their means. */

export interface ThreeFitted {
  readonly constant: number;
  readonly first: number;
  readonly second: number;
  /** Sum of the squared residuals. */
  readonly residual: number;
}

const meanOf = (values: Float64Array): number => {
  let sum = 0;
  for (const value of values) sum += value;
  return sum / values.length;
};

/** Sum of the products of two columns around their means. */
const products = (a: Float64Array, middleA: number, b: Float64Array, middleB: number): number => {
  let sum = 0;
  for (let place = 0; place < a.length; place += 1) sum += ((a[place] ?? 0) - middleA) * ((b[place] ?? 0) - middleB);
  return sum;
};

/** A column whose own part is a smaller share of its squares than this says nothing of its own. */
const OWN_PART = 1e-10;

/** y = constant + first · a + second · b; null where the columns do not differ enough to tell. */
export const fitThree = (y: Float64Array, a: Float64Array, b: Float64Array): ThreeFitted | null => {
  const [middleY, middleA, middleB] = [meanOf(y), meanOf(a), meanOf(b)];
  const [squareA, squareB] = [products(a, middleA, a, middleA), products(b, middleB, b, middleB)];
  if (!(squareA > OWN_PART * a.length * middleA * middleA)) return null;
  const [both, withA, withB] = [
    products(a, middleA, b, middleB),
    products(a, middleA, y, middleY),
    products(b, middleB, y, middleY),
  ];
  const share = both / squareA;
  const own = squareB - share * both;
  if (!(own > OWN_PART * squareB)) return null;
  const second = (withB - share * withA) / own;
  const first = withA / squareA - share * second;
  const constant = middleY - first * middleA - second * middleB;
  let residual = 0;
  for (let place = 0; place < y.length; place += 1)
    residual += ((y[place] ?? 0) - constant - first * (a[place] ?? 0) - second * (b[place] ?? 0)) ** 2;
  return { constant, first, second, residual };
};
