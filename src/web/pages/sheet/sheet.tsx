import { useEffect, useState } from 'react';
import { useSearchParams } from 'wouter';
import type { SheetWindow } from '#contract/windows/sheet-window.ts';
import { isOnePlace, type Place } from '../../parts/block/selection.ts';
import { Button } from '../../parts/button.tsx';
import { useShortcut } from '../../parts/shortcut.ts';
import { CellsDialog } from './cells-dialog.tsx';
import { CopyTable } from './copy-table.tsx';
import { firstPlace, placeOfLift, standingAt, type Standing } from './grid-places.ts';
import { Opened, type Open } from './opened.tsx';
import { SheetGrid } from './sheet-grid.tsx';
import { SheetLegend } from './sheet-legend.tsx';
import { useEdits, type SheetEdits } from './use-edits.ts';
import { focusCell, startAtCell, useRange, type Range } from './use-range.ts';
import { CannotWrite, WriteLine } from './write-line.tsx';
import styles from './panel.module.css';

/** The keyboard begins at the next session; opened from the page of one lift, at that lift. */
const useStart = (sheet: SheetWindow): Place => {
  const [search] = useSearchParams();
  const lift = search.get('lift');
  const place = (lift === null ? null : placeOfLift(sheet, lift)) ?? firstPlace(sheet);
  const [start] = useState(place);
  useEffect(() => startAtCell(start), [start]);
  return start;
};

/** The keys of the page, wherever the keyboard is. */
const useSheetKeys = (
  { selection }: Range,
  standing: Standing | null,
  edits: SheetEdits,
  setOpen: (open: Open) => void,
  write: () => void,
  say: (says: string) => void,
): void => {
  const adjust = (change: 'hold' | 'back off' | 'keep' | 'leave out'): void =>
    standing?.cell ? setOpen(change) : undefined;
  useShortcut('e', write);
  const leaveOut = (): void => {
    if (!isOnePlace(selection)) edits.leaveOut();
    else if (standing?.cell?.line === null) say('What is issued, past or left out already stands as it is.');
    else adjust('leave out');
  };
  useShortcut('x', leaveOut);
  useShortcut('h', () => adjust('hold'));
  useShortcut('b', () => adjust('back off'));
  useShortcut('k', () => adjust('keep'));
  useShortcut('w', edits.copyWeek);
  useShortcut('i', () => setOpen('issue'));
};

/** The grid with its keys, and whatever was opened from it. */
export const Sheet = ({ sheet }: { readonly sheet: SheetWindow }) => {
  const [open, setOpen] = useState<Open>(null);
  const [typed, setTyped] = useState<string | null>(null);
  const start = useStart(sheet);
  const [said, setSaid] = useState('');
  const range = useRange(
    start,
    () => setOpen('cell'),
    () => {
      setSaid('');
      if (open === 'write') setOpen(null);
    },
  );
  const { selection } = range;
  const edits = useEdits(sheet, selection, setSaid);
  const standing = standingAt(sheet, selection.cursor);
  const write = (digit: string | null): void => {
    if (!standing?.cell) {
      setSaid('That session does not hold this lift. Ctrl with an arrow goes to the next one that does.');
      return;
    }
    setTyped(digit);
    setOpen('write');
  };
  useSheetKeys(range, standing, edits, setOpen, () => write(null), setSaid);
  const leave = (): void => {
    setOpen(null);
    focusCell(selection.cursor);
  };
  return (
    <>
      {open === 'write' && standing ? (
        <Writing sheet={sheet} standing={standing} typed={typed} edits={edits} onClose={leave} />
      ) : null}
      <SheetGrid sheet={sheet} range={range} edits={edits} onOpen={() => setOpen('cell')} onType={write} />
      <Tools sheet={sheet} edits={edits} onIssue={() => setOpen('issue')} />
      <output className={`${styles['said'] ?? ''} on-screen`}>{said}</output>
      <SheetLegend unit={sheet.unit} />
      <Opened
        open={edits.asking ? null : open}
        sheet={sheet}
        standing={standing}
        onOpen={setOpen}
        onWrite={() => write(null)}
      />
      {edits.asking ? (
        <CellsDialog
          sheet={sheet}
          {...edits.asking}
          onClose={edits.leaveIt}
          onWritten={(before) => {
            edits.written({ before, after: edits.asking?.chosen.cells ?? [] });
            range.letGo();
          }}
        />
      ) : null}
    </>
  );
};

interface ToolsProps {
  readonly sheet: SheetWindow;
  readonly edits: SheetEdits;
  readonly onIssue: () => void;
}

const Tools = ({ sheet, edits, onIssue }: ToolsProps) => (
  <div className={`${styles['tools'] ?? ''} on-screen`}>
    <Button kind="main" onPress={onIssue}>
      Issue cards
    </Button>
    <Button onPress={edits.copyWeek}>Copy week on</Button>
    <Button onPress={edits.undo}>Take back</Button>
    <CopyTable sheet={sheet} />
    <Button onPress={() => window.print()}>Print the sheet</Button>
  </div>
);

interface WritingProps {
  readonly sheet: SheetWindow;
  readonly standing: Standing;
  readonly typed: string | null;
  readonly edits: SheetEdits;
  readonly onClose: () => void;
}

const Writing = ({ sheet, standing: { column, cell, exercise }, typed, edits, onClose }: WritingProps) =>
  cell && cell.line !== null && exercise ? (
    <WriteLine
      key={`${column.day} ${cell.track}`}
      person={sheet.person.id}
      day={column.day}
      name={exercise.name}
      cell={cell}
      typed={typed}
      onClose={onClose}
      onWritten={(before, after) => {
        if (before) edits.written({ before, after });
        onClose();
      }}
    />
  ) : (
    <CannotWrite column={column} />
  );
