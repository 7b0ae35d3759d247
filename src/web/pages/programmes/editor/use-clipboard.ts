import { useRef, type ClipboardEvent } from 'react';
import { laidOver, rowsIn, type Laid } from '#web/parts/block/fill.ts';
import { heightOf, placesOf, widthOf, type Block, type Bounds, type Place } from '#web/parts/block/selection.ts';
import { readTabSeparated, writeTabSeparated } from '#web/parts/block/tab-separated.ts';
import { FIRST_ITEM_ROW } from './week.ts';
import type { CellValue } from './write-cells.ts';

/** What the clipboard works on: the chosen block, what stands in it, and how cells are laid. */
export interface ClipboardGrid {
  readonly block: Block;
  readonly bounds: Bounds;
  readonly textAt: (place: Place) => string;
  readonly valueAt: (place: Place) => CellValue;
  readonly lay: (cells: readonly Laid<CellValue>[], says: string) => void;
  readonly say: (says: string) => void;
}

type ValueRows = readonly (readonly CellValue[])[];

/** What was copied here last: a paste of the same text brings the items whole, with all that their lines do not say. */
interface Copied {
  readonly text: string;
  readonly rows: ValueRows;
}

export const useClipboard = ({ block, bounds, textAt, valueAt, lay, say }: ClipboardGrid) => {
  const copied = useRef<Copied | null>(null);
  const copy = (event: ClipboardEvent): void => {
    event.preventDefault();
    const text = writeTabSeparated(rowsIn(block, textAt));
    copied.current = { text, rows: valuesIn(block, valueAt) };
    event.clipboardData.setData('text/plain', text);
    say(`Copied ${sizeOf(block)}.`);
  };
  return {
    onCopy: copy,
    onCut: (event: ClipboardEvent): void => {
      copy(event);
      lay(clearedIn(block), `Cut ${sizeOf(block)}.`);
    },
    onPaste: (event: ClipboardEvent): void => {
      event.preventDefault();
      const text = event.clipboardData.getData('text/plain');
      const rows: ValueRows = copied.current?.text === text ? copied.current.rows : readTabSeparated(text);
      const cells = laidOver(indicesOf(rows), block).flatMap(({ place, value }) => cellOf(rows, place, value, bounds));
      lay(cells, pastedWords(rows, cells.length));
    },
  };
};

export const sizeOf = (block: Block): string => `${heightOf(block)} × ${widthOf(block)}`;

export const clearedIn = (block: Block): readonly Laid<CellValue>[] =>
  placesOf(block).map((place) => ({ place, value: '' }));

const valuesIn = (block: Block, valueAt: (place: Place) => CellValue): ValueRows =>
  Array.from({ length: heightOf(block) }, (_, down) =>
    Array.from({ length: widthOf(block) }, (__, along) =>
      valueAt({ row: block.top + down, column: block.left + along }),
    ),
  );

/** Where each value stands in its rows, as text: what is laid over a block is text. */
const indicesOf = (rows: ValueRows): readonly (readonly string[])[] =>
  rows.map((row, down) => row.map((_, along) => `${down}:${along}`));

/** Days end at the seventh; below there is room for as many items as a session may hold. */
const cellOf = (rows: ValueRows, place: Place, index: string, { right }: Bounds): readonly Laid<CellValue>[] => {
  const [down = 0, along = 0] = index.split(':').map(Number);
  const value = rows[down]?.[along];
  const isInside = place.column <= right && place.row < FIRST_ITEM_ROW + MOST_ITEMS;
  return value !== undefined && isInside ? [{ place, value }] : [];
};

const MOST_ITEMS = 100;

const pastedWords = (rows: ValueRows, laid: number): string => {
  const left = rows.reduce((sum, row) => sum + row.length, 0) - laid;
  return left > 0 ? `Pasted ${laid} cells; ${left} lay outside the week.` : `Pasted ${laid} cells.`;
};
