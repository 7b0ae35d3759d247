import { useState, type ClipboardEvent } from 'react';
import type { CellAsked } from '#contract/requests/requests.ts';
import type { SheetWindow } from '#contract/windows/sheet-window.ts';
import { blockOf, heightOf, widthOf, type Selection } from '../../parts/block/selection.ts';
import { readTabSeparated, writeTabSeparated } from '../../parts/block/tab-separated.ts';
import { doAgain, NO_STEPS, takeBack, withStep, type Steps } from '../../parts/block/undo.ts';
import { standingAt } from './grid-places.ts';
import {
  changedCells,
  copiedRows,
  copiedWeek,
  filledCells,
  pastedCells,
  takenBackCells,
  type Chosen,
} from './cells-chosen.ts';

/** Cells that were written, as they stood before and after. */
export interface WrittenStep {
  readonly before: readonly CellAsked[];
  readonly after: readonly CellAsked[];
}

/** What is to be looked at and signed, and what becomes of the steps by it. */
export interface Asking {
  readonly title: string;
  readonly usualReason: string;
  readonly chosen: Chosen;
  readonly stepsAfter: (written: WrittenStep) => Steps<WrittenStep>;
}

export interface SheetEdits {
  readonly asking: Asking | null;
  readonly leaveIt: () => void;
  /** After the signature; a single line that was written elsewhere counts as a step too. */
  readonly written: (step: WrittenStep) => void;
  readonly fill: () => void;
  readonly leaveOut: () => void;
  /** What was written for its day alone ends: the programme stands again. */
  readonly takeOff: () => void;
  readonly copyWeek: () => void;
  readonly undo: () => void;
  readonly redo: () => void;
  readonly onCopy: (event: ClipboardEvent) => void;
  readonly onPaste: (event: ClipboardEvent) => void;
}

const plainSteps = (cells: readonly CellAsked[]): Chosen => ({ cells, problems: [], alike: 0 });

/** Everything that writes several cells of the sheet: each is looked at first, signed once, and can be taken back. */
export const useEdits = (
  sheet: SheetWindow,
  /** With what comes no more: a week is copied from that too. */
  whole: SheetWindow,
  selection: Selection,
  /** Tells in words what a key did. */
  say: (says: string) => void,
): SheetEdits => {
  const [steps, setSteps] = useState<Steps<WrittenStep>>(NO_STEPS);
  const [asking, setAsking] = useState<Asking | null>(null);
  const block = blockOf(selection);
  const weekOfCursor = (): Chosen => {
    const day = standingAt(sheet, selection.cursor)?.column.day;
    return day === undefined ? plainSteps([]) : copiedWeek(whole, day);
  };
  const ask = (title: string, usualReason: string, chosen: Chosen): void =>
    setAsking({ title, usualReason, chosen, stepsAfter: (step) => withStep(steps, step) });
  const askStep = (title: string, turn: ReturnType<typeof takeBack<WrittenStep>>, which: keyof WrittenStep): void => {
    if (!turn) return say(which === 'before' ? 'Nothing was written here to take back.' : 'Nothing was taken back.');
    return setAsking({
      title,
      usualReason: which === 'before' ? 'taken back on the sheet' : 'written again on the sheet',
      chosen: plainSteps(turn.step[which]),
      stepsAfter: () => turn.steps,
    });
  };
  return {
    asking,
    leaveIt: () => setAsking(null),
    written: (step) => {
      setSteps(asking ? asking.stepsAfter(step) : withStep(steps, step));
      setAsking(null);
      say('Written. Ctrl+Z takes it back.');
    },
    fill: () => ask('Fill right', 'filled right on the sheet', filledCells(sheet, block)),
    leaveOut: () => ask('Leave out', 'left out on the sheet', changedCells(sheet, block, { kind: 'leave out' })),
    takeOff: () => ask('Back to the programme', 'back to the programme', takenBackCells(sheet, block)),
    copyWeek: () => ask('Copy this week into the next', 'week copied on the sheet', weekOfCursor()),
    undo: () => askStep('Take back what was written', takeBack(steps), 'before'),
    redo: () => askStep('Write it again', doAgain(steps), 'after'),
    onCopy: (event) => {
      event.preventDefault();
      event.clipboardData.setData('text/plain', writeTabSeparated(copiedRows(sheet, block)));
      say(`Copied ${heightOf(block)} × ${widthOf(block)}.`);
    },
    onPaste: (event) => {
      event.preventDefault();
      const rows = readTabSeparated(event.clipboardData.getData('text/plain'));
      ask('Paste', 'pasted on the sheet', pastedCells(sheet, rows, block));
    },
  };
};
