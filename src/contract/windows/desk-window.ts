import type { Day } from '#units/day.ts';
import type { CardId, ExerciseId, FactId, PersonId, ProposalId } from '#domain/identity.ts';
import type { Raise } from '#domain/raise.ts';

/** One thing that needs the specialist now: a sentence with a verb at its end. */
export type DeskLine =
  | {
      readonly kind: 'recalled';
      readonly person: PersonId;
      readonly name: string;
      readonly card: CardId;
      readonly day: Day;
      readonly says: string;
      /** One line that can be read over voice. */ readonly readUp: string;
    }
  | {
      readonly kind: 'restriction unconfirmed';
      readonly person: PersonId;
      readonly name: string;
      readonly fact: FactId;
      readonly says: string;
    }
  | {
      readonly kind: 'unread note';
      readonly person: PersonId;
      readonly name: string;
      readonly note: FactId;
      readonly card: CardId | null;
      readonly says: string;
      readonly text: string;
    }
  | {
      readonly kind: 'proposal';
      readonly person: PersonId;
      readonly name: string;
      readonly proposal: ProposalId;
      readonly says: string;
      readonly raises: readonly Raise[];
      readonly canSign: boolean;
      /** Sets or bouts more each time, where that is what is proposed: the signer may choose another number. */
      readonly setsBy: number | null;
      readonly behind: readonly string[];
    }
  /** A space walk is over, and nobody has looked at hands and shoulders: grip and pressing wait. */
  | {
      readonly kind: 'hands to be looked at';
      readonly person: PersonId;
      readonly name: string;
      readonly walk: Day;
      readonly says: string;
    }
  /** What the road asks for next, with where it is done. */
  | {
      readonly kind: DeskAsk;
      readonly person: PersonId;
      readonly name: string;
      readonly says: string;
      readonly link: { readonly to: DeskLink; readonly says: string };
    };

/** In order of need. */
export const DESK_ASKS = [
  'card on a day set aside',
  'restriction to review',
  'gate to judge',
  'tests due',
  'cards to issue',
  'outside the windows',
  'cannot be issued',
] as const;
export type DeskAsk = (typeof DESK_ASKS)[number];

/** The sheet, the record, or a form of the record. */
export type DeskLink = 'sheet' | 'road' | 'record' | 'test' | 'squat gate' | 'weekly minutes';

/** A machine load over time: small trend, in the machine's unit. */
export interface LoadTrend {
  readonly unit: string;
  readonly points: readonly { readonly day: Day; readonly load: number }[];
  readonly newest: number | null;
}

export interface DeskPerson {
  readonly id: PersonId;
  readonly name: string;
  readonly group: 'in flight' | 'before launch' | 'returned' | 'no mission';
  readonly mission: string | null;
  readonly dayLabel: string;
  /** "first card, flight day 4" or null. */
  readonly nextEvent: string | null;
  readonly squat: LoadTrend;
  readonly deadlift: LoadTrend;
  readonly reported: {
    readonly of: number;
    readonly done: number;
    readonly calledOff: number;
    readonly notHeard: number;
    readonly days: readonly ('done' | 'part done' | 'called off' | 'missed' | 'not heard')[];
  };
  readonly restrictions: number;
  readonly team: 'ours' | 'another team';
}

export interface DeskWindow {
  readonly today: Day;
  /** The lifts behind the two trends, each with a page of all people; null where the house has none. */
  readonly lifts: { readonly squat: ExerciseId | null; readonly deadlift: ExerciseId | null };
  readonly lines: readonly DeskLine[];
  readonly people: readonly DeskPerson[];
}
