import { type Day, isoOfDay } from '#units/day.ts';
import type { Issue } from '#contract/bring-in.ts';
import { columnThatIs, type Column, type Row, type SheetLayout } from '../layout/sheet-layout.ts';
import { oddity, quoted, refusal } from '../place.ts';
import { readBirthDate } from '../values/read-date.ts';
import { readDecimal } from '../values/read-decimal.ts';
import { readSex } from '../values/read-words.ts';
import { BLANK_VALUE, saysNothing, valued, wrong } from '../values/value.ts';
import type { CellReader } from './cell-reader.ts';
import type { PersonOnRecord } from './context.ts';
import { mayStand } from './judge-cell.ts';
import { judgedBirthDate, judgedTrainingAge } from './possible.ts';
import type { Report } from './report.ts';

/** What rows tell of a person beside tests, with the row that tells it first. */
interface Told<Kind> {
  readonly value: Kind;
  readonly row: Row;
  readonly column: Column;
}

export interface PersonDetails {
  readonly sex: Told<'female' | 'male'> | null;
  readonly birthDate: Told<Day> | null;
  readonly trainingAge: Told<string> | null;
}

/** One value of a person from all rows: rows that contradict each other are refused. */
const told = <Kind extends string | number>(
  rows: readonly Row[],
  column: Column | null,
  read: (row: Row, column: Column) => Kind | null,
  what: string,
  report: Report,
): Told<Kind> | null => {
  if (!column) return null;
  let first: Told<Kind> | null = null;
  for (const row of rows) {
    const value = read(row, column);
    if (value === null) continue;
    first ??= { value, row, column };
    if (value === first.value) continue;
    const why = `Row ${first.row.number} tells another ${what} of the same person.`;
    report.say(
      refusal(
        {
          what: `The ${what} contradicts another row.`,
          why,
          whatToDo: 'Correct one of them, or tell two people of one name apart.',
        },
        row.number,
        column.place,
      ),
    );
  }
  return first;
};

const sexIn = (cells: CellReader, report: Report) => (row: Row, column: Column) =>
  report.take(
    row,
    column,
    cells.text(row, column, (text) => {
      if (saysNothing(text)) return BLANK_VALUE;
      const sex = readSex(text);
      return sex === null
        ? wrong(
            `${quoted(text)} is neither female nor male.`,
            'Norms and body segments are known for these two.',
            'Write F or M.',
          )
        : valued(sex);
    }),
  );

const birthDateIn = (cells: CellReader, today: Day, report: Report) => (row: Row, column: Column) => {
  const value = report.take(
    row,
    column,
    cells.date(row, column, (text, order) => readBirthDate(text, order, today)),
  );
  return value !== null && mayStand(judgedBirthDate(value, today), row, column, report) ? value : null;
};

const trainingAgeIn = (cells: CellReader, report: Report) => (row: Row, column: Column) => {
  const value = report.take(
    row,
    column,
    cells.text(row, column, (text, mark) => readDecimal(text.replace(/\s*(y|yrs?|years?)\.?$/i, ''), mark)),
  );
  return value !== null && mayStand(judgedTrainingAge(Number(value)), row, column, report) ? value : null;
};

/** Sex, birth date and training age of one person, from all rows that name it. */
export const personDetails = (
  rows: readonly Row[],
  { columns }: SheetLayout,
  cells: CellReader,
  today: Day,
  report: Report,
): PersonDetails => ({
  sex: told(rows, columnThatIs(columns, 'sex'), sexIn(cells, report), 'sex', report),
  birthDate: told(rows, columnThatIs(columns, 'birth date'), birthDateIn(cells, today, report), 'birth date', report),
  trainingAge: told(rows, columnThatIs(columns, 'training age'), trainingAgeIn(cells, report), 'training age', report),
});

/** Where the file tells other than the log: the log stands until somebody corrects it there. */
export const differencesFromRecord = (person: PersonOnRecord, { sex, birthDate }: PersonDetails): readonly Issue[] => {
  const differs = (what: string, told: Told<unknown>, recorded: string): Issue =>
    oddity(
      {
        what: `The ${what} of ${person.name} differs from the record, which says ${recorded}.`,
        why: 'What is recorded of a person is not changed by a file.',
        whatToDo: 'Where the file is right, correct the record there, with the reason.',
      },
      told.row.number,
      told.column.place,
    );
  return [
    ...(sex && sex.value !== person.sex ? [differs('sex', sex, person.sex)] : []),
    ...(birthDate && person.birthDate !== null && birthDate.value !== person.birthDate
      ? [differs('birth date', birthDate, isoOfDay(person.birthDate))]
      : []),
  ];
};
