import type { Day } from '#units/day.ts';
import type { Card } from '#domain/card.ts';
import type { TrackId } from '#domain/identity.ts';
import type { Known } from '#domain/known.ts';
import { showMissionDay } from '#domain/mission-day.ts';
import type { Road } from '#domain/road.ts';
import type { CellChange } from '#actions/cell-change.ts';
import { cellsAsked, liftOn, plannedOn, trackOfItem, type CellsAsked } from '#actions/cells-asked.ts';
import type { CellLooked, CellsWindow, SessionLooked } from '#contract/windows/cells-window.ts';
import { itemOutcome } from './item-outcome.ts';
import { minutesOf, newlyLeftOut } from './session-change.ts';
import { sheetCell } from './sheet-cell.ts';

/** What several cells of one sheet would come to together; looked at as often as anybody likes, signed once. */
export const cellsWindow = (known: Known, road: Road, cells: readonly CellChange[]): CellsWindow => {
  const asked = cellsAsked(known, road, cells, 'looked at');
  const days = [...new Set(cells.map(({ day }) => day))].toSorted((a, b) => a - b);
  return {
    upTo: road.upTo,
    cells: cells.map((cell, place) => cellLooked(known, road, asked, cell, place)),
    sessions: days.flatMap((day) => sessionLooked(known, road, asked, cells, day) ?? []),
    problems: asked.problems.filter(({ field }) => field === null),
  };
};

const cellLooked = (
  known: Known,
  road: Road,
  { after, unchanged, problems }: CellsAsked,
  cell: CellChange,
  place: number,
): CellLooked => {
  const { track, day, change } = cell;
  const own = problems.filter(({ field }) => field === `cells.${place}`);
  const looked = own.length > 0 ? null : after(day);
  const item = looked?.planned.card.items.find((each) => each.track === track);
  return {
    track,
    day,
    name: liftOn(road, track),
    missionDay: known.mission ? showMissionDay(known.mission, day) : '',
    change,
    was: plannedBefore(known, road, track, day),
    isUnchanged: unchanged.has(cell),
    outcome: looked && item ? itemOutcome(known, looked, item) : null,
    problems: own,
  };
};

const plannedBefore = (known: Known, road: Road, track: TrackId, day: Day): string | null => {
  const planned = plannedOn(road, day);
  const item = planned?.card.items.find((each) => each.track === track);
  if (planned && item) return sheetCell(item, planned).planned;
  return planned && isLeftOut(known, planned.card, track) ? 'left out' : null;
};

const isLeftOut = (known: Known, { leftOut }: Card, track: TrackId): boolean =>
  leftOut.some(({ item }) => trackOfItem(known, item) === track);

const sessionLooked = (
  known: Known,
  road: Road,
  { after }: CellsAsked,
  cells: readonly CellChange[],
  day: Day,
): SessionLooked | null => {
  const [before, looked] = [plannedOn(road, day), after(day)];
  if (!before || !looked) return null;
  const { card } = looked.planned;
  const asked = new Set(cells.flatMap((cell) => (cell.day === day ? [cell.track] : [])));
  return {
    day,
    missionDay: card.missionDay,
    title: card.title,
    minutes: minutesOf(before.card, card),
    leavesOut: newlyLeftOut(before.card, card, (item) => asked.has(trackOfItem(known, item) ?? ('' as TrackId))),
  };
};
