import type { MassUnit } from '#units/mass.ts';
import { cellAt, columnThatIs, type Column, type Row, type SheetLayout } from '../layout/sheet-layout.ts';
import { quoted } from '../place.ts';
import { readUnit } from '../values/read-words.ts';
import { saysNothing } from '../values/value.ts';
import { examplesIn, refuseCell, type Report } from './report.ts';

/** The unit of a mass: the cell's own, else the row's, else the header's, else asked once a column. Null: not settled. */
export type UnitOf = (row: Row, column: Column, own: MassUnit | null) => MassUnit | null;

const inHeader = ({ meaning }: Column): MassUnit | null =>
  meaning.is === 'load' || meaning.is === 'lift' || meaning.is === 'body mass' ? meaning.unit : null;

const askUnit = (column: Column, rows: readonly Row[], report: Report): MassUnit | null => {
  const answer = report.ask({
    id: `unit, column ${column.place.letter}`,
    about: 'unit',
    asks: 'Kilograms or pounds?',
    because: 'Neither the header nor the cells say so.',
    column,
    examples: examplesIn(rows, column),
    choices: [
      { answer: 'kg', says: 'kilograms' },
      { answer: 'lb', says: 'pounds' },
    ],
  });
  return answer === 'kg' || answer === 'lb' ? answer : null;
};

/** What the row's own cell of units says; undefined where the row has none, null where it is no unit. */
const inRow = (row: Row, column: Column | null, report: Report): MassUnit | null | undefined => {
  const cell = column && cellAt(row, column);
  if (!column || !cell || saysNothing(cell.text)) return undefined;
  const unit = readUnit(cell.text);
  if (unit === null)
    refuseCell(report, row, column, {
      what: `${quoted(cell.text)} is no unit of a load.`,
      why: 'Loads are taken in kilograms or pounds.',
      whatToDo: 'Write kg or lb.',
    });
  return unit;
};

export const unitsOfColumns = (layout: SheetLayout, report: Report): UnitOf => {
  const units = columnThatIs(layout.columns, 'unit');
  const told = new Map<number, MassUnit | null | undefined>();
  const rowUnit = (row: Row): MassUnit | null | undefined => {
    if (!told.has(row.number)) told.set(row.number, inRow(row, units, report));
    return told.get(row.number);
  };
  return (row, column, own) => {
    if (own !== null) return own;
    const fromRow = column.meaning.is === 'body mass' ? undefined : rowUnit(row);
    if (fromRow !== undefined) return fromRow;
    return inHeader(column) ?? askUnit(column, layout.rows, report);
  };
};
