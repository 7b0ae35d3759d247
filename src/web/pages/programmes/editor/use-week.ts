import { useState, type ClipboardEvent, type KeyboardEvent } from 'react';
import type { Exercise } from '#domain/catalogue.ts';
import { filledDown, filledRight, type Laid } from '#web/parts/block/fill.ts';
import {
  blockOf,
  broughtWithin,
  onePlace,
  selectionAfter,
  type Bounds,
  type Place,
  type Selection,
} from '#web/parts/block/selection.ts';
import { focusCell, useRange, type Range } from '../../sheet/use-range.ts';
import type { DraftPhase } from './draft.ts';
import { movedBlock, movedCells } from './move-cells.ts';
import { clearedIn, sizeOf, useClipboard } from './use-clipboard.ts';
import type { Editing } from './use-draft.ts';
import { boundsOf, FIRST_ITEM_ROW, slotAt, textAt } from './week.ts';
import { meaningOf, type WeekKeys } from './week-keys.ts';
import { withCells, type CellValue } from './write-cells.ts';

/** A cell that is being typed into. */
export interface Typing {
  readonly place: Place;
  /** What it began with: what stood there, or the first stroke. */
  readonly start: string;
}

export interface Week {
  readonly range: Range;
  readonly typing: Typing | null;
  readonly type: (place: Place) => void;
  /** Ends typing with the text, and goes on to a neighbour. */
  readonly typed: (text: string, then: 'down' | 'right' | 'stay') => void;
  readonly leave: () => void;
  readonly onKeyDown: (event: KeyboardEvent) => void;
  readonly onCopy: (event: ClipboardEvent) => void;
  readonly onCut: (event: ClipboardEvent) => void;
  readonly onPaste: (event: ClipboardEvent) => void;
  /** What the last key did, in words. */
  readonly said: string;
}

/** A week as a grid that types like a spreadsheet. */
export const useWeek = (editing: Editing, at: number, phase: DraftPhase, exercises: readonly Exercise[]): Week => {
  const [said, say] = useState('');
  const ranged = useRange(FIRST_PLACE, nothing, () => say(''));
  const bounds = boundsOf(phase);
  const range = { ...ranged, selection: within(ranged.selection, bounds) };
  const textOf = (place: Place): string => textAt(phase, place, exercises);
  const lay = (cells: readonly Laid<CellValue>[], says: string): void => {
    editing.change(withCells(editing.draft, at, cells, exercises));
    say(says);
  };
  const typing = useTyping(range, bounds, textOf, lay);
  const grid = {
    block: blockOf(range.selection),
    bounds,
    textAt: textOf,
    valueAt: (place: Place): CellValue => (place.row >= FIRST_ITEM_ROW ? slotAt(phase, place) : textOf(place)),
    lay,
    say,
  };
  const clipboard = useClipboard(grid);
  const keys = keysOf(editing, at, range, grid, typing.begin);
  const unlessTyping =
    <Event>(does: (event: Event) => void) =>
    (event: Event): void =>
      typing.typing ? undefined : does(event);
  return {
    range,
    typing: typing.typing,
    type: (place) => typing.begin(place, null),
    typed: typing.typed,
    leave: typing.leave,
    onKeyDown: unlessTyping((event: KeyboardEvent) => pressed(event, keys, range, bounds)),
    onCopy: unlessTyping(clipboard.onCopy),
    onCut: unlessTyping(clipboard.onCut),
    onPaste: unlessTyping(clipboard.onPaste),
    said,
  };
};

/** Where the keyboard begins: the first line of the first day. */
export const FIRST_PLACE: Place = { row: FIRST_ITEM_ROW, column: 0 };

const nothing = (): void => undefined;

/** Where the grid became smaller, the cursor comes along. */
const within = ({ anchor, cursor }: Selection, bounds: Bounds): Selection => ({
  anchor: broughtWithin(bounds, anchor),
  cursor: broughtWithin(bounds, cursor),
});

const pressed = (event: KeyboardEvent, keys: WeekKeys, { selection, moveTo }: Range, bounds: Bounds): void => {
  const does = meaningOf(event, keys);
  const { key, shiftKey: shift, ctrlKey, metaKey } = event;
  const moved = does ? null : selectionAfter(selection, bounds, { key, shift, control: ctrlKey || metaKey });
  if (!does && !moved) return;
  event.preventDefault();
  does?.();
  if (!moved) return;
  moveTo(moved);
  focusCell(moved.cursor);
};

const useTyping = (
  range: Range,
  bounds: Bounds,
  textOf: (place: Place) => string,
  lay: (cells: readonly Laid<CellValue>[], says: string) => void,
) => {
  const [typing, setTyping] = useState<Typing | null>(null);
  const go = (place: Place): void => {
    const next = broughtWithin(bounds, place);
    range.moveTo(onePlace(next));
    focusCell(next);
  };
  return {
    typing,
    begin: (place: Place, start: string | null): void => setTyping({ place, start: start ?? textOf(place) }),
    typed: (text: string, then: 'down' | 'right' | 'stay'): void => {
      if (!typing) return;
      const { place } = typing;
      setTyping(null);
      if (text.trim() !== textOf(place)) lay([{ place, value: text }], '');
      if (then === 'down') go({ ...place, row: place.row + 1 });
      if (then === 'right') go({ ...place, column: place.column + 1 });
    },
    leave: (): void => {
      setTyping(null);
      if (typing) focusCell(typing.place);
    },
  };
};

type Grid = Parameters<typeof useClipboard>[0];

const keysOf = (
  editing: Editing,
  at: number,
  { selection, moveTo }: Range,
  { block, bounds, valueAt, lay, say }: Grid,
  begin: (place: Place, start: string | null) => void,
): WeekKeys => ({
  type: (start) => begin(selection.cursor, start),
  clear: () => lay(clearedIn(block), `Cleared ${sizeOf(block)}.`),
  fillDown: () => lay(filledDown(block, valueAt), 'Filled down.'),
  fillRight: () => lay(filledRight(block, valueAt), 'Filled right.'),
  move: (by) => {
    const moved = movedCells(editing.draft, at, block, by);
    if (!moved) return say('There is no room to move it there.');
    editing.change(moved);
    const { top, left, bottom, right } = movedBlock(block, by);
    moveTo({ anchor: { row: top, column: left }, cursor: { row: bottom, column: right } });
    focusCell({ row: bottom, column: right });
    return say(by < 0 ? 'Moved up.' : 'Moved down.');
  },
  all: () => moveTo({ anchor: { row: 0, column: 0 }, cursor: { row: bounds.bottom, column: bounds.right } }),
  undo: () => say(editing.undo() ? 'Taken back.' : 'There is nothing to take back.'),
  redo: () => say(editing.redo() ? 'Done again.' : 'Nothing was taken back.'),
});
