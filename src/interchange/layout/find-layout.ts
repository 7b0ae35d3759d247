import type { Exercise } from '#domain/catalogue.ts';
import type { Issue, MatchingByHand, Sheet } from '#contract/bring-in.ts';
import { refusal, type Said } from '../place.ts';
import { MOST_ROWS, inThousands } from '../reading/limits.ts';
import { exerciseFinder } from './exercise-names.ts';
import { chosenHeader, findHeader, type FoundHeader } from './find-header.ts';
import { matchColumns } from './match-columns.ts';
import { mergedNumbers, withMergedLabels } from './merged-labels.ts';
import { isFilled, passedOverRow } from './passed-over-rows.ts';
import type { SheetLayout } from './sheet-layout.ts';

const NO_HEADER: Said = {
  what: 'No row with the names of the columns was found.',
  why: 'A header needs a column of names or missions and at least one more whose name is known, such as “Back squat 5RM (kg)”.',
  whatToDo: 'Write such names above the columns, or choose the header row and match the columns by hand.',
};

const tooMany = (rows: number): Issue =>
  refusal({
    what: `The table has ${inThousands(rows)} rows below its header; at most ${inThousands(MOST_ROWS)} are taken.`,
    why: 'So many rows are seldom tests of people, and the preview could not be read.',
    whatToDo: 'Split the file and bring the parts in one after the other.',
  });

const headerOf = (sheet: Sheet, exercises: readonly Exercise[], byHand: MatchingByHand | null): FoundHeader | null => {
  const find = exerciseFinder(exercises);
  const chosen = byHand?.headerRow ?? null;
  return chosen === null ? findHeader(sheet, find) : chosenHeader(sheet, chosen, find);
};

/** Finds the table in a sheet: header, columns with their meanings, rows; titles, notes and summaries aside. */
export const findLayout = (
  sheet: Sheet,
  exercises: readonly Exercise[],
  byHand: MatchingByHand | null,
): SheetLayout | { readonly refused: Issue } => {
  const header = headerOf(sheet, exercises, byHand);
  if (!header) return { refused: refusal(NO_HEADER) };
  const headerRow = header.row.number;
  const below = sheet.rows.filter(({ number }) => number > headerRow);
  const holdsSomething = (index: number): boolean => below.some(({ cells }) => cells[index] && isFilled(cells[index]));
  const { columns, issues } = matchColumns(header.headers, byHand, holdsSomething);
  const judged = withMergedLabels(sheet, below, columns).map((row) => ({
    row,
    issue: passedOverRow(sheet, row, columns),
  }));
  const rows = judged.flatMap(({ row, issue }) => (issue ? [] : [row]));
  return {
    headerRow,
    titles: sheet.rows
      .filter(({ number }) => number < headerRow)
      .flatMap(({ cells }) => cells.map(({ text }) => text).filter((text) => text !== '')),
    columns,
    rows,
    issues: [
      ...issues,
      ...(rows.length > MOST_ROWS ? [tooMany(rows.length)] : []),
      ...judged.flatMap(({ issue }) => issue ?? []),
      ...mergedNumbers(sheet, headerRow, columns),
    ],
  };
};
