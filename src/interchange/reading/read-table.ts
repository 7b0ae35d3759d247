import type { Issue, TableReading } from '#contract/bring-in.ts';
import { refusal, type Said } from '../place.ts';
import { LIMITS, inMegabytes, type Limits } from './limits.ts';
import { readTextTable } from './read-text-table.ts';
import { readWorkbook } from './read-workbook.ts';

interface Signature {
  readonly bytes: readonly number[];
  readonly said: Said;
}

const ARCHIVE = [0x50, 0x4b, 0x03, 0x04];
const SAVE_AS = 'Open it in the program it comes from and save the table as XLSX or CSV.';

/** Kinds of files that are neither, told by their first bytes and not by their names. */
const OTHERS: readonly Signature[] = [
  {
    bytes: [0xd0, 0xcf, 0x11, 0xe0],
    said: {
      what: 'The file is a workbook of the old kind (XLS), or one with a password.',
      why: 'Only XLSX workbooks without password and text tables are read.',
      whatToDo: 'Open it in the spreadsheet program and save it as XLSX, without password.',
    },
  },
  {
    bytes: [0x25, 0x50, 0x44, 0x46],
    said: { what: 'The file is a PDF.', why: 'A PDF holds a picture of a table, not the table.', whatToDo: SAVE_AS },
  },
  {
    bytes: [0x1f, 0x8b],
    said: { what: 'The file is compressed.', why: 'It begins like a gzip archive.', whatToDo: 'Unpack it first.' },
  },
];

const startsWith = (bytes: Uint8Array, signature: readonly number[]): boolean =>
  signature.every((byte, place) => bytes[place] === byte);

const refusedFor = (fileName: string, issue: Issue): TableReading => ({ kind: 'refused', fileName, issues: [issue] });

const EMPTY: Said = {
  what: 'The file is empty.',
  why: 'It holds no row.',
  whatToDo: 'Choose another file, or save the table again.',
};

const tooLarge = (bytes: number, limits: Limits): Said => ({
  what: `The file has ${inMegabytes(bytes)}; at most ${inMegabytes(limits.bytes)} are read.`,
  why: 'A table of tests is far smaller.',
  whatToDo: 'Copy the rows that are needed into a new file.',
});

/** The name without the folders before it: they are nobody's business in a record. */
const bareName = (fileName: string): string => fileName.split(/[\\/]/).at(-1) ?? '';

const holdsNothing = (reading: TableReading): boolean =>
  reading.kind === 'read' && reading.sheets.every(({ rows }) => rows.length === 0);

/**
 * Reads a file into tables, by what it is and not by its name. Nothing in it is run; whatever is wrong with it comes
 * back as issues.
 */
export const readTable = async (bytes: Uint8Array, path: string, limits: Limits = LIMITS): Promise<TableReading> => {
  const fileName = bareName(path);
  if (bytes.byteLength > limits.bytes) return refusedFor(fileName, refusal(tooLarge(bytes.byteLength, limits)));
  const other = OTHERS.find((signature) => startsWith(bytes, signature.bytes));
  if (other) return refusedFor(fileName, refusal(other.said));
  const isArchive = startsWith(bytes, ARCHIVE);
  const reading = isArchive ? await readWorkbook(bytes, fileName, limits) : readTextTable(bytes, fileName, limits);
  return holdsNothing(reading) ? refusedFor(fileName, refusal(EMPTY)) : reading;
};
