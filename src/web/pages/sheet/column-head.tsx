import type { SheetColumn, SheetWindow } from '#contract/windows/sheet-window.ts';
import { dateInMonth, monthOf, shortDate } from '../../parts/dates.ts';
import { join } from '../../parts/join.ts';
import { todayColumn } from './grid-places.ts';
import styles from './sheet.module.css';

/** What became of a session, or what may become of it: one plain word. */
export const stateOf = ({ state, past, delivery, outcome, gaps }: SheetColumn): string => {
  if (delivery === 'recalled') return 'recalled';
  if (past && outcome && outcome !== 'none') return outcome;
  if (state === 'issued') return delivery ?? 'issued';
  if (state === 'planned') return gaps.length > 0 ? 'cannot be issued' : 'can be issued';
  return 'expected';
};

const dateOf = ({ columns }: SheetWindow, index: number): string => {
  const [column, before] = [columns[index], columns[index - 1]];
  if (!column) return '';
  return before && monthOf(before.day) === monthOf(column.day) ? dateInMonth(column.day) : shortDate(column.day);
};

export interface ColumnHeadProps {
  readonly sheet: SheetWindow;
  readonly index: number;
  readonly isCursor: boolean;
}

/** Date, mission day, title and state of a session; opens the session as a whole. */
export const ColumnHead = ({ sheet, index, isCursor }: ColumnHeadProps) => {
  const column = sheet.columns[index];
  if (!column) return null;
  const state = stateOf(column);
  return (
    <th
      scope="col"
      className={join(
        styles['head'],
        column.state === 'expected' && styles['expected'],
        index === todayColumn(sheet) && styles['today'],
      )}
      data-place={`0:${index}`}
      tabIndex={isCursor ? 0 : -1}
    >
      <span className={styles['date']}>{dateOf(sheet, index)}</span>
      <span>{column.missionDay}</span>
      <span>
        {column.title}
        {column.deload ? ', deload' : ''}
      </span>
      <span
        className={join(styles['state'], (state === 'recalled' || state === 'cannot be issued') && styles['warns'])}
      >
        {state}
      </span>
    </th>
  );
};
