import type { Instant } from '#domain/identity.ts';
import { type Day, addDays } from '#units/day.ts';
import type { InventedPerson } from './invented-person.ts';
import { launchDay, missionWith } from './missions.ts';
import { momentOf } from './moment.ts';
import { FOLLOWERS, PREPARING, RETURNING } from './script/care-script.ts';

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
/** What is issued for landing day and after is handed over at the vehicle. */
const DAY_BEFORE = 1;

/** One review before the first day, then one on the last day of every week; only those before today. */
export const reviewsBefore = (today: Day): readonly Review[] => [
  ...FOLLOWERS.flatMap((person) => reviewsOf(person, launchDay(person.mission, today), HANDED_OVER, today)),
  ...PREPARING.flatMap(({ person, since }) => reviewsOf(person, addDays(today, -since), DAY_BEFORE, today)),
  ...RETURNING.flatMap((person) => reviewsOf(person, landingDay(person, today), DAY_BEFORE, today)),
];

const landingDay = ({ mission }: InventedPerson, today: Day): Day =>
  addDays(today, missionWith(mission).landing?.[1] ?? 0);

const reviewsOf = (person: InventedPerson, first: Day, handedOver: number, today: Day): readonly Review[] => {
  const weeks = Math.max(0, Math.ceil((today - first) / DAYS_PER_WEEK) + 1);
  return Array.from({ length: weeks }, (_, week) => {
    const from = addDays(first, week * DAYS_PER_WEEK);
    const day = addDays(from, week === 0 ? -handedOver : -1);
    return { person, day, at: momentOf(day, '16:00'), from, until: addDays(from, DAYS_PER_WEEK - 1) };
  }).filter(({ day }) => day < today);
};
