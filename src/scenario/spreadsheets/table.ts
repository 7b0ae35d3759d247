import type { Day } from '#units/day.ts';

/** A spreadsheet as a specialist keeps it: every cell as typed. */
export type Table = readonly (readonly string[])[];

export interface TextForm {
  readonly delimiter: ',' | ';';
  readonly newLine: '\n' | '\r\n';
  /** A mark by which some programs know UTF-8. */
  readonly byteOrderMark: boolean;
}

export const PLAIN: TextForm = { delimiter: ',', newLine: '\n', byteOrderMark: false };
/** As a spreadsheet program writes it where the comma is the decimal sign. */
export const CONTINENTAL: TextForm = { delimiter: ';', newLine: '\r\n', byteOrderMark: true };

export const textOf = (table: Table, { delimiter, newLine, byteOrderMark }: TextForm): string =>
  (byteOrderMark ? '\uFEFF' : '') +
  table.map((row) => row.map((cell) => quoted(cell, delimiter)).join(delimiter) + newLine).join('');

const quoted = (cell: string, delimiter: string): string =>
  cell.includes(delimiter) || /["\r\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;

export const decimalComma = (text: string): string => text.replace('.', ',');

/** A cell of a workbook. */
export type WorkbookCell =
  | { readonly kind: 'text'; readonly text: string; readonly over: number }
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'day'; readonly day: Day }
  | { readonly kind: 'blank' };

export type WorkbookTable = readonly (readonly WorkbookCell[])[];
