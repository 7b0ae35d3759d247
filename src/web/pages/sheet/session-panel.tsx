import { Link } from 'wouter';
import type { SheetColumn, SheetWindow } from '#contract/windows/sheet-window.ts';
import { longDate } from '../../parts/dates.ts';
import { Dialog } from '../../parts/dialog.tsx';
import { sessionState } from '../../parts/session-state.ts';
import { itemsOf } from './grid-places.ts';
import { SessionRecord } from './session-record.tsx';
import styles from './panel.module.css';

export interface SessionPanelProps {
  readonly sheet: SheetWindow;
  readonly column: SheetColumn;
  readonly onClose: () => void;
}

/** One session as a whole. */
export const SessionPanel = ({ sheet, column, onClose }: SessionPanelProps) => {
  const cardPath = column.card ? `/cards/${column.card}` : `/people/${sheet.person.id}/cards/${column.day}`;
  return (
    <Dialog title={`${column.title}, ${longDate(column.day)}`} isOpen onClose={onClose} place="side">
      <p className="soft">
        {column.missionDay} · {sessionState(column)} · {Math.round(column.minutes)} of {column.blockMinutes} minutes
        {column.code ? ` · card ${column.code}` : ''} · <Link href={cardPath}>the whole card</Link>
        {column.past ? null : (
          <>
            {' · '}
            <Link href={`/people/${sheet.person.id}/re-make/${column.day}`}>make it anew for what is there</Link>
          </>
        )}
      </p>
      {column.gaps.map((gap) => (
        <p className={styles['gap']} key={gap}>
          {gap}
        </p>
      ))}
      <ul className={styles['items']}>
        {itemsOf(sheet, column).map(({ name, cell }) => (
          <li key={cell.item}>
            {name} <strong>{cell.planned}</strong>
            {cell.done === null ? null : <span className="soft"> · done {cell.done}</span>}
          </li>
        ))}
      </ul>
      {column.card ? <SessionRecord sheet={sheet} column={column} item={null} /> : null}
    </Dialog>
  );
};
