import type { SheetWindow } from '#contract/windows/sheet-window.ts';
import { AdjustDialog } from './adjust-dialog.tsx';
import { CellPanel } from './cell-panel.tsx';
import type { Standing } from './grid-places.ts';
import { IssueDialog } from './issue-dialog.tsx';
import { SessionPanel } from './session-panel.tsx';

export type Open = 'cell' | 'write' | 'hold' | 'back off' | 'keep' | 'leave out' | 'issue' | null;

export interface OpenedProps {
  readonly open: Open;
  readonly sheet: SheetWindow;
  readonly standing: Standing | null;
  readonly onOpen: (open: Open) => void;
  readonly onWrite: () => void;
}

/** The dialog that was opened from the place of the cursor. */
export const Opened = ({ open, sheet, standing, onOpen, onWrite }: OpenedProps) => {
  const onClose = (): void => onOpen(null);
  if (open === 'issue') return <IssueDialog sheet={sheet} onClose={onClose} />;
  if (!standing) return null;
  const { column, cell, exercise } = standing;
  if (open === 'cell' && !cell) return <SessionPanel sheet={sheet} column={column} onClose={onClose} />;
  if (!cell || !exercise) return null;
  const shared = { sheet, column, exercise, cell, onClose };
  if (open === 'cell') return <CellPanel {...shared} onAdjust={onOpen} onWrite={onWrite} />;
  return open === 'hold' || open === 'back off' || open === 'keep' || open === 'leave out' ? (
    <AdjustDialog {...shared} change={open} />
  ) : null;
};
