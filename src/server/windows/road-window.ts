import { addDays, isoOfDay, type Day } from '#units/day.ts';
import type { ExerciseId } from '#domain/identity.ts';
import type { Known } from '#domain/known.ts';
import { showMissionDay } from '#domain/mission-day.ts';
import { derive } from '#planning/derive.ts';
import type { AskedTest } from '#planning/asked-tests.ts';
import type { MovedDecision, PlaceOnRoad } from '#planning/moved-decisions.ts';
import { LIGHT_DAYS_BEFORE_TESTS } from '#planning/time/light-day.ts';
import { roadEnds, roadLayout, type RoadLayout } from '#planning/road-layout.ts';
import type { RoadWeek } from '#planning/road-weeks.ts';
import type { Snapshot } from '#actions/snapshot.ts';
import type { RoadAsk, RoadDrawn, RoadMoved, RoadPhase, RoadWindow } from '#contract/windows/road-window.ts';
import { isOurs, personHead } from './person-head.ts';
import { recordSays } from './record-says.ts';
import { adjustmentBars, holdBars, restrictionBars, setAsideBars } from './road-bars.ts';
import { walkOf } from './road-day-sentences.ts';
import { doseOf } from './road-dose-window.ts';
import { marksOf, showFirstDay } from './road-marks.ts';
import { roadSentences } from './road-sentences.ts';
import { weekSays } from './road-week-says.ts';

/** The whole road of a person, derived to its last day. */
export const roadWindow = (snapshot: Snapshot, known: Known): RoadWindow => {
  const { today, upTo } = snapshot;
  const ends = roadEnds(known, today);
  const empty = whyNoRoad(known);
  const layout = ends && empty === null ? roadLayout(known, derive(known, today, ends.last), snapshot.log) : null;
  return {
    person: personHead(snapshot, known),
    today,
    upTo,
    road: layout && drawn(layout, known, snapshot),
    empty,
  };
};

const whyNoRoad = (known: Known): string | null => {
  if (!isOurs(known)) return `${known.name} belongs to another team: only machines and minutes are shared.`;
  return known.mission
    ? null
    : `${known.name} has no mission yet: assign one, and the road is laid out from its dates.`;
};

const drawn = (layout: RoadLayout, known: Known, { log }: Snapshot): RoadDrawn => {
  const { first, last, mission } = layout;
  const names = (lifts: readonly ExerciseId[]): readonly string[] =>
    lifts.map((id) => known.house.exercises.get(id)?.name ?? 'an exercise');
  return {
    first,
    last,
    launch: mission.launch,
    landing: mission.landing,
    marks: marksOf(mission, layout),
    phases: layout.phases.map((span) => ({ ...phaseOf(layout, span), isGap: layout.gaps.includes(span) })),
    sites: layout.stays.map(({ first: from, last: to, site, isSaid }) => ({
      first: from,
      last: to,
      name: (site && known.house.sites.get(site)?.name) ?? 'nowhere known',
      isSaid,
    })),
    tests: layout.tests.map(({ day, lifts, others }) => ({
      day,
      missionDay: showMissionDay(mission, day),
      lifts: [...names(lifts), ...others],
    })),
    testsBefore: layout.testsBefore,
    asks: layout.asked.map((ask) => askOf(layout, ask)),
    restrictions: restrictionBars(known, layout),
    adjustments: adjustmentBars(known, layout),
    setAside: setAsideBars(layout),
    holds: holdBars(layout),
    walks: layout.walks.map((walk) => walkOf(layout, walk)),
    dose: doseOf(layout.dose),
    weeks: layout.weeks.map((week) => weekLine(layout, week)),
    sentences: roadSentences(layout, log, known),
    moved: layout.moved.map((each) => movedOf(each, known)),
  };
};

const phaseOf = ({ mission }: RoadLayout, span: RoadLayout['phases'][number]): Omit<RoadPhase, 'isGap'> => ({
  first: span.first,
  last: span.last,
  name: span.held?.phase.name ?? null,
  side: span.side,
  programme: span.held && `${span.held.programme.name}, version ${span.held.programme.number}`,
  from: showFirstDay(mission, span.first, span.side),
  to: showMissionDay(mission, span.last),
  source: span.held?.phase.source ?? null,
  ...span.time,
});

const weekLine = (layout: RoadLayout, week: RoadWeek): RoadDrawn['weeks'][number] => ({
  ...week,
  says: weekSays(layout, week),
});

const askOf = ({ mission }: RoadLayout, ask: AskedTest): RoadAsk => ({
  day: ask.day,
  missionDay: showMissionDay(mission, ask.day),
  occasion: ask.occasion,
  state: ask.state,
  says: askSays(ask, (on) => showMissionDay(mission, on)),
});

const askSays = (ask: AskedTest, show: (on: Day) => string): string => {
  const { state, tested, testedOn, lifts, until, setAsideOn } = ask;
  const aside =
    setAsideOn === null
      ? ''
      : `; ${show(setAsideOn)} is set aside, light from ${show(addDays(setAsideOn, -LIGHT_DAYS_BEFORE_TESTS))}`;
  const kept =
    testedOn === null ? null : `${tested.length} of ${lifts.length} lifts tested, the last on ${show(testedOn)}`;
  switch (state) {
    case 'tested':
    case 'part tested':
      return kept ?? '';
    case 'due':
      return `due, until ${show(until)}${kept === null ? '' : `; ${kept}`}${aside}`;
    case 'not tested':
      return 'passed without a test';
    case 'ahead':
      return `${kept ?? 'ahead'}${aside}`;
  }
};

const movedOf = ({ fact, which, day, was, now }: MovedDecision, known: Known): RoadMoved => ({
  fact: fact.id,
  day,
  which: `${WHICH[which]} ${isoOfDay(day)}`,
  says: recordSays(fact, known.house),
  was: placeSays(was),
  now: placeSays(now),
});

const WHICH = { 'first day': 'from', 'last day': 'to', day: 'on' } as const;

const placeSays = ({ missionDay, phase, side }: PlaceOnRoad): string =>
  `${phase ?? `no phase, ${side}`} (${missionDay})`;
