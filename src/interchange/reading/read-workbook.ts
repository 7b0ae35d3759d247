import readWorkbookFile from 'read-excel-file/universal';
import type { Cell, Issue, Sheet, SheetRow, TableReading } from '#contract/bring-in.ts';
import { columnLetter, refusal, type Said } from '../place.ts';
import { inThousands, type Limits } from './limits.ts';
import { openArchive } from './open-archive.ts';
import { plainWorksheet } from './plain-worksheet.ts';
import { storedArchive } from './stored-archive.ts';
import { BLANK, cellIssues, textCell } from './text-cell.ts';
import { workbookParts, type WorkbookParts } from './workbook-parts.ts';
import { worksheetCells, type WorksheetCell, type WorksheetCells } from './worksheet-cells.ts';
import { escapeXml } from './xml-pieces.ts';

type Found = Extract<WorksheetCells, { readonly kind: 'read' }>;
/** A number of a workbook, with the digits that the file has. */
interface Digits {
  readonly digits: string;
}

const NO_WORKBOOK: Said = {
  what: 'The file is an archive, but no XLSX workbook.',
  why: 'It has no part named xl/workbook.xml.',
  whatToDo: 'Open it in the spreadsheet program and save it as XLSX or CSV.',
};
const NO_SHEET: Said = {
  what: 'The workbook holds no sheet that can be read.',
  why: 'None of its sheets has a table of cells; charts alone have none.',
  whatToDo: 'Put the tests on a sheet of cells.',
};
const DAMAGED: Said = {
  what: 'The workbook cannot be read.',
  why: 'Its parts do not fit together: a cell points to a text or a format that is not there, or a part is cut off.',
  whatToDo: 'Open it in the spreadsheet program and save it again, or save the sheet as CSV.',
};

const tooMany = (limits: Limits): Issue =>
  refusal({
    what: `A sheet holds more than ${inThousands(limits.cells)} filled cells.`,
    why: 'A table of tests is far smaller.',
    whatToDo: 'Copy the rows and columns that are needed into a new workbook.',
  });

const refused = (fileName: string, issues: readonly Issue[]): TableReading => ({ kind: 'refused', fileName, issues });

const outside = (limits: Limits, row: number, column: number): Issue =>
  refusal(
    {
      what: `A cell holds something outside the ${inThousands(limits.rows)} rows and ${limits.columns} columns that are read.`,
      why: 'So large a sheet is seldom a table of tests; often it is one forgotten cell far below or to the right.',
      whatToDo: 'Delete what stands there, or split the file.',
    },
    row,
    { letter: columnLetter(column), header: '' },
  );

const sizeIssues = (read: WorksheetCells, limits: Limits): readonly Issue[] => {
  if (read.kind === 'read') return [];
  return [read.kind === 'outside' ? outside(limits, read.row, read.column) : tooMany(limits)];
};

/** The workbook again, of nothing but plain cells: the reader of workbooks meets no other part of the file. */
const plainWorkbook = (parts: WorkbookParts, found: readonly Found[]): Uint8Array<ArrayBuffer> => {
  const relation = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
  const relations: string[] = [];
  const texts = new Map<string, string>();
  const add = (kind: string, id: string, path: string, text: string): void => {
    relations.push(`<Relationship Id="${id}" Type="${relation}/${kind}" Target="${path}"/>`);
    texts.set(`xl/${path}`, text);
  };
  const sheets = parts.sheets.map(
    ({ name }, index) => `<sheet name="${escapeXml(name)}" sheetId="${index + 1}" id="s${index}"/>`,
  );
  texts.set(
    'xl/workbook.xml',
    `<workbook><workbookPr date1904="${parts.countsFrom1904 ? 1 : 0}"/><sheets>${sheets.join('')}</sheets></workbook>`,
  );
  if (parts.sharedStrings !== null) add('sharedStrings', 'strings', 'sharedStrings.xml', parts.sharedStrings);
  if (parts.styles !== null) add('styles', 'styles', 'styles.xml', parts.styles);
  found.forEach(({ cells }, index) =>
    add('worksheet', `s${index}`, `worksheets/sheet${index}.xml`, plainWorksheet(cells, parts.styles !== null)),
  );
  texts.set('xl/_rels/workbook.xml.rels', `<Relationships>${relations.join('')}</Relationships>`);
  return storedArchive(texts);
};

