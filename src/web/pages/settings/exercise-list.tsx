import { Link } from 'wouter';
import { PATTERNS, type Exercise } from '#domain/catalogue.ts';
import { ExerciseEntry } from './exercise-entry.tsx';
import styles from './exercises.module.css';

/** Every exercise under its pattern: a line each, and under the line all that is known of it. */
export function ExerciseList({ exercises }: { readonly exercises: readonly Exercise[] }) {
  const nameOf = (id: string): string => exercises.find((exercise) => exercise.id === id)?.name ?? id;
  return (
    <section aria-label="Exercises">
      <h2>
        Exercises <span className="soft small">{exercises.length}</span>
      </h2>
      <p className="soft">
        Open one for its cues, faults, cautions and substitutes. Shares are computed by the body model:{' '}
        <Link href="/evidence">Evidence</Link> shows how. Substitutes are rated from 0, nothing, to 1, all of it:
        practice defaults, which nobody has measured.
      </p>
      <div className={styles['patterns']}>
        {PATTERNS.map((pattern) => ({ pattern, of: exercises.filter((exercise) => exercise.pattern === pattern) }))
          .filter(({ of }) => of.length > 0)
          .map(({ pattern, of }) => (
            <section key={pattern} aria-label={pattern}>
              <h3>{pattern}</h3>
              {of.map((exercise) => (
                <ExerciseEntry key={exercise.id} exercise={exercise} nameOf={nameOf} />
              ))}
            </section>
          ))}
      </div>
    </section>
  );
}
