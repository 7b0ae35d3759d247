import type { ColumnPlace, Issue } from '#contract/bring-in.ts';

const LETTERS = 26;
const CODE_OF_A = 65;

/** The letter of a column counted from 0, as spreadsheets name it: 0 is A, 26 is AA. */
export const columnLetter = (index: number): string => {
  const here = String.fromCharCode(CODE_OF_A + (index % LETTERS));
  return index < LETTERS ? here : columnLetter(Math.floor(index / LETTERS) - 1) + here;
};

/** The column counted from 0 that a letter names. */
export const columnIndex = (letters: string): number =>
  [...letters].reduce((index, letter) => index * LETTERS + letter.charCodeAt(0) - CODE_OF_A + 1, 0) - 1;

/** Where something stands, in the words of somebody who has the file open. */
export const placeInWords = (row: number | null, column: ColumnPlace | null): string => {
  const named =
    column && (column.header === '' ? `column ${column.letter}` : `column ${column.letter} “${column.header}”`);
  if (row === null) return named ?? 'the file';
  return named ? `row ${row}, ${named}` : `row ${row}`;
};

export interface Said {
  readonly what: string;
  readonly why: string;
  readonly whatToDo: string;
}

const issueOf =
  (kind: Issue['kind']) =>
  (said: Said, row: number | null = null, column: ColumnPlace | null = null): Issue => ({
    kind,
    what: said.what,
    why: said.why,
    whatToDo: said.whatToDo,
    row,
    column,
    where: placeInWords(row, column),
  });

export const refusal = issueOf('refused');
export const oddity = issueOf('odd');
export const passedOver = issueOf('passed over');

const SHOWN = 60;

/** A value of the file inside a sentence: quoted, on one line, cut where it is long. */
export const quoted = (text: string): string => {
  const flat = text.replace(/\p{Cc}+/gu, ' ');
  return `“${flat.length > SHOWN ? `${flat.slice(0, SHOWN)}…` : flat}”`;
};
