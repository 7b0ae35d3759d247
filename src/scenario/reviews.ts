import type { Instant } from '#domain/identity.ts';
import { type Day, addDays } from '#units/day.ts';
import type { InventedPerson } from './invented-person.ts';
import { launchDay } from './missions.ts';
import { momentOf } from './moment.ts';
import { FOLLOWERS } from './script/care-script.ts';

/** The hour in the week in which a specialist goes through one person's results and issues the next week's cards. */
export interface Review {
  readonly person: InventedPerson;
  readonly at: Instant;
  readonly from: Day;
  readonly until: Day;
}

const DAYS_PER_WEEK = 7;
/** The first cards are handed over two days before launch, so that they are aboard with the crew. */
const HANDED_OVER = 2;

/** One review before launch, then one on the last day of every week of flight; only those before today. */
export const reviewsBefore = (today: Day): readonly Review[] => FOLLOWERS.flatMap((person) => reviewsOf(person, today));

const reviewsOf = (person: InventedPerson, today: Day): readonly Review[] => {
  const launch = launchDay(person.mission, today);
  const weeks = Math.max(0, Math.ceil((today - launch) / DAYS_PER_WEEK) + 1);
  return Array.from({ length: weeks }, (_, week) => {
    const from = addDays(launch, week * DAYS_PER_WEEK);
    const day = addDays(from, week === 0 ? -HANDED_OVER : -1);
    return { person, day, at: momentOf(day, '16:00'), from, until: addDays(from, DAYS_PER_WEEK - 1) };
  }).filter(({ day }) => day < today);
};
