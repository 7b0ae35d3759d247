import { useState } from 'react';
import type { SheetWindow } from '#contract/windows/sheet-window.ts';
import { Button } from '../../parts/button.tsx';
import { useShortcut } from '../../parts/shortcut.ts';
import { CopyTable } from './copy-table.tsx';
import { firstPlace, standingAt, type Place, type Standing } from './grid-places.ts';
import { Opened, type Open } from './opened.tsx';
import { focusCell, SheetGrid } from './sheet-grid.tsx';
import { CannotWrite, WriteLine, type WriteLineProps } from './write-line.tsx';
import styles from './panel.module.css';

const Legend = ({ unit }: { readonly unit: string }) => (
  <p className={styles['legend']}>
    Loads in {unit} as the machine shows them. Planned over done; after the point, effort as RPE; ● unread note, ○ read;
    hurt: discomfort of 10, with its side. Pale blue can be issued; grey is only expected; hatched was called off;
    barred was not heard. ↑ goes up when it is signed; ⊤ is held by a limit.{' '}
    <span className="on-screen">
      Arrows move, <kbd>Enter</kbd> opens, a digit or <kbd>E</kbd> writes, <kbd>H</kbd> hold, <kbd>B</kbd> back off 10
      %, <kbd>X</kbd> leave out, <kbd>I</kbd> issue, <kbd>N</kbd> next person.
    </span>
  </p>
);

/** The grid with its keys, and whatever was opened from it. */
export const Sheet = ({ sheet }: { readonly sheet: SheetWindow }) => {
  const [place, setPlace] = useState<Place>(() => firstPlace(sheet));
  const [open, setOpen] = useState<Open>(null);
  const [typed, setTyped] = useState<string | null>(null);
  const standing = standingAt(sheet, place);
  const adjust = (change: 'hold' | 'back off' | 'leave out'): void => (standing?.cell ? setOpen(change) : undefined);
  const write = (digit: string | null): void => {
    if (!standing?.cell) return;
    setTyped(digit);
    setOpen('write');
  };
  const move = (to: Place): void => {
    setPlace(to);
    if (open === 'write') setOpen(null);
  };
  useShortcut('e', () => write(null));
  useShortcut('x', () => adjust('leave out'));
  useShortcut('h', () => adjust('hold'));
  useShortcut('b', () => adjust('back off'));
  useShortcut('i', () => setOpen('issue'));
  return (
    <>
      {open === 'write' && standing ? (
        <Writing sheet={sheet} standing={standing} typed={typed} onClose={() => closeAt(place, setOpen)} />
      ) : null}
      <SheetGrid sheet={sheet} place={place} onMove={move} onOpen={() => setOpen('cell')} onType={write} />
      <div className={`${styles['tools'] ?? ''} on-screen`}>
        <Button kind="main" onPress={() => setOpen('issue')}>
          Issue cards
        </Button>
        <CopyTable sheet={sheet} />
        <Button onPress={() => window.print()}>Print the sheet</Button>
      </div>
      <Legend unit={sheet.unit} />
      <Opened open={open} sheet={sheet} standing={standing} onOpen={setOpen} onWrite={() => write(null)} />
    </>
  );
};

/** The keyboard goes back to the cell that was written. */
const closeAt = (place: Place, setOpen: (open: Open) => void): void => {
  setOpen(null);
  focusCell(place);
};

interface WritingProps extends Pick<WriteLineProps, 'sheet' | 'typed' | 'onClose'> {
  readonly standing: Standing;
}

const Writing = ({ standing: { column, cell, exercise }, ...shared }: WritingProps) =>
  cell?.line && exercise ? (
    <WriteLine key={`${column.day} ${cell.track}`} column={column} exercise={exercise} cell={cell} {...shared} />
  ) : (
    <CannotWrite column={column} />
  );
