/** A place of a grid, from 0; what a row or a column is, the grid itself knows. */
export interface Place {
  readonly row: number;
  readonly column: number;
}

/** From where it was begun to where the cursor stands now: either may be the upper or the left one. */
export interface Selection {
  readonly anchor: Place;
  readonly cursor: Place;
}

/** A rectangle of places, ends included. */
export interface Block {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

export const onePlace = (place: Place): Selection => ({ anchor: place, cursor: place });

/** The same beginning, another end: what Shift with an arrow, or a drag, does. */
export const extendedTo = ({ anchor }: Selection, cursor: Place): Selection => ({ anchor, cursor });

export const blockOf = ({ anchor, cursor }: Selection): Block => ({
  top: Math.min(anchor.row, cursor.row),
  left: Math.min(anchor.column, cursor.column),
  bottom: Math.max(anchor.row, cursor.row),
  right: Math.max(anchor.column, cursor.column),
});

export const isOnePlace = ({ anchor, cursor }: Selection): boolean => isSamePlace(anchor, cursor);

export const isSamePlace = (one: Place, other: Place): boolean => one.row === other.row && one.column === other.column;

export const holds = ({ top, left, bottom, right }: Block, { row, column }: Place): boolean =>
  row >= top && row <= bottom && column >= left && column <= right;

export const heightOf = ({ top, bottom }: Block): number => bottom - top + 1;
export const widthOf = ({ left, right }: Block): number => right - left + 1;

/** Every place of a block, row by row. */
export const placesOf = (block: Block): readonly Place[] =>
  Array.from({ length: heightOf(block) }, (_, down) =>
    Array.from({ length: widthOf(block) }, (__, along) => ({ row: block.top + down, column: block.left + along })),
  ).flat();

/** What a grid reaches over; the cursor never leaves it. */
export type Bounds = Block;

const within = (value: number, least: number, most: number): number => Math.max(least, Math.min(value, most));

export const broughtWithin = ({ top, left, bottom, right }: Bounds, { row, column }: Place): Place => ({
  row: within(row, top, bottom),
  column: within(column, left, right),
});

export interface PressedKey {
  readonly key: string;
  readonly shift: boolean;
  /** Control, or Command: to the end of the grid. */
  readonly control: boolean;
}

/** How far a key goes from a place, before it is brought within the grid; null for a key that does not move. */
const stepOf = ({ key, control }: PressedKey): Place | null => {
  const far = control ? Number.MAX_SAFE_INTEGER : 1;
  switch (key) {
    case 'ArrowUp':
      return { row: -far, column: 0 };
    case 'ArrowDown':
      return { row: far, column: 0 };
    case 'ArrowLeft':
      return { row: 0, column: -far };
    case 'ArrowRight':
      return { row: 0, column: far };
    case 'Home':
      return { row: control ? -far : 0, column: -Number.MAX_SAFE_INTEGER };
    case 'End':
      return { row: control ? far : 0, column: Number.MAX_SAFE_INTEGER };
    default:
      return null;
  }
};

/** Where a key leads: an arrow alone moves, with Shift it extends; null where the key means nothing here. */
export const selectionAfter = (selection: Selection, bounds: Bounds, pressed: PressedKey): Selection | null => {
  const step = stepOf(pressed);
  if (!step) return null;
  const { row, column } = selection.cursor;
  const cursor = broughtWithin(bounds, { row: row + step.row, column: column + step.column });
  return pressed.shift ? extendedTo(selection, cursor) : onePlace(cursor);
};
