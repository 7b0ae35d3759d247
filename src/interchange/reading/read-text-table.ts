import { CsvError, parse } from 'csv-parse/sync';
import type { Cell, Issue, SheetRow, TableReading } from '#contract/bring-in.ts';
import { oddity, refusal, type Said } from '../place.ts';
import { decodeText } from './decode-text.ts';
import { inThousands, type Limits } from './limits.ts';
import { DELIMITER_NAMES, sniffDelimiter, type Delimiter } from './sniff-delimiter.ts';
import { cellIssues, textCell } from './text-cell.ts';

/** A first line with which some programs tell their delimiter; it is no row of the table. */
const DELIMITER_LINE = /^sep=([,;\t])\r?\n/i;
const EMPTY = /[\s;,]/;
const LOOKED_AT = 65_536;
const MOSTLY_NULL = 0.1;

/** Drops rows of nothing but delimiters at the end: programs write thousands of them. */
const withoutEmptyTail = (text: string): string => {
  let end = text.length;
  while (end > 0 && EMPTY.test(text[end - 1] ?? '')) end -= 1;
  return text.slice(0, end);
};

const refused = (fileName: string, issues: readonly Issue[]): TableReading => ({ kind: 'refused', fileName, issues });

const NOT_TEXT: Said = {
  what: 'The file is not a text table.',
  why: 'A tenth of it or more are null bytes: it is a file of another kind, or UTF-16 text without its byte-order mark.',
  whatToDo: 'Save the table from the spreadsheet program as XLSX, or as CSV in UTF-8.',
};

const WEB_PAGE: Said = {
  what: 'The file is a web page or XML, not a table.',
  why: 'Some programs export such pages under the name of a spreadsheet.',
  whatToDo: 'Open it in a spreadsheet program and save it as XLSX or CSV.',
};

const notATable = (text: string): Said | null => {
  const head = text.slice(0, LOOKED_AT);
  if (head.split('\0').length - 1 > head.length * MOSTLY_NULL) return NOT_TEXT;
  return /^\s*<(!doctype|html|\?xml)/i.test(text) ? WEB_PAGE : null;
};

const unreadable = (error: unknown): Issue => {
  const row = error instanceof CsvError && typeof error['records'] === 'number' ? error['records'] + 1 : null;
  const unclosed = error instanceof CsvError && error.code === 'CSV_QUOTE_NOT_CLOSED';
  return refusal(
    {
      what: unclosed ? 'A quotation mark is opened and never closed.' : 'The rows cannot be told apart.',
      why: unclosed
        ? 'Everything after it would be one single value.'
        : 'Quotation marks stand inside a value that is not quoted as a whole.',
      whatToDo: 'Look at the quotation marks from there on, or save the table as XLSX.',
    },
    row,
  );
};

const parsed = (text: string, delimiter: Delimiter, limits: Limits): readonly (readonly string[])[] =>
  parse(text, {
    delimiter,
    relax_column_count: true,
    relax_quotes: true,
    skip_empty_lines: false,
    to: limits.rows + 1,
  });

const sheetRows = (records: readonly (readonly string[])[], limits: Limits): readonly SheetRow[] =>
  records
    .map((record, index) => ({ number: index + 1, cells: record.map((text): Cell => textCell(text, limits)) }))
    .filter(({ cells }) => cells.some(({ text }) => text !== ''));

const sizeIssues = (records: readonly (readonly string[])[], limits: Limits): readonly Issue[] => {
  const wide = records.findIndex((record) => record.length > limits.columns);
  return [
    ...(records.length > limits.rows
      ? [
          refusal({
            what: `The table has more than ${inThousands(limits.rows)} rows.`,
            why: 'So many rows are seldom tests of people, and the preview could not be read.',
            whatToDo: 'Split the file and bring the parts in one after the other.',
          }),
        ]
      : []),
    ...(wide >= 0
      ? [
          refusal(
            {
              what: `The row has ${inThousands(records[wide]?.length ?? 0)} columns; at most ${limits.columns} are read.`,
              why: 'A table of tests is narrower; the delimiter may be another than the one found.',
              whatToDo: 'Delete the columns that are not needed, or save the table as XLSX.',
            },
            wide + 1,
          ),
        ]
      : []),
  ];
};

const encodingIssues = (guessed: boolean): readonly Issue[] =>
  guessed
    ? [
        oddity({
          what: 'The text is not UTF-8 and was read as Windows-1252.',
          why: 'The file does not say its encoding; letters with accents may be wrong.',
          whatToDo: 'Look at the names in the preview; where one is wrong, save the file again as CSV in UTF-8.',
        }),
      ]
    : [];

/** Reads a text table whose values are separated by commas, semicolons or tabs. */
export const readTextTable = (bytes: Uint8Array, fileName: string, limits: Limits): TableReading => {
  const decoded = decodeText(bytes);
  if (decoded.kind === 'refused') return refused(fileName, [refusal(decoded.said)]);
  const not = notATable(decoded.text);
  if (not) return refused(fileName, [refusal(not)]);
  const told = DELIMITER_LINE.exec(decoded.text);
  const text = withoutEmptyTail(decoded.text.slice(told?.[0].length ?? 0));
  const delimiter = (told?.[1] as Delimiter | undefined) ?? sniffDelimiter(text);
  try {
    const records = parsed(text, delimiter, limits);
    const tooBig = sizeIssues(records, limits);
    if (tooBig.length > 0) return refused(fileName, tooBig);
    const rows = sheetRows(records, limits);
    const how = `${DELIMITER_NAMES[delimiter]}, ${decoded.encoding}`;
    const sheet = { name: '', rows, merged: [], issues: cellIssues(rows, limits) };
    return { kind: 'read', fileName, format: 'CSV', how, sheets: [sheet], issues: encodingIssues(decoded.guessed) };
  } catch (error) {
    return refused(fileName, [unreadable(error)]);
  }
};
