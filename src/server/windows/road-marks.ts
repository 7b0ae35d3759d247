import { addDays, type Day } from '#units/day.ts';
import { missionDay, showMissionDay, type MissionDates } from '#domain/mission-day.ts';
import type { RoadSide } from '#planning/time/side-of.ts';
import type { RoadDrawn, RoadSpan } from '#contract/windows/road-window.ts';

type Every = Readonly<Record<RoadSide, number>>;

/** Round days of the mission's calendar, farther apart on a long road. */
const LONG = 500;
const EVERY_ON_LONG: Every = { 'before launch': 100, 'in flight': 60, 'after landing': 30 };
const EVERY: Every = { 'before launch': 50, 'in flight': 30, 'after landing': 30 };

export const marksOf = (dates: MissionDates, { first, last }: RoadSpan): RoadDrawn['marks'] => {
  const every = last - first > LONG ? EVERY_ON_LONG : EVERY;
  const marks: { day: Day; says: string }[] = [];
  for (let on = first; on <= last; on = addDays(on, 1))
    if (isRound(dates, every, on)) marks.push({ day: on, says: shortLabel(dates, on) });
  return marks;
};

const isRound = (dates: MissionDates, every: Every, on: Day): boolean => {
  const place = missionDay(dates, on);
  if (place.kind === 'before launch') return place.daysToLaunch % every[place.kind] === 0;
  if (place.kind === 'in flight') return place.flightDay % every[place.kind] === 0 && !isNearLanding(dates, every, on);
  return place.daysSinceLanding % every[place.kind] === 0;
};

/** A mark just before landing would run into what is written at landing. */
const isNearLanding = ({ landing }: MissionDates, every: Every, on: Day): boolean =>
  landing !== null && on > addDays(landing.earliest, -every['in flight'] / 2);

const shortLabel = (dates: MissionDates, on: Day): string => showMissionDay(dates, on).replace('flight day', 'day');

/** Landing day is the last flight day and R+0: as the first day on the ground it is said as that. */
export const showFirstDay = (dates: MissionDates, on: Day, side: RoadSide): string =>
  side === 'after landing' && on === dates.landing?.latest ? 'R+0' : showMissionDay(dates, on);
