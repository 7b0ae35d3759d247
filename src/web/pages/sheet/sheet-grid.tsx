import { Fragment, useEffect, useRef, type KeyboardEvent } from 'react';
import { Link } from 'wouter';
import type { SheetRow, SheetWindow } from '#contract/windows/sheet-window.ts';
import {
  blockOf,
  extendedTo,
  holds,
  isOnePlace,
  onePlace,
  selectionAfter,
  type Block,
  type Place,
  type PressedKey,
  type Selection,
} from '../../parts/block/selection.ts';
import { ColumnHead } from './column-head.tsx';
import { GridCell } from './grid-cell.tsx';
import { boundsOf, nextHeld, rowsOf, todayColumn } from './grid-places.ts';
import { StripRows } from './strip-rows.tsx';
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

const Margin = ({ row: { lastHere, estimate, rule } }: { readonly row: SheetRow }) => (
  <td className={styles['margin']}>
    {[lastHere, estimate].filter((says) => says !== null).join(' · ') || <span className="faint">–</span>}
    {rule ? (
      <div className={styles['signedrule']} title={rule}>
        {rule}
      </div>
    ) : null}
  </td>
);

const ExerciseRow = ({
  sheet,
  row,
  at,
  place,
  block,
}: Where & {
  readonly row: SheetRow;
  readonly at: number;
}) => (
  <tr>
    <th scope="row" className={styles['exercise']}>
      <Link href={`/lift/${row.exercise}`} title={`${row.name}, all people`}>
        {row.name}
      </Link>
    </th>
    {sheet.columns.map((column, index) => (
      <GridCell
        key={column.day}
        sheet={sheet}
        column={column}
        index={index}
        row={at}
        cell={row.cells[index] ?? null}
        name={row.name}
        isCursor={place.row === at && place.column === index}
        isChosen={block !== null && holds(block, { row: at, column: index })}
      />
    ))}
    <Margin row={row} />
  </tr>
);

interface Where {
  readonly sheet: SheetWindow;
  readonly place: Place;
  /** The range, where it is more than one cell. */
  readonly block: Block | null;
}

const Groups = ({ sheet, place, block }: Where) => {
  const rows = rowsOf(sheet);
  return sheet.groups.map(({ label, rows: inGroup, leftOut }) => (
    <Fragment key={label}>
      <tr className={styles['group']}>
        <th scope="rowgroup" colSpan={sheet.columns.length + 2}>
          <span>{label}</span>
        </th>
      </tr>
      {inGroup.map((row, at) => (
        <ExerciseRow // A lift may stand in a session twice, on two tracks.
          key={`${at} ${row.exercise}`}
          sheet={sheet}
          row={row}
          at={rows.indexOf(row) + 1}
          place={place}
          block={block}
        />
      ))}
      {leftOut.map((says) => (
        <tr key={says}>
          <td className={styles['leftout']} colSpan={sheet.columns.length + 2}>
            {says}
          </td>
        </tr>
      ))}
    </Fragment>
  ));
};

const cellAt = (grid: HTMLElement | null, { row, column }: Place): HTMLElement | null =>
  grid?.querySelector<HTMLElement>(`[data-place="${row}:${column}"]`) ?? null;

/** Of the width, what is past when the page opens. */
const PAST_SHARE = 0.3;

/** Opens at today: four weeks back would fill a narrow screen. */
const useTodayInView = (sheet: SheetWindow) => {
  const grid = useRef<HTMLTableElement>(null);
  const today = todayColumn(sheet);
  useEffect(() => {
    const frame = grid.current?.parentElement;
    const head = cellAt(grid.current, { row: 0, column: today });
    if (!frame || !head || frame.scrollWidth <= frame.clientWidth) return;
    const shown = Math.max(1, Math.floor((frame.clientWidth * PAST_SHARE) / head.offsetWidth));
    const first = cellAt(grid.current, { row: 0, column: Math.max(0, today - shown) });
    frame.scrollLeft = first ? first.offsetLeft - (grid.current?.querySelector('th')?.offsetWidth ?? 0) : 0;
  }, [today]);
  return grid;
};

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

/** With Control an arrow goes to the next cell that is in a session, as in a spreadsheet; then to the end. */
const movedBy = (sheet: SheetWindow, selection: Selection, pressed: PressedKey): Selection | null => {
  const held = pressed.control ? nextHeld(sheet, selection.cursor, pressed.key) : null;
  if (held) return pressed.shift ? extendedTo(selection, held) : onePlace(held);
  return selectionAfter(selection, boundsOf(sheet), pressed);
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

/** One tab stop; arrows move the cursor and with Shift the range, Enter or a click opens what stands there. */
export const SheetGrid = (props: SheetGridProps) => {
  const { sheet, range, edits } = props;
  const place = range.selection.cursor;
  const block = isOnePlace(range.selection) ? null : blockOf(range.selection);
  const grid = useTodayInView(sheet);
  const onKeyDown = useKeys(props);
  return (
    <div className={styles['frame']}>
      {/* A table with one tab stop, moved by arrows, is what the role "grid" means. */}
      <table
        role="grid" // oxlint-disable-line jsx-a11y/no-noninteractive-element-to-interactive-role -- as above
        aria-label={`Sheet of ${sheet.person.name}`}
        aria-multiselectable
        className={styles['grid']}
        ref={grid}
        onKeyDown={onKeyDown}
        onCopy={edits.onCopy}
        onPaste={edits.onPaste}
        {...range.pointing}
      >
        <thead>
          <tr>
            <th className={styles['corner']}>
              <span className="unseen">exercise</span>
            </th>
            {sheet.columns.map((column, index) => (
              <ColumnHead
                key={column.day}
                sheet={sheet}
                index={index}
                isCursor={place.row === 0 && place.column === index}
              />
            ))}
            <th scope="col" className={styles['marginhead']}>
              last here · estimate · signed rule
            </th>
          </tr>
        </thead>
        <tbody>
          <StripRows sheet={sheet} />
          <Groups sheet={sheet} place={place} block={block} />
        </tbody>
      </table>
    </div>
  );
};
