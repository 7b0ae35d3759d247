import type { Problem } from '#contract/problem.ts';
import { Choice } from '../../parts/field.tsx';
import type { PlannedSet, ResultsDraft, SetDraft } from './results-draft.ts';
import styles from './panel.module.css';

export interface SetFieldsProps {
  readonly sets: readonly PlannedSet[];
  readonly draft: ResultsDraft;
  readonly onChange: (draft: ResultsDraft) => void;
  readonly problems: readonly Problem[];
  /** Typing starts at this item. */
  readonly item: string | null;
}

const FIELDS = ['repetitions', 'load', 'effort'] as const;

const EMPTY: SetDraft = { repetitions: '', load: '', effort: '' };

const sideText = ({ side }: PlannedSet): string => (side === null ? '' : side === 'left' ? ' L' : ' R');

const SetRow = ({
  set,
  draft,
  onChange,
  problems,
  startsHere,
}: Omit<SetFieldsProps, 'sets' | 'item'> & {
  readonly set: PlannedSet;
  readonly startsHere: boolean;
}) => {
  const typed = draft.sets[set.id] ?? EMPTY;
  const hint = { repetitions: set.asks, load: set.load, effort: '' };
  return (
    <tr>
      <th scope="row">
        {set.place + 1}
        {sideText(set)} <span className="soft">{`${set.asks} × ${set.load} ${set.unit}`}</span>
      </th>
      {FIELDS.map((field) => (
        <td key={field}>
          <input
            aria-label={`${set.name}, set ${set.place + 1}${sideText(set)}, ${field}`}
            aria-invalid={problems.some((problem) => problem.field === `set ${set.id} ${field}`)}
            inputMode="decimal"
            autoComplete="off"
            placeholder={hint[field]}
            // Whoever opened the form at an exercise wants to type there.
            autoFocus={startsHere && field === 'repetitions'} // oxlint-disable-line jsx-a11y/no-autofocus -- see above
            value={typed[field]}
            onChange={(event) =>
              onChange({ ...draft, sets: { ...draft.sets, [set.id]: { ...typed, [field]: event.target.value } } })
            }
          />
        </td>
      ))}
    </tr>
  );
};

/** A line for every work set: repetitions done, load as the machine showed it, effort. */
export const SetFields = ({ sets, draft, onChange, problems, item }: SetFieldsProps) => {
  const names = [...new Set(sets.map(({ name }) => name))];
  const startsAt = sets.find((set) => item === null || set.item === item)?.id;
  return (
    <>
      <Choice
        label="Effort is typed as"
        value={draft.effortAs}
        onChange={(value) => onChange({ ...draft, effortAs: value === 'RPE' ? 'RPE' : 'repetitions in reserve' })}
        options={[
          { value: 'RPE', label: 'RPE, 1 to 10' },
          { value: 'repetitions in reserve', label: 'repetitions in reserve' },
        ]}
      />
      <table className={styles['typing']}>
        <caption className="soft small">
          A set without repetitions was not done. Effort that nobody said stays empty.
        </caption>
        <thead>
          <tr>
            <th scope="col">set as planned</th>
            <th scope="col">done</th>
            <th scope="col">load</th>
            <th scope="col">{draft.effortAs === 'RPE' ? 'RPE' : 'in reserve'}</th>
          </tr>
        </thead>
        {names.map((name) => (
          <tbody key={name}>
            <tr>
              <th scope="rowgroup" colSpan={4}>
                {name}
              </th>
            </tr>
            {sets
              .filter((set) => set.name === name)
              .map((set) => (
                <SetRow
                  key={set.id}
                  set={set}
                  draft={draft}
                  onChange={onChange}
                  problems={problems}
                  startsHere={set.id === startsAt}
                />
              ))}
          </tbody>
        ))}
      </table>
    </>
  );
};
