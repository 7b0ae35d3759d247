import type { ColumnMeaning, Sheet, SheetRow } from '#contract/bring-in.ts';
import type { ExerciseFinder } from './exercise-names.ts';
import { meaningOfHeader } from './match-header.ts';

/** The header of one column: its text, with the heading of its group where that makes it a lift. */
export interface Header {
  readonly text: string;
  readonly meaning: ColumnMeaning;
}

const textAt = (sheet: Sheet, number: number, column: number): string =>
  sheet.rows.find((row) => row.number === number)?.cells[column]?.text ?? '';

/** The text of a cell that reaches down into this row, such as "Name" over two header rows. */
const fromAbove = (sheet: Sheet, number: number, column: number): string => {
  const merge = sheet.merged.find(
    ({ top, bottom, left, right }) => left === column && right === column && top < number && number <= bottom,
  );
  return merge ? textAt(sheet, merge.top, merge.left) : '';
};

/** The heading that spans several columns in the row above, such as "Back squat" over "kg" and "reps". */
const groupHeading = (sheet: Sheet, number: number, column: number): string => {
  const merge = sheet.merged.find(
    ({ bottom, left, right }) => bottom === number - 1 && left <= column && column <= right && left < right,
  );
  return merge ? textAt(sheet, merge.top, merge.left) : '';
};

const STANDS_ALONE: readonly ColumnMeaning['is'][] = [
  'repetitions',
  'RPE',
  'repetitions in reserve',
  'side',
  'date',
  'unit',
  'name',
];

const headerOf = (own: string, group: string, find: ExerciseFinder): Header => {
  const alone = meaningOfHeader(own, find);
  if (group === '' || STANDS_ALONE.includes(alone.is)) return { text: own, meaning: alone };
  const text = `${group} ${own}`;
  const together = meaningOfHeader(text, find);
  return together.is === 'lift' ? { text, meaning: together } : { text: own, meaning: alone };
};

/** The headers of a row, were it the header row: one a column, as wide as the sheet. */
export const headersIn = (sheet: Sheet, row: SheetRow, find: ExerciseFinder): readonly Header[] => {
  const width = Math.max(...sheet.rows.map(({ cells }) => cells.length), 0);
  return Array.from({ length: width }, (_, column) => {
    const own = row.cells[column]?.text ?? '';
    const text = own === '' ? fromAbove(sheet, row.number, column) : own;
    return headerOf(text, groupHeading(sheet, row.number, column), find);
  });
};
