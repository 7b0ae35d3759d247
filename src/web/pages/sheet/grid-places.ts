import type { SheetCell, SheetColumn, SheetRow, SheetWindow } from '#contract/windows/sheet-window.ts';
import type { Bounds, Place } from '../../parts/block/selection.ts';

export const rowsOf = ({ groups }: SheetWindow): readonly SheetRow[] => groups.flatMap(({ rows }) => rows);

/** First column from today on; past the end where everything is past. */
export const todayColumn = ({ columns }: SheetWindow): number => {
  const at = columns.findIndex(({ past }) => !past);
  return at < 0 ? columns.length : at;
};

/** Where the cursor stands at first: the first exercise of the next session. */
export const firstPlace = (sheet: SheetWindow): Place => {
  const column = Math.max(0, Math.min(todayColumn(sheet), sheet.columns.length - 1));
  const held = rowsOf(sheet).findIndex(({ cells }) => cells[column]);
  return { row: Math.max(held, 0) + 1, column };
};

const DIRECTIONS: Readonly<Record<string, Place>> = {
  ArrowUp: { row: -1, column: 0 },
  ArrowDown: { row: 1, column: 0 },
  ArrowLeft: { row: 0, column: -1 },
  ArrowRight: { row: 0, column: 1 },
};

/** The next cell of a session in the direction of an arrow, over days that do not train it; null where none follows. */
export const nextHeld = (sheet: SheetWindow, from: Place, key: string): Place | null => {
  const step = DIRECTIONS[key];
  if (!step) return null;
  const [rows, columns] = [rowsOf(sheet).length, sheet.columns.length];
  let [row, column] = [from.row + step.row, from.column + step.column];
  for (; row >= 1 && row <= rows && column >= 0 && column < columns; row += step.row, column += step.column)
    if (standingAt(sheet, { row, column })?.cell) return { row, column };
  return null;
};

/** Row 0 are the heads of the sessions, the exercises follow from 1. */
export const boundsOf = (sheet: SheetWindow): Bounds => ({
  top: 0,
  left: 0,
  bottom: rowsOf(sheet).length,
  right: sheet.columns.length - 1,
});

/** The next session of a lift, or its first row where no session ahead holds it; null where it has no row. */
export const placeOfLift = (sheet: SheetWindow, exercise: string): Place | null => {
  const from = todayColumn(sheet);
  const places = rowsOf(sheet).flatMap((row, at) =>
    row.exercise === exercise
      ? [{ row: at + 1, column: row.cells.findIndex((cell, on) => cell !== null && on >= from) }]
      : [],
  );
  const ahead = places.filter(({ column }) => column >= 0).toSorted((a, b) => a.column - b.column);
  const [first] = ahead.length > 0 ? ahead : places;
  return first ? { row: first.row, column: Math.max(first.column, 0) } : null;
};

export interface Standing {
  readonly column: SheetColumn;
  readonly exercise: SheetRow | null;
  readonly cell: SheetCell | null;
}

/** What stands at a place; null outside the grid. */
export const standingAt = (sheet: SheetWindow, { row, column }: Place): Standing | null => {
  const head = sheet.columns[column];
  if (!head) return null;
  const exercise = row === 0 ? null : (rowsOf(sheet)[row - 1] ?? null);
  return { column: head, exercise, cell: exercise?.cells[column] ?? null };
};

export interface ItemOfColumn {
  readonly name: string;
  readonly cell: SheetCell;
}

/** All items of one session in the order of the rows. */
export const itemsOf = (sheet: SheetWindow, column: SheetColumn): readonly ItemOfColumn[] => {
  const at = sheet.columns.indexOf(column);
  return rowsOf(sheet).flatMap(({ name, cells }) => {
    const cell = cells[at];
    return cell ? [{ name, cell }] : [];
  });
};
