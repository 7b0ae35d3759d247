import type { Cell, ColumnMeaning } from '#contract/bring-in.ts';
import { cellAt, type Column, type Row, type SheetLayout } from '../layout/sheet-layout.ts';
import { oddity } from '../place.ts';
import { decimalMark, readDecimal, type DecimalMark } from '../values/read-decimal.ts';
import type { DateOrder } from '../values/read-date.ts';
import { BLANK_VALUE, type Value, wrong } from '../values/value.ts';
import { columnOrder, dateIn, type ColumnOrder } from './date-cells.ts';
import type { Report } from './report.ts';

/** Reads the cells of one table, in the light of what its columns as a whole tell of marks and dates. */
export interface CellReader {
  readonly decimal: (row: Row, column: Column) => Value<string>;
  readonly date: <Kind>(
    row: Row,
    column: Column,
    read: (text: string, order: DateOrder | null) => Value<Kind>,
  ) => Value<Kind>;
  /** The text, for words and for numbers with something beside them; with the mark that its numbers have. */
  readonly text: <Kind>(
    row: Row,
    column: Column,
    read: (text: string, mark: DecimalMark) => Value<Kind>,
  ) => Value<Kind>;
}

const DATES: readonly ColumnMeaning['is'][] = ['date', 'birth date', 'launch', 'landing', 'latest landing'];
const NUMBERS: readonly ColumnMeaning['is'][] = [
  'load',
  'lift',
  'body mass',
  'stature',
  'training age',
  'RPE',
  'repetitions in reserve',
];

const isNumberColumn = ({ meaning }: Column): boolean => NUMBERS.includes(meaning.is);

const markOf = ({ rows, columns }: SheetLayout): DecimalMark => {
  const numbers = columns.filter(isNumberColumn);
  const cells = rows.flatMap((row) => numbers.flatMap((column) => cellAt(row, column) ?? []));
  return decimalMark(cells.filter(({ is }) => is === 'text').map(({ text }) => text.replace(/[^\d.,+-].*$/, '')));
};

const failed = ({ text }: Cell): Value<never> =>
  text === ''
    ? wrong(
        'The formula of the cell has no value.',
        'The file keeps the formula, not what it gave; formulas are never run here.',
        'Open the file in the spreadsheet program and save it again.',
      )
    : wrong(
        `The cell holds the error ${text}.`,
        'A formula of the file failed.',
        'Type the value itself, or clear the cell.',
      );

const aDate = ({ text }: Cell): Value<never> =>
  wrong(
    `The cell holds the date ${text}.`,
    'A number is expected here; spreadsheet programs turn entries such as 3-5 into dates.',
    'Format the cell as a number and type the value again.',
  );

/** A number of a workbook is written with a point whatever the language of the sheet. */
const markIn = (cell: Cell, mark: DecimalMark): DecimalMark => (cell.is === 'number' ? '.' : mark);

/** Values that came from formulas are taken as they were saved, and it is said once a column. */
const tellFormulas = ({ rows, columns }: SheetLayout, report: Report): void => {
  for (const column of columns.filter(({ meaning }) => meaning.is !== 'left out')) {
    const calculated = rows.filter((row) => cellAt(row, column)?.formula === true);
    const [first] = calculated;
    if (first)
      report.say(
        oddity(
          {
            what: `${calculated.length === 1 ? 'One value' : `${calculated.length} values`} of the column came from formulas.`,
            why: 'They are taken as they were saved; formulas are never run here.',
            whatToDo: 'Look whether they are measured values and not worked out.',
          },
          first.number,
          column.place,
        ),
      );
  }
};

export const makeCellReader = (layout: SheetLayout, report: Report): CellReader => {
  const mark = markOf(layout);
  tellFormulas(layout, report);
  const orders = new Map<number, ColumnOrder>(
    layout.columns
      .filter(({ meaning }) => DATES.includes(meaning.is))
      .map((column) => [column.index, columnOrder(layout.rows, column, report)]),
  );
  const whole = <Kind>(row: Row, column: Column, read: (cell: Cell) => Value<Kind>): Value<Kind> => {
    const cell = cellAt(row, column);
    if (!cell) return BLANK_VALUE;
    return cell.is === 'error' ? failed(cell) : read(cell);
  };
  const text: CellReader['text'] = (row, column, read) =>
    whole(row, column, (cell) => (cell.is === 'date' ? aDate(cell) : read(cell.text, markIn(cell, mark))));
  return {
    text,
    decimal: (row, column) => text(row, column, readDecimal),
    date: (row, column, read) =>
      whole(row, column, (cell) => dateIn(cell, orders.get(column.index) ?? 'needs none', read)),
  };
};
