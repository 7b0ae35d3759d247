import type { Problem } from '#contract/problem.ts';
import { BODY_SITES, PATTERNS, type Exercise } from '#domain/catalogue.ts';
import { Choice, Field, Fields } from '../../parts/parts.ts';
import { CheckList } from './check-list.tsx';
import { ALL_KINDS, CAPACITY_SOURCES, CARRIED_AT, SHARE_MODELS } from './exercise-words.ts';
import styles from './settings-page.module.css';
import type { TextOfExercise, TypedExercise } from './typed-exercise.ts';

export interface ExerciseFieldsProps {
  readonly typed: TypedExercise;
  readonly onTyped: (change: (before: TypedExercise) => TypedExercise) => void;
  readonly exercises: readonly Exercise[];
  readonly problems: readonly Problem[];
}

const same = (words: readonly string[]) => words.map((word) => ({ value: word, label: word }));

/** What an exercise is, what it is done on, and where its loads come from. */
export function ExerciseFields(props: ExerciseFieldsProps & { readonly own: Exercise['id'] | null }) {
  const { typed, onTyped, problems } = props;
  const type = (key: TextOfExercise) => (text: string) => onTyped((before) => ({ ...before, [key]: text }));
  return (
    <>
      <h3 className={styles['part']}>What it is</h3>
      <Fields>
        <Field
          label="Name"
          name="entry.exercise.name"
          value={typed.name}
          onChange={type('name')}
          problems={problems}
          isFirst
        />
        <Choice
          label="Pattern"
          name="entry.exercise.pattern"
          value={typed.pattern}
          onChange={type('pattern')}
          options={same(PATTERNS)}
          problems={problems}
        />
        <Choice
          label="Body part"
          value={typed.bodyPart}
          onChange={type('bodyPart')}
          options={same(['lower body', 'upper body'])}
        />
        <Choice
          label="Each side by itself"
          value={typed.perSide}
          onChange={type('perSide')}
          options={same(['no', 'yes'])}
          isNarrow
        />
      </Fields>
      <CheckList
        label="Done on"
        name="entry.exercise.machineKinds"
        words={ALL_KINDS}
        chosen={typed.machineKinds}
        onChange={(machineKinds) => onTyped((before) => ({ ...before, machineKinds }))}
        problems={problems}
      />
      <CheckList
        label="Loads"
        name="entry.exercise.loads"
        words={BODY_SITES}
        chosen={typed.loads}
        onChange={(loads) => onTyped((before) => ({ ...before, loads }))}
        problems={problems}
        hint="A physician’s limit on a site reaches every exercise that loads it."
      />
      <LoadFields {...props} type={type} />
    </>
  );
}

type LoadFieldsProps = ExerciseFieldsProps & {
  readonly own: Exercise['id'] | null;
  readonly type: (key: TextOfExercise) => (text: string) => void;
};

function LoadFields({ typed, type, problems, ...rest }: LoadFieldsProps) {
  return (
    <>
      <h3 className={styles['part']}>Its load</h3>
      <Fields>
        <Choice
          label="Share of body weight by"
          value={typed.shareModel}
          onChange={type('shareModel')}
          options={SHARE_MODELS}
          hint="How much of the body it moves in 1 g, to be added back in weightlessness."
        />
        <Choice
          label="Carried at"
          value={typed.carriedAt}
          onChange={type('carriedAt')}
          options={CARRIED_AT.map((each) => ({ value: each, label: each === 'none' ? 'nothing is carried' : each }))}
        />
      </Fields>
      <CapacityFields typed={typed} type={type} problems={problems} {...rest} />
      <div className={styles['numbers']}>
        <Field
          label="Rounded to, in kg"
          name="entry.exercise.roundTo.kg"
          value={typed.roundKg}
          onChange={type('roundKg')}
          unit="kg"
          inputMode="decimal"
          problems={problems}
        />
        <Field
          label="Rounded to, in lb"
          name="entry.exercise.roundTo.lb"
          value={typed.roundLb}
          onChange={type('roundLb')}
          unit="lb"
          inputMode="decimal"
          problems={problems}
        />
        <Field
          label="One repetition"
          name="entry.exercise.secondsPerRepetition"
          value={typed.seconds}
          onChange={type('seconds')}
          unit="s"
          inputMode="decimal"
          problems={problems}
          hint="For the minutes of a card."
        />
      </div>
    </>
  );
}

function CapacityFields({ typed, type, problems, exercises, own }: Omit<LoadFieldsProps, 'onTyped'>) {
  const tested = exercises.filter(
    ({ id, capacity }) => id !== own && capacity.kind !== 'ratio' && capacity.kind !== 'none',
  );
  return (
    <Fields>
      <Choice
        label="Capacity from"
        name="entry.exercise.capacity.kind"
        value={typed.capacity}
        onChange={type('capacity')}
        options={CAPACITY_SOURCES}
        problems={problems}
      />
      {typed.capacity === 'repetition maximum' && (
        <Field
          label="Repetitions"
          name="entry.exercise.capacity.of"
          value={typed.repetitions}
          onChange={type('repetitions')}
          inputMode="numeric"
          problems={problems}
          isNarrow
        />
      )}
      {typed.capacity === 'ratio' && (
        <>
          <Field
            label="Ratio"
            name="entry.exercise.capacity.ratio"
            value={typed.ratio}
            onChange={type('ratio')}
            unit="×"
            inputMode="decimal"
            problems={problems}
            isNarrow
          />
          <Choice
            label="Ratio to"
            name="entry.exercise.capacity.to"
            value={typed.ratioTo}
            onChange={type('ratioTo')}
            options={tested.map(({ id, name }) => ({ value: id, label: name }))}
            nothing="choose …"
            problems={problems}
          />
        </>
      )}
    </Fields>
  );
}
