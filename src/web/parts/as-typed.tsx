import type { Problem } from '#contract/problem.ts';
import styles from './as-typed.module.css';

interface AsTypedProps {
  readonly problems: readonly Problem[];
  readonly sure: boolean;
  readonly onSure: (sure: boolean) => void;
}

/** Where something is only unlikely, whoever typed it may say that it is right; what cannot be is never taken. */
export const AsTyped = ({ problems, sure, onSure }: AsTypedProps) =>
  sure || problems.some(({ mayStand }) => mayStand === true) ? (
    <label className={styles['tick']}>
      <input type="checkbox" checked={sure} onChange={(event) => onSure(event.target.checked)} />
      What was asked about is right as typed
    </label>
  ) : null;
