import type { Day } from '#units/day.ts';
import type { MassUnit } from '#units/mass.ts';
import type { ExerciseId, MachineId, SiteId } from './identity.ts';
import type { Side } from './effort.ts';

/** Movement patterns by which restrictions, volume and substitutes are told apart. */
export const PATTERNS = [
  'squat',
  'hip hinge',
  'leg',
  'heel raise',
  'horizontal press',
  'vertical press',
  'horizontal pull',
  'vertical pull',
  'arm',
  'shoulder care',
  'trunk',
  'carry',
  'grip',
  'jump',
  'balance',
  'mobility',
  'walking',
  'running',
  'cycling',
  'rowing',
] as const;
export type Pattern = (typeof PATTERNS)[number];

/** What training keeps up, and what a substitute is rated by. */
export const QUALITIES = ['strength', 'power', 'aerobic', 'impact', 'grip'] as const;
export type Quality = (typeof QUALITIES)[number];

export const MACHINE_KINDS = [
  'resistive machine',
  'free bar',
  'cable column',
  'dumbbells',
  'treadmill',
  'cycle',
  'rower',
] as const;
export type MachineKind = (typeof MACHINE_KINDS)[number];

/**
 * What no catalogue of machines holds: nothing at all, a body's own weight, which is there on the ground only, what to hang
 * from, what fits a bag.
 */
export const LOOSE_KINDS = ['no gear', 'body weight', 'hanging bar', 'band', 'hand gear'] as const;
export type LooseKind = (typeof LOOSE_KINDS)[number];

/** Sites of the body where a load is felt: discomfort and restrictions name them. */
export const BODY_SITES = [
  'neck',
  'shoulder',
  'elbow',
  'wrist',
  'hand',
  'upper back',
  'low back',
  'hip',
  'knee',
  'ankle',
  'foot',
  'chest',
  'skin',
] as const;
export type BodySite = (typeof BODY_SITES)[number];

/** Which planar model gives the share of body weight that the lift moves in 1 g. */
export type ShareModel =
  | 'back squat, half'
  | 'back squat, parallel'
  | 'back squat, deep'
  | 'single-leg squat'
  | 'split squat'
  | 'deadlift'
  | 'Romanian deadlift'
  | 'heel raise'
  | 'single-leg heel raise'
  | 'press or row'
  | 'curl'
  | 'straight-arm raise'
  | 'none';

/** Where an estimate of capacity comes from, for this exercise. */
export type CapacitySource =
  | { readonly kind: 'one-repetition maximum' }
  | { readonly kind: 'repetition maximum'; readonly of: number }
  | { readonly kind: 'ratio'; readonly to: ExerciseId; readonly ratio: number }
  | { readonly kind: 'none' };

/** What can be done instead of an exercise, and how much of it that covers. */
export interface ExerciseSubstitute {
  readonly exercise: ExerciseId;
  /** Done under load: 0 nothing to 1 all of what the exercise trains; a quality that it does not train is not named. */
  readonly covers: Readonly<Partial<Record<Quality, number>>>;
}

export interface Exercise {
  readonly id: ExerciseId;
  readonly name: string;
  /** Other spellings under which spreadsheets know it. */
  readonly alsoKnownAs: readonly string[];
  readonly pattern: Pattern;
  readonly bodyPart: 'lower body' | 'upper body';
  readonly perSide: boolean;
  readonly shareModel: ShareModel;
  readonly carriedAt: 'shoulders' | 'hands' | 'hips' | 'none';
  readonly loads: readonly BodySite[];
  readonly capacity: CapacitySource;
  /** Rounding step asked for, in each unit; brought to a whole multiple of the machine's increment. */
  readonly roundTo: Readonly<Record<MassUnit, string>>;
  readonly secondsPerRepetition: number;
  readonly cues: readonly string[];
  /** What whoever watches looks for. */
  readonly faults: readonly string[];
  /** When it is not to be done, or only with care; a physician's limit stands above all of them. */
  readonly cautions: readonly string[];
  readonly settingFields: readonly string[];
  /** On any of these it can be done; none where that was never said. */
  readonly machineKinds: readonly (MachineKind | LooseKind)[];
  /** In the order in which they are tried. */
  readonly substitutes: readonly ExerciseSubstitute[];
  readonly source: string;
}

export interface Site {
  readonly id: SiteId;
  readonly name: string;
  readonly place: 'ground' | 'aboard';
}

export interface Machine {
  readonly id: MachineId;
  readonly name: string;
  readonly site: SiteId;
  readonly kind: MachineKind;
  readonly gravity: '0 g' | '1 g';
  /** The machine whose ground unit this is, if it is one. */
  readonly groundUnitOf: MachineId | null;
  readonly unit: MassUnit;
  /** Decimals in the machine's own unit. */
  readonly increment: string;
  readonly least: string;
  readonly ceiling: string;
  /** The most that a cycle or rower takes [W] and the fastest belt [km/h]; null where it was never said. */
  readonly mostWatts: number | null;
  readonly mostSpeed: number | null;
  readonly limits: readonly {
    readonly exercise: ExerciseId;
    readonly attachment: string | null;
    readonly most: string;
  }[];
  readonly minutes: {
    readonly setUp: number;
    readonly stow: number;
    readonly changeExercise: number;
    readonly changeLoad: number;
  };
  readonly outOfService: { readonly from: Day; readonly until: Day | null; readonly reason: string } | null;
}

/** A person's own adjustment of a machine for an exercise; printed on the card. */
export interface Setting {
  readonly field: string;
  readonly value: string;
  readonly side: Side | null;
}

/** Free bars are alike wherever they hang; every other machine is a key of its own. */
export const capacityMachine = (machine: Machine): string => (machine.kind === 'free bar' ? 'free bar' : machine.id);