/** Fifteen digits are what a spreadsheet shows of a number; more are binary remainders. */
const SHOWN_DIGITS = 15;
const MOST_DECIMALS = 9;

const decimalText = (digits: string): string => {
  const number = Number(digits);
  if (!Number.isFinite(number)) return digits;
  const shown = Number(number.toPrecision(SHOWN_DIGITS));
  const text = String(shown);
  return /e-|\.\d{10,}/.test(text) ? String(Number(shown.toFixed(MOST_DECIMALS))) : text;
};

const dateText = (date: Date): string => (Number.isNaN(date.getTime()) ? '' : date.toISOString().slice(0, 10));

const cellOf = (value: unknown, found: WorksheetCell | undefined, limits: Limits): Cell => {
  const formula = found?.formula ?? false;
  if (found?.type === 'e') return { text: found.value ?? '', is: 'error', formula };
  if (formula && found?.value === null) return { text: '', is: 'error', formula };
  if (value === null || value === undefined) return BLANK;
  if (value instanceof Date) return { text: dateText(value), is: dateText(value) === '' ? 'error' : 'date', formula };
  if (typeof value === 'boolean') return { text: value ? 'TRUE' : 'FALSE', is: 'yes or no', formula };
  if (typeof value === 'object') return { text: decimalText((value as Digits).digits), is: 'number', formula };
  return { ...textCell(typeof value === 'string' ? value : '', limits), formula };
};

const sheetOf = (name: string, table: readonly (readonly unknown[])[], found: Found, limits: Limits): Sheet => {
  const byPlace = new Map(found.cells.map((cell) => [`${cell.row}:${cell.column}`, cell]));
  const rows = table.map((values, index): SheetRow => {
    const number = index + 1;
    return { number, cells: values.map((value, column) => cellOf(value, byPlace.get(`${number}:${column}`), limits)) };
  });
  const filled = rows.filter(({ cells }) => cells.some(({ text, is }) => text !== '' || is === 'error'));
  const last = rows.length;
  const merged = found.merged.filter(
    ({ top, bottom, left, right }) => top <= last && top <= bottom && left <= right && left < limits.columns,
  );
  return {
    name,
    rows: filled,
    issues: cellIssues(filled, limits),
    merged: merged.map((merge) => ({
      ...merge,
      bottom: Math.min(merge.bottom, last),
      right: Math.min(merge.right, limits.columns - 1),
    })),
  };
};

const sheetsOf = async (parts: WorkbookParts, found: readonly Found[], limits: Limits): Promise<readonly Sheet[]> => {
  const plain = plainWorkbook(parts, found);
  const tables = await readWorkbookFile<Digits>(plain.buffer, { trim: false, parseNumber: (digits) => ({ digits }) });
  return found.map((one, index) => sheetOf(parts.sheets[index]?.name ?? '', tables[index]?.data ?? [], one, limits));
};

const partsOf = (bytes: Uint8Array, limits: Limits): WorkbookParts | Said => {
  const archive = openArchive(bytes, limits);
  if (archive.kind === 'refused') return archive.said;
  const parts = workbookParts(archive.entries);
  if (!parts) return NO_WORKBOOK;
  return parts.sheets.length === 0 ? NO_SHEET : { ...parts, sheets: parts.sheets.slice(0, limits.sheets) };
};

/** Reads a workbook: values as they stand, dates as ISO dates, formulas never run but marked. */
export const readWorkbook = async (bytes: Uint8Array, fileName: string, limits: Limits): Promise<TableReading> => {
  try {
    const parts = partsOf(bytes, limits);
    if ('what' in parts) return refused(fileName, [refusal(parts)]);
    const read = parts.sheets.map(({ xml }) => worksheetCells(xml, limits));
    const beyond = read.flatMap((one) => sizeIssues(one, limits));
    if (beyond.length > 0) return refused(fileName, beyond);
    const found = read.flatMap((one) => (one.kind === 'read' ? [one] : []));
    const sheets = await sheetsOf(parts, found, limits);
    return { kind: 'read', fileName, format: 'XLSX', how: '', sheets, issues: [] };
  } catch {
    return refused(fileName, [refusal(DAMAGED)]);
  }
};
