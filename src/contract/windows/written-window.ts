import type { SheetCell } from './sheet-window.ts';

/** A place in the line, and what is wrong there. */
export interface LineProblem {
  readonly from: number;
  readonly to: number;
  readonly says: string;
}

/** A planned load against the load in use, as the machine shows both. */
export interface BarChange {
  readonly from: string;
  readonly to: string;
  readonly unit: string;
  /** Relative change of bar-equivalent: 0.05 is 5 % more, −0.05 is 5 % less; null where it has no percentage. */
  readonly atTheBar: number | null;
}

/** What a written item comes to, beside the item itself. */
export interface ItemOutcome {
  readonly cell: SheetCell;
  /** Null where effort decides, or nothing was in use before. */
  readonly change: BarChange | null;
  /** What the shoulders carry over the same effort on the ground: 0.4 is 40 % more; null where they carry nothing. */
  readonly shoulders: number | null;
}

export interface SessionMinutes {
  readonly was: number;
  readonly is: number;
  readonly block: number;
}

/** What a line of shorthand would make of one item of one day: shown beside it while it is typed. Nothing is signed by looking. */
export interface WrittenWindow {
  readonly problems: readonly LineProblem[];
  readonly outcome: ItemOutcome | null;
  /** Of the whole session: now, and as it would be. */
  readonly minutes: SessionMinutes | null;
  /** What the session would leave out for it, beyond what it leaves out now. */
  readonly leavesOut: readonly string[];
}
