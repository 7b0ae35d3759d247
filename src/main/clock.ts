import { dayOfDate, isoDay, type Day } from '#units/day.ts';
import { instant, type Instant } from '#domain/identity.ts';

/** The program's only clock. */
export const now = (): Instant => instant(new Date().toISOString());

/** The calendar date where the program runs: a specialist's day is a local one. */
export const localToday = (): Day => {
  const date = new Date();
  return dayOfDate(date.getFullYear(), date.getMonth() + 1, date.getDate()) ?? isoDay(date.toISOString().slice(0, 10));
};

/** The same hour on another day: where today is chosen, what is recorded must not lie before what it answers. */
export const nowOn = (isoDate: string) => (): Instant => instant(`${isoDate}${new Date().toISOString().slice(10)}`);
