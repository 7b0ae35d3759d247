import { QUALITIES, type Exercise, type Quality } from '#domain/catalogue.ts';
import { Button, Choice, Field } from '../../parts/parts.ts';
import type { ExerciseFieldsProps } from './exercise-fields.tsx';
import styles from './settings-page.module.css';
import { emptySubstitute, type TypedSubstitute } from './typed-exercise.ts';

/** What can be done instead, in the order in which it is tried, and how much of each quality that covers. */
export function SubstituteFields(props: ExerciseFieldsProps & { readonly own: Exercise['id'] | null }) {
  const { typed, onTyped } = props;
  const set = (change: (before: readonly TypedSubstitute[]) => readonly TypedSubstitute[]): void =>
    onTyped((before) => ({ ...before, substitutes: change(before.substitutes) }));
  return (
    <>
      <h3 className={styles['part']}>Instead</h3>
      <p className="soft small">
        In the order in which it is tried. Coverage from 0, nothing, to 1, all of it, done under load; empty where the
        exercise does not train that quality.
      </p>
      <div className={styles['rows']}>
        {typed.substitutes.map((substitute, place) => (
          <SubstituteRow key={substitute.key} {...props} substitute={substitute} place={place} onSet={set} />
        ))}
      </div>
      <Button onPress={() => set((before) => [...before, emptySubstitute(crypto.randomUUID())])}>
        Add a substitute
      </Button>
    </>
  );
}

interface SubstituteRowProps extends ExerciseFieldsProps {
  readonly own: Exercise['id'] | null;
  readonly substitute: TypedSubstitute;
  readonly place: number;
  readonly onSet: (change: (before: readonly TypedSubstitute[]) => readonly TypedSubstitute[]) => void;
}

function SubstituteRow({ exercises, own, substitute, place, onSet, problems }: SubstituteRowProps) {
  const at = `entry.exercise.substitutes.${place}`;
  const put = (after: TypedSubstitute): void =>
    onSet((before) => before.map((each) => (each.key === substitute.key ? after : each)));
  const rate = (quality: Quality) => (text: string) =>
    put({ ...substitute, covers: { ...substitute.covers, [quality]: text } });
  const nameOf = exercises.find(({ id }) => id === substitute.exercise)?.name ?? `substitute ${place + 1}`;
  return (
    <fieldset className={styles['row']} aria-label={`Substitute ${place + 1}`}>
      <Choice
        label="exercise"
        name={`${at}.exercise`}
        value={substitute.exercise}
        onChange={(exercise) => put({ ...substitute, exercise })}
        options={exercises.filter(({ id }) => id !== own).map(({ id, name }) => ({ value: id, label: name }))}
        nothing="choose …"
        problems={problems}
      />
      {QUALITIES.map((quality) => (
        <Field
          key={quality}
          label={quality}
          name={`${at}.covers.${quality}`}
          value={substitute.covers[quality]}
          onChange={rate(quality)}
          inputMode="decimal"
          problems={problems}
          isNarrow
        />
      ))}
      <span className={styles['acts']}>
        {place > 0 && (
          <Button kind="link" label={`Try ${nameOf} earlier`} onPress={() => onSet((before) => earlier(before, place))}>
            earlier
          </Button>
        )}
        <Button
          kind="link"
          label={`Leave out ${nameOf}`}
          onPress={() => onSet((before) => before.filter(({ key }) => key !== substitute.key))}
        >
          leave out
        </Button>
      </span>
    </fieldset>
  );
}

const earlier = (list: readonly TypedSubstitute[], place: number): readonly TypedSubstitute[] => {
  const [before, moved] = [list[place - 1], list[place]];
  return before && moved ? [...list.slice(0, place - 1), moved, before, ...list.slice(place + 1)] : list;
};
