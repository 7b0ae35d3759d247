import type { Day } from '#units/day.ts';
import type { CardId, ExerciseId, PersonId } from '#domain/identity.ts';
import type { Raise } from '#domain/raise.ts';
import type { PersonLine } from './house-window.ts';
import type { SheetCell, SheetColumn } from './sheet-window.ts';

/** One session of one person that holds the lift. */
export interface LiftSession {
  readonly day: Day;
  readonly missionDay: string;
  readonly title: string;
  readonly state: SheetColumn['state'];
  readonly past: boolean;
  /** Null where no card was issued. */
  readonly delivery: SheetColumn['delivery'];
  readonly outcome: SheetColumn['outcome'];
  readonly calledOff: string | null;
  readonly card: CardId | null;
  /** Why it cannot be issued, in sentences. */
  readonly gaps: readonly string[];
  readonly cell: SheetCell;
}

/** One lift of one person, read along a line. */
export interface LiftPerson {
  readonly id: PersonId;
  readonly name: string;
  readonly group: PersonLine['group'];
  readonly dayLabel: string;
  /** Sessions whose day is past, newest last. */
  readonly past: readonly LiftSession[];
  /** From today on, next one first. */
  readonly ahead: readonly LiftSession[];
  /** "104 kg ± 6, 2 days old". */
  readonly estimate: string | null;
  /** "270 lb on flight day 22". */
  readonly lastHere: string | null;
  /** "effort 3 of 5, body weight 2 of 5"; null where nothing ramps. */
  readonly ramp: string | null;
  /** What waits for a signature. */
  readonly raise: Raise | null;
  readonly discomfort: {
    readonly score: number;
    readonly side: 'left' | 'right' | null;
    readonly site: string;
    readonly missionDay: string;
  } | null;
  readonly unread: { readonly text: string; readonly missionDay: string } | null;
}

/** One lift, all people: the Sheet turned by a quarter. */
export interface LiftWindow {
  readonly exercise: ExerciseId;
  readonly name: string;
  readonly today: Day;
  readonly people: readonly LiftPerson[];
  /** Ours in whose sessions it does not stand, with why. */
  readonly without: readonly { readonly id: PersonId; readonly name: string; readonly why: string }[];
  /** Every lift that stands in somebody's sessions, to go on to. */
  readonly lifts: readonly { readonly id: ExerciseId; readonly name: string }[];
}
