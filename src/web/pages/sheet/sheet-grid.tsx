import { Fragment, useEffect, useRef, type KeyboardEvent } from 'react';
import type { SheetRow, SheetWindow } from '#contract/windows/sheet-window.ts';
import { ColumnHead } from './column-head.tsx';
import { GridCell } from './grid-cell.tsx';
import { placeAfter, rowsOf, todayColumn, type Place } from './grid-places.ts';
import { StripRows } from './strip-rows.tsx';
import styles from './sheet.module.css';

export interface SheetGridProps {
  readonly sheet: SheetWindow;
  readonly place: Place;
  readonly onMove: (place: Place) => void;
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
}: Pick<SheetGridProps, 'sheet' | 'place'> & {
  readonly row: SheetRow;
  readonly at: number;
}) => (
  <tr>
    <th scope="row" className={styles['exercise']}>
      {row.name}
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
      />
    ))}
    <Margin row={row} />
  </tr>
);

const Groups = ({ sheet, place }: Pick<SheetGridProps, 'sheet' | 'place'>) => {
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

/** Gives the keyboard back to a cell after something that was opened from it. */
export const focusCell = ({ row, column }: Place): void =>
  document.querySelector<HTMLElement>(`[data-place="${row}:${column}"]`)?.focus();

const placeOf = (target: EventTarget): Place | null => {
  const cell = target instanceof Element ? target.closest('[data-place]') : null;
  const [row, column] = (cell?.getAttribute('data-place') ?? '').split(':').map(Number);
  return row === undefined || column === undefined || Number.isNaN(row) ? null : { row, column };
};

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

/** What a key means on the grid: open, a digit to write with, a place to go to, or nothing. */
const meaningOf = (sheet: SheetWindow, place: Place, event: KeyboardEvent): Place | string | null => {
  if (event.key === 'Enter') return 'open';
  if (event.ctrlKey || event.metaKey || event.altKey) return null;
  return /^\d$/.test(event.key) ? event.key : placeAfter(sheet, place, event.key);
};

/** One tab stop; arrows move the cursor, Enter or a click opens what stands there. */
export const SheetGrid = ({ sheet, place, onMove, onOpen, onType }: SheetGridProps) => {
  const grid = useTodayInView(sheet);
  const onKeyDown = (event: KeyboardEvent): void => {
    const meant = meaningOf(sheet, place, event);
    if (meant === null) return;
    event.preventDefault();
    if (meant === 'open') onOpen();
    else if (typeof meant === 'string') onType(meant);
    else {
      onMove(meant);
      cellAt(grid.current, meant)?.focus();
    }
  };
  const take = (target: EventTarget, opens: boolean): void => {
    const taken = placeOf(target);
    if (!taken) return;
    onMove(taken);
    if (opens) onOpen();
  };
  return (
    <div className={styles['frame']}>
      {/* A table with one tab stop, moved by arrows, is what the role "grid" means. */}
      <table
        role="grid" // oxlint-disable-line jsx-a11y/no-noninteractive-element-to-interactive-role -- as above
        aria-label={`Sheet of ${sheet.person.name}`}
        className={styles['grid']}
        ref={grid}
        onKeyDown={onKeyDown}
        onFocus={(event) => take(event.target, false)}
        onClick={(event) => take(event.target, true)}
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
          <Groups sheet={sheet} place={place} />
        </tbody>
      </table>
    </div>
  );
};
