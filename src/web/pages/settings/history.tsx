import { dayFromIso } from '#units/day.ts';
import type { HouseHistory } from '#contract/windows/settings-window.ts';
import { dateWithYear } from '../../parts/parts.ts';
import styles from './settings-page.module.css';

interface HistoryProps {
  readonly history: HouseHistory;
  /** A field as the log names it, in words. */
  readonly wordOf: (field: string) => string;
}

/** Every entry of a thing, the newest first: who, when, what of it changed and why. Nothing is ever gone. */
export const History = ({ history, wordOf }: HistoryProps) => (
  <ol className={styles['history']}>
    {history.map(({ fact, on, by, reason, changed }) => {
      const day = dayFromIso(on);
      return (
        <li key={fact}>
          <span className="soft">
            {day === null ? on : dateWithYear(day)}, {by}:
          </span>{' '}
          {changed.length === 0 ? 'entered' : changed.map(wordOf).join(', ')}
          {reason !== null && <span className="soft"> because {reason}</span>}
        </li>
      );
    })}
  </ol>
);
