import fc from 'fast-check';
import { expect, test } from 'vitest';
import { labelLines, placedApart } from './plot-labels.ts';

const anyPlace = fc.record({ at: fc.double({ min: 0, max: 300, noNaN: true }), height: fc.constantFrom(14, 28) });

test('labels never touch while there is room for them', () => {
  fc.assert(
    fc.property(fc.array(anyPlace, { maxLength: 10 }), (wanted) => {
      const middles = placedApart(wanted, 0, 300);
      const spans = wanted
        .map(({ height }, place) => [(middles[place] ?? 0) - height / 2, (middles[place] ?? 0) + height / 2] as const)
        .toSorted(([a], [b]) => a - b);
      for (const [place, [from, to]] of spans.entries()) {
        expect(from).toBeGreaterThanOrEqual((spans[place - 1]?.[1] ?? 0) - 1e-9);
        expect(to).toBeLessThanOrEqual(300 + 1e-9);
      }
    }),
  );
});

test('a label with room stays where it is wanted', () => {
  expect(
    placedApart(
      [
        { at: 200, height: 14 },
        { at: 50, height: 14 },
      ],
      0,
      300,
    ),
  ).toEqual([200, 50]);
});

test('a long label is broken between words', () => {
  expect(labelLines('grade 5 %')).toEqual(['grade 5 %']);
  expect(labelLines('the four kinetic cells of the segment model')).toEqual([
    'the four kinetic cells of the',
    'segment model',
  ]);
});
