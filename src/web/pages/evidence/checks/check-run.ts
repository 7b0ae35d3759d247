import { recompute, type Check } from '#science/check.ts';

/** Every check computed here and now, in slices, so that typing and scrolling never wait for them. */

export type Recomputed =
  | { readonly kind: 'computed'; readonly value: number; readonly holds: boolean }
  | { readonly kind: 'failed'; readonly why: string };

export interface Tally {
  readonly of: number;
  readonly done: number;
  readonly broken: readonly Check[];
  /** Time spent on computing alone, without the pauses between slices. */
  readonly milliseconds: number;
}

export interface CheckRun {
  readonly subscribe: (listen: () => void) => () => void;
  readonly resultOf: (check: Check) => Recomputed | undefined;
  readonly tally: () => Tally;
  /** Begins; what it gives back stops it. */
  readonly start: () => () => void;
}

/** How long the page may be held up at a time [ms], and with how many checks that is tried first. */
const PATIENCE = 8;
const FIRST_SLICE = 16;
const LARGEST_SLICE = 48;

/** What a browser's own timeline shows of it. */
export const CHECKS_MEASURE = 'evidence: checks';
const SLICE_MARK = 'evidence: slice of checks';

export const checkRun = (checks: readonly Check[]): CheckRun => {
  const listeners = new Set<() => void>();
  const results = new Map<Check, Recomputed>();
  let tally: Tally = { of: checks.length, done: 0, broken: [], milliseconds: 0 };
  let size = FIRST_SLICE;

  const slice = (): void => {
    performance.mark(SLICE_MARK);
    const taken = checks.slice(results.size, results.size + size);
    for (const check of taken) results.set(check, computed(check));
    const { duration } = performance.measure(CHECKS_MEASURE, SLICE_MARK);
    size = nextSize(size, duration);
    const broken = taken.filter((check) => !holdsIn(results.get(check)));
    tally = {
      of: checks.length,
      done: results.size,
      broken: [...tally.broken, ...broken],
      milliseconds: tally.milliseconds + duration,
    };
    for (const listen of listeners) listen();
  };

  return {
    subscribe: (listen) => {
      listeners.add(listen);
      return () => listeners.delete(listen);
    },
    resultOf: (check) => results.get(check),
    tally: () => tally,
    start: () => {
      let timer: ReturnType<typeof setTimeout>;
      const go = (): void => {
        if (results.size >= checks.length) return;
        slice();
        timer = setTimeout(go, 0);
      };
      timer = setTimeout(go, 0);
      return () => clearTimeout(timer);
    },
  };
};

const computed = (check: Check): Recomputed => {
  try {
    return { kind: 'computed', ...recompute(check) };
  } catch (error) {
    return { kind: 'failed', why: error instanceof Error ? error.message : String(error) };
  }
};

const holdsIn = (result: Recomputed | undefined): boolean => result?.kind === 'computed' && result.holds;

/** So many that a slice takes about as long as it may: at most twice as many as before. */
export const nextSize = (size: number, took: number): number =>
  Math.max(1, Math.min(LARGEST_SLICE, Math.round(size * Math.min(2, PATIENCE / Math.max(took, 0.1)))));
