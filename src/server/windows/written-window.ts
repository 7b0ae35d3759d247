import type { Day } from '#units/day.ts';
import type { TrackId } from '#domain/identity.ts';
import type { Known } from '#domain/known.ts';
import type { Road } from '#domain/road.ts';
import { problemsOfLine } from '#domain/programme-line/written-line.ts';
import { cellsAsked, plannedOn } from '#actions/cells-asked.ts';
import type { LineProblem, WrittenWindow } from '#contract/windows/written-window.ts';
import { itemOutcome } from './item-outcome.ts';
import { minutesOf, newlyLeftOut } from './session-change.ts';

export interface Written {
  readonly track: TrackId;
  readonly day: Day;
  readonly line: string;
}

export const writtenWindow = (known: Known, road: Road, { track, day, line }: Written): WrittenWindow => {
  const unread = problemsOfLine(line);
  if (unread.length > 0) return { ...NOTHING, problems: unread };
  const cell = { track, day, change: { kind: 'as written', line } } as const;
  const { after, problems } = cellsAsked(known, road, [cell], 'looked at');
  const [before, looked] = [plannedOn(road, day), after(day)];
  const item = looked?.planned.card.items.find((each) => each.track === track);
  return {
    problems: problems.flatMap(({ field, why }) => (field === null ? [] : [whole(line, why)])),
    outcome: looked && item ? itemOutcome(known, looked, item) : null,
    minutes: before && looked ? minutesOf(before.card, looked.planned.card) : null,
    leavesOut: before && looked ? newlyLeftOut(before.card, looked.planned.card) : [],
  };
};

const NOTHING: WrittenWindow = { problems: [], outcome: null, minutes: null, leavesOut: [] };

const whole = (line: string, says: string): LineProblem => ({ from: 0, to: line.length, says });
