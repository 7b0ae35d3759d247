import { problemsAt } from '../../parts/field.tsx';
import type { Problem } from '#contract/problem.ts';
import styles from './settings-page.module.css';

interface WarningBoxProps {
  readonly warnings: readonly string[];
  readonly isSeen: boolean;
  readonly onSeen: (isSeen: boolean) => void;
  readonly problems: readonly Problem[];
}

/** What a change entails, to be ticked before it can be signed. */
export function WarningBox({ warnings, isSeen, onSeen, problems }: WarningBoxProps) {
  return (
    <div aria-live="polite">
      {warnings.length > 0 && (
        <div className={styles['warning']}>
          <ul>
            {warnings.map((warning) => (
              <li key={warning}>{warning}</li>
            ))}
          </ul>
          <label>
            <input type="checkbox" checked={isSeen} onChange={({ target }) => onSeen(target.checked)} /> I have seen
            this; change it nevertheless
          </label>
          {problemsAt(problems, 'warnings').map(({ what, why, whatToDo }) => (
            <div key={what} className={styles['wrong']}>
              <strong>{what}</strong> {why} {whatToDo}
            </div>
          ))}
        </div>
      )}
    </div>
  );
}
