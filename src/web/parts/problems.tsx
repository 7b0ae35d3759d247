import type { Problem } from '#contract/problem.ts';
import styles from './problems.module.css';

export interface ProblemsProps {
  readonly problems: readonly Problem[];
  /** Names of fields that show their own problems. */
  readonly shownElsewhere?: readonly string[];
}

/** Everything that was refused, all at once: what, why, what to do. */
export const Problems = ({ problems, shownElsewhere = [] }: ProblemsProps) => {
  const left = problems.filter(({ field }) => field === null || !shownElsewhere.includes(field));
  return (
    <div role="alert">
      {left.length > 0 ? (
        <ul className={styles['problems']}>
          {left.map((problem) => (
            <li key={`${problem.field ?? ''} ${problem.what} ${problem.why}`}>
              <strong>{problem.what}</strong> {problem.why} <em>{problem.whatToDo}</em>
            </li>
          ))}
        </ul>
      ) : null}
    </div>
  );
};
