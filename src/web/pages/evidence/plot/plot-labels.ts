/** Names of curves at their ends, pushed apart where curves end close together. */

const LONGEST_LINE = 30;

/** A label in lines that fit beside the plot. */
export const labelLines = (label: string): readonly string[] => {
  const lines: string[] = [];
  for (const word of label.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && `${last} ${word}`.length <= LONGEST_LINE) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
};

export interface WantedPlace {
  readonly at: number;
  readonly height: number;
}

/**
 * Middles of labels as near to where they are wanted as they go without touching, between top and bottom: first each is
 * pushed down by the one above it, then all that fell out at the bottom are pushed back up.
 */
export const placedApart = (wanted: readonly WantedPlace[], top: number, bottom: number): readonly number[] => {
  const order = wanted.map((_, place) => place).toSorted((a, b) => (wanted[a]?.at ?? 0) - (wanted[b]?.at ?? 0));
  const middles = wanted.map(({ at }) => at);
  const halfOf = (place: number): number => (wanted[place]?.height ?? 0) / 2;
  let free = top;
  for (const place of order) {
    const middle = Math.max(middles[place] ?? 0, free + halfOf(place));
    middles[place] = middle;
    free = middle + halfOf(place);
  }
  let ceiling = bottom;
  for (const place of order.toReversed()) {
    const middle = Math.min(middles[place] ?? 0, ceiling - halfOf(place));
    middles[place] = middle;
    ceiling = middle - halfOf(place);
  }
  return middles;
};
