import { instant, type Instant } from '#domain/identity.ts';
import { type Day, isoDay, isoOfDay } from '#units/day.ts';

/** A moment of a day in UTC, from a clock time such as "16:30". */
export const momentOf = (day: Day, clock: string): Instant => instant(`${isoOfDay(day)}T${clock}:00.000Z`);

/** A moment some minutes after midnight; minutes may be fractions. */
export const momentAfter = (day: Day, minutes: number): Instant => {
  const seconds = Math.floor(minutes * 60);
  const two = (value: number): string => String(value).padStart(2, '0');
  const clock = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60, seconds % 60].map(two).join(':');
  return instant(`${isoOfDay(day)}T${clock}.000Z`);
};

export const dayOfMoment = (moment: Instant): Day => isoDay(moment.slice(0, 10));

/** Order of moments: their text sorts as they do. */
export const byMoment = (a: { readonly at: Instant }, b: { readonly at: Instant }): number =>
  Number(a.at > b.at) - Number(a.at < b.at);
