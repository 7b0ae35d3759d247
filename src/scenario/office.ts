import type { Draft, Fact } from '#domain/fact.ts';
import type { FactId, Instant, PersonId, SignerId } from '#domain/identity.ts';
import type { Day } from '#units/day.ts';

/** Who writes when, and where new identities come from. */
export interface AtTheDesk {
  readonly today: Day;
  readonly at: Instant;
  readonly signer: SignerId;
  readonly newId: () => string;
}

export interface WeekToIssue extends AtTheDesk {
  readonly person: PersonId;
  readonly from: Day;
  readonly until: Day;
}

/** What the scenario cannot do itself: it knows no planning. Both answer with drafts for the end of the log. */
export interface Office {
  /** The signed cards of one person for some days; every raise on them is signed too. */
  readonly issue: (log: readonly Fact[], week: WeekToIssue) => readonly Draft[];
  /** The recalls that a restriction at the end of the log entails. */
  readonly recall: (log: readonly Fact[], restriction: FactId, desk: AtTheDesk) => readonly Draft[];
}
