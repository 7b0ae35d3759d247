import type { Cell, Issue, SheetRow } from '#contract/bring-in.ts';
import { columnLetter, oddity, refusal } from '../place.ts';
import { inThousands, type Limits } from './limits.ts';

/** Control characters but tab and line ends, and halves of characters: no text that anybody typed. */
const NO_TEXT = /(?![\t\n\r])\p{Cc}|\p{Cs}/u;

export const BLANK: Cell = { text: '', is: 'text', formula: false };

/** A cell that holds this text: without the blanks around it, and cut where nobody would read on. */
export const textCell = (text: string, limits: Limits): Cell => {
  const trimmed = text.trim();
  return trimmed === '' ? BLANK : { text: trimmed.slice(0, limits.charactersInCell), is: 'text', formula: false };
};

const characterName = (text: string): string => {
  const code = NO_TEXT.exec(text)?.[0].charCodeAt(0) ?? 0;
  return code === 0 ? 'a null byte' : `the character U+${code.toString(16).toUpperCase().padStart(4, '0')}`;
};

const unfit = (text: string, row: number, index: number): Issue =>
  refusal(
    {
      what: `The cell holds ${characterName(text)}.`,
      why: 'It cannot be typed or shown, so the file is damaged there or was made to do harm.',
      whatToDo: 'Type the cell again, or delete it.',
    },
    row,
    { letter: columnLetter(index), header: '' },
  );

const cut = (limits: Limits, row: number, index: number): Issue =>
  oddity(
    {
      what: `The text of the cell was cut after ${inThousands(limits.charactersInCell)} characters.`,
      why: 'No name, date or load is that long.',
      whatToDo: 'Nothing, where the column is left out; else shorten the text.',
    },
    row,
    { letter: columnLetter(index), header: '' },
  );

/** What is wrong with the texts themselves, whatever their columns mean. */
export const cellIssues = (rows: readonly SheetRow[], limits: Limits): readonly Issue[] =>
  rows.flatMap(({ number, cells }) =>
    cells.flatMap(({ text }, index) => {
      if (NO_TEXT.test(text)) return [unfit(text, number, index)];
      return text.length >= limits.charactersInCell ? [cut(limits, number, index)] : [];
    }),
  );
