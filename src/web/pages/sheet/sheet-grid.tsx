import type { KeyboardEvent } from 'react';
import type { SheetWindow } from '#contract/windows/sheet-window.ts';
import { blockOf, isOnePlace } from '../../parts/block/selection.ts';
import { BlockTable } from './block-table.tsx';
import { movedBy } from './grid-places.ts';
import { blockAtRow, blocksOf } from './sheet-blocks.ts';
import type { SheetEdits } from './use-edits.ts';
import { focusCell, type Range } from './use-range.ts';
import styles from './sheet.module.css';

export interface SheetGridProps {
  readonly sheet: SheetWindow;
  readonly range: Range;
  readonly edits: SheetEdits;
  readonly onOpen: () => void;
  /** A digit on a cell begins to write it. */
  readonly onType: (digit: string) => void;
}

/** What a key does to the range, or to what stands in it. */
const useKeys =
  ({ sheet, range: { selection, moveTo }, onOpen, onType, edits }: SheetGridProps) =>
  (event: KeyboardEvent): void => {
    const control = event.ctrlKey || event.metaKey;
    const does = meaningOf(event, control, { onOpen, onType, edits });
    if (does) {
      event.preventDefault();
      does();
      return;
    }
    const moved = event.altKey ? null : movedBy(sheet, selection, { key: event.key, shift: event.shiftKey, control });
    if (!moved) return;
    event.preventDefault();
    moveTo(moved);
    focusCell(moved.cursor);
  };

const meaningOf = (
  { key, shiftKey, altKey }: KeyboardEvent,
  control: boolean,
  { onOpen, onType, edits }: Pick<SheetGridProps, 'onOpen' | 'onType' | 'edits'>,
): (() => void) | null => {
  if (altKey) return null;
  if (control) return controlMeaning(key.toLowerCase(), shiftKey, edits);
  if (key === 'Enter') return onOpen;
  if (key === 'Delete' || key === 'Backspace') return edits.takeOff;
  return /^\d$/.test(key) ? () => onType(key) : null;
};

const controlMeaning = (key: string, shift: boolean, edits: SheetEdits): (() => void) | null => {
  if (key === 'r' && !shift) return edits.fill;
  if (key === 'y' || (key === 'z' && shift)) return edits.redo;
  return key === 'z' ? edits.undo : null;
};

/**
 * Kinds of day one under the other, the next one first. One tab stop in all; arrows move the cursor and with Shift the
 * range, Enter or a click opens what stands there.
 */
export const SheetGrid = (props: SheetGridProps) => {
  const { sheet, range, edits } = props;
  const { cursor } = range.selection;
  const chosen = isOnePlace(range.selection) ? null : blockOf(range.selection);
  const onKeyDown = useKeys(props);
  return (
    <section aria-label={`Sheet of ${sheet.person.name}`} className={styles['blocks']}>
      {blocksOf(sheet).map((block) => (
        <BlockTable
          key={block.label}
          block={block}
          cursor={cursor}
          unit={sheet.unit}
          chosen={blockAtRow(sheet, cursor.row) === block ? chosen : null}
          handlers={{ onKeyDown, onCopy: edits.onCopy, onPaste: edits.onPaste, ...range.pointing }}
        />
      ))}
    </section>
  );
};
