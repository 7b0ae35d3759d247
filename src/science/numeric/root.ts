/** Where a function of one number crosses zero. How the search ended is part of the answer. */
export type RootResult =
  | { readonly kind: 'converged'; readonly root: number; readonly iterations: number }
  | { readonly kind: 'not bracketed'; readonly valueAtLow: number; readonly valueAtHigh: number }
  | { readonly kind: 'iteration limit'; readonly best: number; readonly width: number };

export interface RootSearch {
  readonly low: number;
  readonly high: number;
  /** Width of the last bracket. */
  readonly within: number;
  readonly iterations?: number;
}

const HALVINGS = 200;

/** Halves a bracket until it is narrow enough: slow, and never wrong about a continuous function. */
export const bisect = (
  of: (at: number) => number,
  { low, high, within, iterations = HALVINGS }: RootSearch,
): RootResult => {
  const [valueAtLow, valueAtHigh] = [of(low), of(high)];
  if (!(valueAtLow * valueAtHigh <= 0)) return { kind: 'not bracketed', valueAtLow, valueAtHigh };
  let [a, b] = valueAtLow <= 0 ? [low, high] : [high, low];
  for (let done = 1; done <= iterations; done += 1) {
    const middle = (a + b) / 2;
    if (of(middle) <= 0) a = middle;
    else b = middle;
    if (Math.abs(b - a) <= within) return { kind: 'converged', root: (a + b) / 2, iterations: done };
  }
  return { kind: 'iteration limit', best: (a + b) / 2, width: Math.abs(b - a) };
};
