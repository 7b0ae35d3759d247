import { type Day, addDays, dayOfDate, isoOfDay } from '#units/day.ts';
import { quoted } from '../place.ts';
import { type Value, BLANK_VALUE, saysNothing, valued, wrong } from './value.ts';

export type DateOrder = 'day first' | 'month first';

/** What a date text says before anybody decides the order of day and month. */
type Parts =
  | { readonly kind: 'settled'; readonly year: number; readonly month: number; readonly dayOfMonth: number }
  | { readonly kind: 'open'; readonly first: number; readonly second: number; readonly year: number };

const MONTHS = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'] as const;
const CENTURY = 2000;
const MONTHS_OF_YEAR = 12;
const LONGEST_MONTH = 31;

const WRITE_ISO = 'Write it as year-month-day, such as 2026-03-01.';

/** A time of day behind a date counts for nothing here. */
const TIME = /[T\s]+\d{1,2}:\d{2}(:\d{2}(\.\d+)?)?\s*(am|pm|z|[+-]\d{2}:?\d{2})?$/i;
const WEEKDAY = /^(mon|tue|wed|thu|fri|sat|sun)[a-z]*[,.]?\s+/i;

const fullYear = (digits: string): number => (digits.length <= 2 ? CENTURY + Number(digits) : Number(digits));

const monthOf = (word: string): number => MONTHS.findIndex((month) => word.toLowerCase().startsWith(month)) + 1;

const inWords = (text: string): Parts | null => {
  const dayFirst = /^(\d{1,2})(?:st|nd|rd|th)?[\s.-]*([a-z]{3,9})\.?[\s,.-]*(\d{4}|\d{2})$/i.exec(text);
  const monthFirst = /^([a-z]{3,9})\.?[\s.-]*(\d{1,2})(?:st|nd|rd|th)?[\s,.-]+(\d{4}|\d{2})$/i.exec(text);
  const [dayText, monthText, yearText] = dayFirst
    ? dayFirst.slice(1)
    : [monthFirst?.[2], monthFirst?.[1], monthFirst?.[3]];
  if (dayText === undefined || monthText === undefined || yearText === undefined) return null;
  const month = monthOf(monthText);
  return month === 0 ? null : { kind: 'settled', year: fullYear(yearText), month, dayOfMonth: Number(dayText) };
};

const partsOf = (text: string): Parts | null => {
  const plain = text.normalize('NFKC').replace(/^'/, '').replace(WEEKDAY, '').replace(TIME, '').trim();
  const yearFirst = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})$/.exec(plain);
  if (yearFirst)
    return {
      kind: 'settled',
      year: Number(yearFirst[1]),
      month: Number(yearFirst[2]),
      dayOfMonth: Number(yearFirst[3]),
    };
  const compact = /^((?:19|20)\d{2})(\d{2})(\d{2})$/.exec(plain);
  if (compact)
    return { kind: 'settled', year: Number(compact[1]), month: Number(compact[2]), dayOfMonth: Number(compact[3]) };
  const yearLast = /^(\d{1,2})[-/.\s](\d{1,2})[-/.\s](\d{4}|\d{2})\.?$/.exec(plain);
  if (!yearLast) return inWords(plain);
  return { kind: 'open', first: Number(yearLast[1]), second: Number(yearLast[2]), year: fullYear(yearLast[3] ?? '') };
};

/** The order that this text proves, or null: "13/04/2026" can only be day first, "03/03/2026" needs none. */
export const orderProvedBy = (text: string): DateOrder | null => {
  const parts = partsOf(text);
  if (parts?.kind !== 'open') return null;
  if (parts.first > MONTHS_OF_YEAR && parts.second <= MONTHS_OF_YEAR) return 'day first';
  return parts.second > MONTHS_OF_YEAR && parts.first <= MONTHS_OF_YEAR ? 'month first' : null;
};

/** Whether the text is two different days, by the order in which day and month are read. */
export const isAmbiguousDate = (text: string): boolean => {
  const parts = partsOf(text);
  return (
    parts?.kind === 'open' && parts.first !== parts.second && Math.max(parts.first, parts.second) <= MONTHS_OF_YEAR
  );
};

const notADate = (text: string): Value<never> => {
  const serial = /^\d{5}$/.test(text) ? Number(text) : 0;
  // Day 25,569 of spreadsheets that count from 1900 is 1970-01-01.
  if (serial > 15_000 && serial < 75_000)
    return wrong(
      `${quoted(text)} is not a date.`,
      `It looks like the number behind a date: day ${text} of a spreadsheet is ${isoOfDay(addDays(0 as Day, serial - 25_569))}.`,
      'Format the column as dates in the spreadsheet program and save again.',
    );
  return wrong(`${quoted(text)} is not a date.`, 'It cannot be read as one.', WRITE_ISO);
};

const noSuchDay = (text: string): Value<never> =>
  wrong(`${quoted(text)} is no day of the calendar.`, 'No month has such a day.', WRITE_ISO);

/**
 * The day of a date text. Where its order is open it is read in the given one; an order that the text itself proves
 * goes before.
 */
export const readDate = (text: string, order: DateOrder | null): Value<Day> => {
  if (saysNothing(text)) return BLANK_VALUE;
  const parts = partsOf(text);
  if (!parts) return notADate(text);
  if (parts.kind === 'settled') {
    const found = dayOfDate(parts.year, parts.month, parts.dayOfMonth);
    return found === null ? noSuchDay(text) : valued(found);
  }
  if (parts.first > LONGEST_MONTH || parts.second > LONGEST_MONTH) return noSuchDay(text);
  const decided = orderProvedBy(text) ?? order ?? 'day first';
  const [dayOfMonth, month] = decided === 'day first' ? [parts.first, parts.second] : [parts.second, parts.first];
  const found = dayOfDate(parts.year, month, dayOfMonth);
  return found === null ? noSuchDay(text) : valued(found);
};

/** A birth date with a year of two digits lies in the past: "84" is 1984, and "19" is not yet born to train. */
export const readBirthDate = (text: string, order: DateOrder | null, today: Day): Value<Day> => {
  const read = readDate(text, order);
  const shortYear = !/\d{4}/.test(text);
  if (read.kind !== 'value' || !shortYear || read.value <= today) return read;
  const [year = '', month = '', dayOfMonth = ''] = isoOfDay(read.value).split('-');
  const earlier = dayOfDate(Number(year) - 100, Number(month), Number(dayOfMonth));
  return earlier === null ? noSuchDay(text) : valued(earlier);
};

/** Two days in one cell, as a landing that is a range: "2027-09-01 to 2027-09-20". */
export const readDateRange = (
  text: string,
  order: DateOrder | null,
): Value<{ readonly from: Day; readonly to: Day }> => {
  const [first = '', second] = rangeTexts(text);
  const from = readDate(first, order);
  const to = second === undefined ? from : readDate(second, order);
  if (from.kind !== 'value') return from;
  return to.kind === 'value' ? valued({ from: from.value, to: to.value }) : to;
};

/** The one or two date texts of a cell. */
export const rangeTexts = (text: string): readonly string[] =>
  text.split(/\s+(?:to|until|-|–|—|\/)\s+|\s*(?:–|—|\.\.+|…)\s*|(?<=\d{4}-\d{2}-\d{2})\/(?=\d{4})/);
