import { isoOfDay, type Day } from '#units/day.ts';
import { capacityReader, type CapacityReader } from '#assessing/capacity.ts';
import type { CardItem } from '#domain/card.ts';
import type { Known } from '#domain/known.ts';
import { showRule } from '#domain/show-rule.ts';
import { showMissionDay } from '#domain/mission-day.ts';
import type { Road, RoadCard } from '#domain/road.ts';
import { shownLoad } from '#interchange/plain-text/shown-load.ts';
import type { SheetCell, SheetRow, SheetWindow } from '#contract/windows/sheet-window.ts';
import { showEstimate } from './capacity-window.ts';
import { itemLine } from './item-line.ts';
import { cellName, cellsWritten } from '#actions/cell-change.ts';
import { trackOfItem } from '#actions/cells-asked.ts';
import { cardOf, sheetCell, type CellLines } from './sheet-cell.ts';

interface Placed {
  readonly item: CardItem;
  readonly column: number;
  readonly card: RoadCard;
}

/** What every row is made from. */
interface Looked {
  readonly known: Known;
  readonly road: Road;
  readonly reader: CapacityReader;
  readonly cards: readonly RoadCard[];
  readonly today: Day;
  /** Cells that were written for their day alone. */
  readonly written: ReadonlySet<string>;
}

/** Rows by kind of day, in the order in which a session does them. */
export const sheetGroups = (
  known: Known,
  road: Road,
  cards: readonly RoadCard[],
  today: Day,
): SheetWindow['groups'] => {
  const looked: Looked = { known, road, reader: capacityReader(known), cards, today, written: cellsWritten(known) };
  const next = cards.findIndex(({ day }) => day >= today);
  return titlesInOrder(cards, today).map((label) => {
    const rows = rowsOf(placedUnder(cards, label), next < 0 ? cards.length : next).map((placed) => row(looked, placed));
    return { label, rows, leftOut: leftOutAltogether(cards, label, rows) };
  });
};

/** What no session of this title holds, though its programme does: it has no row that could say so. */
const leftOutAltogether = (cards: readonly RoadCard[], title: string, rows: readonly SheetRow[]): readonly string[] => {
  const shown = new Set(rows.map(({ name }) => name));
  const left = cards.map(cardOf).flatMap((card) => (card.title === title ? card.leftOut : []));
  return [
    ...new Set(
      left.filter((each) => !shown.has(each.exerciseName)).map(({ exerciseName, says }) => `${exerciseName}: ${says}.`),
    ),
  ];
};

/** The kind of day that comes next stands first; kinds that come no more stand last, the newest of them first. */
const titlesInOrder = (cards: readonly RoadCard[], today: Day): readonly string[] => {
  const daysOf = (title: string): readonly Day[] =>
    cards.flatMap((card) => (cardOf(card).title === title ? card.day : []));
  const ranked = [...new Set(cards.map((card) => cardOf(card).title))].map((title) => {
    const days = daysOf(title);
    return { title, next: days.find((day) => day >= today) ?? Infinity, last: Math.max(...days) };
  });
  // Both may be infinite, and their difference then is no number.
  return ranked.toSorted((a, b) => (a.next === b.next ? b.last - a.last : a.next - b.next)).map(({ title }) => title);
};

const placedUnder = (cards: readonly RoadCard[], title: string): readonly Placed[] =>
  cards.flatMap((card, column) =>
    cardOf(card).title === title ? cardOf(card).items.map((item) => ({ item, column, card })) : [],
  );

const nameOf = ({ item }: Placed): string => `${item.exercise} ${item.track}`;

/**
 * The next session gives the order, then newer ones before older. What only another session holds stands where it stands
 * there: after what goes before it.
 */
const rowsOf = (placed: readonly Placed[], next: number): readonly (readonly Placed[])[] => {
  const rows = new Map<string, Placed[]>();
  let order: readonly string[] = [];
  for (const session of sessionsOf(placed, next)) {
    order = withSession(order, session.map(nameOf));
    for (const each of session) rows.set(nameOf(each), [...(rows.get(nameOf(each)) ?? []), each]);
  }
  return order.flatMap((name) => {
    const own = rows.get(name);
    return own ? [own.toSorted((a, b) => b.column - a.column)] : [];
  });
};

