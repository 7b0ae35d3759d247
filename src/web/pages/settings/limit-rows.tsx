import type { Problem } from '#contract/problem.ts';
import type { HouseWindow } from '#contract/windows/house-window.ts';
import { Button, Choice, Field, join } from '../../parts/parts.ts';
import styles from './settings-page.module.css';
import type { TypedLimit } from './typed-machine.ts';

interface LimitRowsProps {
  readonly house: HouseWindow;
  readonly unit: string;
  readonly limits: readonly TypedLimit[];
  readonly onLimits: (change: (before: readonly TypedLimit[]) => readonly TypedLimit[]) => void;
  readonly problems: readonly Problem[];
}

/** What a machine gives less of than its ceiling: by exercise, and by what hangs on it. */
export function LimitRows({ house, unit, limits, onLimits, problems }: LimitRowsProps) {
  const exercises = house.exercises.map(({ id, name }) => ({ value: id, label: name }));
  return (
    <>
      <h3 className={styles['part']}>Limits of single exercises</h3>
      <div className={styles['rows']}>
        {limits.map((limit, place) => {
          const at = `entry.machine.limits.${place}`;
          const put = (after: Partial<TypedLimit>) =>
            onLimits((before) => before.map((each) => (each.key === limit.key ? { ...each, ...after } : each)));
          return (
            <fieldset
              key={limit.key}
              className={join(styles['row'], styles['limit'])}
              aria-label={`Limit ${place + 1}`}
            >
              <Choice
                label="Exercise"
                name={`${at}.exercise`}
                value={limit.exercise}
                onChange={(exercise) => put({ exercise })}
                options={exercises}
                nothing="choose …"
                problems={problems}
              />
              <Field
                label="Attachment"
                name={`${at}.attachment`}
                value={limit.attachment}
                onChange={(attachment) => put({ attachment })}
                placeholder="any"
                problems={problems}
                isNarrow
              />
              <Field
                label="At most"
                name={`${at}.most`}
                value={limit.most}
                onChange={(most) => put({ most })}
                unit={unit}
                inputMode="decimal"
                problems={problems}
                isNarrow
              />
              <span className={styles['acts']}>
                <Button
                  kind="link"
                  label={`Leave out limit ${place + 1}`}
                  onPress={() => onLimits((before) => before.filter(({ key }) => key !== limit.key))}
                >
                  leave out
                </Button>
              </span>
            </fieldset>
          );
        })}
      </div>
      <Button
        onPress={() =>
          onLimits((before) => [...before, { key: crypto.randomUUID(), exercise: '', attachment: '', most: '' }])
        }
      >
        Add a limit
      </Button>
    </>
  );
}
