import { memo } from 'react';
import type { SheetCell, SheetColumn, SheetWindow } from '#contract/windows/sheet-window.ts';
import { shortDate } from '../../parts/dates.ts';
import { join } from '../../parts/join.ts';
import { stateOf } from './column-head.tsx';
import { todayColumn } from './grid-places.ts';
import styles from './sheet.module.css';

const groundOf = (column: SheetColumn, cell: SheetCell | null): string | undefined => {
  if (!cell) return undefined;
  if (column.outcome === 'called off') return styles['calledoff'];
  if (column.outcome === 'not heard') return styles['notheard'];
  if (column.outcome === 'missed') return styles['missed'];
  if (column.state === 'expected') return styles['expected'];
  if (column.state === 'planned' && column.gaps.length === 0) return styles['canissue'];
  return undefined;
};

const Hurt = ({ hurt }: { readonly hurt: SheetCell['hurt'] }) =>
  hurt ? (
    <span className={styles['hurt']} title={`${hurt.site}, discomfort ${hurt.score} of 10`}>
      {' hurt '}
      {hurt.score}
      {hurt.side ? ` ${hurt.side === 'left' ? 'L' : 'R'}` : ''}
      <span className="unseen"> of 10, {hurt.site}</span>
    </span>
  ) : null;

const Note = ({ note }: { readonly note: SheetCell['note'] }) =>
  note ? (
    <span className={join(styles['note'], !note.read && styles['unread'])} title={note.text}>
      {note.read ? '○' : '●'}
      <span className="unseen">{note.read ? 'note, read' : 'unread note'}</span>
    </span>
  ) : null;

/** What stands in the place of results where there are none. */
const instead = ({ outcome, calledOff, past }: SheetColumn): string | null => {
  if (outcome === 'called off') return `called off${calledOff ? `, ${calledOff}` : ''}`;
  if (past && (outcome === 'not heard' || outcome === 'missed')) return outcome;
  return null;
};

const Instead = ({ column }: { readonly column: SheetColumn }) => {
  const says = instead(column);
  return says ? (
    <span className={styles['instead']} title={says}>
      {says}
    </span>
  ) : null;
};

export const Content = ({ column, cell }: { readonly column: SheetColumn; readonly cell: SheetCell }) => (
  <>
    <Note note={cell.note} />
    <span className={join(styles['planned'], cell.isWritten && styles['written'])}>
      {cell.planned}
      {cell.isWritten ? <span className="unseen">, written for this day</span> : null}
      {cell.raise && !column.past ? (
        <span className={styles['raised']} title="goes up: signed when issued">
          {' '}
          ↑
        </span>
      ) : null}
      {cell.limits.some(({ binds }) => binds) ? (
        <span className={styles['capped']} title={cell.limits.find(({ binds }) => binds)?.says}>
          {' '}
          ⊤
        </span>
      ) : null}
    </span>
    {cell.done === null ? (
      <Instead column={column} />
    ) : (
      <span className={join(styles['done'], cell.differs && styles['differs'])}>
        <span className="unseen">, done </span>
        {cell.done}
      </span>
    )}
    <Hurt hurt={cell.hurt} />
  </>
);

export interface GridCellProps {
  readonly sheet: SheetWindow;
  readonly column: SheetColumn;
  readonly index: number;
  readonly row: number;
  readonly cell: SheetCell | null;
  readonly name: string;
  readonly isCursor: boolean;
  /** Within a range of several cells. */
  readonly isChosen: boolean;
}

/** Planned over done. Kept as drawn while a key moves the cursor elsewhere: a sheet has thousands. */
export const GridCell = memo(({ sheet, column, index, row, cell, name, isCursor, isChosen }: GridCellProps) => (
  <td
    data-place={`${row}:${index}`}
    tabIndex={isCursor ? 0 : -1}
    aria-selected={isChosen}
    className={join(
      styles['cell'],
      groundOf(column, cell),
      index === todayColumn(sheet) && styles['today'],
      isChosen && styles['chosen'],
    )}
  >
    <span className="unseen">
      {name}, {shortDate(column.day)}, {stateOf(column)}:{' '}
    </span>
    {cell ? <Content column={column} cell={cell} /> : <span className="unseen">not in this session</span>}
  </td>
));
