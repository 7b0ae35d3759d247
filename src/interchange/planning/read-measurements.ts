import type { Day } from '#units/day.ts';
import { kilogramsOf, type Entered } from '#units/entered.ts';
import { cellAt, columnThatIs, type Column, type Row } from '../layout/sheet-layout.ts';
import { refusal } from '../place.ts';
import { readLoad } from '../values/read-load.ts';
import { readStature } from '../values/read-stature.ts';
import { mayStand } from './judge-cell.ts';
import { judgedBodyMass } from './possible.ts';
import type { Reading } from './reading.ts';
import type { Someone } from './someone.ts';

export type Measured =
  | { readonly what: 'body mass'; readonly value: Entered }
  | { readonly what: 'stature'; readonly value: Entered<'cm' | 'in'> };

/** A body mass or a stature as the file tells it. */
export interface MeasurementReading {
  readonly row: Row;
  readonly column: Column;
  readonly someone: Someone;
  readonly day: Day;
  readonly measured: Measured;
}

const bodyMassIn = (
  row: Row,
  column: Column,
  someone: Someone | null,
  { cells, report, unitOf }: Reading,
): Measured | null => {
  const text = report.take(row, column, cells.text(row, column, readLoad));
  const unit = text && unitOf(row, column, text.unit);
  if (!text || !unit) return null;
  const value: Entered = { text: text.number, unit };
  const judged = judgedBodyMass(kilogramsOf(value), someone?.onRecord?.bodyMass ?? null);
  return mayStand(judged, row, column, report) ? { what: 'body mass', value } : null;
};

const statureIn = (row: Row, column: Column, { cells, report }: Reading): Measured | null => {
  const unit = column.meaning.is === 'stature' ? column.meaning.unit : null;
  const value = report.take(
    row,
    column,
    cells.text(row, column, (text, mark) => readStature(text, unit, mark)),
  );
  return value && { what: 'stature', value };
};

const readMeasurement = (row: Row, column: Column, reading: Reading): MeasurementReading | null => {
  const { cells, subjects, dayOf } = reading;
  const subject = subjects.of(row);
  if (cellAt(row, column) === null || subject.kind === 'left out' || subject.kind === 'nobody') return null;
  if (cells.text(row, column, readLoad).kind === 'blank') return null;
  const someone = subject.kind === 'someone' ? subject.someone : null;
  const isMass = column.meaning.is === 'body mass';
  const measured = isMass ? bodyMassIn(row, column, someone, reading) : statureIn(row, column, reading);
  const day = dayOf(row);
  return measured && day !== null && someone ? { row, column, someone, day, measured } : null;
};

const sameValue = ({ value: one }: Measured, { value: other }: Measured): boolean =>
  one.unit === other.unit && Number(one.text) === Number(other.text);

/** One value a person, day and quantity: rows that repeat it are one, rows that contradict it are refused. */
const withoutRepeats = (
  readings: readonly MeasurementReading[],
  { report }: Reading,
): readonly MeasurementReading[] => {
  const first = new Map<string, MeasurementReading>();
  for (const reading of readings) {
    const { row, column, someone, day, measured } = reading;
    const key = `${someone.id} ${day} ${measured.what}`;
    const before = first.get(key);
    if (!before) first.set(key, reading);
    else if (!sameValue(before.measured, measured))
      report.say(
        refusal(
          {
            what: `The ${measured.what} contradicts row ${before.row.number}.`,
            why: 'Both rows tell of one person and one day.',
            whatToDo: 'Correct one of them, or the date.',
          },
          row.number,
          column.place,
        ),
      );
  }
  return [...first.values()];
};

export const readMeasurements = (reading: Reading): readonly MeasurementReading[] => {
  const { columns, rows } = reading.layout;
  const measuring = [columnThatIs(columns, 'body mass'), columnThatIs(columns, 'stature')].flatMap(
    (column) => column ?? [],
  );
  const readings = rows.flatMap((row) => measuring.flatMap((column) => readMeasurement(row, column, reading) ?? []));
  return withoutRepeats(readings, reading);
};
