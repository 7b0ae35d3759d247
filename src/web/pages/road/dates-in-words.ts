import { dayFromIso } from '#units/day.ts';
import { dateWithYear } from '../../parts/dates.ts';

/** "2027-06-05" inside a sentence becomes "5 June 2027", as every other date on the page is written. */
export const datesInWords = (says: string): string =>
  says.replaceAll(/\d{4}-\d{2}-\d{2}/g, (iso) => {
    const day = dayFromIso(iso);
    return day === null ? iso : dateWithYear(day);
  });
