import type { SheetCell } from './sheet-window.ts';

/** A place in the line, and what is wrong there. */
export interface LineProblem {
  readonly from: number;
  readonly to: number;
  readonly says: string;
}

/** What a line of shorthand would make of one item of one day: shown beside it while it is typed. Nothing is signed by looking. */
export interface WrittenWindow {
  readonly problems: readonly LineProblem[];
  /** The line in the house's spelling; null while it cannot be read. */
  readonly line: string | null;
  readonly cell: SheetCell | null;
  /** Of the whole session: now, and as it would be. */
  readonly minutes: { readonly was: number; readonly is: number; readonly block: number } | null;
  /** What the session would leave out for it, beyond what it leaves out now. */
  readonly leavesOut: readonly string[];
}
