import type { ColumnMeaning, Issue, MatchingByHand } from '#contract/bring-in.ts';
import { columnLetter, oddity } from '../place.ts';
import type { Header } from './header-texts.ts';
import { BODY_MASS_BY_CONTEXT } from './header-words.ts';
import { isWorkedOut } from './match-header.ts';
import type { Column } from './sheet-layout.ts';
import { spelling } from './spelling.ts';

/** Meanings that a table may have in several columns: each belongs to the lift left of it. */
const BESIDE_A_LIFT: readonly ColumnMeaning['is'][] = ['repetitions', 'RPE', 'repetitions in reserve', 'side'];
const REPEATABLE: readonly ColumnMeaning['is'][] = ['left out', 'lift', ...BESIDE_A_LIFT];

const LEFT_OUT: ColumnMeaning = { is: 'left out' };

/**
 * "Weight" is the load of a test where the rows name exercises; in a list of people it is the body's. Beside columns of
 * lifts a load of nothing in particular, such as a total, is none.
 */
const inContext = (header: Header, headers: readonly Header[], hasExercises: boolean): ColumnMeaning => {
  const { meaning, text } = header;
  if (meaning.is !== 'load' || hasExercises) return meaning;
  const bare = spelling(text.replace(/kgs?|lbs?/gi, ''));
  if (BODY_MASS_BY_CONTEXT.has(bare)) return { is: 'body mass', unit: meaning.unit };
  return headers.some((other) => other.meaning.is === 'lift') ? LEFT_OUT : meaning;
};

const matched = (headers: readonly Header[], byHand: MatchingByHand | null): readonly Column[] => {
  const hand = byHand?.columns ?? {};
  const hasExercises =
    headers.some(({ meaning }) => meaning.is === 'exercise') || Object.values(hand).some(({ is }) => is === 'exercise');
  return headers.map((header, index) => {
    const letter = columnLetter(index);
    const meaning = hand[letter] ?? inContext(header, headers, hasExercises);
    const by = hand[letter] ? 'hand' : meaning.is === 'left out' ? 'nothing' : 'its header';
    return { index, place: { letter, header: header.text }, meaning, by };
  });
};

const withoutDoubles = (columns: readonly Column[]): readonly Column[] => {
  const seen = new Set<string>();
  const handed = new Set(columns.filter(({ by }) => by === 'hand').map(({ meaning }) => meaning.is));
  return columns.map((column) => {
    const { is } = column.meaning;
    if (REPEATABLE.includes(is)) return column;
    const double = seen.has(is) || (column.by !== 'hand' && handed.has(is));
    if (!double) seen.add(is);
    return double ? { ...column, meaning: LEFT_OUT, by: 'nothing' } : column;
  });
};

const leftOutIssue = (column: Column, before: ColumnMeaning): Issue => {
  const { header } = column.place;
  if (before.is !== 'left out')
    return oddity(
      {
        what: `The column is left out: another one is the ${before.is} already.`,
        why: 'Two columns cannot mean the same.',
        whatToDo: 'Match the one that counts by hand, and leave the other out.',
      },
      null,
      column.place,
    );
  return oddity(
    isWorkedOut(header)
      ? {
          what: 'The column is left out: it holds values that were worked out.',
          why: 'Estimated maxima, ratios and targets are no tests; capacity is estimated here from the tests themselves.',
          whatToDo: 'Nothing, where the tests stand in other columns; else match the column by hand.',
        }
      : {
          what: 'The column is left out.',
          why: header === '' ? 'It has no header.' : 'Its header is no exercise and no other thing that is known here.',
          whatToDo: 'Nothing, where it is not needed; else match it by hand.',
        },
    null,
    column.place,
  );
};

/** Columns with their meanings: by hand where somebody said so, else by their headers; what is left out is said. */
export const matchColumns = (
  headers: readonly Header[],
  byHand: MatchingByHand | null,
  holdsSomething: (index: number) => boolean,
): { readonly columns: readonly Column[]; readonly issues: readonly Issue[] } => {
  const first = matched(headers, byHand);
  const columns = withoutDoubles(first);
  const issues = columns.flatMap((column, index) => {
    const said = column.by === 'hand' || column.meaning.is !== 'left out' || !holdsSomething(index);
    return said ? [] : [leftOutIssue(column, first[index]?.meaning ?? LEFT_OUT)];
  });
  return { columns, issues };
};
