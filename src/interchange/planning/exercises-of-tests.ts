import type { ColumnMeaning } from '#contract/bring-in.ts';
import type { Exercise } from '#domain/catalogue.ts';
import type { Side } from '#domain/effort.ts';
import type { MassUnit } from '#units/mass.ts';
import { exerciseFinder, likelyFirst } from '../layout/exercise-names.ts';
import { meaningOfHeader } from '../layout/match-header.ts';
import type { Row } from '../layout/sheet-layout.ts';
import { spelling } from '../layout/spelling.ts';
import { quoted } from '../place.ts';
import type { BringInContext } from './context.ts';
import type { Report } from './report.ts';

/** What the words of a test say beside its exercise, as "Back squat 5RM (lb), left". */
export interface Stated {
  readonly repetitions: number | null;
  readonly unit: MassUnit | null;
  readonly side: Side | null;
}

export const NOTHING_STATED: Stated = { repetitions: null, unit: null, side: null };

/** The exercise that a text names; 'left out' where a person said so, null while it is asked. */
export type ExerciseOf = (
  text: string,
  row: Row,
) => { readonly exercise: Exercise; readonly stated: Stated } | 'left out' | null;

const LEAVE_OUT = 'leave out';

const choicesFor = (exercises: readonly Exercise[], text: string) => [
  ...likelyFirst(exercises, text).map(({ id, name }) => ({ answer: id as string, says: name })),
  { answer: LEAVE_OUT, says: 'none of these: leave its rows out' },
];

const statedBy = (meaning: ColumnMeaning): Stated =>
  meaning.is === 'lift' ? { repetitions: meaning.repetitions, unit: meaning.unit, side: meaning.side } : NOTHING_STATED;

const askExercise = (exercises: readonly Exercise[], text: string, row: Row, report: Report): string | null =>
  report.ask({
    id: `exercise, ${spelling(text)}`,
    about: 'exercise',
    asks: `Which exercise is ${quoted(text)}?`,
    because: 'No exercise of the catalogue has this name.',
    row: row.number,
    choices: choicesFor(exercises, text),
  });

export const exercisesOfTests = ({ exercises }: BringInContext, report: Report): ExerciseOf => {
  const find = exerciseFinder(exercises);
  const byId = new Map(exercises.map((exercise) => [exercise.id as string, exercise]));
  const meanings = new Map<string, ColumnMeaning>();
  return (text, row) => {
    const meaning = meanings.get(text) ?? meaningOfHeader(text, find);
    meanings.set(text, meaning);
    const id = meaning.is === 'lift' ? meaning.exercise : askExercise(exercises, text, row, report);
    if (id === LEAVE_OUT) return 'left out';
    const exercise = id === null ? undefined : byId.get(id);
    return exercise ? { exercise, stated: statedBy(meaning) } : null;
  };
};

/** The exercise of a table that has a column of loads and none of exercises. */
export const exerciseOfTable = (
  { exercises }: BringInContext,
  titles: readonly string[],
  report: Report,
): Exercise | null => {
  const answer = report.ask({
    id: 'exercise of the table',
    about: 'exercise',
    asks: 'Which exercise was tested?',
    because: 'The table has loads and no column of exercises.',
    choices: choicesFor(exercises, titles.join(' ')).slice(0, -1),
  });
  return exercises.find(({ id }) => id === answer) ?? null;
};
