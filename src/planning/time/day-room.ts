import { weekdayOf, type Day } from '#units/day.ts';
import type { SetAside } from '#domain/fact.ts';
import type { PlanContext } from '../plan-context.ts';
import { holdsDay } from './calendar.ts';
import { sideOf } from './side-of.ts';
import { walkOn } from './space-walks.ts';

/** How much time a day has for training. */
export interface DayRoom {
  /** Null where nobody said: what the programme means. */
  readonly minutes: number | null;
  /** What takes the time, or null where it is the person's own week. */
  readonly taken: SetAside | 'space walk' | null;
}

export const roomOn = (context: PlanContext, on: Day): DayRoom =>
  walkOn(context, on)
    ? { minutes: 0, taken: 'space walk' }
    : [...setAsideOn(context, on), ...blackoutOn(context, on)].reduce(lesser, ownTime(context, on));

const lesser = (a: DayRoom, b: DayRoom): DayRoom => (minutesIn(b) < minutesIn(a) ? b : a);

const minutesIn = ({ minutes }: DayRoom): number => minutes ?? Infinity;

/** What a person's own week has on a day. */
const ownTime = (context: PlanContext, on: Day): DayRoom => {
  const week = context.calendar.available.findLast((each) => holdsDay(each, on));
  return { minutes: week?.minutes[weekdayIn(context, on)] ?? null, taken: null };
};

const WEEK = 7;

/** From Monday before launch, from launch day in flight, from landing day after it: 0 to 6. */
const weekdayIn = (context: PlanContext, on: Day): number => {
  const { mission } = context.known;
  const side = sideOf(context, on);
  if (!mission || side === 'before launch') return weekdayOf(on);
  return (on - (side === 'in flight' ? mission.launch : (mission.landing?.latest ?? mission.launch))) % WEEK;
};

const setAsideOn = ({ calendar }: PlanContext, on: Day): readonly DayRoom[] =>
  calendar.setAside.filter((each) => holdsDay(each, on)).map(({ minutes, what }) => ({ minutes, taken: what }));

/** Landing day, and as many days after it as the policy says, are a blackout, unless somebody entered what is left of one. */
const blackoutOn = ({ known, calendar }: PlanContext, on: Day): readonly DayRoom[] => {
  const landing = known.mission?.landing?.latest;
  if (landing === undefined || on < landing || on - landing >= known.house.policies.blackoutDaysFromLanding) return [];
  const isEntered = calendar.setAside.some((each) => each.what === 'blackout' && holdsDay(each, on));
  return isEntered ? [] : [{ minutes: 0, taken: 'blackout' }];
};

/** Rest and blackout are meant: their session passes. Anything else that takes the time moves it inside its week. */
export const isMeantToPass = ({ minutes, taken }: DayRoom): boolean =>
  minutes === 0 && (taken === 'rest' || taken === 'blackout');
