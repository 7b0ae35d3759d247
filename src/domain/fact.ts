import type { Day } from '#units/day.ts';
import type { Entered } from '#units/entered.ts';
import type { Quantity } from '#units/quantity.ts';
import type { BodySite, Exercise, Machine, Setting, Site } from './catalogue.ts';
import type { Decision } from './decision.ts';
import type { Effort, Side } from './effort.ts';
import type {
  CardId,
  Digest,
  ExerciseId,
  FactId,
  Instant,
  ItemId,
  MachineId,
  MissionId,
  PersonId,
  ProposalId,
  SetId,
  SignerId,
  SiteId,
} from './identity.ts';
import type { Policies } from './policies.ts';
import type { ProgrammeVersion } from './programme.ts';
import type { Restriction } from './restriction.ts';
import type { SquatGateName, WayOfWatching } from './squat-gate.ts';
import type { Test } from './tested.ts';

/** Place in the log: given at commit under one lock, without gaps, never inserted later. */
export type Sequence = Quantity<'place in the log'>;

/** Who may see a fact. A set, not a ladder. */
export const AUDIENCES = ['person and specialist', 'physician', 'team', 'planners', 'management'] as const;
export type Audience = (typeof AUDIENCES)[number];

export interface SetResult {
  readonly set: SetId;
  readonly repetitions: number;
  readonly load: Entered;
  readonly effort: Effort | null;
  readonly side: Side | null;
}

/** What was done of an item that no machine loads in sets: bouts of endurance, drills. */
export interface PieceResult {
  readonly item: ItemId;
  /** Bouts or sets that were done whole. */
  readonly done: number;
  readonly minutes: number | null;
  readonly watts: number | null;
  /** km/h */
  readonly speed: number | null;
  /** Harness load as set. */
  readonly harness: Entered | null;
  /** Mean of the work, beats a minute. */
  readonly heartRate: number | null;
  readonly effort: Effort | null;
}

export const SET_ASIDE = ['travel', 'rest', 'hand-over', 'blackout', 'operations', 'test'] as const;
export type SetAside = (typeof SET_ASIDE)[number];

export type CalledOffCause = 'medical' | 'machine' | 'operations' | 'travel' | 'rest by agreement';

export interface Signer {
  readonly id: SignerId;
  readonly name: string;
  readonly role: 'specialist' | 'physician' | 'deputy';
  /** A deputy signs for somebody, between two days. */
  readonly signsFor: SignerId | null;
  readonly from: Day | null;
  readonly until: Day | null;
}

