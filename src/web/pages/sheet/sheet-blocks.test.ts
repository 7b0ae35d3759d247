import { expect, test } from 'vitest';
import type { SheetWindow } from '#contract/windows/sheet-window.ts';
import { onePlace } from '../../parts/block/selection.ts';
import { firstPlace, movedBy, nextHeld, placeOfLift, standingAt } from './grid-places.ts';
import { cellOf, sheetOf } from './invented-sheet.setup.ts';
import { blockAtRow, blocksOf, stillDone } from './sheet-blocks.ts';

const cell = cellOf('heavy', 'a');

/* Heavy days on four Mondays, the next of them today; easy days on the Wednesdays between, and a walk that is over. */
const bare = sheetOf([-14, -12, -7, -6, -5, 0, 2, 7], {});
const titles = ['Heavy', 'Easy', 'Heavy', 'Walk', 'Easy', 'Heavy', 'Easy', 'Heavy'];
const cellsOn = (title: string, ...held: readonly boolean[]) => {
  let at = 0;
  return titles.map((each) => (each === title && held[at++] === true ? cell : null));
};
const row = (name: string, title: string, ...held: readonly boolean[]) => ({
  exercise: `${name}` as SheetWindow['groups'][number]['rows'][number]['exercise'],
  name,
  cells: cellsOn(title, ...held),
  lastHere: null,
  estimate: null,
  rule: null,
});
const sheet: SheetWindow = {
  ...bare,
  columns: bare.columns.map((column, at) => ({ ...column, title: titles[at] ?? '' })),
  groups: [
    {
      label: 'Heavy',
      rows: [row('Squat', 'Heavy', true, true, true, true), row('Row', 'Heavy', true, false, false, false)],
      leftOut: [],
    },
    { label: 'Easy', rows: [row('Rock', 'Easy', true, true, true)], leftOut: [] },
    { label: 'Walk', rows: [row('Walk', 'Walk', true)], leftOut: [] },
  ],
};

test('each kind of day has its own columns, and today stands below today', () => {
  const [heavy, easy, walk] = blocksOf(sheet);
  expect([heavy?.columns.length, easy?.columns.length, walk?.columns.length]).toEqual([4, 3, 1]);
  expect([heavy, easy, walk].map((block) => (block?.before ?? NaN) + (block?.today ?? NaN))).toEqual([2, 2, 2]);
  expect([heavy?.top, easy?.top, walk?.top]).toEqual([0, 3, 5]);
  expect(blocksOf(sheet)).toBe(blocksOf(sheet));
  expect(blockAtRow(sheet, 4)).toBe(easy);
  expect(blockAtRow(sheet, 7)).toBeNull();
});

test('every cell stands under the session of its day', () => {
  expect(standingAt(sheet, { row: 4, column: 2 })).toMatchObject({ exercise: { name: 'Rock' }, cell });
  expect(standingAt(sheet, { row: 4, column: 2 })?.column).toBe(sheet.columns[6]);
  expect(standingAt(sheet, { row: 4, column: 3 })).toBeNull();
  expect(standingAt(sheet, { row: 3, column: 0 })?.exercise).toBeNull();
});

test('what comes no more is left away: whole kinds of day, and rows that the last session had given up', () => {
  const { sheet: short, over } = stillDone(sheet);
  expect(short.groups.map(({ label, rows }) => [label, rows.length])).toEqual([
    ['Heavy', 1],
    ['Easy', 1],
  ]);
  expect(over).toEqual(['row on “Heavy”', 'Walk']);
  const past = sheetOf([-7], { Squat: [cell] });
  expect(stillDone(past)).toEqual({ sheet: past, over: [] });
});

test('the keyboard begins at the next session, and finds a lift in the block that trains it next', () => {
  expect(firstPlace(sheet)).toEqual({ row: 1, column: 2 });
  expect(placeOfLift(sheet, 'Rock')).toEqual({ row: 4, column: 2 });
  expect(placeOfLift(sheet, 'Walk')).toEqual({ row: 6, column: 0 });
});

const after = (from: { row: number; column: number }, key: string, more: { shift?: true; control?: true } = {}) =>
  movedBy(sheet, onePlace(from), { key, shift: more.shift ?? false, control: more.control ?? false })?.cursor;

test('arrows go over the edge of a block, to the session of the same line or the nearest', () => {
  expect(after({ row: 2, column: 2 }, 'ArrowDown')).toEqual({ row: 3, column: 2 });
  expect(after({ row: 2, column: 3 }, 'ArrowDown')).toEqual({ row: 3, column: 2 });
  expect(after({ row: 3, column: 1 }, 'ArrowUp')).toEqual({ row: 2, column: 1 });
  expect(after({ row: 4, column: 2 }, 'ArrowDown')).toEqual({ row: 5, column: 0 });
  expect(after({ row: 6, column: 0 }, 'ArrowDown')).toEqual({ row: 6, column: 0 });
  expect(after({ row: 1, column: 3 }, 'ArrowRight')).toEqual({ row: 1, column: 3 });
});

test('a range does not leave its block', () => {
  expect(after({ row: 2, column: 2 }, 'ArrowDown', { shift: true })).toEqual({ row: 2, column: 2 });
  expect(after({ row: 1, column: 2 }, 'ArrowDown', { shift: true, control: true })).toEqual({ row: 2, column: 2 });
  expect(after({ row: 4, column: 1 }, 'ArrowUp', { shift: true, control: true })).toEqual({ row: 3, column: 1 });
});

test('with Control an arrow goes to the next cell of a session, also in the next block', () => {
  expect(nextHeld(sheet, { row: 1, column: 2 }, 'ArrowDown')).toEqual({ row: 4, column: 2 });
  expect(nextHeld(sheet, { row: 4, column: 1 }, 'ArrowUp')).toEqual({ row: 1, column: 1 });
  expect(nextHeld(sheet, { row: 2, column: 0 }, 'ArrowRight')).toBeNull();
  expect(after({ row: 4, column: 1 }, 'Home', { control: true })).toEqual({ row: 0, column: 0 });
  expect(after({ row: 0, column: 1 }, 'End', { control: true })).toEqual({ row: 6, column: 0 });
  expect(after({ row: 1, column: 1 }, 'End')).toEqual({ row: 1, column: 3 });
});
