/** Least squares of a constant and two columns, one made square to the other before anything is solved. */

export interface ThreeFitted {
  readonly constant: number;
  readonly first: number;
  readonly second: number;
  /** Sum of the squared residuals. */
  readonly residual: number;
}

const dot = (a: Float64Array, b: Float64Array): number => {
  let sum = 0;
  for (let place = 0; place < a.length; place += 1) sum += (a[place] ?? 0) * (b[place] ?? 0);
  return sum;
};

const meanOf = (values: Float64Array): number => values.reduce((sum, value) => sum + value, 0) / values.length;

const without = (values: Float64Array, by: number, of: Float64Array): Float64Array =>
  values.map((value, place) => value - by * (of[place] ?? 0));

/** A column whose own part is smaller than this share of it says nothing of its own. */
const OWN_PART = 1e-10;

/** y = constant + first · a + second · b; null where the columns do not differ enough to tell. */
export const fitThree = (y: Float64Array, a: Float64Array, b: Float64Array): ThreeFitted | null => {
  const [middleY, middleA, middleB] = [meanOf(y), meanOf(a), meanOf(b)];
  const [centredY, centredA, centredB] = [
    y.map((value) => value - middleY),
    a.map((value) => value - middleA),
    b.map((value) => value - middleB),
  ];
  const squareA = dot(centredA, centredA);
  if (!(squareA > OWN_PART * dot(a, a))) return null;
  const share = dot(centredB, centredA) / squareA;
  const own = without(centredB, share, centredA);
  const squareOwn = dot(own, own);
  if (!(squareOwn > OWN_PART * dot(b, b))) return null;
  const second = dot(own, centredY) / squareOwn;
  const first = dot(centredA, centredY) / squareA - share * second;
  const residuals = without(without(centredY, first, centredA), second, centredB);
  return {
    constant: middleY - first * middleA - second * middleB,
    first,
    second,
    residual: dot(residuals, residuals),
  };
};
