/** Quantiles of many values without sorting them all: each search leaves the values parted for the next. */

const swap = (values: Float64Array, a: number, b: number): void => {
  const kept = values[a] as number;
  values[a] = values[b] as number;
  values[b] = kept;
};

/** Puts the middle of three values at the lower place: no order that occurs in practice is a bad one. */
const placePivot = (values: Float64Array, low: number, high: number): void => {
  const middle = (low + high) >> 1;
  if ((values[middle] as number) < (values[low] as number)) swap(values, middle, low);
  if ((values[high] as number) < (values[low] as number)) swap(values, high, low);
  if ((values[high] as number) < (values[middle] as number)) swap(values, high, middle);
  swap(values, middle, low);
};

/** Hoare’s parting: what lies up to the place that is returned is no larger than what lies behind it. */
const part = (values: Float64Array, low: number, high: number): number => {
  placePivot(values, low, high);
  const pivot = values[low] as number;
  let [left, right] = [low - 1, high + 1];
  for (;;) {
    do right -= 1;
    while ((values[right] as number) > pivot);
    do left += 1;
    while ((values[left] as number) < pivot);
    if (left >= right) return right;
    swap(values, left, right);
  }
};

/** Moves the values so that the one of rank `rank` stands at its place, no larger ones before it, no smaller behind. */
const select = (values: Float64Array, from: number, rank: number): number => {
  let [low, high] = [from, values.length - 1];
  while (low < high) {
    const end = part(values, low, high);
    if (rank <= end) high = end;
    else low = end + 1;
  }
  return values[rank] as number;
};

const leastFrom = (values: Float64Array, from: number): number => {
  let least = Infinity;
  for (let place = from; place < values.length; place += 1) least = Math.min(least, values[place] as number);
  return least;
};

/**
 * Quantiles at ascending levels from 0 to 1, straight lines between neighbours (the seventh definition of Hyndman and Fan
 * 1996). The values, one at least, are left in another order.
 */
export const takeQuantiles = (values: Float64Array, levels: readonly number[]): readonly number[] => {
  let from = 0;
  return levels.map((level) => {
    const rank = level * (values.length - 1);
    const whole = Math.floor(rank);
    const lower = select(values, from, whole);
    from = whole;
    return rank > whole ? lower + (rank - whole) * (leastFrom(values, whole + 1) - lower) : lower;
  });
};
