import { heightOf, placesOf, widthOf, type Block, type Place } from './selection.ts';
import type { Rows } from './tab-separated.ts';

/** What is to stand at a place. */
export interface Laid<Value> {
  readonly place: Place;
  readonly value: Value;
}

/** The first cell of each row of a block, into the others of its row. */
export const filledRight = <Value>(block: Block, valueAt: (place: Place) => Value): readonly Laid<Value>[] =>
  placesOf(block).flatMap((place) =>
    place.column === block.left ? [] : [{ place, value: valueAt({ row: place.row, column: block.left }) }],
  );

/** The first cell of each column of a block, into the others of its column. */
export const filledDown = <Value>(block: Block, valueAt: (place: Place) => Value): readonly Laid<Value>[] =>
  placesOf(block).flatMap((place) =>
    place.row === block.top ? [] : [{ place, value: valueAt({ row: block.top, column: place.column }) }],
  );

/** What stands in a block, as rows that can be copied out. */
export const rowsIn = (block: Block, textAt: (place: Place) => string): Rows =>
  Array.from({ length: heightOf(block) }, (_, down) =>
    Array.from({ length: widthOf(block) }, (__, along) =>
      textAt({ row: block.top + down, column: block.left + along }),
    ),
  );

/**
 * Where copied rows come to lie when they are pasted over a block. They begin at its upper left place; where the block is
 * a whole number of times as high or as wide as they are, they repeat, as in any spreadsheet. Rows shorter than the
 * longest lay nothing at their end.
 */
export const laidOver = (rows: Rows, over: Block): readonly Laid<string>[] => {
  const [high, wide] = [rows.length, Math.max(0, ...rows.map(({ length }) => length))];
  if (high === 0 || wide === 0) return [];
  const [downs, alongs] = [timesIn(heightOf(over), high), timesIn(widthOf(over), wide)];
  const covered: Block = {
    top: over.top,
    left: over.left,
    bottom: over.top + high * downs - 1,
    right: over.left + wide * alongs - 1,
  };
  return placesOf(covered).flatMap((place) => {
    const value = rows[(place.row - over.top) % high]?.[(place.column - over.left) % wide];
    return value === undefined ? [] : [{ place, value }];
  });
};

const timesIn = (length: number, part: number): number => (length % part === 0 ? length / part : 1);
