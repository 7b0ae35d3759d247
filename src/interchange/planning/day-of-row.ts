import type { Day } from '#units/day.ts';
import { cellAt, columnThatIs, type Row, type SheetLayout } from '../layout/sheet-layout.ts';
import { refusal } from '../place.ts';
import { readDate } from '../values/read-date.ts';
import { saysNothing } from '../values/value.ts';
import type { CellReader } from './cell-reader.ts';
import { mayStand } from './judge-cell.ts';
import { judgedPastDay } from './possible.ts';
import type { Report } from './report.ts';
import { sheetDay } from './sheet-day.ts';

/** The day on which a row's tests and measurements were done; null where it is asked or refused. */
export type DayOf = (row: Row) => Day | null;

/** Reads the day of a row once, when something of the row first needs it. */
export const daysOfRows = (layout: SheetLayout, cells: CellReader, today: Day, report: Report): DayOf => {
  const column = columnThatIs(layout.columns, 'date');
  if (!column) return () => sheetDay(layout, today, report);
  const read = (row: Row): Day | null => {
    const cell = cellAt(row, column);
    if (!cell || saysNothing(cell.text)) {
      report.say(
        refusal(
          {
            what: 'The row has no date.',
            why: 'Its values cannot be placed in time.',
            whatToDo: 'Write the day on which they were measured.',
          },
          row.number,
          column.place,
        ),
      );
      return null;
    }
    const day = report.take(row, column, cells.date(row, column, readDate));
    return day !== null && mayStand(judgedPastDay(day, today), row, column, report) ? day : null;
  };
  const days = new Map<number, Day | null>();
  return (row) => {
    if (!days.has(row.number)) days.set(row.number, read(row));
    return days.get(row.number) ?? null;
  };
};
