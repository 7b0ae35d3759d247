import { type Day, dayFromIso, isoOfDay } from '#units/day.ts';
import type { SheetLayout } from '../layout/sheet-layout.ts';
import { isAmbiguousDate, readDate } from '../values/read-date.ts';
import type { Report } from './report.ts';

/** Pieces of a title that may be a date: "Strength tests, 12 March 2026". */
const DATE_IN_TITLE =
  /\d{4}-\d{2}-\d{2}|\d{1,2}[-/.]\d{1,2}[-/.]\d{4}|\d{1,2}(?:st|nd|rd|th)?\s+[A-Za-z]{3,9}\.?,?\s+\d{4}|[A-Za-z]{3,9}\.?\s+\d{1,2}(?:st|nd|rd|th)?,?\s+\d{4}/g;

/** The one day that the titles name without doubt, or null. */
const dayInTitles = (titles: readonly string[]): Day | null => {
  const texts = titles.flatMap((title) => title.match(DATE_IN_TITLE) ?? []).filter((text) => !isAmbiguousDate(text));
  const days = new Set(
    texts.flatMap((text) => {
      const read = readDate(text, null);
      return read.kind === 'value' ? [read.value] : [];
    }),
  );
  const [only] = days;
  return days.size === 1 && only !== undefined ? only : null;
};

/** The day of everything in a table without a date column: asked once. Null while the question is open. */
export const sheetDay = (layout: SheetLayout, today: Day, report: Report): Day | null => {
  const suggested = dayInTitles(layout.titles);
  const offered = suggested !== null && suggested <= today ? isoOfDay(suggested) : null;
  const answer = report.ask({
    id: 'day of the table',
    about: 'day',
    asks: 'On which day was this measured?',
    because:
      offered === null
        ? 'The table has no column of dates.'
        : `The table has no column of dates; a title above it names ${offered}.`,
    choices: offered === null ? [] : [{ answer: offered, says: offered }],
    typed: 'a day such as 2026-03-01',
    accepts: (typed) => {
      const day = dayFromIso(typed);
      return day !== null && day <= today;
    },
    suggested: offered,
  });
  return answer === null ? null : dayFromIso(answer);
};
