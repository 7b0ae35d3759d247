import { useEffect, useState } from 'react';
import { flushSync } from 'react-dom';
import { Link } from 'wouter';
import type { SettingsWindow } from '#contract/windows/settings-window.ts';
import { PATTERNS } from '#domain/catalogue.ts';
import { Button, Choice, Empty, Field, Fields } from '../../parts/parts.ts';
import { ExerciseEntry } from './exercise-entry.tsx';
import { ExerciseDialog, type ExerciseDoing } from './exercise-form.tsx';
import { ALL_KINDS } from './exercise-words.ts';
import styles from './exercises.module.css';
import { foundExercises, type Looked } from './found-exercises.ts';
import { addressed, goToAddress } from './go-to-address.ts';

interface ExerciseListProps {
  readonly settings: SettingsWindow;
  readonly onSaid: (said: string | null) => void;
}

/** Every exercise under its pattern: a line each, and under the line all that is known of it. */
export function ExerciseList({ settings, onSaid }: ExerciseListProps) {
  const [looked, setLooked] = useLooked();
  const [doing, setDoing] = useState<ExerciseDoing | null>(null);
  const { exercises } = settings;
  const found = foundExercises(exercises, looked);
  const nameOf = (id: string): string => exercises.find(({ exercise }) => exercise.id === id)?.exercise.name ?? id;
  const close = (said: string | null): void => {
    setDoing(null);
    onSaid(said);
  };
  return (
    <section aria-label="Exercises" id="exercises">
      <h2>
        Exercises{' '}
        <span className="soft small">
          {found.length === exercises.length ? exercises.length : `${found.length} of ${exercises.length}`}
        </span>
      </h2>
      <p className="soft">
        Open one for its cues, faults, cautions and substitutes. Shares are computed by the body model:{' '}
        <Link href="/evidence">Evidence</Link> shows how. Substitutes are rated from 0, nothing, to 1, all of it:
        practice defaults, which nobody has measured.
      </p>
      <Looking looked={looked} onLooked={setLooked} />
      <p>
        <Button onPress={() => setDoing({ kind: 'new' })}>New exercise</Button>
      </p>
      <div className={styles['patterns']}>
        {PATTERNS.map((pattern) => ({ pattern, of: found.filter(({ exercise }) => exercise.pattern === pattern) }))
          .filter(({ of }) => of.length > 0)
          .map(({ pattern, of }) => (
            <section key={pattern} aria-label={pattern}>
              <h3>{pattern}</h3>
              {of.map((setting) => (
                <ExerciseEntry key={setting.exercise.id} setting={setting} nameOf={nameOf} onDo={setDoing} />
              ))}
            </section>
          ))}
      </div>
      {found.length === 0 && <Empty>No exercise is called that, or none that is done on it.</Empty>}
      {doing !== null && <ExerciseDialog doing={doing} settings={settings} onDone={close} />}
    </section>
  );
}

const EVERYTHING: Looked = { text: '', kind: '' };

/** What is looked for. A link to an exercise that it leaves out shows everything again. */
const useLooked = () => {
  const [looked, setLooked] = useState(EVERYTHING);
  useEffect(() => {
    const show = (): void => {
      if (document.getElementById(addressed()) !== null) return;
      flushSync(() => setLooked(EVERYTHING));
      goToAddress();
    };
    addEventListener('hashchange', show);
    return () => {
      removeEventListener('hashchange', show);
    };
  }, []);
  return [looked, setLooked] as const;
};

interface LookingProps {
  readonly looked: Looked;
  readonly onLooked: (looked: Looked) => void;
}

const Looking = ({ looked, onLooked }: LookingProps) => (
  <search className="on-screen" aria-label="Exercises">
    <Fields>
      <Field
        label="Look for"
        type="search"
        value={looked.text}
        onChange={(text) => onLooked({ ...looked, text })}
        placeholder="name, spelling, pattern"
      />
      <Choice
        label="Done on"
        value={looked.kind}
        onChange={(kind) => onLooked({ ...looked, kind })}
        options={ALL_KINDS.map((kind) => ({ value: kind, label: kind }))}
        nothing="anything"
      />
    </Fields>
  </search>
);