export type FactBody =
  // people and missions
  | {
      readonly kind: 'introduced';
      readonly person: PersonId;
      readonly name: string;
      readonly sex: 'female' | 'male';
      readonly birthDate: Day | null;
      readonly trainingAge: Entered<'years'> | null;
    }
  | {
      readonly kind: 'measured';
      readonly person: PersonId;
      readonly day: Day;
      readonly what: 'body mass';
      readonly value: Entered;
    }
  | {
      readonly kind: 'measured';
      readonly person: PersonId;
      readonly day: Day;
      readonly what: 'stature';
      readonly value: Entered<'cm' | 'in'>;
    }
  | {
      readonly kind: 'dated';
      readonly mission: MissionId;
      readonly name: string;
      readonly site: SiteId;
      readonly launch: Day;
      readonly landing: { readonly earliest: Day; readonly latest: Day } | null;
    }
  | {
      readonly kind: 'assigned';
      readonly person: PersonId;
      readonly mission: MissionId;
      readonly role: 'prime' | 'backup';
      /** Somebody else's people share machines and minutes only. */
      readonly team: 'ours' | 'another team';
      /** Prepares for work outside, in a pressurised suit. */
      readonly spaceWalks: boolean;
    }
  /** Where a person trains on the ground, and so with what; the last one entered stands. */
  | {
      readonly kind: 'stays';
      readonly person: PersonId;
      readonly site: SiteId;
      readonly from: Day;
      readonly until: Day | null;
    }
  /** Minutes of each weekday, from Monday (before launch) or from the first day of a mission week; the last one entered stands. */
  | {
      readonly kind: 'available';
      readonly person: PersonId;
      readonly from: Day;
      readonly until: Day | null;
      readonly minutes: readonly number[];
    }
  /** Days on which there is less time than the programme means, or none. */
  | {
      readonly kind: 'set aside';
      readonly person: PersonId;
      readonly from: Day;
      readonly until: Day;
      readonly what: SetAside;
      /** Minutes that are left for training on each of these days. */
      readonly minutes: number;
      readonly text: string;
    }
  /** A space walk of this person. Moved by superseding it. */
  | { readonly kind: 'space walk'; readonly person: PersonId; readonly day: Day; readonly text: string }
  /** The road holds: from this day the programme stays in a phase until it goes on. */
  | {
      readonly kind: 'road holds';
      readonly person: PersonId;
      readonly from: Day;
      readonly until: Day | null;
      readonly text: string;
    }
  // what a person can do and did
  | { readonly kind: 'tested'; readonly person: PersonId; readonly day: Day; readonly test: Test }
  | {
      readonly kind: 'lifted';
      readonly person: PersonId;
      readonly day: Day;
      readonly exercise: ExerciseId;
      readonly machine: MachineId;
      readonly load: Entered;
      readonly repetitions: number;
      readonly effort: Effort | null;
      readonly side: Side | null;
    }
  /** A squat gate, by somebody who watched. */
  | {
      readonly kind: 'judged';
      readonly person: PersonId;
      readonly day: Day;
      readonly gate: SquatGateName;
      readonly passed: boolean;
      readonly observedBy: string;
      readonly watched: WayOfWatching;
    }
  /** Hands with nails and skin, and shoulders, after a space walk: before that nobody grips or presses. */
  | {
      readonly kind: 'looked at';
      readonly person: PersonId;
      readonly day: Day;
      readonly what: 'hands and shoulders';
      /** May grip and pressing go on? */
      readonly passed: boolean;
      readonly observedBy: string;
    }
  /** The heaviest bar carried on the shoulders, where no test says it. */
  | { readonly kind: 'carried'; readonly person: PersonId; readonly day: Day; readonly load: Entered }
  | {
      readonly kind: 'trained';
      readonly person: PersonId;
      readonly day: Day;
      readonly card: CardId;
      readonly sets: readonly SetResult[];
      readonly pieces: readonly PieceResult[];
      readonly sessionRpe: number | null;
      readonly minutes: number | null;
    }
  | {
      readonly kind: 'hurt';
      readonly person: PersonId;
      readonly day: Day;
      readonly card: CardId | null;
      readonly item: ItemId | null;
      readonly site: BodySite;
      readonly side: Side | null;
      readonly score: number;
      readonly when: 'during' | 'next morning';
    }
  | {
      readonly kind: 'noted';
      readonly person: PersonId;
      readonly day: Day;
      readonly card: CardId | null;
      readonly item: ItemId | null;
      readonly text: string;
    }
  | { readonly kind: 'read'; readonly person: PersonId; readonly note: FactId }
  | {
      readonly kind: 'called off';
      readonly person: PersonId;
      readonly day: Day;
      readonly card: CardId | null;
      readonly cause: CalledOffCause;
      /** In somebody's own words. Not "reason": that is the envelope's, why a fact was superseded. */
      readonly text: string;
    }
  | { readonly kind: 'missed'; readonly person: PersonId; readonly day: Day; readonly card: CardId }
  | {
      readonly kind: 'received';
      readonly person: PersonId;
      readonly card: CardId;
      readonly what: 'card' | 'recall';
      readonly how: string;
      readonly on: Day;
    }
  // limits
  | {
      readonly kind: 'restricted';
      readonly person: PersonId;
      readonly restriction: Restriction;
      readonly medicalReason: string | null;
    }
  | {
      readonly kind: 'restriction lifted';
      readonly person: PersonId;
      readonly restriction: FactId;
      readonly toldBy: string;
      readonly on: Day;
    }
  | { readonly kind: 'breathing set'; readonly person: PersonId; readonly rule: BreathingRule; readonly toldBy: string }
  // the house
  | { readonly kind: 'signs'; readonly signer: Signer }
  | { readonly kind: 'catalogued'; readonly entry: CatalogueEntry }
  | {
      readonly kind: 'calibrated';
      readonly machine: MachineId;
      readonly day: Day;
      /** Delivered over commanded. */ readonly factor: string;
    }
  | {
      readonly kind: 'set up';
      readonly person: PersonId;
      readonly machine: MachineId;
      readonly exercise: ExerciseId;
      readonly settings: readonly Setting[];
    }
  | { readonly kind: 'policies set'; readonly policies: Partial<Policies> }
  // the only part of the future that is stored
  | {
      readonly kind: 'decided';
      readonly decision: Decision;
      readonly answers: ProposalId | null;
      /** What the signer saw. */ readonly basis: Sequence;
    }
  /** Takes back the fact it supersedes. */
  | { readonly kind: 'retracted' };

export type BreathingRule = 'exhale through the hard part' | 'brief brace on heavy sets' | 'no straining at all';

export type CatalogueEntry =
  | { readonly kind: 'site'; readonly site: Site }
  | { readonly kind: 'machine'; readonly machine: Machine }
  | { readonly kind: 'exercise'; readonly exercise: Exercise }
  | { readonly kind: 'programme'; readonly version: ProgrammeVersion };

export type FactKind = FactBody['kind'];

/** What the log keeps beside a fact's body. */
export interface Envelope {
  readonly id: FactId;
  readonly sequence: Sequence;
  readonly recordedAt: Instant;
  readonly recordedBy: SignerId;
  readonly audience: readonly Audience[];
  readonly supersedes: FactId | null;
  /** Why a fact was superseded. */
  readonly reason: string | null;
  /** SHA-256 of the canonical JSON of everything else. */
  readonly digest: Digest;
}

export type Fact<Kind extends FactKind = FactKind> = Envelope & Extract<FactBody, { readonly kind: Kind }>;

/** A fact that waits for its place in the log. */
export interface Draft {
  readonly id: FactId;
  readonly body: FactBody;
  readonly recordedBy: SignerId;
  readonly supersedes: FactId | null;
  readonly reason: string | null;
}
