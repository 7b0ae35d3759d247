import type { BringInAnswers, Cell, Issue, Question, QuestionSubject } from '#contract/bring-in.ts';
import type { Column, Row } from '../layout/sheet-layout.ts';
import { placeInWords, refusal, type Said } from '../place.ts';
import type { Value } from '../values/value.ts';

/** A question before anybody looked whether it was answered. */
export interface Asked {
  readonly id: string;
  readonly about: QuestionSubject;
  readonly asks: string;
  readonly because: string;
  readonly choices: Question['choices'];
  readonly examples?: readonly string[];
  readonly row?: number | null;
  readonly column?: Column | null;
  readonly typed?: Question['typed'];
  /** Judges what was typed beside the choices. */
  readonly accepts?: (typed: string) => boolean;
  readonly suggested?: string | null;
}

/** Collects, while a file is looked through, all that a person must be asked or told. */
export interface Report {
  /** The answer that was given, or null: then the question is open. */
  readonly ask: (asked: Asked) => string | null;
  readonly say: (issue: Issue) => void;
  /** The value that a cell gave, or null: where it is wrong the cell is refused at its place. */
  readonly take: <Kind>(row: Row, column: Column, read: Value<Kind>) => Kind | null;
  readonly questions: () => readonly Question[];
  readonly issues: () => readonly Issue[];
}

const questionOf = (asked: Asked, given: string | undefined): Question => {
  const fits =
    given !== undefined && (asked.choices.some(({ answer }) => answer === given) || asked.accepts?.(given) === true);
  const row = asked.row ?? null;
  const column = asked.column?.place ?? null;
  return {
    id: asked.id,
    about: asked.about,
    asks: asked.asks,
    because: given === undefined || fits ? asked.because : `The answer “${given}” does not fit. ${asked.because}`,
    row,
    column,
    where: placeInWords(row, column),
    examples: asked.examples ?? [],
    choices: asked.choices,
    typed: asked.typed ?? null,
    suggested: asked.suggested ?? null,
    answer: fits ? given : null,
  };
};

export const makeReport = (answers: BringInAnswers): Report => {
  const questions = new Map<string, Question>();
  const issues: Issue[] = [];
  const answerTo = (id: string): string | undefined => (Object.hasOwn(answers, id) ? answers[id] : undefined);
  return {
    ask: (asked) => {
      const question = questions.get(asked.id) ?? questionOf(asked, answerTo(asked.id));
      questions.set(asked.id, question);
      return question.answer;
    },
    say: (issue) => void issues.push(issue),
    take: (row, column, read) => {
      if (read.kind === 'wrong') issues.push(refusal(read.said, row.number, column.place));
      return read.kind === 'value' ? read.value : null;
    },
    questions: () => [...questions.values()],
    issues: () => issues,
  };
};

/** Refuses a cell for what its value is, at its place. */
export const refuseCell = (report: Report, row: Row, column: Column, said: Said): void =>
  report.say(refusal(said, row.number, column.place));

const EXAMPLES = 6;

/** The first different values of a column, with the rows where they stand. */
export const examplesIn = (
  rows: readonly Row[],
  column: Column,
  wanted: (cell: Cell) => boolean = () => true,
): readonly string[] => {
  const seen = new Map<string, number>();
  for (const { number, cells } of rows) {
    const cell = cells[column.index];
    if (!cell || cell.text === '' || !wanted(cell) || seen.has(cell.text)) continue;
    seen.set(cell.text, number);
    if (seen.size === EXAMPLES) break;
  }
  return [...seen].map(([text, number]) => `${text} (row ${number})`);
};
