import type { Day } from '#units/day.ts';
import type { Entered } from '#units/entered.ts';
import type { BodySite, LooseKind, MachineKind } from './catalogue.ts';
import type { Side } from './effort.ts';
import type {
  CardId,
  ExerciseId,
  FactId,
  PersonId,
  ProgrammeVersionId,
  ProposalId,
  SessionId,
  TrackId,
} from './identity.ts';
import type { IssuedCard } from './issued-card.ts';
import type { Anchor } from './mission-day.ts';
import type { Raise } from './raise.ts';

/** How much of body weight is added back in weightlessness; a number is the specialist's own share. */
export type ReplacementPolicy = 'work-matched' | 'joint-matched' | 'whole' | { readonly share: number };

/** One person's departure from the set programme on one track. */
export type Change =
  | { readonly kind: 'fraction by'; readonly by: number }
  /** So many more sets or bouts than the programme has, or fewer; one at least is left. */
  | { readonly kind: 'sets by'; readonly by: number }
  | { readonly kind: 'leave out' }
  /** Never left out for want of time while it stands: something else goes first. */
  | { readonly kind: 'keep' }
  /** No raise while it stands. */
  | { readonly kind: 'hold' }
  /** Take this fraction off the machine load, at once; coming back is a raise. */
  | { readonly kind: 'back off'; readonly by: number }
  | { readonly kind: 'load'; readonly load: Entered }
  /** Sets, repetitions and target of these days, in the trade's shorthand. */
  | { readonly kind: 'as written'; readonly line: string };

/** Where it hurts before a session, 0 to 10. */
export interface Hurting {
  readonly site: BodySite;
  readonly side: Side | null;
  readonly score: number;
}

export type Decision =
  | {
      readonly kind: 'follow';
      readonly person: PersonId;
      readonly programme: ProgrammeVersionId;
      readonly from: Anchor;
    }
  | {
      readonly kind: 'adjust';
      readonly person: PersonId;
      readonly track: TrackId;
      readonly change: Change;
      readonly from: Day;
      readonly until: Day | null;
      readonly reason: string;
    }
  | { readonly kind: 'end adjustment'; readonly person: PersonId; readonly adjustment: FactId }
  | {
      readonly kind: 'replace body weight';
      readonly person: PersonId;
      readonly exercise: ExerciseId;
      readonly policy: ReplacementPolicy;
      readonly reason: string;
    }
  /** Body mass that counts in flight, where it is not the last one before launch. */
  | {
      readonly kind: 'fix body mass';
      readonly person: PersonId;
      readonly mass: Entered;
      readonly from: Day;
      readonly reason: string;
    }
  /** The most that this person's shoulders carry, from a day on. */
  | {
      readonly kind: 'limit shoulders';
      readonly person: PersonId;
      readonly load: Entered;
      readonly from: Day;
      readonly reason: string;
    }
  /** Reads capacity anew for the loads of an exercise, from a day on. */
  | { readonly kind: 're-base'; readonly person: PersonId; readonly exercise: ExerciseId; readonly from: Day }
  | { readonly kind: 'raise'; readonly person: PersonId; readonly from: Day; readonly raises: readonly Raise[] }
  | { readonly kind: 'decline'; readonly person: PersonId; readonly proposal: ProposalId; readonly reason: string }
  /** One day's session for what is there: another gym, fewer minutes, something that hurts. The last one stands. */
  | {
      readonly kind: 're-make';
      readonly person: PersonId;
      readonly day: Day;
      /** The session of the programme that is trained on this day. */
      readonly session: SessionId;
      readonly here: readonly (MachineKind | LooseKind)[];
      readonly minutes: number;
      readonly hurts: readonly Hurting[];
      readonly reason: string;
    }
  /** The signature under a card, with the list of raises that the signer saw. */
  | { readonly kind: 'issue'; readonly person: PersonId; readonly card: IssuedCard; readonly raises: readonly Raise[] }
  | {
      readonly kind: 'recall';
      readonly person: PersonId;
      readonly card: CardId;
      readonly because: FactId;
      readonly says: string;
    };
