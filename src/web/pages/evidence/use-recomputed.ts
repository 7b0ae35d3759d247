import { useEffect, useState } from 'react';
import { recompute, type Check } from '#science/check.ts';

export type Recomputed =
  | { readonly kind: 'computed'; readonly value: number; readonly holds: boolean }
  | { readonly kind: 'failed'; readonly why: string };

/** Checks between two chances for the page to answer: a few milliseconds of work. */
const SLICE = 40;

const computed = (check: Check): Recomputed => {
  try {
    return { kind: 'computed', ...recompute(check) };
  } catch (error) {
    return { kind: 'failed', why: error instanceof Error ? error.message : String(error) };
  }
};

/** Computes every check here and now, in slices, so that typing never waits for it. */
export const useRecomputed = (checks: readonly Check[]): ReadonlyMap<Check, Recomputed> => {
  const [done, setDone] = useState<ReadonlyMap<Check, Recomputed>>(new Map());
  useEffect(() => {
    const results = new Map<Check, Recomputed>();
    let next = 0;
    let timer: ReturnType<typeof setTimeout>;
    const slice = (): void => {
      for (const check of checks.slice(next, next + SLICE)) results.set(check, computed(check));
      next += SLICE;
      setDone(new Map(results));
      if (next < checks.length) timer = setTimeout(slice, 0);
    };
    timer = setTimeout(slice, 0);
    return () => clearTimeout(timer);
  }, [checks]);
  return done;
};
