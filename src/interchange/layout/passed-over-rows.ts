import type { Cell, Issue, Sheet, SheetRow } from '#contract/bring-in.ts';
import { passedOver, quoted, type Said } from '../place.ts';
import type { Column } from './sheet-layout.ts';
import { spelling } from './spelling.ts';

/** First words of lines that sum up the people above them. */
const SUMMARY =
  /^(team |group |crew |overall |column )?(average|averages|avg|mean|means|median|total|totals|sum|min|minimum|max|maximum|sd|s d|st dev|stdev|std dev|std|standard deviation|se|sem|cv|range|count|n|number|percentile|norm|norms|target|goal|best|worst|mittelwert|durchschnitt|summe|moyenne|promedio)( \d+| of .*| value| values| \(.*)?$/;

const texts = (row: SheetRow): readonly string[] => row.cells.map(({ text }) => text).filter((text) => text !== '');

const isSummary = (text: string): boolean => SUMMARY.test(spelling(text));

const summarySaid = (text: string): Said => ({
  what: `The line ${quoted(text)} was passed over.`,
  why: 'It sums up other lines and is no person.',
  whatToDo: 'Nothing. Were it a person, write the whole name.',
});

const HEADING: Said = {
  what: 'The line was passed over: it is a heading.',
  why: 'It is one text across several columns.',
  whatToDo: 'Nothing.',
};
const REPEATED: Said = {
  what: 'The line was passed over: it repeats the header.',
  why: 'Its texts are the names of the columns.',
  whatToDo: 'Nothing.',
};
const noteSaid = (text: string): Said => ({
  what: `The line was passed over: it holds ${quoted(text)} and nothing else.`,
  why: 'A name alone is nothing to record, and notes stand alone below tables.',
  whatToDo: 'Nothing, or write what belongs to the name.',
});

const isHeading = (sheet: Sheet, row: SheetRow): boolean =>
  texts(row).length === 1 &&
  sheet.merged.some(({ top, bottom, left, right }) => top <= row.number && row.number <= bottom && left < right);

const repeatsHeader = (row: SheetRow, columns: readonly Column[]): boolean => {
  const filled = columns.filter(({ index, place }) => place.header !== '' && (row.cells[index]?.text ?? '') !== '');
  return (
    filled.length > 1 &&
    filled.every(({ index, place }) => spelling(row.cells[index]?.text ?? '') === spelling(place.header))
  );
};

/** A name alone tells nothing to record; a sentence below the table still less. */
const isNote = (row: SheetRow): boolean => texts(row).length === 1;

const namesIn = (row: SheetRow, columns: readonly Column[]): readonly string[] => [
  ...texts(row).slice(0, 1),
  ...columns.flatMap(({ index, meaning }) => (meaning.is === 'name' ? [row.cells[index]?.text ?? ''] : [])),
];

/** Why a row below the header is none of the table, or null where it is one. */
export const passedOverRow = (sheet: Sheet, row: SheetRow, columns: readonly Column[]): Issue | null => {
  const summary = namesIn(row, columns).find(isSummary);
  if (summary !== undefined) return passedOver(summarySaid(summary), row.number);
  if (repeatsHeader(row, columns)) return passedOver(REPEATED, row.number);
  if (isHeading(sheet, row)) return passedOver(HEADING, row.number);
  return isNote(row) ? passedOver(noteSaid(texts(row)[0] ?? ''), row.number) : null;
};

export const isFilled = ({ text, is }: Cell): boolean => text !== '' || is === 'error';
