import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  blockOf,
  broughtWithin,
  extendedTo,
  heightOf,
  holds,
  isOnePlace,
  isSamePlace,
  onePlace,
  placesOf,
  selectionAfter,
  widthOf,
  type Bounds,
  type PressedKey,
} from './selection.ts';

const GRID: Bounds = { top: 1, left: 0, bottom: 4, right: 6 };
const anyPlace = fc.record({ row: fc.integer({ min: -3, max: 9 }), column: fc.integer({ min: -3, max: 9 }) });
const pressed = (key: string, { shift = false, control = false } = {}): PressedKey => ({ key, shift, control });

test('a block has the same corners whichever end it was begun from', () => {
  const [one, other] = [
    { row: 3, column: 5 },
    { row: 1, column: 6 },
  ];
  const block = { top: 1, left: 5, bottom: 3, right: 6 };
  expect(blockOf({ anchor: one, cursor: other })).toEqual(block);
  expect(blockOf({ anchor: other, cursor: one })).toEqual(block);
  expect([heightOf(block), widthOf(block)]).toEqual([3, 2]);
});

test('a block holds exactly its own places', () => {
  fc.assert(
    fc.property(anyPlace, anyPlace, anyPlace, (anchor, cursor, place) => {
      const block = blockOf({ anchor, cursor });
      const places = placesOf(block);
      expect(places).toHaveLength(heightOf(block) * widthOf(block));
      expect(holds(block, place)).toBe(places.some((each) => isSamePlace(each, place)));
    }),
  );
});

test('places of a block follow each other row by row', () => {
  expect(placesOf({ top: 2, left: 4, bottom: 3, right: 5 })).toEqual([
    { row: 2, column: 4 },
    { row: 2, column: 5 },
    { row: 3, column: 4 },
    { row: 3, column: 5 },
  ]);
});

test.each([
  { key: 'ArrowUp', to: { row: 1, column: 3 } },
  { key: 'ArrowDown', to: { row: 3, column: 3 } },
  { key: 'ArrowLeft', to: { row: 2, column: 2 } },
  { key: 'ArrowRight', to: { row: 2, column: 4 } },
  { key: 'Home', to: { row: 2, column: 0 } },
  { key: 'End', to: { row: 2, column: 6 } },
])('$key moves the cursor and leaves no range', ({ key, to }) => {
  const before = { anchor: { row: 1, column: 1 }, cursor: { row: 2, column: 3 } };
  expect(selectionAfter(before, GRID, pressed(key))).toEqual(onePlace(to));
  expect(selectionAfter(before, GRID, pressed(key, { shift: true }))).toEqual({ anchor: before.anchor, cursor: to });
});

test.each([
  { key: 'ArrowUp', to: { row: 1, column: 3 } },
  { key: 'ArrowDown', to: { row: 4, column: 3 } },
  { key: 'ArrowLeft', to: { row: 2, column: 0 } },
  { key: 'ArrowRight', to: { row: 2, column: 6 } },
  { key: 'Home', to: { row: 1, column: 0 } },
  { key: 'End', to: { row: 4, column: 6 } },
])('$key with Control goes to the end of the grid', ({ key, to }) => {
  expect(selectionAfter(onePlace({ row: 2, column: 3 }), GRID, pressed(key, { control: true }))).toEqual(onePlace(to));
});

test('other keys mean nothing here', () => {
  expect(
    ['a', 'Enter', 'Tab', 'Escape'].map((key) => selectionAfter(onePlace({ row: 2, column: 3 }), GRID, pressed(key))),
  ).toEqual([null, null, null, null]);
});

test('no key leads out of the grid, and Shift keeps where the range was begun', () => {
  const anyKey = fc.record({
    key: fc.constantFrom('ArrowUp', 'ArrowDown', 'ArrowLeft', 'ArrowRight', 'Home', 'End'),
    shift: fc.boolean(),
    control: fc.boolean(),
  });
  fc.assert(
    fc.property(anyPlace, fc.array(anyKey), (start, keys) => {
      let selection = onePlace(broughtWithin(GRID, start));
      for (const key of keys) {
        const after = selectionAfter(selection, GRID, key) ?? selection;
        expect(holds(GRID, after.cursor)).toBe(true);
        expect(key.shift ? isSamePlace(after.anchor, selection.anchor) : isOnePlace(after)).toBe(true);
        selection = after;
      }
    }),
  );
});

test('extending back to the beginning leaves one place', () => {
  const begun = onePlace({ row: 1, column: 1 });
  expect(isOnePlace(extendedTo(begun, { row: 1, column: 2 }))).toBe(false);
  expect(isOnePlace(extendedTo(extendedTo(begun, { row: 1, column: 2 }), { row: 1, column: 1 }))).toBe(true);
});
