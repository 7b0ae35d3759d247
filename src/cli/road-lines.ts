import { isoOfDay, type Day } from '#units/day.ts';
import type { Fact } from '#domain/fact.ts';
import type { Known } from '#domain/known.ts';
import { showMissionDay } from '#domain/mission-day.ts';
import { derive } from '#planning/derive.ts';
import { roadEnds, roadLayout, type RoadLayout } from '#planning/road-layout.ts';
import { sumOf } from '#planning/road-weeks.ts';

const HOUR = 60;

/** A whole road as text: phases with their days and hours, the tests that it asks for, what nobody has planned. */
export const roadLines = (known: Known, today: Day, log: readonly Fact[]): readonly string[] => {
  const ends = roadEnds(known, today);
  const layout = ends && roadLayout(known, derive(known, today, ends.last), log);
  if (!layout) return ['No road: there is no mission.'];
  const cards = layout.weeks.reduce((sum, week) => sum + sumOf(week.cards), 0);
  return [
    `Road of ${known.name}, ${isoOfDay(layout.first)} to ${isoOfDay(layout.last)}: ${layout.weeks.length} weeks, ${cards} sessions`,
    ...layout.phases.map((phase) => phaseLine(known, phase)),
    '',
    'Tests that the road asks for',
    ...layout.asked.map((ask) => `  ${dayText(known, ask.day)}: ${ask.occasion}, ${ask.state}`),
  ];
};

type Phase = RoadLayout['phases'][number];

const phaseLine = (known: Known, { first, last, held, time }: Phase): string => {
  const days = `${dayText(known, first)} to ${dayText(known, last)}`;
  if (!held) return `  ${days}: no programme holds these days`;
  const hours = time.trueAWeek === null ? '' : `, ${(time.trueAWeek / HOUR).toFixed(1)} h a week`;
  const practice = time.practiceAWeek === null ? '' : ` (practice ${(time.practiceAWeek / HOUR).toFixed(1)})`;
  return `  ${days}: ${held.phase.name}, ${time.sessionsAWeek} sessions${hours}${practice}`;
};

const dayText = ({ mission }: Known, day: Day): string =>
  mission ? `${showMissionDay(mission, day)} (${isoOfDay(day)})` : isoOfDay(day);
