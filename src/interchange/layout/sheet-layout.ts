import type { Cell, ColumnMeaning, ColumnPlace, Issue, MatchedColumn } from '#contract/bring-in.ts';

/** A column of the table below the header, with what it means. */
export interface Column {
  readonly index: number;
  readonly place: ColumnPlace;
  readonly meaning: ColumnMeaning;
  readonly by: MatchedColumn['by'];
}

/** A row that may hold a test or a person; labels that stand in merged cells are filled in. */
export interface Row {
  readonly number: number;
  readonly cells: readonly Cell[];
}

/** The table that was found in a sheet. */
export interface SheetLayout {
  readonly headerRow: number;
  /** What stands above the header. */
  readonly titles: readonly string[];
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
  readonly issues: readonly Issue[];
}

export const cellAt = (row: Row, column: Column): Cell | null => {
  const cell = row.cells[column.index];
  return cell && (cell.text !== '' || cell.is === 'error') ? cell : null;
};

export const columnsThatAre = (columns: readonly Column[], is: ColumnMeaning['is']): readonly Column[] =>
  columns.filter(({ meaning }) => meaning.is === is);

export const columnThatIs = (columns: readonly Column[], is: ColumnMeaning['is']): Column | null =>
  columns.find(({ meaning }) => meaning.is === is) ?? null;
