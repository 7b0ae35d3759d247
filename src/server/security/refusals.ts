export type RefusalCause = 'wrong host' | 'other origin' | 'no key' | 'spent token' | 'too large';

/** How often somebody was turned away, and why. Counts only: nothing of the request is kept. */
export interface Refusals {
  readonly count: (cause: RefusalCause) => void;
  readonly counts: () => Readonly<Partial<Record<RefusalCause, number>>>;
}

export const countRefusals = (): Refusals => {
  const counts: Partial<Record<RefusalCause, number>> = {};
  return {
    count: (cause) => {
      counts[cause] = (counts[cause] ?? 0) + 1;
    },
    counts: () => ({ ...counts }),
  };
};
