import { useState, type ReactNode } from 'react';
import type { ExerciseSetting } from '#contract/windows/settings-window.ts';
import type { CapacitySource, Exercise } from '#domain/catalogue.ts';
import { Button } from '../../parts/parts.ts';
import type { ExerciseDoing } from './exercise-form.tsx';
import { EXERCISE_FIELD_WORDS } from './exercise-words.ts';
import { ExerciseUses } from './exercise-uses.tsx';
import styles from './exercises.module.css';
import { History } from './history.tsx';
import { SubstituteTable } from './substitute-table.tsx';

interface ExerciseEntryProps {
  readonly setting: ExerciseSetting;
  readonly nameOf: (id: string) => string;
  readonly onDo: (doing: ExerciseDoing) => void;
}

/** One exercise: what it is done on in its line, and under it what to say, what to watch and what to beware of. */
export function ExerciseEntry({ setting, nameOf, onDo }: ExerciseEntryProps) {
  const { exercise } = setting;
  const [isOpen, setOpen] = useState(false);
  return (
    <details id={exercise.id} className={styles['entry']} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <span className={styles['name']}>
          <b>{exercise.name}</b>
          {exercise.perSide && <span className="soft small"> each side</span>}
        </span>
        <span className="soft small">{exercise.machineKinds.join(', ') || 'machine not said'}</span>
        <span className="soft small">{capacityOf(exercise.capacity, nameOf)}</span>
      </summary>
      {isOpen && <Inside setting={setting} nameOf={nameOf} onDo={onDo} />}
    </details>
  );
}

function Inside({ setting, nameOf, onDo }: ExerciseEntryProps) {
  const { exercise, history } = setting;
  return (
    <div className={styles['inside']}>
      <Lines of="cues" lines={exercise.cues} />
      <Lines of="faults to watch" lines={exercise.faults} />
      <Lines of="cautions" lines={exercise.cautions} isCaution />
      <Facts exercise={exercise} />
      <section className={styles['instead']}>
        <h4>instead, and how much that covers</h4>
        <SubstituteTable exercise={exercise} nameOf={nameOf} />
      </section>
      <ExerciseUses setting={setting} />
      <section className={styles['instead']}>
        <h4>how it came to stand</h4>
        <History history={history} wordOf={(field) => FIELD_WORDS[field] ?? field} />
      </section>
      <p className={`soft small ${styles['source'] ?? ''}`}>{exercise.source}</p>
      <div className={styles['acts']}>
        <Button label={`Change ${exercise.name}`} onPress={() => onDo({ kind: 'change', of: setting })}>
          Change
        </Button>
        <Button label={`Copy to a new one: ${exercise.name}`} onPress={() => onDo({ kind: 'copy', of: setting })}>
          Copy to a new one
        </Button>
      </div>
    </div>
  );
}

const FIELD_WORDS: Readonly<Record<string, string>> = EXERCISE_FIELD_WORDS;

interface LinesProps {
  readonly of: string;
  readonly lines: readonly string[];
  readonly isCaution?: boolean;
}

const Lines = ({ of, lines, isCaution = false }: LinesProps) => (
  <section>
    <h4 className={isCaution ? styles['caution'] : undefined}>{of}</h4>
    {lines.length === 0 ? (
      <p className="soft">not said</p>
    ) : (
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    )}
  </section>
);

function Facts({ exercise }: { readonly exercise: Exercise }) {
  const { shareModel, carriedAt, loads, roundTo, secondsPerRepetition, settingFields, alsoKnownAs, bodyPart } =
    exercise;
  return (
    <dl className={styles['facts']}>
      <Fact of="body part">{bodyPart}</Fact>
      <Fact of="share by">{shareModel === 'none' ? 'no model' : shareModel}</Fact>
      <Fact of="carried at">{carriedAt === 'none' ? 'nothing is carried' : carriedAt}</Fact>
      <Fact of="loads">{loads.join(', ') || 'not said'}</Fact>
      <Fact of="rounded to">
        {roundTo.lb} lb, {roundTo.kg} kg
      </Fact>
      <Fact of="a repetition">{secondsPerRepetition} s</Fact>
      <Fact of="settings">{settingFields.join(', ') || 'none'}</Fact>
      <Fact of="also called">{alsoKnownAs.join(', ') || 'nothing else'}</Fact>
    </dl>
  );
}

const Fact = ({ of, children }: { readonly of: string; readonly children: ReactNode }) => (
  <div>
    <dt className="soft">{of}</dt>
    <dd>{children}</dd>
  </div>
);

const capacityOf = (capacity: CapacitySource, nameOf: (id: string) => string): string => {
  switch (capacity.kind) {
    case 'one-repetition maximum':
      return 'one-repetition maximum';
    case 'repetition maximum':
      return `${capacity.of}-repetition maximum`;
    case 'ratio':
      return `${capacity.ratio} × ${nameOf(capacity.to)}`;
    case 'none':
      return 'runs on effort';
  }
};
