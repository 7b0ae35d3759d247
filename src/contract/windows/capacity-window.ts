import type { Day } from '#units/day.ts';
import type { ExerciseId, FactId } from '#domain/identity.ts';
import type { Estimate } from '#domain/estimate.ts';
import type { PersonHead } from './person-head.ts';

export interface CapacityObservation {
  readonly fact: FactId;
  readonly day: Day;
  readonly missionDay: string;
  /** "95 kg × 5, 2 in reserve". */
  readonly says: string;
  /** 1RM (or n-RM) by the chosen formula [kg at the bar]; null where it was not used. */
  readonly point: number | null;
  /** Lowest and highest of Epley, Brzycki, Wathan; null where one formula decides. */
  readonly range: readonly [number, number] | null;
  readonly kind: 'test' | 'card';
  readonly use: 'used' | 'lower bound' | 'low confidence' | 'not used';
  readonly why: string | null;
}

export interface CapacitySeries {
  readonly label: string;
  readonly gravity: '0 g' | '1 g';
  readonly of: number;
  readonly estimate: Estimate;
  readonly observations: readonly CapacityObservation[];
  /** Smoothed history with its 95 % band [kg]. */
  readonly smoothed: readonly {
    readonly day: Day;
    readonly median: number;
    readonly low: number;
    readonly high: number;
  }[];
}

/** Capacity of one exercise, or why there is none. */
export interface CapacityLift {
  readonly exercise: ExerciseId;
  readonly name: string;
  readonly reading:
    | { readonly kind: 'estimate'; readonly estimate: Estimate; readonly says: string; readonly rests: string }
    | { readonly kind: 'none'; readonly says: string };
  readonly series: readonly CapacitySeries[];
}

/** One line of the profile of tests beside lifts. */
export interface ProfileEntry {
  readonly quality: 'aerobic' | 'calf' | 'grip';
  readonly against: 'norm' | 'other side' | 'own past';
  readonly standing: 'low' | 'fine';
  readonly says: string;
  readonly source: string;
}

export interface CapacityWindow {
  readonly person: PersonHead;
  readonly today: Day;
  readonly lifts: readonly CapacityLift[];
  readonly profile: readonly ProfileEntry[];
}
