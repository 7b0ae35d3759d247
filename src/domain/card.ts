import type { Day } from '#units/day.ts';
import type { MassUnit } from '#units/mass.ts';
import type { Setting } from './catalogue.ts';
import type { Side } from './effort.ts';
import type { BreathingRule } from './fact.ts';
import type { ExerciseId, ItemId, MachineId, PersonId, ProgrammeVersionId, SessionId, TrackId } from './identity.ts';
import type { Raise } from './raise.ts';

/** What a hand sets: whole increments of the machine, or "start at" where effort decides. */
export type SetLoad =
  | { readonly kind: 'set'; readonly increments: number }
  | { readonly kind: 'start at'; readonly increments: number; readonly rpe: readonly [number, number] };

export interface CardSet {
  readonly kind: 'warm-up' | 'work';
  readonly load: SetLoad;
  readonly repetitions: number;
  readonly side: Side | null;
  /** Seconds. */
  readonly rest: number;
}

/** Why a load is not what the programme alone would give. */
export interface LoadLimit {
  readonly kind:
    | 'ceiling'
    | 'machine limit'
    | 'shoulder limit'
    | 'shoulder rule'
    | 'restriction'
    | 'gate'
    | 'never over'
    | 'back-off'
    | 'signed load';
  readonly increments: number;
  /** Was it this limit that set the load? */
  readonly binds: boolean;
  readonly says: string;
}

/** What a person may do alone, signed with the card. Loads in increments. */
export interface SignedRule {
  readonly add: number;
  readonly rpeAtMost: number;
  readonly discomfortBelow: number;
  readonly neverOver: number;
  readonly takeOff: number;
  readonly says: string;
}

export interface Ramp {
  readonly effort: number;
  readonly share: number;
  /** Places on the ramps, from 0. */
  readonly effortStep: number;
  readonly shareStep: number;
  readonly steps: number;
}

export interface CardItem {
  readonly item: ItemId;
  readonly track: TrackId;
  readonly leading: boolean;
  readonly place: number;
  readonly exercise: ExerciseId;
  readonly exerciseName: string;
  readonly carriedAtShoulders: boolean;
  readonly machine: MachineId;
  readonly machineName: string;
  readonly unit: MassUnit;
  /** One increment, a decimal in the machine's unit. */
  readonly increment: string;
  readonly priority: number;
  readonly basis: 'fraction' | 'from last' | 'effort' | 'fixed';
  /** The line by which somebody set this item for its day; null where it is the programme's. Such a day moves no load. */
  readonly asWritten: string | null;
  readonly settings: readonly Setting[];
  /** What was done last time on this track: "day 20: 265 × 6 6 6 6, RPE 7". */
  readonly last: string | null;
  readonly cues: readonly string[];
  readonly sets: readonly CardSet[];
  readonly reserve: number | null;
  readonly shouldFeel: readonly [number, number];
  readonly ramp: Ramp | null;
  readonly rule: SignedRule | null;
  readonly limits: readonly LoadLimit[];
  /** The load goes up against the last issued or done: stands as planned until somebody signs. */
  readonly raise: Raise | null;
  /** Row of the item's reckoning; null where no capacity is in play. */
  readonly row: number | null;
  /** Sentences for the person: "limited by the physician", "should feel 6". */
  readonly says: readonly string[];
}

export interface CardMinutes {
  readonly label: string;
  readonly minutes: number;
  readonly overhead: boolean;
}

/** One session of one person in absolute terms. */
export interface Card {
  readonly person: PersonId;
  readonly day: Day;
  readonly missionDay: string;
  readonly phase: string;
  readonly week: number;
  readonly session: SessionId;
  readonly title: string;
  readonly deload: boolean;
  readonly programme: { readonly id: ProgrammeVersionId; readonly name: string; readonly number: number };
  readonly items: readonly CardItem[];
  readonly leftOut: readonly { readonly item: ItemId; readonly exerciseName: string; readonly says: string }[];
  readonly minutes: readonly CardMinutes[];
  readonly blockMinutes: number;
  /** Places of items, least important first. */
  readonly shortOfTime: readonly number[];
  readonly machineDown: string;
  readonly breathing: BreathingRule;
}

export const totalMinutes = (card: Card): number => card.minutes.reduce((sum, part) => sum + part.minutes, 0);

/** The work load that stands for an item: the heaviest of its work sets, in increments. */
export const workIncrements = (item: CardItem): number | null => {
  const loads = item.sets.filter((set) => set.kind === 'work').map((set) => set.load.increments);
  return loads.length > 0 ? Math.max(...loads) : null;
};
