import type { Day } from '#units/day.ts';
import type { Known } from '#domain/known.ts';

/** Plasma volume and stroke volume come back in ten to fourteen days: so long effort and talking lead (common practice). */
const FIRST_DAYS_HOME = 14;

/** Days since landing, from 0 on landing day; null before it, or where no landing is dated. */
export const daysSinceLanding = ({ mission }: Known, on: Day): number | null =>
  mission?.landing && on >= mission.landing.latest ? on - mission.landing.latest : null;

export const isFirstDayHome = (known: Known, on: Day): boolean => {
  const since = daysSinceLanding(known, on);
  return since !== null && since < FIRST_DAYS_HOME;
};
