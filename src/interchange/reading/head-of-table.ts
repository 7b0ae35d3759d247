import type { TableReading } from '#contract/bring-in.ts';

/** The first rows of each sheet: what a screen shows of a file of thousands. */
export const headOfTable = (reading: TableReading, rows: number): TableReading =>
  reading.kind === 'refused'
    ? reading
    : { ...reading, sheets: reading.sheets.map((sheet) => ({ ...sheet, rows: sheet.rows.slice(0, rows) })) };
