import { decimalOf } from '#units/entered.ts';

/** Spreadsheet programs run a text that begins like this as a formula; an apostrophe before it makes it text again. */
const RUNS = /^[=+\-@\t\r]/;

/** A text as a spreadsheet program may safely open it: what would be run is made text; numbers stay numbers. */
export const safeForSpreadsheet = (text: string): string =>
  RUNS.test(text) && decimalOf(text) === null ? `'${text}` : text;

const field = (text: string): string => {
  const safe = safeForSpreadsheet(text);
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
};

/** A table as CSV text (RFC 4180: commas, quotes where needed, CRLF), for UTF-8. */
export const csvText = (rows: readonly (readonly string[])[]): string =>
  rows.map((row) => `${row.map(field).join(',')}\r\n`).join('');
