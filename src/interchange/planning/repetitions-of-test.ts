import type { Column, Row } from '../layout/sheet-layout.ts';
import { refusal } from '../place.ts';
import type { CellReader } from './cell-reader.ts';
import { mayStand } from './judge-cell.ts';
import { judgedRepetitions } from './possible.ts';
import type { Report } from './report.ts';

/** What may say how often a load was lifted, nearest to the set first. */
export interface RepetitionSources {
  /** Beside the load in its cell, as in "100 x 5". */
  readonly inCell: string | null;
  readonly column: Column | null;
  /** In the header or the name of the test, as in "5RM". */
  readonly stated: number | null;
}

const MOST = 30;
const fitting = (typed: string): boolean => /^\d{1,2}$/.test(typed) && Number(typed) >= 1 && Number(typed) <= MOST;

const askRepetitions = (load: Column, report: Report): number | null => {
  const isLift = load.meaning.is === 'lift';
  const answer = report.ask({
    id: isLift ? `repetitions, column ${load.place.letter}` : 'repetitions of the table',
    about: 'repetitions',
    asks: 'How many repetitions were lifted with these loads?',
    because: isLift ? 'The header does not say, as “5RM” would.' : 'The table has no column of repetitions.',
    column: load,
    choices: ['1', '3', '5', '10'].map((count) => ({
      answer: count,
      says: count === '1' ? 'one: these are maxima' : count,
    })),
    typed: 'a number of repetitions',
    accepts: fitting,
  });
  return answer === null ? null : Number(answer);
};

const judged = (text: string, row: Row, column: Column, report: Report): number | null =>
  mayStand(judgedRepetitions(text), row, column, report) ? Number(text) : null;

/** The repetitions of a test; null where they are asked or refused. */
export const repetitionsOfTest = (
  row: Row,
  load: Column,
  sources: RepetitionSources,
  cells: CellReader,
  report: Report,
): number | null => {
  const { inCell, column, stated } = sources;
  if (inCell !== null) return judged(inCell, row, load, report);
  const read = column && cells.decimal(row, column);
  if (column && read && read.kind !== 'blank') {
    const text = report.take(row, column, read);
    return text === null ? null : judged(text, row, column, report);
  }
  if (stated !== null) return stated;
  if (!column) return askRepetitions(load, report);
  report.say(
    refusal(
      {
        what: 'The test has no repetitions.',
        why: 'The same load says another strength at one repetition than at ten.',
        whatToDo: 'Write how many repetitions were completed.',
      },
      row.number,
      column.place,
    ),
  );
  return null;
};
