import type { Day } from '#units/day.ts';
import type { Exercise, Machine, Site } from '#domain/catalogue.ts';
import type { ExerciseUse } from '#domain/exercise-change.ts';
import type { Fact, Signer } from '#domain/fact.ts';
import type { CardId, FactId } from '#domain/identity.ts';
import type { Policies } from '#domain/policies.ts';

/** One entry of something in the house. */
export interface HouseChange {
  readonly fact: FactId;
  readonly on: string;
  readonly by: string;
  /** Why it replaced the one before. */
  readonly reason: string | null;
  /** Fields that differ from the entry before; none of the first. */
  readonly changed: readonly string[];
}

/** What stands, with all that stood before: the newest first, so that the first is the one to supersede. */
export type HouseHistory = readonly HouseChange[];

/** A line of a programme that asks for an exercise, and how many people follow that version. */
export interface ProgrammeUse extends ExerciseUse {
  readonly followers: number;
}

/** An issued card from today on, not yet answered for: it stands as it was issued. */
export interface CardAhead {
  readonly card: CardId;
  readonly person: string;
  readonly day: Day;
}

export interface ExerciseSetting {
  readonly exercise: Exercise;
  readonly history: HouseHistory;
  readonly uses: readonly ProgrammeUse[];
  readonly cards: readonly CardAhead[];
}

export interface MachineSetting {
  readonly machine: Machine;
  readonly history: HouseHistory;
  readonly calibrations: readonly { readonly fact: Fact<'calibrated'>; readonly by: string }[];
  readonly cards: readonly CardAhead[];
}

/** The whole house as it can be changed. */
export interface SettingsWindow {
  readonly exercises: readonly ExerciseSetting[];
  readonly machines: readonly MachineSetting[];
  readonly sites: readonly { readonly site: Site; readonly history: HouseHistory }[];
  readonly signers: readonly { readonly signer: Signer; readonly history: HouseHistory }[];
  /** Of each policy that was ever set, the standing entries that set it, the newest first. */
  readonly policiesSet: readonly { readonly fact: Fact<'policies set'>; readonly by: string }[];
  readonly policies: Policies;
}
