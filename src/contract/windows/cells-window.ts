import type { Day } from '#units/day.ts';
import type { TrackId } from '#domain/identity.ts';
import type { Problem } from '../problem.ts';
import type { CellAsked } from '../requests/requests.ts';
import type { ItemOutcome, SessionMinutes } from './written-window.ts';

/** One cell as it would be written. */
export interface CellLooked {
  readonly track: TrackId;
  readonly day: Day;
  readonly name: string;
  readonly missionDay: string;
  readonly change: CellAsked['change'];
  /** What is planned there now: "4×6 270", "left out"; null where it is not planned. */
  readonly was: string | null;
  /** Says already what is asked: nothing would be written. */
  readonly isUnchanged: boolean;
  /** Null where the cell would be left out, or has problems. */
  readonly outcome: ItemOutcome | null;
  readonly problems: readonly Problem[];
}

export interface SessionLooked {
  readonly day: Day;
  readonly missionDay: string;
  readonly title: string;
  readonly minutes: SessionMinutes;
  /** What the session would leave out, beyond what it leaves out now and what was asked for. */
  readonly leavesOut: readonly string[];
}

/** What several cells would come to together, before anything is signed. */
export interface CellsWindow {
  /** What the signer saw: the signature names it. */
  readonly upTo: number;
  readonly cells: readonly CellLooked[];
  readonly sessions: readonly SessionLooked[];
  /** Problems of no single cell. */
  readonly problems: readonly Problem[];
}
