import { useState } from 'react';
import type { ProgrammesWindow } from '#contract/windows/programmes-window.ts';
import type { ProgrammeVersion } from '#domain/programme.ts';
import { programmeDifference } from '#domain/programme-difference.ts';
import { DifferenceList } from './difference-list.tsx';
import styles from './programmes-page.module.css';

interface HoldAgainstProps {
  readonly version: ProgrammeVersion;
  readonly window: ProgrammesWindow;
}

/** What is otherwise in a version than in any other: at first, than in the one that it was made from. */
export function HoldAgainst({ version, window: { versions, exercises } }: HoldAgainstProps) {
  const others = versions.map((entry) => entry.version).filter(({ id }) => id !== version.id);
  const [chosen, setChosen] = useState<string>(version.follows ?? '');
  const other = others.find(({ id }) => id === chosen) ?? null;
  const catalogue = new Map(exercises.map((exercise) => [exercise.id, exercise]));
  const differences = other ? programmeDifference(other, version, catalogue) : [];
  if (others.length === 0) return null;
  return (
    <section aria-label="What is otherwise" className={other ? undefined : 'on-screen'}>
      <label className={styles['against']}>
        What is otherwise than in{' '}
        <select value={chosen} onChange={(event) => setChosen(event.target.value)}>
          <option value="">choose a version …</option>
          {others.map(({ id, name, number }) => (
            <option key={id} value={id}>
              {name}, version {number}
            </option>
          ))}
        </select>
      </label>
      {other ? <DifferenceList differences={differences} /> : null}
      {other && differences.length === 0 ? <p className="soft">Nothing.</p> : null}
    </section>
  );
}
