import { useId } from 'react';
import type { Problem } from '#contract/problem.ts';
import styles from './check-list.module.css';

interface CheckListProps<Word extends string> {
  readonly label: string;
  readonly name: string;
  readonly words: readonly Word[];
  readonly chosen: readonly Word[];
  readonly onChange: (chosen: readonly Word[]) => void;
  readonly problems: readonly Problem[];
  readonly hint?: string;
}

/** Any number out of a few words. What was chosen before keeps its order: nothing changes but what is ticked. */
export function CheckList<Word extends string>(props: CheckListProps<Word>) {
  const { label, name, words, chosen, onChange, problems, hint } = props;
  const id = useId();
  const wrong = problems.filter(({ field }) => field === name);
  const toggle = (word: Word): void =>
    onChange(chosen.includes(word) ? chosen.filter((each) => each !== word) : [...chosen, word]);
  return (
    <fieldset className={styles['list']} aria-describedby={`${id}-wrong`}>
      <legend>{label}</legend>
      <div className={styles['words']}>
        {words.map((word) => (
          <label key={word}>
            <input type="checkbox" checked={chosen.includes(word)} onChange={() => toggle(word)} /> {word}
          </label>
        ))}
      </div>
      {hint !== undefined && <div className={styles['hint']}>{hint}</div>}
      <output id={`${id}-wrong`}>
        {wrong.map(({ what, why, whatToDo }) => (
          <span className={styles['wrong']} key={what}>
            <strong>{what}</strong> {why} {whatToDo}
          </span>
        ))}
      </output>
    </fieldset>
  );
}
