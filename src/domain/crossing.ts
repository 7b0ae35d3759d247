import type { LoadLimit } from './card.ts';
import type { ShareModel } from './catalogue.ts';
import type { ReplacementPolicy } from './decision.ts';
import type { ExerciseId } from './identity.ts';
import type { Working } from './working.ts';

export interface CrossingLift {
  readonly exercise: ExerciseId;
  readonly name: string;
  /** Kilograms at the bar, or null where the lift runs on effort. */
  readonly capacity: number | null;
  /** Body weight added back at the full share [kg]. */
  readonly addedBack: number | null;
  /** Ceiling less the full load at the heavy prescription [kg]. */
  readonly ceilingLeft: number | null;
}

export interface PolicyOption {
  readonly policy: ReplacementPolicy;
  readonly label: string;
  readonly note: string;
  readonly share: number;
  readonly fullLoad: string;
  /** True fraction of capacity at the top of both ramps. */
  readonly trueFraction: number;
  readonly cautions: readonly string[];
}

/** Load at a level of the body, the same lift on the ground and in weightlessness [kg]. */
export interface LevelLoad {
  readonly level: 'shoulders' | 'L5/S1' | 'hips' | 'knees' | 'ankles' | 'feet';
  readonly onGround: number;
  readonly inFlight: number;
  readonly change: number;
}

export interface CrossingDetail {
  readonly exercise: ExerciseId;
  readonly name: string;
  readonly prescription: string;
  readonly shareModel: ShareModel;
  readonly bodyMass: { readonly kilograms: number; readonly says: string };
  readonly workShare: number;
  readonly effort: number;
  readonly share: number;
  readonly effortStep: number;
  readonly shareStep: number;
  readonly steps: number;
  /** Kilograms; the sum in the open. */
  readonly bar: number;
  readonly added: number;
  readonly target: number;
  readonly load: { readonly text: string; readonly kilograms: number } | null;
  readonly cappedOff: number;
  readonly cappedOffSays: string | null;
  readonly trueFraction: number;
  readonly limits: readonly LoadLimit[];
  readonly levels: readonly LevelLoad[];
  readonly shoulderExcess: number | null;
  readonly policies: readonly PolicyOption[];
  readonly signedPolicy: ReplacementPolicy;
  readonly workings: readonly Working[];
  /** Every ramp step, computed alike: the worked road to the full load. */
  readonly road: readonly {
    readonly effort: number;
    readonly share: number;
    readonly bar: number;
    readonly added: number;
    readonly target: number;
    readonly load: string;
    readonly trueFraction: number;
  }[];
}
