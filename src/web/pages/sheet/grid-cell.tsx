import { memo } from 'react';
import type { SheetCell, SheetColumn } from '#contract/windows/sheet-window.ts';
import { shortDate } from '../../parts/dates.ts';
import { join } from '../../parts/join.ts';
import { sessionState } from '../../parts/session-state.ts';
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

/** In few words to the eye, in full to whoever points at it or has it read out. */
const InFewWords = ({ few, full }: { readonly few: string; readonly full: string }) =>
  few === full ? (
    <Parts of={few} />
  ) : (
    <>
      <span aria-hidden="true">
        <Parts of={few} />
      </span>
      <span className="unseen">{full}</span>
    </>
  );

/** What belongs together does not part at the end of a line. */
const Parts = ({ of }: { readonly of: string }) =>
  of.split(' · ').map((part, place, { length }) => (
    <span key={part}>
      <span className={styles['part']}>{part}</span>
      {place < length - 1 ? ' · ' : ''}
    </span>
  ));

const Marks = ({ column, cell }: Omit<ContentProps, 'unit'>) => (
  <>
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
  </>
);

interface ContentProps {
  readonly column: SheetColumn;
  readonly cell: SheetCell;
  /** In which the loads of the sheet are. */
  readonly unit: string;
}

/** A load in another unit than the rest of the sheet says so: somebody trains at another machine. */
const Unit = ({ cell, usual }: { readonly cell: SheetCell; readonly usual: string }) =>
  cell.kind === 'lift' && cell.unit !== '' && cell.unit !== usual && cell.sets.length > 0 ? (
    <span className={styles['unit']}> {cell.unit}</span>
  ) : null;

/** Planned over done, in few words on the screen. What became of a session stands in its head, once. */
export const Content = ({ column, cell, unit, isInFull = false }: ContentProps & { readonly isInFull?: boolean }) => (
  <>
    <Note note={cell.note} />
    <span className={join(styles['planned'], cell.isWritten && styles['written'])} title={cell.planned}>
      <InFewWords few={isInFull ? cell.planned : cell.short.planned} full={cell.planned} />
      <Unit cell={cell} usual={unit} />
      <Marks column={column} cell={cell} />
    </span>
    {cell.done === null ? null : (
      <span className={join(styles['done'], cell.differs && styles['differs'])} title={cell.done}>
        <span className="unseen">, done </span>
        <InFewWords few={isInFull ? cell.done : (cell.short.done ?? cell.done)} full={cell.done} />
      </span>
    )}
    <Hurt hurt={cell.hurt} />
  </>
);

export interface GridCellProps {
  readonly column: SheetColumn;
  readonly place: string;
  readonly cell: SheetCell | null;
  readonly name: string;
  readonly unit: string;
  readonly isToday: boolean;
  readonly isCursor: boolean;
  /** Within a range of several cells. */
  readonly isChosen: boolean;
}

/** Planned over done. Kept as drawn while a key moves the cursor elsewhere: a sheet has hundreds. */
export const GridCell = memo(({ column, place, cell, name, unit, isToday, isCursor, isChosen }: GridCellProps) => (
  <td
    data-place={place}
    tabIndex={isCursor ? 0 : -1}
    aria-selected={isChosen}
    className={join(styles['cell'], groundOf(column, cell), isToday && styles['today'], isChosen && styles['chosen'])}
  >
    <span className={styles['within']}>
      <span className="unseen">
        {name}, {shortDate(column.day)}, {sessionState(column)}:{' '}
      </span>
      {cell ? <Content column={column} cell={cell} unit={unit} /> : <span className="unseen">not in this session</span>}
    </span>
  </td>
));
