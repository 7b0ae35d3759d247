import type { Difference } from '#domain/programme-difference.ts';
import styles from './programmes-page.module.css';

/** What is otherwise in another version, phase by phase, in sentences. */
export function DifferenceList({ differences }: { readonly differences: readonly Difference[] }) {
  const phases = [...new Set(differences.map(({ phase }) => phase))];
  return (
    <dl className={styles['differences']}>
      {phases.map((phase) => (
        <div key={phase ?? 'whole'}>
          <dt>{phase ?? 'programme'}</dt>
          <dd>
            <ul>
              {differences
                .filter((each) => each.phase === phase)
                .map(({ says }) => (
                  <li key={says}>{says}</li>
                ))}
            </ul>
          </dd>
        </div>
      ))}
    </dl>
  );
}
