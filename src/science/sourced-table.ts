import type { EntryRecord } from './formula.ts';

/** Published or agreed figures that are no formula: norms, losses, rules. Data, with where they come from. */

export interface Column {
  readonly name: string;
  /** '' for words. */
  readonly unit: string;
}

export type Cell = string | number | null;

export interface SourcedTable<Row = unknown> {
  readonly record: EntryRecord;
  readonly columns: readonly Column[];
  /** The rows as the program uses them. */
  readonly rows: readonly Row[];
  /** The cells of a row, one for each column; null where nothing was printed. */
  readonly cells: (row: Row) => readonly Cell[];
}

/** A table whatever its rows are. */
export interface AnyTable extends Pick<SourcedTable, 'record' | 'columns'> {
  readonly shown: readonly (readonly Cell[])[];
}

/** A table as the textbook shows it. */
export const shownTable = <Row>({ record, columns, rows, cells }: SourcedTable<Row>): AnyTable => ({
  record,
  columns,
  shown: rows.map(cells),
});
