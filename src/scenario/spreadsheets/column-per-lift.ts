import type { ExerciseId } from '#domain/identity.ts';
import { backSquat, deadlift, heelRaise } from '#shipped/exercises/lower-body.ts';
import { benchPress } from '#shipped/exercises/upper-body.ts';
import { type Day, addDays } from '#units/day.ts';
import { kilogramsPer, type MassUnit } from '#units/mass.ts';
import { stepsNotOver } from '#units/rounding.ts';
import { barToFailure, trueMaximum } from '../bodily-truth.ts';
import type { InventedPerson } from '../invented-person.ts';
import { missionWith } from '../missions.ts';
import { ADAEZE, INES, MIRELA, OONA, TOMAS, WEN_LI, YUSUF } from '../people.ts';
import type { WorkbookCell, WorkbookTable } from './table.ts';

interface Column {
  readonly header: string;
  readonly exercise: ExerciseId;
  readonly repetitions: number;
  readonly unit: MassUnit;
  readonly step: number;
}

const COLUMNS: readonly Column[] = [
  { header: 'Back squat 3RM (kg)', exercise: backSquat.id, repetitions: 3, unit: 'kg', step: 2.5 },
  { header: 'Deadlift 3RM (kg)', exercise: deadlift.id, repetitions: 3, unit: 'kg', step: 2.5 },
  { header: 'Heel raise 12RM (kg)', exercise: heelRaise.id, repetitions: 12, unit: 'kg', step: 2.5 },
  { header: 'Bench press 5RM (lb)', exercise: benchPress.id, repetitions: 5, unit: 'lb', step: 5 },
];

/** Two groups as they came to the gym; the sheet has a blank row between them. */
const FIRST_DAY: readonly InventedPerson[] = [INES, TOMAS, OONA, WEN_LI];
const SECOND_DAY: readonly InventedPerson[] = [MIRELA, YUSUF, ADAEZE];
const DAYS_FROM_TODAY = { first: -97, second: -96 };

/** 225 lb, typed into a column of kilograms. */
const MIRELAS_SQUAT = 225;

/** A sheet as it is: titles above, merged headings, a blank row inside, an average below, and one value in the wrong unit. */
export const testsWorkbook = (today: Day): WorkbookTable => {
  const first = FIRST_DAY.map((person) => rowOf(person, DAYS_FROM_TODAY.first, today));
  const second = SECOND_DAY.map((person) => rowOf(person, DAYS_FROM_TODAY.second, today));
  return [
    [text('Strength tests before flight', 7)],
    [text('Brae House, autumn 2026. Three attempts each, best one counts.', 7)],
    [],
    [blank, blank, blank, text('Lower body', 3), blank, blank, text('Upper body')],
    ['Name', 'Date', 'Body mass (kg)', ...COLUMNS.map(({ header }) => header)].map((header) => text(header)),
    ...first,
    [],
    ...second,
    [],
    averages([...first, ...second]),
  ];
};

const text = (content: string, over = 1): WorkbookCell => ({ kind: 'text', text: content, over });
const number = (value: number): WorkbookCell => ({ kind: 'number', value });
const blank: WorkbookCell = { kind: 'blank' };

const rowOf = (person: InventedPerson, daysFromToday: number, today: Day): readonly WorkbookCell[] => [
  text(person.name),
  { kind: 'day', day: addDays(today, daysFromToday) },
  number(person.bodyMass),
  ...COLUMNS.map((column) => number(loadOf(person, column, daysFromToday))),
];

const loadOf = (person: InventedPerson, column: Column, daysFromToday: number): number => {
  if (person === MIRELA && column.exercise === backSquat.id) return MIRELAS_SQUAT;
  const maximum = trueMaximum(person, column.exercise, daysFromToday - missionWith(person.mission).launch, null);
  if (maximum === null) throw new RangeError(`${person.name} has never done ${column.exercise}.`);
  const load = barToFailure(maximum, column.repetitions) / kilogramsPer(column.unit);
  return stepsNotOver(load, column.step) * column.step;
};

const averages = (rows: readonly (readonly WorkbookCell[])[]): readonly WorkbookCell[] => [
  text('Average'),
  blank,
  ...[2, 3, 4, 5, 6].map((column) => {
    const values = rows.flatMap((row) => (row[column]?.kind === 'number' ? [row[column].value] : []));
    return number(Math.round((values.reduce((sum, value) => sum + value, 0) / values.length) * 10) / 10);
  }),
];
