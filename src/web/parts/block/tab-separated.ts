/** What spreadsheets put on the clipboard and take from it: rows of cells. */
export type Rows = readonly (readonly string[])[];

const NEEDS_QUOTES = /^"|[\t\n\r]/;

const written = (cell: string): string => (NEEDS_QUOTES.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell);

/** Cells apart by tabs, every row ended by a line break; a cell that holds either stands in quotes. */
export const writeTabSeparated = (rows: Rows): string => rows.map((row) => `${row.map(written).join('\t')}\n`).join('');

const BYTE_ORDER_MARK = /^\uFEFF/;
const LINE_BREAK = /\r\n|\r|\n/y;
const PLAIN_CELL = /[^\t\r\n]*/y;
/** Quotes count only where they open a cell and the closing one ends it: `5" band` and `"heavy" day` are plain text. */
const QUOTED_CELL = /"((?:[^"]|"")*)"(?=[\t\r\n]|$)/y;

const at = (pattern: RegExp, text: string, from: number): RegExpExecArray | null => {
  pattern.lastIndex = from;
  return pattern.exec(text);
};

interface ReadCell {
  readonly text: string;
  readonly end: number;
}

const cellAt = (text: string, from: number): ReadCell => {
  const quoted = at(QUOTED_CELL, text, from);
  if (quoted) return { text: (quoted[1] ?? '').replaceAll('""', '"'), end: from + quoted[0].length };
  const plain = at(PLAIN_CELL, text, from)?.[0] ?? '';
  return { text: plain, end: from + plain.length };
};

/**
 * Any text can be read: lines end as on any machine, the last may end or not, quotes that do not close are text. Rows may
 * differ in length, as they stood.
 */
export const readTabSeparated = (whole: string): Rows => {
  const text = whole.replace(BYTE_ORDER_MARK, '');
  const rows: string[][] = [];
  let row: string[] = [];
  let place = 0;
  while (place < text.length || row.length > 0) {
    const cell = cellAt(text, place);
    row.push(cell.text);
    const lineBreak = at(LINE_BREAK, text, cell.end);
    const isAnotherBeside = text[cell.end] === '\t';
    place = cell.end + (isAnotherBeside ? 1 : (lineBreak?.[0].length ?? 0));
    if (isAnotherBeside) continue;
    rows.push(row);
    row = [];
  }
  return rows;
};
