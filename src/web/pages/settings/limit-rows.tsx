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
  return (
    <>
      <h3 className={styles['part']}>Limits of single exercises</h3>
      <div className={styles['rows']}>
        {limits.map((limit, place) => (
          <LimitRow
            key={limit.key}
            house={house}
            unit={unit}
            limit={limit}
            place={place}
            problems={problems}
            onPut={(after) =>
              onLimits((before) => before.map((each) => (each.key === limit.key ? { ...each, ...after } : each)))
            }
            onLeaveOut={() => onLimits((before) => before.filter(({ key }) => key !== limit.key))}
          />
        ))}
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

interface LimitRowProps extends Pick<LimitRowsProps, 'house' | 'unit' | 'problems'> {
  readonly limit: TypedLimit;
  readonly place: number;
  readonly onPut: (after: Partial<TypedLimit>) => void;
  readonly onLeaveOut: () => void;
}

function LimitRow({ house, unit, limit, place, problems, onPut, onLeaveOut }: LimitRowProps) {
  const at = `entry.machine.limits.${place}`;
  return (
    <fieldset className={join(styles['row'], styles['limit'])} aria-label={`Limit ${place + 1}`}>
      <Choice
        label="Exercise"
        name={`${at}.exercise`}
        value={limit.exercise}
        onChange={(exercise) => onPut({ exercise })}
        options={house.exercises.map(({ id, name }) => ({ value: id, label: name }))}
        nothing="choose …"
        problems={problems}
      />
      <Field
        label="Attachment"
        name={`${at}.attachment`}
        value={limit.attachment}
        onChange={(attachment) => onPut({ attachment })}
        placeholder="any"
        problems={problems}
        isNarrow
      />
      <Field
        label="At most"
        name={`${at}.most`}
        value={limit.most}
        onChange={(most) => onPut({ most })}
        unit={unit}
        inputMode="decimal"
        problems={problems}
        isNarrow
      />
      <span className={styles['acts']}>
        <Button kind="link" label={`Leave out limit ${place + 1}`} onPress={onLeaveOut}>
          leave out
        </Button>
      </span>
    </fieldset>
  );
}
