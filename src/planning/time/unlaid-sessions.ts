import { addDays, isoOfDay, type Day } from '#units/day.ts';
import type { UnlaidSession } from '#domain/road.ts';
import type { PlanContext } from '../plan-context.ts';
import { laidWeekOf, type LaidWeek } from './laid-week.ts';

/** Sessions of the days from one to another that their weeks have no time for. */
export const unlaidSessions = (context: PlanContext, from: Day, until: Day): readonly UnlaidSession[] => {
  const weeks = new Set<LaidWeek>();
  for (let on = from; on <= until; on = addDays(on, 1)) {
    const week = laidWeekOf(context, on);
    if (week) weeks.add(week);
  }
  return [...weeks].flatMap(({ first, unlaid }) =>
    unlaid
      .filter(({ day }) => day >= from && day <= until)
      .map(({ session, day }) => ({
        day,
        week: first,
        session: session.id,
        title: session.title,
        says: `${session.title} has no place in the week of ${isoOfDay(first)}.`,
      })),
  );
};
