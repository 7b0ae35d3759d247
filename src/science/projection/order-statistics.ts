/**
 * Quantiles of many values without sorting them: values are counted into buckets of one width, and only those in a bucket
 * that holds a wanted rank are sorted. Whatever the values, the answer is that of sorting; only the time differs.
 */

const BUCKETS = 2048;

/** The bucket of each value; a larger value never lies in a lower one. Where the range is endless, all lie in the first. */
const bucketsOver = (values: Float64Array): ((value: number) => number) => {
  let [low, high] = [Infinity, -Infinity];
  for (let place = 0; place < values.length; place += 1) {
    const value = values[place] as number;
    if (value < low) low = value;
    if (value > high) high = value;
  }
  const scale = (BUCKETS - 1) / (high - low);
  return (value) => ((value - low) * scale) | 0;
};

interface Chosen {
  /** 1 for each bucket that holds a wanted rank. */
  readonly isWanted: Uint8Array;
  /** Number of values in them. */
  readonly size: number;
  /** Where each rank stands among those values alone. */
  readonly places: readonly number[];
}

const choose = (counts: Int32Array, ranks: readonly number[]): Chosen => {
  const isWanted = new Uint8Array(BUCKETS);
  let [bucket, before, kept] = [0, 0, 0];
  const places = ranks.map((rank) => {
    // The counts add up to the number of values, and every rank lies below it.
    while (rank >= before + (counts[bucket] as number)) {
      const count = counts[bucket] as number;
      before += count;
      kept += isWanted[bucket] === 1 ? count : 0;
      bucket += 1;
    }
    isWanted[bucket] = 1;
    return kept + rank - before;
  });
  return { isWanted, size: kept + (counts[bucket] as number), places };
};

/** The values at ascending ranks, the first of which is 0. */
const atRanks = (values: Float64Array, ranks: readonly number[]): readonly number[] => {
  const bucketOf = bucketsOver(values);
  const counts = new Int32Array(BUCKETS);
  for (let place = 0; place < values.length; place += 1) {
    const bucket = bucketOf(values[place] as number);
    counts[bucket] = (counts[bucket] as number) + 1;
  }
  const { isWanted, size, places } = choose(counts, ranks);
  const few = new Float64Array(size);
  let filled = 0;
  for (let place = 0; place < values.length; place += 1) {
    const value = values[place] as number;
    if (isWanted[bucketOf(value)] === 0) continue;
    few[filled] = value;
    filled += 1;
  }
  few.sort();
  return places.map((place) => few[place] as number);
};

/**
 * Quantiles at ascending levels from 0 to 1 of one value or more, straight lines between neighbours: the seventh definition of
 * Hyndman and Fan (1996).
 */
export const quantilesOf = (values: Float64Array, levels: readonly number[]): readonly number[] => {
  const exact = levels.map((level) => level * (values.length - 1));
  const found = atRanks(
    values,
    exact.flatMap((rank) => [Math.floor(rank), Math.ceil(rank)]),
  );
  return exact.map((rank, place) => {
    // Two neighbours were asked for each level.
    const [lower, upper] = [found[2 * place] as number, found[2 * place + 1] as number];
    return lower + (rank - Math.floor(rank)) * (upper - lower);
  });
};
