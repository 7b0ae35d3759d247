import type { Day } from '#units/day.ts';
import type { CardId, ExerciseId, FactId, ItemId, SetId, TrackId } from '#domain/identity.ts';
import type { LoadLimit, SetLoad } from '#domain/card.ts';
import type { Raise } from '#domain/raise.ts';
import type { Delivery, Outcome } from '#domain/road.ts';
import type { Side } from '#domain/effort.ts';
import type { PersonHead } from './person-head.ts';

export interface SheetColumn {
  readonly day: Day;
  readonly missionDay: string;
  readonly title: string;
  readonly state: 'issued' | 'planned' | 'expected';
  readonly past: boolean;
  readonly card: CardId | null;
  readonly code: string | null;
  readonly delivery: Delivery | null;
  readonly outcome: Outcome | null;
  readonly calledOff: string | null;
  readonly minutes: number;
  readonly blockMinutes: number;
  readonly deload: boolean;
  /** Why it cannot be issued, in sentences; empty where it can or is. */
  readonly gaps: readonly string[];
}

export interface SheetCell {
  readonly item: ItemId;
  readonly track: TrackId;
  readonly kind: 'lift' | 'bouts' | 'drill';
  /** "4×6 270", "3×10 start at 85", "left out". */
  readonly planned: string;
  /** Planned and done in the few words that a cell has room for: "6 × 2 min · 160–215 W", "175 W · 151/min · 6". */
  readonly short: { readonly planned: string; readonly done: string | null };
  /** The line of shorthand that somebody who edits it begins from; null where it is not to be edited. */
  readonly line: string | null;
  /** What the session asks for as a line, also where it is not to be edited: what is copied. */
  readonly shorthand: string | null;
  /** Was something written, or left out, for this day alone? */
  readonly isWritten: boolean;
  /** "6 6 6 6 · 7"; null where nothing was recorded. */
  readonly done: string | null;
  readonly differs: boolean;
  readonly hurt: { readonly score: number; readonly side: Side | null; readonly site: string } | null;
  readonly note: { readonly fact: FactId; readonly read: boolean; readonly text: string } | null;
  readonly raise: Raise | null;
  readonly limits: readonly LoadLimit[];
  readonly says: readonly string[];
  readonly trueFraction: number | null;
  readonly shoulderExcess: number | null;
  readonly ceilingLeft: string | null;
  readonly unit: string;
  readonly increment: string;
  /** Work sets as they are to be done, for typing results in; ids only on issued cards. */
  readonly sets: readonly {
    readonly id: SetId | null;
    readonly load: SetLoad;
    readonly repetitions: number;
    /** "6", "6–8", "6+". */
    readonly asks: string;
    /** A range, a set that goes on, one that may be left out: what was done has to be said. */
    readonly isOpen: boolean;
    readonly side: Side | null;
    readonly result: { readonly repetitions: number; readonly load: string; readonly rating: number | null } | null;
  }[];
  /** What a result of an item that is not lifted asks for; null where sets are written down. */
  readonly piece: {
    readonly of: number;
    readonly asksWatts: boolean;
    readonly asksSpeed: boolean;
    readonly asksHarness: boolean;
  } | null;
  readonly hasWorking: boolean;
}

export interface SheetRow {
  readonly exercise: ExerciseId;
  readonly name: string;
  /** One cell a column; null where the session does not hold the exercise. */
  readonly cells: readonly (SheetCell | null)[];
  /** Right margin: "270 lb on flight day 22", "104 kg ± 6, 2 days", "+5 if RPE ≤ 8; never over 300". */
  readonly lastHere: string | null;
  readonly estimate: string | null;
  readonly rule: string | null;
}

export interface SheetStrip {
  readonly label: string;
  readonly spans: readonly {
    readonly from: Day;
    readonly to: Day;
    readonly says: string;
    readonly tone: 'plain' | 'caution' | 'stop';
    readonly shape: 'bar' | 'mark';
  }[];
}

export interface SheetWindow {
  readonly person: PersonHead;
  readonly today: Day;
  readonly upTo: number;
  readonly columns: readonly SheetColumn[];
  readonly strips: readonly SheetStrip[];
  readonly groups: readonly {
    readonly label: string;
    readonly rows: readonly SheetRow[];
    /** What has no row because every session leaves it out, with why. */
    readonly leftOut: readonly string[];
  }[];
  /** Days that issuing would take now. */
  readonly canIssue: readonly Day[];
  readonly unit: string;
  /** Why the page is empty, where it is. */
  readonly empty: string | null;
}
