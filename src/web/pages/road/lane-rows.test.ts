import fc from 'fast-check';
import { expect, test } from 'vitest';
import { day } from '#units/day.ts';
import { laneRows, type Labelled } from './lane-rows.ts';

const ROAD = { first: day(0), last: day(999) };

const span = (first: number, last: number, label: string, beside: 'left' | 'right' = 'right'): Labelled => ({
  first: day(first),
  last: day(last),
  label,
  beside,
});

const rowsOf = (...items: readonly Labelled[]): readonly string[] =>
  laneRows(items, ROAD).map((row) => row.map(({ item, place }) => `${item.label} ${place}`).join(', '));

test('a label stands inside its bar where it fits, else beside it', () => {
  expect(rowsOf(span(0, 400, 'general preparation'))).toEqual(['general preparation inside']);
  expect(rowsOf(span(400, 406, 'taper', 'left'))).toEqual(['taper left']);
  expect(rowsOf(span(400, 406, 'taper'))).toEqual(['taper right']);
});

test('at the end of the drawing a label goes to the side that has room', () => {
  expect(rowsOf(span(990, 999, 'after landing'))).toEqual(['after landing left']);
  expect(rowsOf(span(0, 6, 'first tests', 'left'))).toEqual(['first tests right']);
});

test('what would lie over another bar or its label goes one row down', () => {
  expect(
    rowsOf(span(0, 400, 'general preparation'), span(401, 407, 'taper', 'left'), span(408, 900, 'main flight')),
  ).toEqual(['general preparation inside, main flight inside', 'taper left']);
});

test('every span is drawn once, and no two bars of a row overlap', () => {
  const anySpan = fc
    .tuple(
      fc.integer({ min: 0, max: 990 }),
      fc.integer({ min: 0, max: 300 }),
      fc.string({ maxLength: 30 }),
      fc.boolean(),
    )
    .map(([first, days, label, isLeft]) => span(first, Math.min(999, first + days), label, isLeft ? 'left' : 'right'));
  fc.assert(
    fc.property(fc.array(anySpan, { maxLength: 12 }), (items) => {
      const rows = laneRows(items, ROAD);
      expect(new Set(rows.flat().map(({ item }) => item))).toEqual(new Set(items));
      for (const row of rows) {
        const inOrder = row.map(({ item }) => item).toSorted((a, b) => a.first - b.first);
        for (const [place, next] of inOrder.slice(1).entries())
          expect(next.first).toBeGreaterThan(inOrder[place]?.last ?? next.first);
      }
    }),
  );
});
