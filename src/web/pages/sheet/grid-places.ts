import type { SheetCell, SheetColumn, SheetRow, SheetWindow } from '#contract/windows/sheet-window.ts';

/** A place of the grid: row 0 are the heads of the sessions, the exercises follow from 1. */
export interface Place {
  readonly row: number;
  readonly column: number;
}

export const rowsOf = ({ groups }: SheetWindow): readonly SheetRow[] => groups.flatMap(({ rows }) => rows);

/** First column from today on; past the end where everything is past. */
export const todayColumn = ({ columns }: SheetWindow): number => {
  const at = columns.findIndex(({ past }) => !past);
  return at < 0 ? columns.length : at;
};

/** Where the cursor stands at first: the first exercise of the next session. */
export const firstPlace = (sheet: SheetWindow): Place => ({
  row: 1,
  column: Math.max(0, Math.min(todayColumn(sheet), sheet.columns.length - 1)),
});

const within = (value: number, last: number): number => Math.max(0, Math.min(value, last));

/** Where a key leads, or null where it leads nowhere. */
export const placeAfter = (sheet: SheetWindow, { row, column }: Place, key: string): Place | null => {
  const [lastRow, lastColumn] = [rowsOf(sheet).length, sheet.columns.length - 1];
  switch (key) {
    case 'ArrowUp':
      return { row: within(row - 1, lastRow), column };
    case 'ArrowDown':
      return { row: within(row + 1, lastRow), column };
    case 'ArrowLeft':
      return { row, column: within(column - 1, lastColumn) };
    case 'ArrowRight':
      return { row, column: within(column + 1, lastColumn) };
    case 'Home':
      return { row, column: 0 };
    case 'End':
      return { row, column: lastColumn };
    default:
      return null;
  }
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
