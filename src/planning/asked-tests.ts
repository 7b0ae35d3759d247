import { addDays, weekdayOf, type Day } from '#units/day.ts';
import type { Exercise } from '#domain/catalogue.ts';
import type { ExerciseId } from '#domain/identity.ts';
import { ofKind, type Known } from '#domain/known.ts';
import type { MissionDates } from '#domain/mission-day.ts';
import type { Test } from '#domain/tested.ts';
import type { DaySpan, PhaseSpan } from './road-spans.ts';

/**
 * When a road asks for tests of strength: practice, our own design. A quarter of a year apart before launch, counted back
 * from the last one, a week before the taper; in flight once the ramps are behind, then every two months, the last one two
 * weeks before the earliest landing; after landing after a week and after a month. `either` days about it count as kept.
 */
export const TESTING_PRACTICE = {
  beforeLaunch: { daysBeforeTaper: 7, every: 91, either: 21 },
  inFlight: { firstFlightDay: 30, every: 60, daysBeforeLanding: 14, either: 14 },
  afterLanding: { days: [7, 30], either: 6 },
} as const;

/** Where no taper is planned, it is taken to begin two weeks before launch (practice). */
const TAPER_DAYS = 14;

type Occasion = 'before launch' | 'last before launch' | 'in flight' | 'last in flight' | 'after landing';

export interface AskedTest {
  readonly day: Day;
  readonly occasion: Occasion;
  /** Lifts whose capacity comes from a test of their own. */
  readonly lifts: readonly ExerciseId[];
  /** Of those, the ones that were tested about the day. */
  readonly tested: readonly ExerciseId[];
  readonly testedOn: Day | null;
  /** A day about it that is set aside for tests. */
  readonly setAsideOn: Day | null;
  /** Last day that still counts as about the day. */
  readonly until: Day;
  readonly state: 'tested' | 'part tested' | 'due' | 'not tested' | 'ahead';
}

export interface TestDay {
  readonly day: Day;
  readonly lifts: readonly ExerciseId[];
  /** What was tested beside lifts. */
  readonly others: readonly Test['what'][];
}

/** Days on which something was tested, with what. */
export const testDays = (known: Known): readonly TestDay[] => {
  const [lifted, tested] = [ofKind(known, 'lifted'), ofKind(known, 'tested')];
  const days = [...new Set([...lifted, ...tested].map(({ day }) => day))].toSorted((a, b) => a - b);
  return days.map((day) => ({
    day,
    lifts: [...new Set(lifted.filter((fact) => fact.day === day).map(({ exercise }) => exercise))],
    others: [...new Set(tested.filter((fact) => fact.day === day).map(({ test }) => test.what))],
  }));
};

interface Ask {
  readonly day: Day;
  readonly occasion: Occasion;
  readonly either: number;
}

/** What the road asks for, as far as it could still be kept when a person was first known: derived, never stored. */
export const askedTests = (
  known: Known,
  phases: readonly PhaseSpan[],
  road: DaySpan,
  today: Day,
): readonly AskedTest[] => {
  if (!known.mission) return [];
  const from = firstKnown(known, today);
  const tests = testDays(known);
  const setAside = ofKind(known, 'set aside').flatMap(({ what, from: first }) => (what === 'test' ? [first] : []));
  return asksOf(known.mission, taperDay(phases), road)
    .filter(({ day, either }) => day >= road.first && addDays(day, either) >= from && day <= road.last)
    .map((ask) => askedTest(ask, liftsTestedOn(known, phases, tests, ask.day), { tests, setAside, today }));
};

const taperDay = (phases: readonly PhaseSpan[]): Day | null =>
  phases.find(({ held }) => held?.phase.name === 'taper')?.first ?? null;

const asksOf = (dates: MissionDates, taper: Day | null, road: DaySpan): readonly Ask[] => [
  ...asksBefore(dates, taper, road.first),
  ...asksInFlight(dates, road.last),
  ...asksAfter(dates),
];

