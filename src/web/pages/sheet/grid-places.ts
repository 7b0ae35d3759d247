import type { SheetCell, SheetColumn, SheetRow, SheetWindow } from '#contract/windows/sheet-window.ts';
import {
  broughtWithin,
  extendedTo,
  holds,
  onePlace,
  selectionAfter,
  type Bounds,
  type Place,
  type PressedKey,
  type Selection,
} from '../../parts/block/selection.ts';
import { blockAtRow, blocksOf, type SheetBlock } from './sheet-blocks.ts';

/** Where the cursor stands at first: the first exercise of the next session. */
export const firstPlace = (sheet: SheetWindow): Place => {
  const blocks = blocksOf(sheet);
  const nextIn = ({ columns, today }: SheetBlock): number => columns[today]?.day ?? Infinity;
  const block = blocks.toSorted((a, b) => nextIn(a) - nextIn(b) || a.top - b.top)[0];
  if (!block) return { row: 0, column: 0 };
  const column = Math.max(0, Math.min(block.today, block.columns.length - 1));
  const held = block.rows.findIndex(({ cells }) => cells[column]);
  return { row: block.top + Math.max(held, 0) + 1, column };
};

const DIRECTIONS: Readonly<Record<string, Place>> = {
  ArrowUp: { row: -1, column: 0 },
  ArrowDown: { row: 1, column: 0 },
  ArrowLeft: { row: 0, column: -1 },
  ArrowRight: { row: 0, column: 1 },
};

/** The place in another block that stands in the same line of columns, or nearest to it. */
const carriedOver = (from: SheetBlock, into: SheetBlock, { row, column }: Place): Place =>
  broughtWithin(boundsOfBlock(into), { row, column: column + from.before - into.before });

/** The next cell of a session in the direction of an arrow, up and down also in other blocks; null where none follows. */
export const nextHeld = (sheet: SheetWindow, from: Place, key: string): Place | null => {
  const [step, begun] = [DIRECTIONS[key], blockAtRow(sheet, from.row)];
  if (!step || !begun) return null;
  let [row, column] = [from.row + step.row, from.column + step.column];
  for (;;) {
    const block = blockAtRow(sheet, row);
    if (!block || column < 0 || (block === begun && column >= block.columns.length)) return null;
    const place = block === begun ? { row, column } : carriedOver(begun, block, { row, column });
    if (standingAt(sheet, place)?.cell) return place;
    [row, column] = [row + step.row, column + step.column];
  }
};

const boundsOfBlock = ({ top, rows, columns }: SheetBlock): Bounds => ({
  top,
  left: 0,
  bottom: top + rows.length,
  right: columns.length - 1,
});

const NOWHERE: Bounds = { top: 0, left: 0, bottom: 0, right: -1 };

/** What a range may reach over from a place: its block, the heads of the sessions first. */
export const boundsOf = (sheet: SheetWindow, { row }: Place): Bounds => {
  const block = blockAtRow(sheet, row);
  return block ? boundsOfBlock(block) : NOWHERE;
};

/** Over the edge of a block an arrow goes on to the next one. */
const overTheEdge = (sheet: SheetWindow, { row, column }: Place, key: string): Place | null => {
  const [step, from] = [DIRECTIONS[key]?.row ?? 0, blockAtRow(sheet, row)];
  const into = blockAtRow(sheet, row + step);
  return step === 0 || !from || !into || into === from ? null : carriedOver(from, into, { row: row + step, column });
};

/** The first or the last place of the whole sheet. */
const farEnd = (sheet: SheetWindow, key: string): Place | null => {
  if (key === 'Home') return { row: 0, column: 0 };
  const last = blocksOf(sheet).at(-1);
  return key === 'End' && last ? { row: boundsOfBlock(last).bottom, column: last.columns.length - 1 } : null;
};

/** Where a key leads. A range stays in its block; Control goes to the next cell of a session, as in a spreadsheet. */
export const movedBy = (sheet: SheetWindow, selection: Selection, pressed: PressedKey): Selection | null => {
  const { cursor, anchor } = selection;
  const { key, shift, control } = pressed;
  const bounds = boundsOf(sheet, shift ? anchor : cursor);
  const leap = control ? (farEnd(sheet, key) ?? nextHeld(sheet, cursor, key)) : overTheEdge(sheet, cursor, key);
  if (!leap || (shift && !holds(bounds, leap))) return selectionAfter(selection, bounds, pressed);
  return shift ? extendedTo(selection, leap) : onePlace(leap);
};

/** The next session of a lift, or its first row where no session ahead holds it; null where it has no row. */
export const placeOfLift = (sheet: SheetWindow, exercise: string): Place | null => {
  const places = blocksOf(sheet).flatMap(({ top, rows, columns, today }) =>
    rows.flatMap((row, at) => {
      if (row.exercise !== exercise) return [];
      const column = row.cells.findIndex((cell, on) => cell !== null && on >= today);
      return [{ row: top + at + 1, column, day: columns[column]?.day ?? Infinity }];
    }),
  );
  const [first] = places.toSorted((a, b) => a.day - b.day || a.row - b.row);
  return first ? { row: first.row, column: Math.max(first.column, 0) } : null;
};

export interface Standing {
  readonly column: SheetColumn;
  readonly exercise: SheetRow | null;
  readonly cell: SheetCell | null;
}

/** What stands at a place; null outside the grid. */
export const standingAt = (sheet: SheetWindow, { row, column }: Place): Standing | null => {
  const block = blockAtRow(sheet, row);
  const head = block?.columns[column];
  if (!block || !head) return null;
  const exercise = row === block.top ? null : (block.rows[row - block.top - 1] ?? null);
  return { column: head, exercise, cell: exercise?.cells[column] ?? null };
};

export interface ItemOfColumn {
  readonly name: string;
  readonly cell: SheetCell;
}

/** All items of one session in the order of the rows. */
export const itemsOf = (sheet: SheetWindow, column: SheetColumn): readonly ItemOfColumn[] => {
  const block = blocksOf(sheet).find(({ columns }) => columns.includes(column));
  const at = block?.columns.indexOf(column) ?? -1;
  return (block?.rows ?? []).flatMap(({ name, cells }) => {
    const cell = cells[at];
    return cell ? [{ name, cell }] : [];
  });
};
