import { isoOfDay } from '#units/day.ts';
import { showMissionDay } from '#domain/mission-day.ts';
import type { RoadLayout } from '#planning/road-layout.ts';
import { sumOf, type Counts, type RoadWeek } from '#planning/road-weeks.ts';
import type { DaySpan } from '#planning/road-spans.ts';
import { ROAD_CARD_STATES } from '#contract/windows/road-window.ts';

/** "Week of 2027-03-01, L−96 to L−90: flight-specific preparation. 3 cards can be issued, 231 min; practice asks 240." */
export const weekSays = (layout: RoadLayout, week: RoadWeek): string => {
  const { mission } = layout;
  const phases = layout.phases
    .filter((span) => meets(span, week))
    .map(({ held }) => held?.phase.name ?? 'no programme');
  const tests = layout.tests.filter(({ day }) => day >= week.first && day <= week.last).length;
  const asks = layout.asked.filter(({ day }) => day >= week.first && day <= week.last).length;
  return [
    `Week of ${isoOfDay(week.first)}, ${showMissionDay(mission, week.first)} to ${showMissionDay(mission, week.last)}: ${[...new Set(phases)].join(', then ')}.`,
    cardsSay(week.cards),
    minutesSay(week),
    ...(meetsDay(mission.launch, week) ? ['Launch.'] : []),
    ...(mission.landing && meets({ first: mission.landing.earliest, last: mission.landing.latest }, week)
      ? ['Landing.']
      : []),
    ...(tests > 0 ? [`Tested on ${tests} ${tests === 1 ? 'day' : 'days'}.`] : []),
    ...(asks > 0 ? ['A test is asked for.'] : []),
    ...daysSay(layout, week),
  ].join(' ');
};

const meets = (span: DaySpan, week: DaySpan): boolean => span.first <= week.last && span.last >= week.first;
const meetsDay = (day: DaySpan['first'], week: DaySpan): boolean => day >= week.first && day <= week.last;

const cardsSay = (counts: Counts): string => {
  const parts = ROAD_CARD_STATES.flatMap((state) => (counts[state] > 0 ? [`${counts[state]} ${state}`] : []));
  return parts.length === 0 ? 'No cards.' : `Cards: ${parts.join(', ')}.`;
};

const minutesSay = ({ minutes, practice }: RoadWeek): string => {
  const taken = Math.round(sumOf(minutes));
  const asked = practice === null ? '' : `; practice asks for ${Math.round(practice)} of all exercise`;
  return taken === 0 && practice === null ? '' : `${taken} min of cards${asked}.`;
};

/** What takes days of the week: set aside, space walks, holds, sessions without a place. */
const daysSay = ({ mission, setAside, walks, holds, unlaid }: RoadLayout, week: DaySpan): readonly string[] => {
  const aside = setAside.filter(({ from, until }) => meets({ first: from, last: until }, week)).map(({ what }) => what);
  return [
    ...(aside.length > 0 ? [`Set aside: ${[...new Set(aside)].join(', ')}.`] : []),
    ...walks
      .filter(({ fact: { day } }) => meetsDay(day, week))
      .map(({ fact: { day } }) => `Space walk on ${showMissionDay(mission, day)}.`),
    ...(holds.some((hold) => meets(hold, week)) ? ['The road holds.'] : []),
    ...unlaid.filter(({ day }) => meetsDay(day, week)).map(({ title }) => `${title} has no place.`),
  ];
};
