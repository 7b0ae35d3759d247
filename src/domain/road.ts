import type { Day } from '#units/day.ts';
import type { Card } from './card.ts';
import type { Decision } from './decision.ts';
import type { Estimate } from './estimate.ts';
import type { Fact, Sequence, SetResult } from './fact.ts';
import type { CardId, ExerciseId, FactId, MachineId, PersonId, ProposalId, SessionId, TrackId } from './identity.ts';
import type { IssuedCard } from './issued-card.ts';
import type { Raise } from './raise.ts';
import type { FilledRow } from './working.ts';

/** What became of an issued card on its way to the person. */
export type Delivery = 'issued' | 'received' | 'superseded' | 'recalled';
/** What became of the session. *Not heard*: its day is past and nothing was recorded. */
export type Outcome = 'none' | 'not heard' | 'done' | 'part done' | 'called off' | 'missed';

export interface CardRecord {
  readonly document: IssuedCard;
  readonly issuedIn: FactId;
  readonly delivery: Delivery;
  /** Was receipt of the recall recorded? Null where there is no recall. */
  readonly recall: { readonly fact: FactId; readonly says: string; readonly receiptRecorded: boolean } | null;
  readonly outcome: Outcome;
  readonly results: readonly SetResult[];
  readonly trained: Fact<'trained'> | null;
  readonly hurts: readonly Fact<'hurt'>[];
  readonly notes: readonly { readonly fact: Fact<'noted'>; readonly read: boolean }[];
  readonly calledOff: Fact<'called off'> | null;
}

/** Why a day's session cannot be issued. */
export interface Gap {
  readonly day: Day;
  readonly exercise: ExerciseId | null;
  readonly says: string;
}

/** A session of the programme that its week has no time for. */
export interface UnlaidSession {
  /** The day that the programme means. */
  readonly day: Day;
  /** First day of its week. */
  readonly week: Day;
  readonly session: SessionId;
  readonly title: string;
  /** "Third day has no place in the week of 2027-03-01." */
  readonly says: string;
}

export type RoadCard =
  | { readonly state: 'issued'; readonly day: Day; readonly record: CardRecord }
  /** Shown exactly as it can be issued. */
  | { readonly state: 'planned'; readonly day: Day; readonly card: Card; readonly gaps: readonly string[] }
  /** Beyond the horizon: drawn lighter, cannot be issued. */
  | { readonly state: 'expected'; readonly day: Day; readonly card: Card; readonly gaps: readonly string[] };

/** Where a lift stands today. */
export interface LiftProgress {
  readonly exercise: ExerciseId;
  readonly effortStep: number;
  readonly shareStep: number;
  /** Completed, pain-free sessions since the last step. */
  readonly earned: number;
  readonly lastStepOn: Day | null;
  readonly frozen: Estimate | null;
}

/** Where a track stands today on one machine: loads in whole increments of it. */
export interface TrackProgress {
  readonly track: TrackId;
  readonly exercise: ExerciseId;
  readonly machine: MachineId;
  readonly last: {
    readonly day: Day;
    readonly increments: number;
    readonly repetitions: readonly number[];
    readonly rating: number | null;
  } | null;
  /** The load in use: last issued or done outside an easier week; on a lift with sides, of one side. */
  readonly inUse: number | null;
  /** Highest load that a signature or signed rule covers. */
  readonly signed: number | null;
}

/** Derived, never stored: its identity is the digest of rule, subject and triggering facts. */
export interface Proposal {
  readonly id: ProposalId;
  readonly person: PersonId;
  readonly rule:
    'ramp step' | 'step rule' | 're-base' | 'issue again' | 'body mass' | 'over the rule' | 'calibration' | 'profile';
  readonly state: 'open' | 'declined' | 'lapsed';
  readonly day: Day;
  readonly says: string;
  readonly because: readonly FactId[];
  readonly raises: readonly Raise[];
  /** What signing it writes; null where it only asks to be looked at. */
  readonly change: Decision | null;
}

/** Everything derived for one person from today on, and what was issued before. */
export interface Road {
  readonly person: PersonId;
  readonly upTo: Sequence;
  readonly today: Day;
  readonly until: Day;
  readonly cards: readonly RoadCard[];
  readonly lifts: readonly LiftProgress[];
  readonly tracks: readonly TrackProgress[];
  readonly proposals: readonly Proposal[];
  readonly gaps: readonly Gap[];
  /** From today on. */
  readonly unlaid: readonly UnlaidSession[];
  /** Rows of the reckonings of every planned and expected lift; `CardLift.row` counts rows. */
  readonly rows: Float64Array;
  /** Reckonings of every planned and expected item of another kind; its `row` counts them. */
  readonly pieces: readonly (readonly FilledRow[])[];
}

export type OpenCard = { readonly card: CardId; readonly day: Day };