const asksBefore = ({ launch }: MissionDates, taper: Day | null, first: Day): readonly Ask[] => {
  const { daysBeforeTaper, every, either } = TESTING_PRACTICE.beforeLaunch;
  const last = addDays(taper ?? addDays(launch, -TAPER_DAYS), -daysBeforeTaper);
  const asks: Ask[] = [];
  for (let day = last; day >= first; day = addDays(day, -every))
    asks.unshift({ day: onWorkingDay(day), occasion: day === last ? 'last before launch' : 'before launch', either });
  return asks;
};

const asksInFlight = ({ launch, landing }: MissionDates, drawnTo: Day): readonly Ask[] => {
  const { firstFlightDay, every, daysBeforeLanding, either } = TESTING_PRACTICE.inFlight;
  const first = addDays(launch, firstFlightDay - 1);
  const last = landing && addDays(landing.earliest, -daysBeforeLanding);
  // A flight that is over before the ramps are asks for none.
  if (last !== null && last < first) return [];
  const asks: Ask[] = [];
  // One that would come within half the time of the last one is left to it.
  const before = last === null ? drawnTo : addDays(last, -every / 2);
  for (let day = first; day <= before; day = addDays(day, every)) asks.push({ day, occasion: 'in flight', either });
  return last === null ? asks : [...asks, { day: last, occasion: 'last in flight', either }];
};

const asksAfter = ({ landing }: MissionDates): readonly Ask[] =>
  landing === null
    ? []
    : TESTING_PRACTICE.afterLanding.days.map((days) => ({
        day: onWorkingDay(addDays(landing.latest, days)),
        occasion: 'after landing',
        either: TESTING_PRACTICE.afterLanding.either,
      }));

const FRIDAY = 4;

/** Weekends on the ground go to the Friday before: a test is never moved towards the taper. */
const onWorkingDay = (day: Day): Day => addDays(day, -Math.max(0, weekdayOf(day) - FRIDAY));

/** First day of anything that was measured, tested, trained or said of a person; today where nothing was. */
const firstKnown = ({ facts }: Known, today: Day): Day =>
  facts.reduce<Day>((first, fact) => ('day' in fact && fact.day < first ? fact.day : first), today);

const liftsTestedOn = (
  { house }: Known,
  phases: readonly PhaseSpan[],
  tests: readonly TestDay[],
  on: Day,
): readonly ExerciseId[] => {
  const held = phases.findLast((span) => span.first <= on && span.held !== null)?.held;
  const first = held ?? phases.find((span) => span.held !== null)?.held;
  const items = first?.phase.sessions.flatMap((session) => session.items) ?? [];
  // Who follows no programme is asked for what was ever tested.
  const lifts = first ? items.map(({ exercise }) => exercise) : tests.flatMap((test) => test.lifts);
  return [...new Set(lifts)].filter((id) => isTested(house.exercises.get(id)));
};

const isTested = (exercise: Exercise | undefined): boolean =>
  exercise?.capacity.kind === 'one-repetition maximum' || exercise?.capacity.kind === 'repetition maximum';

const askedTest = (
  { day, occasion, either }: Ask,
  lifts: readonly ExerciseId[],
  {
    tests,
    setAside,
    today,
  }: { readonly tests: readonly TestDay[]; readonly setAside: readonly Day[]; readonly today: Day },
): AskedTest => {
  const within = tests.filter((test) => Math.abs(test.day - day) <= either);
  const tested = lifts.filter((lift) => within.some((test) => test.lifts.includes(lift)));
  const newest = within.findLast((test) => test.lifts.some((lift) => tested.includes(lift)));
  const about = { first: addDays(day, -either), last: addDays(day, either) };
  const state = stateOf(about, today, { tested: tested.length, of: lifts.length });
  const setAsideOn = setAside.find((each) => each >= about.first && each <= about.last) ?? null;
  return { day, occasion, lifts, tested, testedOn: newest?.day ?? null, setAsideOn, until: about.last, state };
};

const stateOf = (
  about: DaySpan,
  today: Day,
  { tested, of }: { readonly tested: number; readonly of: number },
): AskedTest['state'] => {
  if (tested > 0 && tested === of) return 'tested';
  if (today < about.first) return 'ahead';
  if (today <= about.last) return 'due';
  return tested > 0 ? 'part tested' : 'not tested';
};
