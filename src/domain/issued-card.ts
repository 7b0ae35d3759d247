import type { Day } from '#units/day.ts';
import type { Card } from './card.ts';
import type { Machine } from './catalogue.ts';
import type { Estimate } from './estimate.ts';
import type { Sequence } from './fact.ts';
import type {
  CardId,
  Digest,
  FactId,
  Instant,
  ItemId,
  PersonId,
  ProgrammeVersionId,
  SetId,
  SignerId,
} from './identity.ts';
import type { Raise } from './raise.ts';
import type { FormulaText, Working } from './working.ts';

export interface IssuedSet {
  /** Results point here. */
  readonly id: SetId;
  readonly item: ItemId;
  /** Place among the sets of its item, from 0. */
  readonly place: number;
}

/** A document that needs no program to be read: everything it was made from stands in it. */
export interface IssuedCard {
  readonly document: 'ballast issued card';
  readonly version: 1;
  readonly id: CardId;
  readonly replaces: CardId | null;
  readonly issuedAt: Instant;
  readonly issuedBy: { readonly id: SignerId; readonly name: string; readonly signsFor: string | null };
  readonly validUntil: Day;
  readonly person: { readonly id: PersonId; readonly name: string };
  readonly mission: { readonly name: string; readonly launch: Day };
  readonly card: Card;
  readonly sets: readonly IssuedSet[];
  readonly raises: readonly Raise[];
  readonly workings: readonly Working[];
  /** Texts too: what is printed must not change later. */
  readonly formulas: readonly FormulaText[];
  readonly basis: {
    readonly upTo: Sequence;
    readonly facts: readonly FactId[];
    readonly programme: ProgrammeVersionId;
    readonly estimates: readonly Estimate[];
    readonly machines: readonly Machine[];
    /** Name and version of the program that made it. */
    readonly program: string;
  };
  /** SHA-256 of the canonical JSON of everything else. */
  readonly digest: Digest;
}
