import type { Random } from '../random.ts';

/**
 * Rows of standard normal values by the ziggurat of Marsaglia and Tsang (2000) as Doornik (2005) mended it: the layer and the
 * place in it come from bits of their own. Three times as fast as a logarithm and a cosine for each.
 */

const LAYERS = 128;
/** Where the tail begins, and the area of each layer, for 128 layers. */
const [TAIL, AREA] = [3.442619855899, 9.91256303526217e-3];

const unnormed = (x: number): number => Math.exp(-0.5 * x * x);

/** Right ends of the layers, from the base up; the base reaches past the tail by its area. */
const ENDS = ((): Float64Array => {
  const ends = new Float64Array(LAYERS + 1);
  ends[0] = AREA / unnormed(TAIL);
  let end = TAIL;
  for (let layer = 1; layer < LAYERS; layer += 1) {
    ends[layer] = end;
    end = Math.sqrt(-2 * Math.log(AREA / end + unnormed(end)));
  }
  return ends;
})();

/** The part of each layer that lies under the curve for sure. */
const INSIDE = ENDS.map((end, layer) => (ENDS[layer + 1] ?? 0) / end);

/** One bit in 2³¹ of a layer is finer than any quantile of draws. */
const HALF_RANGE = 2 ** -31;

/** A value beyond the tail’s beginning, by Marsaglia’s exponential rejection. */
const beyond = ({ uniform }: Random): number => {
  for (;;) {
    // 1 − u keeps the logarithm from zero.
    const x = -Math.log(1 - uniform()) / TAIL;
    if (-2 * Math.log(1 - uniform()) >= x * x) return TAIL + x;
  }
};

/** Whether a value in the corner of a layer lies under the curve. */
const isUnder = (value: number, layer: number, uniform: number): boolean => {
  // Each layer has an end, and the one above it: the top ends at zero.
  const outer = Math.exp(-0.5 * ((ENDS[layer] as number) ** 2 - value * value));
  const inner = Math.exp(-0.5 * ((ENDS[layer + 1] as number) ** 2 - value * value));
  return inner + uniform * (outer - inner) < 1;
};

/** What becomes of a place that is not inside for sure; nothing where it is thrown away. */
const atTheEdge = (random: Random, place: number, layer: number): number | null => {
  if (layer === 0) return place < 0 ? -beyond(random) : beyond(random);
  const value = place * (ENDS[layer] as number);
  return isUnder(value, layer, random.uniform()) ? value : null;
};

/** Fills a row with standard normal values. The first values are the same however long the row is. */
export const fillNormals = (random: Random, into: Float64Array): void => {
  const { bits } = random;
  let at = 0;
  while (at < into.length) {
    const place = (bits() | 0) * HALF_RANGE;
    const layer = bits() & (LAYERS - 1);
    if (Math.abs(place) < (INSIDE[layer] as number)) {
      into[at] = place * (ENDS[layer] as number);
      at += 1;
    } else {
      const value = atTheEdge(random, place, layer);
      if (value !== null) {
        into[at] = value;
        at += 1;
      }
    }
  }
};
