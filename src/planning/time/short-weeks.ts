import { addDays, type Day } from '#units/day.ts';
import type { PhaseName } from '#domain/programme.ts';
import type { PlanContext } from '../plan-context.ts';
import { roomOn } from './day-room.ts';
import { placeOnRoad } from './place-on-road.ts';
import { sideOf, type RoadSide } from './side-of.ts';

/**
 * The least time (common practice, no source): before launch two blocks of two hours or four single hours a week; in flight
 * two and a half hours a day, one easier day a week apart.
 */
export const WINDOW_PRACTICE = { hoursAWeek: 4, minutesOfFlightDay: 150, easierFlightDays: 1 } as const;

/** Weeks on end with less time than practice asks for. */
export interface ShortWeeks {
  readonly side: RoadSide;
  readonly first: Day;
  readonly last: Day;
  readonly weeks: number;
  /** Hours of a week on the ground, full days of a week in flight: the least of these weeks. */
  readonly least: number;
}

const WEEK = 7;
const HOUR = 60;
/** A block holds two hours; what is longer counts no more. */
const HOURS_OF_BLOCK = 2;

/** Of whole weeks from a Monday on, those that are short of time; only where somebody entered how much there is. */
export const shortWeeks = (context: PlanContext, monday: Day, until: Day): readonly ShortWeeks[] => {
  const runs: ShortWeeks[] = [];
  for (let first = monday; first <= until; first = addDays(first, WEEK)) {
    const week = shortWeek(context, first);
    const before = runs.at(-1);
    if (!week) continue;
    if (before?.side === week.side && addDays(before.last, 1) === first)
      runs[runs.length - 1] = {
        ...before,
        last: week.last,
        weeks: before.weeks + 1,
        least: Math.min(before.least, week.least),
      };
    else runs.push(week);
  }
  return runs;
};

const shortWeek = (context: PlanContext, first: Day): ShortWeeks | null => {
  const days = Array.from({ length: WEEK }, (_, place) => addDays(first, place));
  const side = sideOf(context, first);
  if (side === 'after landing' || days.some((day) => sideOf(context, day) !== side || isMeantToHoldLess(context, day)))
    return null;
  const minutes = days.map((day) => roomOn(context, day).minutes ?? Infinity);
  const least = side === 'before launch' ? hoursIn(minutes) : fullFlightDaysIn(minutes);
  const asked = side === 'before launch' ? WINDOW_PRACTICE.hoursAWeek : WEEK - WINDOW_PRACTICE.easierFlightDays;
  return least >= asked ? null : { side, first, last: addDays(first, WEEK - 1), weeks: 1, least };
};

const hoursIn = (minutes: readonly number[]): number =>
  minutes.reduce((hours, each) => hours + Math.min(HOURS_OF_BLOCK, Math.floor(each / HOUR)), 0);

const fullFlightDaysIn = (minutes: readonly number[]): number =>
  minutes.filter((each) => each >= WINDOW_PRACTICE.minutesOfFlightDay).length;

const HOLD_LESS: ReadonlySet<PhaseName> = new Set(['taper', 'quarantine']);

const isMeantToHoldLess = (context: PlanContext, on: Day): boolean => {
  const phase = placeOnRoad(context, on)?.phase.name;
  return phase !== undefined && HOLD_LESS.has(phase);
};
