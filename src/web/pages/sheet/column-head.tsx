import type { SheetColumn } from '#contract/windows/sheet-window.ts';
import { shortDate } from '../../parts/dates.ts';
import { join } from '../../parts/join.ts';
import { sessionState } from '../../parts/session-state.ts';
import styles from './sheet.module.css';

/** "day 23" is enough where every column of the page is a flight day; the whole of it is read out. */
const MissionDay = ({ says }: { readonly says: string }) =>
  says.startsWith('flight ') ? (
    <span className={styles['missionday']}>
      <span className="unseen">flight </span>
      {says.slice('flight '.length)}
    </span>
  ) : (
    <span className={styles['missionday']}>{says}</span>
  );

export interface ColumnHeadProps {
  readonly column: SheetColumn;
  readonly place: string;
  readonly isToday: boolean;
  readonly isCursor: boolean;
}

/** Date, mission day, state and minutes of a session; opens the session as a whole. */
export const ColumnHead = ({ column, place, isToday, isCursor }: ColumnHeadProps) => {
  const state = sessionState(column);
  const says = [state, ...(column.deload ? ['deload'] : []), ...(column.calledOff ? [column.calledOff] : [])].join(
    ', ',
  );
  return (
    <th
      scope="col"
      className={join(styles['head'], column.state === 'expected' && styles['expected'], isToday && styles['today'])}
      data-place={place}
      tabIndex={isCursor ? 0 : -1}
    >
      <span className={styles['when']}>
        <span className={styles['date']}>{shortDate(column.day)}</span> <MissionDay says={column.missionDay} />
      </span>
      <span className="unseen">{column.title}, </span>
      <span className={styles['fate']}>
        <span
          className={join(styles['state'], (state === 'recalled' || state === 'cannot be issued') && styles['warns'])}
          title={says}
        >
          {says}
        </span>{' '}
        <span
          className={join(styles['minutes'], column.minutes > column.blockMinutes && styles['warns'])}
          title={`${column.minutes} of ${column.blockMinutes} minutes`}
        >
          <span className="unseen">{column.minutes} of </span>
          <span aria-hidden="true">{column.minutes}/</span>
          {column.blockMinutes} min
        </span>
      </span>
    </th>
  );
};
