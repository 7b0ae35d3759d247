import type { MissionId, PersonId } from '#domain/identity.ts';
import type { Incident } from './incident.ts';

/** What a body can do before flight: one-repetition maxima at the bar [kg]. A twelve-repetition one for heel raises. */
export interface Strength {
  readonly backSquat: number;
  readonly deadlift: number;
  readonly benchPress: number;
  readonly heelRaiseTwelve: number;
  /** How much the right leg is stronger than the left: 0.09 is 9 %. */
  readonly rightOverLeft: number;
}

/** What heart and lungs can do at launch, and what no belt or cycle knows of this body. */
export interface Stamina {
  /** Greatest oxygen uptake [mL/(kg min)]. */
  readonly uptake: number;
  /** Heart beats a minute, at most and at rest. */
  readonly greatestRate: number;
  readonly restingRate: number;
  /** What a watt or a metre costs this body, over what it costs others. */
  readonly costs: number;
}

/** Hands at launch [N]. */
export interface Grip {
  readonly left: number;
  readonly right: number;
  /** Of the greatest grip, what can be pulsed on and on. */
  readonly lasting: number;
}

export interface Habits {
  /** How effort is written down: as it felt, or always as the same 7. */
  readonly effort: 'as felt' | 'always 7';
  /** Results always come down the next morning; else now and then a day or two later. */
  readonly prompt: boolean;
  /** From this flight day on every second set has no effort beside it; null: never. */
  readonly blankFrom: number | null;
  /** The most that the shoulders carry without complaint [kg pulled]; null: they do not complain. */
  readonly shouldersBear: number | null;
  /** Flight days whose results all come on one later day, in no order. */
  readonly quiet: { readonly from: number; readonly until: number; readonly heardOn: number } | null;
}

/** Somebody who does not exist, with the truth that no specialist ever sees. */
export interface InventedPerson {
  readonly id: PersonId;
  readonly name: string;
  readonly sex: 'female' | 'male';
  readonly birthDate: string;
  /** Centimetres, as typed. */
  readonly stature: string;
  /** Years, as typed. */
  readonly trainingAge: string | null;
  readonly mission: MissionId;
  readonly team: 'ours' | 'another team';
  /** Before flight [kg]. */
  readonly bodyMass: number;
  /** Null: never trained with a bar. */
  readonly strength: Strength | null;
  readonly stamina: Stamina;
  readonly grip: Grip;
  /** Prepares for work outside. */
  readonly spaceWalks: boolean;
  readonly habits: Habits;
  /** What happened on a flight day. */
  readonly incidents: Readonly<Record<number, Incident>>;
}
