import { addDays, isoOfDay, type Day } from '#units/day.ts';
import type { Fact } from '#domain/fact.ts';
import type { Known } from '#domain/known.ts';
import { showMissionDay } from '#domain/mission-day.ts';
import type { RoadLayout } from '#planning/road-layout.ts';
import { WINDOW_PRACTICE, type ShortWeeks } from '#planning/time/short-weeks.ts';
import type { WalkOfRoad } from '#planning/time/walks-of-road.ts';
import type { RoadSentence, RoadWalk } from '#contract/windows/road-window.ts';

/* What the road says of days that somebody entered: seats, holds, space walks, windows of time. */

/** A seat changes nothing: prime and backup prepare alike. */
export const seatSentences = ({ assignment, person }: Known, log: readonly Fact[]): readonly RoadSentence[] => {
  if (!assignment) return [];
  const seats = log.filter(
    (fact) => fact.kind === 'assigned' && fact.person === person && fact.mission === assignment.mission,
  );
  const before = seats.findLast((fact) => fact.kind === 'assigned' && fact.role !== assignment.role);
  if (before && assignment.role === 'prime')
    return [{ kind: 'seat', says: 'Was backup and is prime now: nothing else on the road has changed.', link: null }];
  return assignment.role === 'backup'
    ? [{ kind: 'seat', says: 'Backup: prepares on the same road, ready to take the seat any day.', link: null }]
    : [];
};

export const holdSentences = ({ holds }: RoadLayout): readonly RoadSentence[] =>
  holds.map(({ fact, first, last, phase, endsThere }) => {
    const goesOn =
      phase === null ? 'no phase was in force, so nothing goes on' : `${phase} goes on and its weeks count on`;
    const until = fact.until === null ? '' : ` to ${isoOfDay(fact.until)}`;
    const ends = endsThere
      ? `; it ends by itself on ${isoOfDay(last)}`
      : fact.until === null
        ? '; nobody has said until when'
        : '';
    return {
      kind: 'hold',
      says: `The road holds from ${isoOfDay(first)}${until}: ${goesOn}${ends}.`,
      link: { to: 'road hold', says: 'Change it' },
    };
  });

export const walkOf = ({ mission }: RoadLayout, { fact, state, look }: WalkOfRoad): RoadWalk => {
  const text = fact.text === '' ? '' : `: ${fact.text}`;
  const after = look === null ? '' : `, by ${look.observedBy} on ${showMissionDay(mission, look.day)}`;
  return {
    day: fact.day,
    missionDay: showMissionDay(mission, fact.day),
    state,
    says: `Space walk on ${showMissionDay(mission, fact.day)}${text}; ${WALK_SAYS[state]}${after}`,
  };
};

const WALK_SAYS: Readonly<Record<WalkOfRoad['state'], string>> = {
  ahead: 'ahead',
  'to be looked at': 'hands and shoulders are to be looked at',
  'not sound': 'looked at, grip and pressing stay out',
  sound: 'looked at, grip and pressing go on',
  'not in flight': 'its day does not lie in flight any more',
};

/** Only what asks for something: a look that is missing, and a day that a slip has left on the ground. */
export const walkSentences = (layout: RoadLayout): readonly RoadSentence[] =>
  layout.walks
    .filter(({ state }) => state === 'to be looked at' || state === 'not sound' || state === 'not in flight')
    .map((walk) => ({
      kind: 'walk',
      says: `${walkOf(layout, walk).says}.`,
      link:
        walk.state === 'not in flight' ? { to: 'space walk', says: 'Date it' } : { to: 'desk', says: 'Record a look' },
    }));

export const windowSentences = (layout: RoadLayout): readonly RoadSentence[] =>
  layout.shortWeeks.map((short) => ({
    kind: 'window',
    says: shortSays(short),
    link: { to: 'weekly minutes', says: 'Change them' },
  }));

/** "2 of the 4 single hours a week that practice asks for: the week of 2027-03-01." */
export const shortSays = ({ side, first, last, weeks, least }: ShortWeeks): string => {
  const when = weeksSay(first, addDays(last, -6), weeks);
  return side === 'before launch'
    ? `${hours(least)} a week where practice asks for four, or for two blocks of two: ${when}.`
    : `${least === 1 ? '1 day' : `${least} days`} a week with ${WINDOW_PRACTICE.minutesOfFlightDay} minutes where practice asks for six: ${when}.`;
};

const hours = (count: number): string =>
  count === 0 ? 'No single hour' : count === 1 ? '1 single hour' : `${count} single hours`;

/** Weeks by their Mondays: "the week of 2027-03-01", "3 weeks, from that of 2027-03-01 to that of 2027-03-15". */
export const weeksSay = (first: Day, last: Day, weeks: number): string =>
  weeks === 1
    ? `the week of ${isoOfDay(first)}`
    : `${weeks} weeks, from that of ${isoOfDay(first)} to that of ${isoOfDay(last)}`;

const MOST_TOLD = 4;

/** The next spans of weeks are told, and how many more there are. */
export const nextTold = (told: readonly string[]): readonly string[] => {
  const more = told.length - MOST_TOLD;
  return [
    ...told.slice(0, MOST_TOLD),
    ...(more > 0 ? [`And in ${more === 1 ? 'one span' : `${more} spans`} of weeks more, later.`] : []),
  ];
};

/** Sessions without a place: what is missing over the same weeks stands together. */
export const unlaidSentences = ({ unlaid }: RoadLayout): readonly RoadSentence[] => {
  const spans = new Map<string, RunOfWeeks & { readonly titles: string[] }>();
  for (const title of new Set(unlaid.map((each) => each.title)))
    for (const run of runsOfWeeks(unlaid.filter((each) => each.title === title).map(({ week }) => week))) {
      const name = `${run.first} ${run.last}`;
      spans.set(name, { ...run, titles: [...(spans.get(name)?.titles ?? []), title] });
    }
  const told = [...spans.values()].toSorted((a, b) => a.first - b.first).map(noPlaceSays);
  return nextTold(told).map((says) => ({
    kind: 'window',
    says,
    link: { to: 'weekly minutes', says: 'Change the minutes' },
  }));
};

const noPlaceSays = ({ first, last, weeks, titles }: RunOfWeeks & { readonly titles: readonly string[] }): string =>
  `${titles.join('; ')} ${titles.length === 1 ? 'has' : 'have'} no place in ${weeksSay(first, last, weeks)}.`;

interface RunOfWeeks {
  readonly first: Day;
  readonly last: Day;
  readonly weeks: number;
}

const runsOfWeeks = (weeks: readonly Day[]): readonly RunOfWeeks[] =>
  [...new Set(weeks)]
    .toSorted((a, b) => a - b)
    .reduce<readonly RunOfWeeks[]>((runs, week) => {
      const run = runs.at(-1);
      return run && week - run.last === 7
        ? [...runs.slice(0, -1), { ...run, last: week, weeks: run.weeks + 1 }]
        : [...runs, { first: week, last: week, weeks: 1 }];
    }, []);
