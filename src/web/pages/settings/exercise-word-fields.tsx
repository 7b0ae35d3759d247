import { Field } from '../../parts/parts.ts';
import type { ExerciseFieldsProps } from './exercise-fields.tsx';
import styles from './settings-page.module.css';
import type { TextOfExercise } from './typed-exercise.ts';

const LINES = [
  { key: 'cues', label: 'Cues', hint: 'One a line; they are printed on the card.' },
  { key: 'faults', label: 'Faults to watch', hint: 'One a line; for whoever watches.' },
  { key: 'cautions', label: 'Cautions', hint: 'One a line: when not, or only with care.' },
  { key: 'settingFields', label: 'Settings at the machine', hint: 'One a line, such as: bar stop.' },
  { key: 'alsoKnownAs', label: 'Other spellings', hint: 'One a line, as spreadsheets write it.' },
] as const;

/** What is said of it: on cards, to whoever watches, in spreadsheets, and what its choices rest on. */
export function ExerciseWordFields({ typed, onTyped, problems }: ExerciseFieldsProps) {
  const type = (key: TextOfExercise) => (text: string) => onTyped((before) => ({ ...before, [key]: text }));
  return (
    <>
      <h3 className={styles['part']}>What is said of it</h3>
      <div className={styles['texts']}>
        {LINES.map(({ key, label, hint }) => (
          <Field
            key={key}
            label={label}
            name={`entry.exercise.${key}`}
            value={typed[key]}
            onChange={type(key)}
            problems={problems}
            hint={hint}
            isLong
          />
        ))}
        <Field
          label="Rests on"
          name="entry.exercise.source"
          value={typed.source}
          onChange={type('source')}
          problems={problems}
          hint="Paper, practice or own judgement, for every choice above."
          isLong
        />
      </div>
    </>
  );
}
