import type { Day } from '#units/day.ts';
import type { MassUnit } from '#units/mass.ts';
import type { AskedSet } from './asked-sets.ts';
import type { Setting } from './catalogue.ts';
import type { Side } from './effort.ts';
import type { BreathingRule } from './fact.ts';
import type { ExerciseId, ItemId, MachineId, PersonId, ProgrammeVersionId, SessionId, TrackId } from './identity.ts';
import type { Tempo } from './prescription.ts';
import type { DrillWork } from './programme.ts';
import type { Raise } from './raise.ts';

/** What a hand sets: whole increments of the machine, or "start at" where effort decides. */
export type SetLoad =
  | { readonly kind: 'set'; readonly increments: number }
  | { readonly kind: 'start at'; readonly increments: number; readonly rpe: readonly [number, number] };

export interface CardSet extends AskedSet {
  readonly kind: 'warm-up' | 'work';
  readonly load: SetLoad;
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

/** Lifts that are done in turn, a set of each, then the rest. */
export interface Superset {
  readonly letter: string;
  /** Places of the others on the card. */
  readonly inTurnWith: readonly number[];
}

interface AnyCardItem {
  readonly item: ItemId;
  readonly track: TrackId;
  readonly place: number;
  readonly exercise: ExerciseId;
  readonly exerciseName: string;
  readonly priority: number;
  /** The line by which somebody set this item for its day; null where it is the programme's. Such a day moves no load. */
  readonly asWritten: string | null;
  readonly settings: readonly Setting[];
  /** What was done last time on this track: "day 20: 265 × 6 6 6 6, RPE 7". */
  readonly last: string | null;
  readonly cues: readonly string[];
  readonly shouldFeel: readonly [number, number];
  /** Sentences for the person: "limited by the physician", "should feel 6". */
  readonly says: readonly string[];
}

/** Sets under a load of a machine. */
export interface CardLift extends AnyCardItem {
  readonly kind: 'lift';
  readonly leading: boolean;
  readonly carriedAtShoulders: boolean;
  readonly machine: MachineId;
  readonly machineName: string;
  readonly unit: MassUnit;
  /** One increment, a decimal in the machine's unit. */
  readonly increment: string;
  readonly basis: 'fraction' | 'from last' | 'effort' | 'fixed';
  readonly sets: readonly CardSet[];
  /** Null: as the exercise is usually done. */
  readonly tempo: Tempo | null;
  readonly superset: Superset | null;
  readonly reserve: number | null;
  readonly ramp: Ramp | null;
  readonly rule: SignedRule | null;
  readonly limits: readonly LoadLimit[];
  /** The load goes up against the last issued or done: stands as planned until somebody signs. */
  readonly raise: Raise | null;
  /** Row of the item's reckoning; null where no capacity is in play. */
  readonly row: number | null;
}

/** One bout as it is set and held. What is not known of the person is null: then effort alone leads. */
export interface CardBout {
  readonly seconds: number;
  /** Seconds of easy work after it. */
  readonly easy: number;
  /** Beats a minute, from and to. */
  readonly heartRate: readonly [number, number] | null;
  readonly watts: number | null;
  /** km/h */
  readonly speed: number | null;
  readonly rpe: readonly [number, number];
}

/** What pulls a person down to a treadmill in weightlessness: whole increments of the treadmill, in all. */
export interface HarnessPull {
  readonly increments: number;
  readonly unit: MassUnit;
  readonly increment: string;
  /** Of body weight, as set; what reaches the belt is less. */
  readonly ofBodyWeight: number;
  /** Where its ramp stands, before limits and rounding; null on cards that were issued before it was told. */
  readonly share: number | null;
}

/** Endurance on a treadmill, a cycle or a rower. */
export interface CardBouts extends AnyCardItem {
  readonly kind: 'bouts';
  readonly machine: MachineId;
  readonly machineName: string;
  readonly warmUpSeconds: number;
  readonly bouts: readonly CardBout[];
  readonly coolDownSeconds: number;
  readonly harness: HarnessPull | null;
  /** Harness load, watts or speed that go up against what was last issued or done. */
  readonly raises: readonly Raise[];
  /** Place of its reckonings; null where nothing was reckoned. */
  readonly row: number | null;
}

export interface CardDrillSet {
  readonly work: DrillWork;
  readonly side: Side | null;
  readonly rest: number;
  /** Newtons, where the hand was tested. */
  readonly force: number | null;
}

/** Sets that no machine loads. */
export interface CardDrill extends AnyCardItem {
  readonly kind: 'drill';
  /** "body weight", "band", or the machine it is done at. */
  readonly means: string;
  readonly sets: readonly CardDrillSet[];
  readonly raises: readonly Raise[];
  /** Place of its reckonings; null where nothing was reckoned. */
  readonly row: number | null;
}

export type CardItem = CardLift | CardBouts | CardDrill;

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

export const isCardLift = (item: CardItem): item is CardLift => item.kind === 'lift';
export const liftsOf = ({ items }: Pick<Card, 'items'>): readonly CardLift[] => items.filter(isCardLift);

/** Everything on a card that goes up against the last issued or done; what several items share, once. */
export const raisesOf = ({ items }: Pick<Card, 'items'>): readonly Raise[] => {
  const raises = items.flatMap((item) => (item.kind === 'lift' ? (item.raise ?? []) : item.raises));
  return [...new Map(raises.map((raise) => [nameOfRaise(raise), raise] as const)).values()];
};

/** Raises of one name are the same line for a signer. */
export const nameOfRaise = ({ track, exerciseName, from, to, unit }: Raise): string =>
  `${track} ${exerciseName} ${from ?? ''} ${to} ${unit}`;

/** The work load that stands for an item: the heaviest of its work sets, in increments. */
export const workIncrements = (item: CardLift): number | null => {
  const loads = item.sets.filter((set) => set.kind === 'work').map((set) => set.load.increments);
  return loads.length > 0 ? Math.max(...loads) : null;
};
