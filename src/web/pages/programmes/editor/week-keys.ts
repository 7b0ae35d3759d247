import type { KeyboardEvent } from 'react';

/** What keys do on the grid, beside moving over it. */
export interface WeekKeys {
  /** Types into the cell: with the first stroke, or into what stands there. */
  readonly type: (start: string | null) => void;
  readonly clear: () => void;
  readonly fillDown: () => void;
  readonly fillRight: () => void;
  readonly move: (by: -1 | 1) => void;
  readonly all: () => void;
  readonly undo: () => void;
  readonly redo: () => void;
}

/** What a key means, or null where it only moves or means nothing. */
export const meaningOf = (event: KeyboardEvent, keys: WeekKeys): (() => void) | null => {
  const { key, altKey, ctrlKey, metaKey, shiftKey } = event;
  if (altKey) return key === 'ArrowUp' ? () => keys.move(-1) : key === 'ArrowDown' ? () => keys.move(1) : null;
  if (ctrlKey || metaKey) return controlMeaning(key.toLowerCase(), shiftKey, keys);
  if (key === 'Enter' || key === 'F2') return () => keys.type(null);
  if (key === 'Delete' || key === 'Backspace') return keys.clear;
  return key.length === 1 && key !== ' ' ? () => keys.type(key) : null;
};

const controlMeaning = (key: string, shift: boolean, keys: WeekKeys): (() => void) | null => {
  if (key === 'y' || (key === 'z' && shift)) return keys.redo;
  if (shift) return null;
  switch (key) {
    case 'z':
      return keys.undo;
    case 'd':
      return keys.fillDown;
    case 'r':
      return keys.fillRight;
    case 'a':
      return keys.all;
    default:
      return null;
  }
};
