import type { Day } from '#units/day.ts';
import type { PersonId } from '#domain/identity.ts';
import type { Difference } from '#domain/programme-difference.ts';

/** How much of what kind a version changes. */
export interface ChangeCounts {
  readonly sessionsChanged: number;
  readonly sessionsNew: number;
  readonly sessionsGone: number;
  readonly itemsAdded: number;
  readonly itemsLeftOut: number;
  readonly loadsRaised: number;
  readonly loadsLowered: number;
  /** True minutes, overhead included, over all sessions that change. */
  readonly minutes: number;
  readonly newGaps: number;
}

export interface ComparedLine {
  readonly exerciseName: string;
  readonly was: string | null;
  readonly is: string | null;
  readonly load: 'raised' | 'lowered' | 'as it was' | 'not to be compared';
  readonly leftOut: string | null;
}

export interface ComparedSession {
  readonly day: Day;
  readonly missionDay: string;
  readonly title: string;
  /** Where it had another title. */
  readonly wasTitle: string | null;
  readonly kind: 'changed' | 'new' | 'gone';
  readonly state: 'planned' | 'expected';
  readonly lines: readonly ComparedLine[];
  readonly reordered: boolean;
  readonly minutes: { readonly was: number; readonly is: number; readonly block: number };
  readonly newGaps: readonly string[];
  readonly goneGaps: readonly string[];
}

export interface ComparedPerson {
  readonly id: PersonId;
  readonly name: string;
  readonly dayLabel: string;
  /** From when they would follow it. */
  readonly from: Day;
  readonly fromLabel: string;
  /** Cards that are issued stand as they were signed. */
  readonly issuedAhead: number;
  readonly counts: ChangeCounts;
  readonly sessions: readonly ComparedSession[];
}

/** What a version that nobody has taken up would change for each person: looked at, never entered. */
export interface ComparisonWindow {
  /** The place in the log that this was made from. */
  readonly basis: number;
  readonly today: Day;
  readonly until: Day;
  /** The number that the version would have. */
  readonly number: number;
  /** Another version of the programme was taken up after the one that this was made from. */
  readonly newer: number | null;
  readonly difference: readonly Difference[];
  readonly people: readonly ComparedPerson[];
  /** Everybody for whom nothing changes in these days. */
  readonly unchanged: readonly Pick<ComparedPerson, 'id' | 'name' | 'from' | 'fromLabel'>[];
  readonly totals: ChangeCounts;
}
