import type { CardItem, CardLift } from '#domain/card.ts';
import type { Known } from '#domain/known.ts';
import { shownLoad } from '#interchange/plain-text/shown-load.ts';
import type { Looked } from '#actions/cells-asked.ts';
import { FLIGHT_SET_PLACES } from '#planning/flight-set.ts';
import { loadChange } from '#planning/load-change.ts';
import { ROW_WIDTH } from '#planning/rows.ts';
import type { BarChange, ItemOutcome } from '#contract/windows/written-window.ts';
import { sheetCell } from './sheet-cell.ts';

/** An item of a session that was looked at, with what it changes. */
export const itemOutcome = (known: Known, { road, planned }: Looked, item: CardItem): ItemOutcome => ({
  cell: sheetCell(item, planned),
  change: item.kind === 'lift' ? barChange(known, { road, planned }, item) : null,
  shoulders: item.kind === 'lift' ? shoulders(known, road, item) : null,
});

const barChange = (known: Known, { road, planned }: Looked, item: CardLift): BarChange | null => {
  const change = loadChange(known, road, item, planned.day);
  return (
    change && {
      from: shownLoad(change.from, item.increment),
      to: shownLoad(change.to, item.increment),
      unit: item.unit,
      atTheBar: change.atTheBar,
    }
  );
};

/** On the ground the shoulders carry the bar that they always did. */
const shoulders = ({ house }: Known, { rows }: Looked['road'], item: CardLift): number | null =>
  item.carriedAtShoulders && item.row !== null && house.machines.get(item.machine)?.gravity === '0 g'
    ? (rows[item.row * ROW_WIDTH + FLIGHT_SET_PLACES.shoulderExcess] ?? null)
    : null;
