import type { MassUnit } from '#units/mass.ts';
import type { ExerciseId, FactId, ProposalId, TrackId } from './identity.ts';

/** Loads go up in the unit of their machine; endurance in watts or speed, hands in newtons. */
export type RaiseUnit = MassUnit | 'W' | 'km/h' | 'N';

export const RAISE_CAUSES = [
  'first load',
  'ramp step',
  'step rule',
  'new test',
  /** The set programme asks for more than it did: endurance and hands. */
  'programme',
  'back from less',
  're-base',
  'by hand',
] as const;
export type RaiseCause = (typeof RAISE_CAUSES)[number];

/** One load that goes up, as the signer sees it: loads in whole increments of the machine. */
export interface Raise {
  readonly track: TrackId;
  readonly exercise: ExerciseId;
  readonly exerciseName: string;
  /** Null: there was no load before; this is the first. */
  readonly from: number | null;
  readonly to: number;
  readonly unit: RaiseUnit;
  readonly increment: string;
  /** Relative change of bar-equivalent: 0.05 is 5 % more at the bar; null for a first load. */
  readonly atTheBar: number | null;
  /** Fraction of capacity that the load stands for, was and is; null where there is no capacity. */
  readonly trueFraction: { readonly was: number | null; readonly is: number } | null;
  readonly effortStep: number | null;
  readonly shareStep: number | null;
  readonly cause: RaiseCause;
  readonly because: readonly FactId[];
  /** Sentences a signer must have read: above what the repetitions allow, above the policy's step. */
  readonly cautions: readonly string[];
  /** More than the policy's step: a reason must be typed. */
  readonly needsReason: boolean;
  readonly proposal: ProposalId | null;
}
