import fc from 'fast-check';
import { expect, test } from 'vitest';
import { filledDown, filledRight, laidOver, rowsIn } from './fill.ts';
import type { Block, Place } from './selection.ts';

const BLOCK: Block = { top: 2, left: 3, bottom: 3, right: 5 };
const nameOf = ({ row, column }: Place): string => `${row}:${column}`;
const asText = (laid: ReturnType<typeof laidOver>): readonly string[] =>
  laid.map(({ place, value }) => `${nameOf(place)} ${value}`);

test('fill right takes the first cell of each row along it', () => {
  expect(asText(filledRight(BLOCK, nameOf))).toEqual(['2:4 2:3', '2:5 2:3', '3:4 3:3', '3:5 3:3']);
});

test('fill down takes the first cell of each column down it', () => {
  expect(asText(filledDown(BLOCK, nameOf))).toEqual(['3:3 2:3', '3:4 2:4', '3:5 2:5']);
});

test('one cell has nothing to fill', () => {
  const one = { top: 2, left: 3, bottom: 2, right: 3 };
  expect([...filledRight(one, nameOf), ...filledDown(one, nameOf)]).toEqual([]);
});

test('a pasted block begins at the upper left place, however much is selected', () => {
  const rows = [
    ['a', 'b'],
    ['c', 'd'],
  ];
  const laid = ['2:3 a', '2:4 b', '3:3 c', '3:4 d'];
  expect(asText(laidOver(rows, { top: 2, left: 3, bottom: 2, right: 3 }))).toEqual(laid);
  expect(asText(laidOver(rows, { top: 2, left: 3, bottom: 4, right: 5 }))).toEqual(laid);
});

test('one cell, or one row, pasted over a larger block fills it', () => {
  expect(asText(laidOver([['a']], BLOCK))).toEqual(['2:3 a', '2:4 a', '2:5 a', '3:3 a', '3:4 a', '3:5 a']);
  expect(asText(laidOver([['a', 'b', 'c']], BLOCK))).toEqual(['2:3 a', '2:4 b', '2:5 c', '3:3 a', '3:4 b', '3:5 c']);
});

test('a short row lays nothing at its end, an empty cell lays empty text', () => {
  expect(asText(laidOver([['a', ''], ['b']], { top: 0, left: 0, bottom: 0, right: 0 }))).toEqual([
    '0:0 a',
    '0:1 ',
    '1:0 b',
  ]);
});

test('nothing pasted lays nothing', () => {
  expect(laidOver([], BLOCK)).toEqual([]);
});

test('what is copied out of a block and pasted where it was stands as it was', () => {
  const anyBlock = fc
    .record({
      top: fc.nat(5),
      left: fc.nat(5),
      high: fc.integer({ min: 1, max: 4 }),
      wide: fc.integer({ min: 1, max: 4 }),
    })
    .map(({ top, left, high, wide }) => ({ top, left, bottom: top + high - 1, right: left + wide - 1 }));
  fc.assert(
    fc.property(anyBlock, (block) => {
      const laid = laidOver(rowsIn(block, nameOf), block);
      expect(laid.length).toBeGreaterThan(0);
      for (const { place, value } of laid) expect(value).toBe(nameOf(place));
    }),
  );
});
