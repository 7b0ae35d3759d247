import type { SheetWindow } from '#contract/windows/sheet-window.ts';
import { writeTabSeparated, type Rows } from '../../parts/block/tab-separated.ts';
import { shortDate } from '../../parts/dates.ts';
import { blocksOf, type SheetBlock } from './sheet-blocks.ts';

/** A block as a spreadsheet takes it: planned and done as rows of their own. */
const blockAsRows = ({ label, columns, rows }: SheetBlock): Rows => [
  [label, '', ...columns.map(({ day, missionDay }) => `${shortDate(day)} (${missionDay})`)],
  ...rows.flatMap(({ name, cells }) => [
    [name, 'planned', ...cells.map((cell) => cell?.planned ?? '')],
    [name, 'done', ...cells.map((cell) => cell?.done ?? '')],
  ]),
];

/** The sheet for a spreadsheet, its kinds of day one under the other with an empty line between. */
export const sheetAsText = (sheet: SheetWindow): string =>
  writeTabSeparated(
    blocksOf(sheet).flatMap((block, place) => (place === 0 ? blockAsRows(block) : [[], ...blockAsRows(block)])),
  );
