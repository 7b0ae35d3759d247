import { useEffect, useMemo, useState } from 'react';
import { useSearchParams } from 'wouter';
import type { SheetWindow } from '#contract/windows/sheet-window.ts';
import { broughtWithin, isOnePlace, onePlace, type Place } from '../../parts/block/selection.ts';
import { Button } from '../../parts/button.tsx';
import { CopyButton } from '../../parts/copy-button.tsx';
import { useShortcut } from '../../parts/shortcut.ts';
import { CellsDialog } from './cells-dialog.tsx';
import { sheetAsText } from './copy-text.ts';
import { boundsOf, firstPlace, placeOfLift, standingAt, type Standing } from './grid-places.ts';
import { Opened, type Open } from './opened.tsx';
import { SheetGrid } from './sheet-grid.tsx';
import { stillDone } from './sheet-blocks.ts';
import { SheetLegend } from './sheet-legend.tsx';
import { StripLines } from './strip-lines.tsx';
import { useEdits, type SheetEdits } from './use-edits.ts';
import { focusCell, startAtCell, useRange, type Range } from './use-range.ts';
import { CannotWrite, WriteLine } from './write-line.tsx';
import styles from './panel.module.css';

interface Start {
  readonly place: Place;
  /** Did the page have to open what comes no more? */
  readonly showsOver: boolean;
}

/** The keyboard begins at the next session; opened from the page of one lift, at that lift. */
const useStart = (whole: SheetWindow, short: SheetWindow): Start => {
  const [search] = useSearchParams();
  const lift = search.get('lift');
  const [start] = useState<Start>(() => {
    const [shown, hidden] = lift === null ? [] : [placeOfLift(short, lift), placeOfLift(whole, lift)];
    return shown || !hidden
      ? { place: shown ?? firstPlace(short), showsOver: false }
      : { place: hidden, showsOver: true };
  });
  useEffect(() => startAtCell(start.place), [start]);
  return start;
};

interface Shown {
  readonly sheet: SheetWindow;
  readonly start: Place;
  /** What comes no more, in words. */
  readonly over: readonly string[];
  readonly showsOver: boolean;
  /** Shows it, or folds it away; the answer is where the cursor goes. */
  readonly turn: () => Place;
}

/** What of the sheet is shown: what comes no more is folded away, unless the page was opened at it. */
const useShown = (whole: SheetWindow): Shown => {
  const { sheet: short, over } = useMemo(() => stillDone(whole), [whole]);
  const start = useStart(whole, short);
  const [showsOver, setShowsOver] = useState(start.showsOver);
  const turn = (): Place => {
    setShowsOver(!showsOver);
    return firstPlace(showsOver ? short : whole);
  };
  return { sheet: showsOver ? whole : short, start: start.place, over, showsOver, turn };
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
export const Sheet = ({ sheet: whole }: { readonly sheet: SheetWindow }) => {
  const [open, setOpen] = useState<Open>(null);
  const [typed, setTyped] = useState<string | null>(null);
  const shown = useShown(whole);
  const { sheet } = shown;
  const [said, setSaid] = useState('');
  const range = useRange(
    shown.start,
    () => setOpen('cell'),
    () => {
      setSaid('');
      if (open === 'write') setOpen(null);
    },
    (anchor, towards) => broughtWithin(boundsOf(sheet, anchor), towards),
  );
  const { selection } = range;
  const edits = useEdits(sheet, whole, selection, setSaid);
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
      <Top sheet={whole} edits={edits} onIssue={() => setOpen('issue')} />
      <SheetGrid sheet={sheet} range={range} edits={edits} onOpen={() => setOpen('cell')} onType={write} />
      <div className={`${styles['below'] ?? ''} on-screen`}>
        <Over {...shown} onTurn={() => range.moveTo(onePlace(shown.turn()))} />
        <Copies sheet={whole} />
        <SheetLegend unit={sheet.unit} />
      </div>
      <output className={`${styles['said'] ?? ''} on-screen`}>{said}</output>
      <Opened
        open={edits.asking ? null : open}
        sheet={sheet}
        standing={standing}
        onOpen={setOpen}
        onWrite={() => write(null)}
      />
      <Asked sheet={sheet} edits={edits} onWritten={range.letGo} />
    </>
  );
};

interface AskedProps {
  readonly sheet: SheetWindow;
  readonly edits: SheetEdits;
  readonly onWritten: () => void;
}

/** Several cells that wait to be signed. */
const Asked = ({ sheet, edits, onWritten }: AskedProps) =>
  edits.asking ? (
    <CellsDialog
      sheet={sheet}
      {...edits.asking}
      onClose={edits.leaveIt}
      onWritten={(before) => {
        edits.written({ before, after: edits.asking?.chosen.cells ?? [] });
        onWritten();
      }}
    />
  ) : null;

const Over = ({ over, showsOver, onTurn }: Pick<Shown, 'over' | 'showsOver'> & { readonly onTurn: () => void }) =>
  over.length === 0 ? null : (
    <p className={styles['over']}>
      <Button kind="link" onPress={onTurn}>
        {showsOver ? 'Fold away what comes no more' : 'Show what comes no more'}
      </Button>
      : {over.join(', ')}
    </p>
  );

interface ToolsProps {
  readonly sheet: SheetWindow;
  readonly edits: SheetEdits;
  readonly onIssue: () => void;
}

/** The sheet elsewhere: in a spreadsheet, on paper. */
const Copies = ({ sheet }: { readonly sheet: SheetWindow }) => (
  <div className={styles['tools']}>
    <CopyButton kind="link" text={() => sheetAsText(sheet)}>
      Copy as a table
    </CopyButton>
    <Button kind="link" onPress={() => window.print()}>
      Print the sheet
    </Button>
  </div>
);

/** What holds for all sessions, and what is done with them. */
const Top = (props: ToolsProps) => (
  <div className={styles['top']}>
    <StripLines sheet={props.sheet} />
    <Tools {...props} />
  </div>
);

const Tools = ({ edits, onIssue }: ToolsProps) => (
  <div className={`${styles['tools'] ?? ''} on-screen`}>
    <Button kind="main" onPress={onIssue}>
      Issue cards
    </Button>
    <Button kind="link" onPress={edits.copyWeek}>
      Copy week on
    </Button>
    <Button kind="link" onPress={edits.undo}>
      Take back
    </Button>
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
