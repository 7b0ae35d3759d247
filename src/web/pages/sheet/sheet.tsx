import { useState } from 'react';
import type { SheetWindow } from '#contract/windows/sheet-window.ts';
import { Button } from '../../parts/button.tsx';
import { useShortcut } from '../../parts/shortcut.ts';
import { AdjustDialog } from './adjust-dialog.tsx';
import { CellPanel } from './cell-panel.tsx';
import { CopyTable } from './copy-table.tsx';
import { firstPlace, standingAt, type Place } from './grid-places.ts';
import { IssueDialog } from './issue-dialog.tsx';
import { SessionPanel } from './session-panel.tsx';
import { SheetGrid } from './sheet-grid.tsx';
import styles from './panel.module.css';

type Open = 'cell' | 'hold' | 'back off' | 'issue' | null;

const Legend = ({ unit }: { readonly unit: string }) => (
  <p className={styles['legend']}>
    Loads in {unit} as the machine shows them. Planned over done; after the point, effort as RPE; ● unread note, ○ read;
    hurt: discomfort of 10, with its side. Pale blue can be issued; grey is only expected; hatched was called off;
    barred was not heard. ↑ goes up when it is signed; ⊤ is held by a limit.{' '}
    <span className="on-screen">
      Arrows move, <kbd>Enter</kbd> opens, <kbd>H</kbd> hold, <kbd>B</kbd> back off 10 %, <kbd>I</kbd> issue,{' '}
      <kbd>N</kbd> next person.
    </span>
  </p>
);

/** The grid with its keys, and whatever was opened from it. */
export const Sheet = ({ sheet }: { readonly sheet: SheetWindow }) => {
  const [place, setPlace] = useState<Place>(() => firstPlace(sheet));
  const [open, setOpen] = useState<Open>(null);
  const standing = standingAt(sheet, place);
  const close = (): void => setOpen(null);
  const adjust = (change: 'hold' | 'back off'): void => (standing?.cell ? setOpen(change) : undefined);
  useShortcut('h', () => adjust('hold'));
  useShortcut('b', () => adjust('back off'));
  useShortcut('i', () => setOpen('issue'));
  return (
    <>
      <SheetGrid sheet={sheet} place={place} onMove={setPlace} onOpen={() => setOpen('cell')} />
      <div className={`${styles['tools'] ?? ''} on-screen`}>
        <Button kind="main" onPress={() => setOpen('issue')}>
          Issue cards
        </Button>
        <CopyTable sheet={sheet} />
        <Button onPress={() => window.print()}>Print the sheet</Button>
      </div>
      <Legend unit={sheet.unit} />
      {open === 'issue' ? <IssueDialog sheet={sheet} onClose={close} /> : null}
      {open === 'cell' && standing?.cell && standing.exercise ? (
        <CellPanel
          sheet={sheet}
          column={standing.column}
          exercise={standing.exercise}
          cell={standing.cell}
          onClose={close}
          onAdjust={setOpen}
        />
      ) : null}
      {open === 'cell' && standing && !standing.cell ? (
        <SessionPanel sheet={sheet} column={standing.column} onClose={close} />
      ) : null}
      {(open === 'hold' || open === 'back off') && standing?.cell && standing.exercise ? (
        <AdjustDialog
          sheet={sheet}
          column={standing.column}
          exercise={standing.exercise}
          cell={standing.cell}
          change={open}
          onClose={close}
        />
      ) : null}
    </>
  );
};
