import { addDays, type Day } from '#units/day.ts';
import type { Fact } from '#domain/fact.ts';
import { ofKind, type Known, type Mission } from '#domain/known.ts';
import { dayOfAnchor } from '#domain/mission-day.ts';
import { daysOfPhase } from '#domain/programme.ts';
import type { Road } from '#domain/road.ts';
import { askedTests, testDays, type AskedTest, type TestDay } from './asked-tests.ts';
import { movedDecisions, type MovedDecision } from './moved-decisions.ts';
import { roadDose, type DoseAlong } from './dose/road-dose.ts';
import { planContext, type BindingRestriction, type PlanContext } from './plan-context.ts';
import { cutUnheld, phaseSpans, staySpans, type DaySpan, type PhaseSpan, type StaySpan } from './road-spans.ts';
import { holdsOfRoad, type HoldOfRoad } from './time/holds-of-road.ts';
import { shortWeeks, type ShortWeeks } from './time/short-weeks.ts';
import { walksOfRoad, type WalkOfRoad } from './time/walks-of-road.ts';
import { mondayOf, phaseTime, roadWeeks, standingCards, type PhaseTime, type RoadWeek } from './road-weeks.ts';

/** A road laid out day by day: everything in it follows from what is known, nothing of it is stored. */
export interface RoadLayout extends DaySpan {
  readonly today: Day;
  readonly mission: Mission;
  readonly phases: readonly (PhaseSpan & { readonly time: PhaseTime })[];
  readonly stays: readonly StaySpan[];
  /** Tests of the days that are drawn, and how many lie before them. */
  readonly tests: readonly TestDay[];
  readonly testsBefore: number;
  readonly asked: readonly AskedTest[];
  readonly restrictions: readonly BindingRestriction[];
  /** Weeks and more, from today on, that no programme holds. */
  readonly gaps: readonly PhaseSpan[];
  readonly weeks: readonly RoadWeek[];
  readonly moved: readonly MovedDecision[];
  readonly setAside: readonly Fact<'set aside'>[];
  readonly walks: readonly WalkOfRoad[];
  readonly holds: readonly HoldOfRoad[];
  /** From today on: weeks with less time than practice asks for, and sessions that have no place. */
  readonly shortWeeks: readonly ShortWeeks[];
  readonly unlaid: Road['unlaid'];
  readonly dose: DoseAlong;
}

/** Practice: half a year is drawn where nobody has dated the landing. */
const FLIGHT_DRAWN = 182;
/** Daily sessions after landing go on for about six weeks (common practice). */
const RETURN_DRAWN = 45;
const LONGEST_BEFORE = 1095;
const SHORTEST_BEFORE = 28;
const WEEK = 7;

/** First and last day of a person's road, in whole weeks from Monday to Sunday; null where there is no mission. */
export const roadEnds = (known: Known, today: Day): DaySpan | null => {
  const { mission } = known;
  if (!mission) return null;
  const { launch, landing } = mission;
  const begins = [...firstHeldDays(known, mission), ...testDays(known).map(({ day }) => day)];
  const first = Math.max(addDays(launch, -LONGEST_BEFORE), Math.min(addDays(launch, -SHORTEST_BEFORE), ...begins));
  const end = landing ? addDays(landing.latest, RETURN_DRAWN) : addDays(launch, FLIGHT_DRAWN);
  const last = Math.max(end, addDays(today, known.house.policies.horizonDays));
  // A week more, so that what lies on the first day does not lie on the edge.
  return {
    first: addDays(mondayOf(Math.min(first, today) as Day), -WEEK),
    last: addDays(mondayOf(last as Day), WEEK - 1),
  };
};

/** Of every programme that somebody follows, the first day that it holds. */
const firstHeldDays = (known: Known, mission: Mission): readonly Day[] =>
  ofKind(known, 'decided').flatMap(({ decision }) => {
    if (decision.kind !== 'follow') return [];
    const from = dayOfAnchor(decision.from, mission);
    const phases = known.house.programmes.get(decision.programme)?.phases ?? [];
    const firsts = phases.flatMap((phase) => daysOfPhase(phase, mission)?.first ?? []);
    return from === null || firsts.length === 0 ? [] : [Math.max(from, Math.min(...firsts)) as Day];
  });

/**
 * Lays out a person's road. `road` is derived to its last day; the log tells what was dated otherwise when decisions were
 * signed. Null where the person has no mission.
 */
export const roadLayout = (known: Known, road: Road, log: readonly Fact[]): RoadLayout | null => {
  const ends = roadEnds(known, road.today);
  if (!ends || !known.mission) return null;
  const context = planContext(known);
  const phases = phaseSpans(context, ends).flatMap((span) => cutUnheld(span, road.today));
  const cards = standingCards(road);
  const tests = testDays(known);
  const weeks = roadWeeks(ends, phases, cards);
  return {
    ...ends,
    today: road.today,
    mission: known.mission,
    phases: phases.map((span) => ({ ...span, time: phaseTime(span, cards) })),
    stays: staySpans(context, ends),
    tests: tests.filter(({ day }) => day >= ends.first && day <= ends.last),
    testsBefore: tests.filter(({ day }) => day < ends.first).length,
    asked: askedTests(known, phases, ends, road.today),
    restrictions: restrictionsWithin(context, ends),
    gaps: phases.filter((span) => isGap(span, known.mission, road.today)),
    weeks,
    moved: movedDecisions(context, road, log, road.today),
    setAside: context.calendar.setAside.filter(({ from, until }) => from <= ends.last && until >= ends.first),
    walks: walksOfRoad(context, road.today).filter(({ fact: { day } }) => day >= ends.first && day <= ends.last),
    holds: holdsOfRoad(context, ends.last),
    shortWeeks: shortWeeks(context, mondayOf(road.today), ends.last),
    unlaid: road.unlaid,
    dose: roadDose(known, road, weeks, phases, cards),
  };
};

const restrictionsWithin = ({ restrictions }: PlanContext, { first, last }: DaySpan): readonly BindingRestriction[] =>
  restrictions.filter(
    ({ restriction, liftedOn }) => restriction.from <= last && (liftedOn === null || liftedOn > first),
  );

/** What nobody planned of the time that practice means to be planned: weeks, not a day of travel; six weeks after landing. */
export const isGap = ({ held, first, last }: PhaseSpan, mission: Mission | null, today: Day): boolean => {
  const landing = mission?.landing?.latest ?? null;
  const isBehind = landing !== null && first >= addDays(landing, RETURN_DRAWN);
  return held === null && first >= today && last - first + 1 >= WEEK && !isBehind;
};
