import type { SheetWindow } from '#contract/windows/sheet-window.ts';
import { shortDate } from '../../parts/dates.ts';
import { blocksOf, type SheetBlock } from './sheet-blocks.ts';

/** A block as a spreadsheet takes it: columns apart by tabs, planned and done as rows of their own. */
const blockAsRows = ({ label, columns, rows }: SheetBlock): readonly (readonly string[])[] => [
  [label, '', ...columns.map(({ day, missionDay }) => `${shortDate(day)} (${missionDay})`)],
  ...rows.flatMap(({ name, cells }) => [
    [name, 'planned', ...cells.map((cell) => cell?.planned ?? '')],
    [name, 'done', ...cells.map((cell) => cell?.done ?? '')],
  ]),
];

/** The sheet for a spreadsheet, its kinds of day one under the other with an empty line between. */
export const sheetAsText = (sheet: SheetWindow): string =>
  blocksOf(sheet)
    .map((block) =>
      blockAsRows(block)
        .map((row) => row.map((text) => text.replace(/[\t\n]/g, ' ')).join('\t'))
        .join('\n'),
    )
    .join('\n\n');
