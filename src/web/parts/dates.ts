import { isoOfDay, weekdayOf, type Day } from '#units/day.ts';

/** A week begins on Monday. */
export const WEEKDAYS = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'];
const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];

const partsOf = (day: Day): { readonly weekday: string; readonly date: number; readonly month: string } => {
  const [, month, date] = isoOfDay(day).split('-').map(Number);
  return { weekday: WEEKDAYS[weekdayOf(day)] ?? '', date: date ?? 0, month: MONTHS[(month ?? 1) - 1] ?? '' };
};

/** "Tuesday 8 June". */
export const longDate = (day: Day): string => {
  const { weekday, date, month } = partsOf(day);
  return `${weekday} ${date} ${month}`;
};

/** "8 June 2027". */
export const dateWithYear = (day: Day): string => {
  const { date, month } = partsOf(day);
  return `${date} ${month} ${isoOfDay(day).slice(0, 4)}`;
};

/** "Tue 8 Jun". */
export const shortDate = (day: Day): string => {
  const { weekday, date, month } = partsOf(day);
  return `${weekday.slice(0, 3)} ${date} ${month.slice(0, 3)}`;
};

/** "Tue 8", for a column whose month stands to its left. */
export const dateInMonth = (day: Day): string => {
  const { weekday, date } = partsOf(day);
  return `${weekday.slice(0, 3)} ${date}`;
};

export const monthOf = (day: Day): string => partsOf(day).month;
