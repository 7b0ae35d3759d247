import type { Day } from '#units/day.ts';
import type { FactId } from '#domain/identity.ts';

/** One piece of evidence for a capacity: what was lifted, read as a logarithm with its variance. */
export interface Observation {
  readonly day: Day;
  /** Natural logarithm of the maximum [kg at the bar]. */
  readonly y: number;
  readonly variance: number;
  /** Says only "at least": moves the estimate up, never down. */
  readonly lowerBound: boolean;
  readonly facts: readonly FactId[];
  readonly kind: 'test' | 'card';
  readonly point: number;
  readonly range: readonly [number, number] | null;
  readonly says: string;
  readonly confidence: 'usual' | 'low';
  readonly why: string | null;
}

/** Evidence that was looked at and not used, with the reason. */
export interface Unused {
  readonly day: Day;
  readonly fact: FactId;
  readonly kind: 'test' | 'card';
  readonly says: string;
  readonly why: string;
}

export interface Evidence {
  readonly observations: readonly Observation[];
  readonly unused: readonly Unused[];
}

export type Reading =
  | { readonly kind: 'observation'; readonly observation: Observation }
  | { readonly kind: 'unused'; readonly unused: Unused };

export const evidenceOf = (readings: readonly Reading[]): Evidence => ({
  observations: readings
    .flatMap((reading) => (reading.kind === 'observation' ? [reading.observation] : []))
    .toSorted((a, b) => a.day - b.day),
  unused: readings.flatMap((reading) => (reading.kind === 'unused' ? [reading.unused] : [])),
});
