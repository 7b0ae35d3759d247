import type { Exercise } from '#domain/catalogue.ts';
import { cellAt, columnThatIs, columnsThatAre, type Column, type Row } from '../layout/sheet-layout.ts';
import { passedOver, quoted, refusal, type Said } from '../place.ts';
import { saysNothing } from '../values/value.ts';
import { columnBesideLift } from './columns-beside-lift.ts';
import { exerciseOfTable, NOTHING_STATED, type ExerciseOf, type Stated } from './exercises-of-tests.ts';
import type { Reading } from './reading.ts';

/** Where the parts of one test stand in its row. */
export interface Parts {
  readonly row: Row;
  readonly load: Column;
  readonly exercise: Exercise;
  /** The words that name it, which may tell of dumbbells. */
  readonly written: string;
  readonly stated: Stated;
  readonly repetitions: Column | null;
  readonly efforts: readonly Column[];
  readonly side: Column | null;
}

export const isPresent = <Kind>(one: Kind | null): one is Kind => one !== null;

const partsInLift = (
  row: Row,
  load: Column,
  exercises: ReadonlyMap<string, Exercise>,
  columns: readonly Column[],
): Parts | null => {
  const { meaning, place } = load;
  const exercise = meaning.is === 'lift' ? exercises.get(meaning.exercise) : undefined;
  if (meaning.is !== 'lift' || !exercise || cellAt(row, load) === null) return null;
  const beside = (is: 'repetitions' | 'RPE' | 'repetitions in reserve' | 'side') => columnBesideLift(columns, load, is);
  return {
    row,
    load,
    exercise,
    written: place.header,
    stated: { repetitions: meaning.repetitions, unit: meaning.unit, side: meaning.side },
    repetitions: beside('repetitions'),
    efforts: [beside('RPE'), beside('repetitions in reserve')].filter(isPresent),
    side: beside('side'),
  };
};

const NO_EXERCISE: Said = {
  what: 'The test names no exercise.',
  why: 'A load without its exercise says nothing.',
  whatToDo: 'Write the exercise.',
};
const NO_LOAD: Said = {
  what: 'The row has no load and was passed over.',
  why: 'Nothing was lifted, or it was not written down.',
  whatToDo: 'Nothing, or write the load.',
};
const leftOutSaid = (written: string): Said => ({
  what: `The test of ${quoted(written)} is left out.`,
  why: 'You chose to leave it out.',
  whatToDo: 'Nothing, or answer otherwise.',
});

/** Finds the exercise of a row that is one test; says why where the row is none. */
const namedExercise = (row: Row, column: Column | null, reading: Reading, exerciseOf: ExerciseOf) => {
  const { layout, context, report } = reading;
  if (!column) {
    const exercise = exerciseOfTable(context, layout.titles, report);
    return exercise && { exercise, written: layout.titles.join(' '), stated: NOTHING_STATED };
  }
  const written = cellAt(row, column)?.text ?? '';
  if (saysNothing(written)) {
    report.say(refusal(NO_EXERCISE, row.number, column.place));
    return null;
  }
  const found = exerciseOf(written, row);
  if (found !== 'left out') return found && { ...found, written };
  report.say(passedOver(leftOutSaid(written), row.number, column.place));
  return null;
};

const partsInRow = (row: Row, load: Column, reading: Reading, exerciseOf: ExerciseOf): Parts | null => {
  const { columns } = reading.layout;
  const exerciseColumn = columnThatIs(columns, 'exercise');
  const exerciseText = exerciseColumn ? (cellAt(row, exerciseColumn)?.text ?? '') : '';
  if (saysNothing(cellAt(row, load)?.text ?? '') && cellAt(row, load)?.is !== 'error') {
    if (!saysNothing(exerciseText)) reading.report.say(passedOver(NO_LOAD, row.number, load.place));
    return null;
  }
  const named = namedExercise(row, exerciseColumn, reading, exerciseOf);
  const efforts = [columnThatIs(columns, 'RPE'), columnThatIs(columns, 'repetitions in reserve')].filter(isPresent);
  return (
    named && {
      row,
      load,
      ...named,
      repetitions: columnThatIs(columns, 'repetitions'),
      efforts,
      side: columnThatIs(columns, 'side'),
    }
  );
};

/** The parts of every test of a row, in whichever layout: the row is one test, or has a column for each lift. */
export const partsOfTests = (reading: Reading, exerciseOf: ExerciseOf): ((row: Row) => readonly Parts[]) => {
  const { columns } = reading.layout;
  const exercises = new Map(reading.context.exercises.map((exercise) => [exercise.id as string, exercise]));
  const lifts = columnsThatAre(columns, 'lift');
  const loads = columnsThatAre(columns, 'load');
  return (row) => [
    ...lifts.map((column) => partsInLift(row, column, exercises, columns)).filter(isPresent),
    ...loads.map((column) => partsInRow(row, column, reading, exerciseOf)).filter(isPresent),
  ];
};
