import type { Cell } from '#contract/bring-in.ts';
import { cellAt, type Column, type Row } from '../layout/sheet-layout.ts';
import { oddity } from '../place.ts';
import { isAmbiguousDate, orderProvedBy, rangeTexts, type DateOrder } from '../values/read-date.ts';
import { OPEN_VALUE, type Value } from '../values/value.ts';
import { examplesIn, type Report } from './report.ts';

/** The order of day and month in a column; 'open' while it is asked. */
export type ColumnOrder = DateOrder | 'needs none' | 'open';

const CHOICES = [
  { answer: 'day first', says: 'day first: 03/04 is 3 April' },
  { answer: 'month first', says: 'month first: 03/04 is 4 March' },
];

const isTyped = ({ is }: Cell): boolean => is === 'text';

const askOrder = (rows: readonly Row[], column: Column, contradicts: boolean, report: Report): ColumnOrder => {
  const answer = report.ask({
    id: `date order, column ${column.place.letter}`,
    about: 'date order',
    asks: 'Which comes first in these dates, day or month?',
    because: contradicts
      ? 'Some dates of the column can only be day first and others only month first.'
      : 'No date of the column tells: every one can be read both ways.',
    column,
    examples: examplesIn(rows, column, (cell) => isTyped(cell) && rangeTexts(cell.text).some(isAmbiguousDate)),
    choices: CHOICES,
  });
  return answer === 'day first' || answer === 'month first' ? answer : 'open';
};

/**
 * Date cells among typed dates whose day is over 12: the program that wrote the sheet may have taken the others for
 * dates with day and month exchanged.
 */
const warnOfExchanged = (rows: readonly Row[], column: Column, report: Report): void => {
  const cells = rows.flatMap((row) => cellAt(row, column) ?? []);
  if (
    !cells.some(({ is }) => is === 'date') ||
    !cells.some((cell) => isTyped(cell) && orderProvedBy(cell.text) !== null)
  )
    return;
  report.say(
    oddity(
      {
        what: 'The column mixes date cells and dates typed as text.',
        why: 'A spreadsheet program that expects another order takes only some dates for dates, with day and month exchanged.',
        whatToDo: 'Compare the date cells whose day is 12 or less with the original records.',
      },
      null,
      column.place,
    ),
  );
};

/** Decides the order of a column: by any date that can be read in one way only, else by asking once. */
export const columnOrder = (rows: readonly Row[], column: Column, report: Report): ColumnOrder => {
  const texts = rows
    .flatMap((row) => cellAt(row, column) ?? [])
    .filter(isTyped)
    .flatMap(({ text }) => rangeTexts(text));
  warnOfExchanged(rows, column, report);
  const proved = new Set(texts.flatMap((text) => orderProvedBy(text) ?? []));
  const [only] = proved;
  if (!texts.some(isAmbiguousDate)) return 'needs none';
  return proved.size === 1 && only ? only : askOrder(rows, column, proved.size > 1, report);
};

const isOpen = (text: string, order: ColumnOrder): boolean => order === 'open' && isAmbiguousDate(text);

/** What a date cell says, given the order of its column. */
export const dateIn = <Kind>(
  cell: Cell,
  order: ColumnOrder,
  read: (text: string, order: DateOrder | null) => Value<Kind>,
): Value<Kind> => {
  if (rangeTexts(cell.text).some((text) => isOpen(text, order))) return OPEN_VALUE;
  return read(cell.text, order === 'open' || order === 'needs none' ? null : order);
};
