import type { Issue, Merge, Sheet, SheetRow } from '#contract/bring-in.ts';
import { oddity } from '../place.ts';
import { BLANK } from '../reading/text-cell.ts';
import type { Column, Row } from './sheet-layout.ts';

/** Meanings that hold for every row a merged cell spans; a number in a merged cell is one measurement and no more. */
const LABELS = new Set([
  'name',
  'given name',
  'family name',
  'date',
  'exercise',
  'unit',
  'machine',
  'site',
  'birth date',
  'sex',
  'mission',
  'role',
  'team',
  'launch',
  'landing',
  'latest landing',
]);

const spansRows = ({ top, bottom, left, right }: Merge, column: Column): boolean =>
  top < bottom && left <= column.index && column.index <= right;

/** Fills a label that is drawn over several rows into each of them. */
export const withMergedLabels = (
  sheet: Sheet,
  rows: readonly SheetRow[],
  columns: readonly Column[],
): readonly Row[] => {
  const labels = columns.filter(({ meaning }) => LABELS.has(meaning.is));
  const fills = sheet.merged.flatMap((merge) =>
    labels
      .filter((column) => spansRows(merge, column) && merge.left === column.index)
      .map((column) => ({ merge, column })),
  );
  if (fills.length === 0) return rows;
  const byNumber = new Map(rows.map((row) => [row.number, row]));
  return rows.map((row) => {
    const cells = [...row.cells];
    for (const { merge, column } of fills) {
      if (row.number <= merge.top || row.number > merge.bottom) continue;
      cells[column.index] = byNumber.get(merge.top)?.cells[column.index] ?? BLANK;
    }
    return { number: row.number, cells: Array.from(cells, (cell) => cell ?? BLANK) };
  });
};

/** Numbers in cells that span rows: taken once, and said. */
export const mergedNumbers = (sheet: Sheet, headerRow: number, columns: readonly Column[]): readonly Issue[] =>
  columns
    .filter(({ meaning }) => meaning.is !== 'left out' && !LABELS.has(meaning.is))
    .flatMap((column) =>
      sheet.merged
        .filter((merge) => merge.top > headerRow && spansRows(merge, column))
        .map((merge) =>
          oddity(
            {
              what: `The cell spans rows ${merge.top} to ${merge.bottom}; its value is taken for row ${merge.top} alone.`,
              why: 'One number is one measurement.',
              whatToDo: 'Write the value into each row where it was measured.',
            },
            merge.top,
            column.place,
          ),
        ),
    );
