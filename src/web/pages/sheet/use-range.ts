import { useRef, useState, type FocusEvent, type MouseEvent, type PointerEvent } from 'react';
import { extendedTo, isSamePlace, onePlace, type Place, type Selection } from '../../parts/block/selection.ts';

/** The place of the grid under something, or null. */
export const placeOf = (target: EventTarget | null): Place | null => {
  const cell = target instanceof Element ? target.closest('[data-place]') : null;
  const [row, column] = (cell?.getAttribute('data-place') ?? '').split(':').map(Number);
  return row === undefined || column === undefined || Number.isNaN(row) ? null : { row, column };
};

const selectorOf = ({ row, column }: Place): string => `[data-place="${row}:${column}"]`;

/** Gives the keyboard to a cell. */
export const focusCell = (place: Place): void => document.querySelector<HTMLElement>(selectorOf(place))?.focus();

export const startAtCell = (place: Place): void => startAt(selectorOf(place));

/** The keyboard starts in the grid, unless somebody has put it elsewhere already. */
export const startAt = (selector: string): void =>
  // After the page's own effects: going to another page gives the keyboard to its beginning.
  queueMicrotask(() => {
    const { activeElement } = document;
    if (activeElement === null || activeElement === document.body || activeElement.id === 'main')
      document.querySelector<HTMLElement>(selector)?.focus({ preventScroll: true });
  });

export interface Range {
  readonly selection: Selection;
  /** Moves the cursor or its range, as a key or a mouse does. */
  readonly moveTo: (selection: Selection) => void;
  /** Leaves the cursor where it is, and no range. */
  readonly letGo: () => void;
  /** What a mouse does: press and drag over a range, Shift and press to extend, press and let go to open. */
  readonly pointing: {
    readonly onPointerDown: (event: PointerEvent) => void;
    readonly onPointerOver: (event: PointerEvent) => void;
    readonly onPointerUp: () => void;
    readonly onFocus: (event: FocusEvent) => void;
    readonly onClick: (event: MouseEvent) => void;
  };
}

/** How far a range that begins at a place may reach towards another. */
export type Reach = (anchor: Place, towards: Place) => Place;

const ANYWHERE: Reach = (_, towards) => towards;

/** A range of a grid, by keyboard and by mouse. A finger scrolls, and opens what it taps. */
export const useRange = (start: Place, onOpen: () => void, onMove: () => void, reach = ANYWHERE): Range => {
  const [selection, select] = useState<Selection>(() => onePlace(start));
  const isDragging = useRef(false);
  const cursor = useRef(selection.cursor);
  const moveTo = (next: Selection): void => {
    cursor.current = next.cursor;
    select(next);
    onMove();
  };
  const extend = (place: Place): void => moveTo(extendedTo(selection, reach(selection.anchor, place)));
  return {
    selection,
    moveTo,
    letGo: () => select(onePlace(cursor.current)),
    pointing: {
      onPointerDown: (event) => {
        const place = placeOf(event.target);
        if (!place || event.button !== 0) return;
        isDragging.current = event.pointerType === 'mouse';
        if (event.shiftKey) extend(place);
        else moveTo(onePlace(place));
      },
      onPointerOver: (event) => {
        const place = isDragging.current && event.buttons === 1 ? placeOf(event.target) : null;
        if (place && !isSamePlace(place, cursor.current)) extend(place);
      },
      onPointerUp: () => {
        isDragging.current = false;
        focusCell(cursor.current);
      },
      onFocus: (event) => {
        const place = placeOf(event.target);
        if (place && !isDragging.current && !isSamePlace(place, cursor.current)) moveTo(onePlace(place));
      },
      onClick: (event) => {
        const place = placeOf(event.target);
        if (place && !event.shiftKey && isSamePlace(place, selection.anchor)) onOpen();
      },
    },
  };
};
