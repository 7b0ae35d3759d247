import type { Day } from '#units/day.ts';
import type { ExerciseId, FactId } from './identity.ts';

/** Capacities are kept apart by exercise, gravity and machine. */
export interface CapacityKey {
  readonly exercise: ExerciseId;
  readonly gravity: '0 g' | '1 g';
  /** A machine's id, or "free bar". */
  readonly machine: string;
}

/** Current estimate of an ability: a median with a spread on the log scale. */
export interface Estimate {
  readonly key: CapacityKey;
  readonly day: Day;
  /** Kilograms at the bar. */
  readonly median: number;
  readonly logSd: number;
  /** Repetitions it is the maximum of: 1 or n. */
  readonly of: number;
  readonly newest: Day;
  readonly observations: number;
  readonly basis: 'known' | 'carried over from 1 g' | 'from another machine' | 'by ratio';
  readonly facts: readonly FactId[];
}

/** 95 % interval of an estimate [kg at the bar]. */
export const intervalOf = ({ median, logSd }: Estimate): readonly [number, number] => [
  median * Math.exp(-1.96 * logSd),
  median * Math.exp(1.96 * logSd),
];
