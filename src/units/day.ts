import type { Quantity } from './quantity.ts';

/** A calendar date as lived at a site: whole days since 1970-01-01. It has no zone. */
export type Day = Quantity<'day since 1970-01-01'>;

const MILLISECONDS_PER_DAY = 86_400_000;
const ISO_DATE = /^(\d{4})-(\d{2})-(\d{2})$/;
const LONGEST_MONTH = 31;

/** A day from its number; refuses fractions. */
export const day = (value: number): Day => {
  if (!Number.isInteger(value)) throw new RangeError(`A day is a whole number; it is ${value}.`);
  return value as Day;
};

/** The day of a year, month (1 to 12) and day of month, or null where the calendar has no such day. */
export const dayOfDate = (year: number, month: number, dayOfMonth: number): Day | null => {
  if (month < 1 || month > 12 || dayOfMonth < 1 || dayOfMonth > LONGEST_MONTH) return null;
  const milliseconds = Date.UTC(year, month - 1, dayOfMonth);
  const back = new Date(milliseconds);
  const exists = back.getUTCFullYear() === year && back.getUTCMonth() === month - 1 && back.getUTCDate() === dayOfMonth;
  return exists ? (Math.round(milliseconds / MILLISECONDS_PER_DAY) as Day) : null;
};

/** Reads 2027-03-01; null for anything else, 31 February included. */
export const dayFromIso = (text: string): Day | null => {
  const match = ISO_DATE.exec(text);
  return match ? dayOfDate(Number(match[1]), Number(match[2]), Number(match[3])) : null;
};

/** Reads an ISO date that the program itself wrote; throws where it is none. */
export const isoDay = (text: string): Day => {
  const found = dayFromIso(text);
  if (found === null) throw new RangeError(`"${text}" is not a calendar date such as 2027-03-01.`);
  return found;
};

export const isoOfDay = (value: Day): string => new Date(value * MILLISECONDS_PER_DAY).toISOString().slice(0, 10);

export const addDays = (value: Day, days: number): Day => day(value + days);
export const daysBetween = (from: Day, to: Day): number => to - from;

/** Monday is 0, Sunday is 6: 1970-01-01 was a Thursday. */
export const weekdayOf = (value: Day): number => (((value + 3) % 7) + 7) % 7;

/** Completed years from a birth date to a day. */
export const ageInYears = (birth: Day, on: Day): number => {
  const [birthIso, onIso] = [isoOfDay(birth), isoOfDay(on)];
  const years = Number(onIso.slice(0, 4)) - Number(birthIso.slice(0, 4));
  return onIso.slice(5) < birthIso.slice(5) ? years - 1 : years;
};

/** Flight day of a day: launch day is 1, there is no flight day 0. */
export const flightDay = (launch: Day, on: Day): number => on - launch + 1;
