import type { Day } from '#units/day.ts';
import { totalMinutes, type Card } from '#domain/card.ts';
import type { TrackId } from '#domain/identity.ts';
import type { Known } from '#domain/known.ts';
import type { Road, RoadCard } from '#domain/road.ts';
import { readShorthand } from '#domain/shorthand/read-shorthand.ts';
import { writeShorthand } from '#domain/shorthand/write-shorthand.ts';
import { asIfDecided } from '#planning/as-if.ts';
import { derive } from '#planning/derive.ts';
import type { LineProblem, WrittenWindow } from '#contract/windows/written-window.ts';
import { cardOf, sheetCell } from './sheet-cell.ts';

export interface Written {
  readonly track: TrackId;
  readonly day: Day;
  readonly line: string;
}

export const writtenWindow = (known: Known, road: Road, { track, day, line }: Written): WrittenWindow => {
  const reading = readShorthand(line);
  if (reading.kind === 'problems') return { ...NOTHING, problems: reading.problems };
  const { person } = known;
  const change = { kind: 'as written', line } as const;
  const decision = { kind: 'adjust', person, track, change, from: day, until: day, reason: 'looked at' } as const;
  const again = derive(asIfDecided(known, decision), road.today, day);
  const before = plannedOn(road, day);
  const after = plannedOn(again, day);
  const item = after && cardOf(after).items.find((each) => each.track === track);
  return {
    problems: after
      ? refusalsIn(after, track, known, line)
      : [whole(line, 'There is no session to be planned on that day.')],
    line: writeShorthand(reading.prescription),
    cell: after && item ? sheetCell(item, after) : null,
    minutes: before && after ? minutesOf(cardOf(before), cardOf(after)) : null,
    leavesOut: before && after ? newlyLeftOut(cardOf(before), cardOf(after)) : [],
  };
};

const NOTHING: WrittenWindow = { problems: [], line: null, cell: null, minutes: null, leavesOut: [] };

const whole = (line: string, says: string): LineProblem => ({ from: 0, to: line.length, says });

const plannedOn = (road: Road, day: Day): RoadCard | null =>
  road.cards.find((card) => card.day === day && card.state !== 'issued') ?? null;

/** Why the item itself is left out of the session now that it is written so. */
const refusalsIn = (after: RoadCard, track: TrackId, { house }: Known, line: string): readonly LineProblem[] => {
  const items = [...house.programmes.values()].flatMap(({ phases }) =>
    phases.flatMap(({ sessions }) => sessions.flatMap((session) => session.items)),
  );
  const onTrack = new Set(items.filter((item) => item.track === track).map(({ id }) => id));
  const card = cardOf(after);
  if (card.items.some((item) => item.track === track)) return [];
  return card.leftOut.filter(({ item }) => onTrack.has(item)).map(({ says }) => whole(line, says));
};

const minutesOf = (before: Card, after: Card): WrittenWindow['minutes'] => ({
  was: Math.round(totalMinutes(before)),
  is: Math.round(totalMinutes(after)),
  block: after.blockMinutes,
});

const newlyLeftOut = (before: Card, after: Card): readonly string[] => {
  const already = new Set(before.leftOut.map(({ item }) => item));
  return after.leftOut
    .filter(({ item }) => !already.has(item))
    .map(({ exerciseName, says }) => `${exerciseName}: ${says}`);
};