const sessionsOf = (placed: readonly Placed[], next: number): readonly (readonly Placed[])[] => {
  const columns = [...new Set(placed.map(({ column }) => column))].toSorted((a, b) => b - a);
  const ahead = columns.filter((column) => column >= next).at(-1);
  const inOrder = ahead === undefined ? columns : [ahead, ...columns.filter((column) => column !== ahead)];
  return inOrder.map((column) =>
    placed.filter((each) => each.column === column).toSorted((a, b) => a.item.place - b.item.place),
  );
};

const withSession = (order: readonly string[], session: readonly string[]): readonly string[] => {
  const merged = [...order];
  for (const [at, name] of session.entries()) {
    const before = session[at - 1];
    if (!merged.includes(name)) merged.splice(before === undefined ? 0 : merged.indexOf(before) + 1, 0, name);
  }
  return merged;
};

const row = (looked: Looked, placed: readonly Placed[]): SheetRow => {
  const { known, road, reader, cards, today } = looked;
  const { item: newest, card: like } = placed[0] as Placed;
  const { title } = cardOf(like);
  const cells = new Map(
    placed.map(({ column, item, card }) => [column, sheetCell(item, card, linesOf(looked, card, item))]),
  );
  return {
    exercise: newest.exercise,
    name: newest.exerciseName,
    cells: cards.map(
      (card, column): SheetCell | null =>
        // A track may run through sessions of several titles: each leaves it out in its own row.
        cells.get(column) ?? (cardOf(card).title === title ? leftOutCell(looked, card, newest) : null),
    ),
    lastHere: lastHere(known, road, newest),
    estimate: estimateOf(known, reader, newest, today),
    rule: newest.kind === 'lift' ? showRule(newest, (increments) => shownLoad(increments, newest.increment)) : null,
  };
};

const linesOf = ({ known, written }: Looked, card: RoadCard, item: CardItem): CellLines => {
  const shorthand = itemLine(known, item);
  const isOpen = card.state !== 'issued';
  return {
    line: isOpen ? shorthand : null,
    shorthand,
    isWritten: isOpen && written.has(cellName(item.track, card.day)),
  };
};

/** A session of the same day that had to leave the exercise out says so in its cell. */
const leftOutCell = ({ known, written }: Looked, road: RoadCard, like: CardItem): SheetCell | null => {
  const out = cardOf(road).leftOut.find(({ item }) => trackOfItem(known, item) === like.track);
  if (!out) return null;
  const isWritten = road.state !== 'issued' && written.has(cellName(like.track, road.day));
  return {
    item: out.item,
    track: like.track,
    kind: like.kind,
    planned: 'left out',
    short: { planned: 'left out', done: null },
    // What somebody left out of this day alone can be written again.
    line: isWritten ? '' : null,
    shorthand: null,
    isWritten,
    done: null,
    differs: false,
    hurt: null,
    note: null,
    raise: null,
    limits: [],
    says: [out.says],
    trueFraction: null,
    shoulderExcess: null,
    ceilingLeft: null,
    unit: like.kind === 'lift' ? like.unit : '',
    increment: like.kind === 'lift' ? like.increment : '1',
    sets: [],
    piece: null,
    hasWorking: false,
  };
};

export const lastHere = ({ mission }: Known, { tracks }: Road, item: CardItem): string | null => {
  if (item.kind !== 'lift') return item.last;
  const last = tracks.find(({ track, machine }) => track === item.track && machine === item.machine)?.last;
  if (!last) return null;
  const on = mission ? showMissionDay(mission, last.day) : isoOfDay(last.day);
  return `${shownLoad(last.increments, item.increment)} ${item.unit} on ${on}`;
};

export const estimateOf = (known: Known, reader: CapacityReader, item: CardItem, today: Day): string | null => {
  if (item.kind !== 'lift') return null;
  const [exercise, machine] = [known.house.exercises.get(item.exercise), known.house.machines.get(item.machine)];
  if (!exercise || !machine) return null;
  const reading = reader.on(exercise, machine, today);
  if (reading.kind === 'none') return null;
  const age = today - reading.estimate.newest;
  return `${showEstimate(reading.estimate)}, ${age === 0 ? 'today' : age === 1 ? '1 day old' : `${age} days old`}`;
};
