import { Fragment } from 'react';
import type { Problem } from '#contract/problem.ts';
import { Button } from '../../parts/parts.ts';
import { EMPTY_STAGE, type TypedStage } from './typed-tests.ts';
import styles from './stage-table.module.css';

interface StageTableProps {
  readonly caption: string;
  /** Where problems of a stage are named after: "cycle.0.test.watts.text". */
  readonly at: 'cycle' | 'running';
  readonly stages: readonly TypedStage[];
  readonly onStages: (stages: readonly TypedStage[]) => void;
  readonly problems: readonly Problem[];
  readonly mayGrow: boolean;
}

const COLUMNS = [
  { key: 'setting', of: { cycle: 'watts', running: 'speed' } },
  { key: 'heartRate', of: { cycle: 'heartRate', running: 'heartRate' } },
  { key: 'uptake', of: { cycle: 'uptake', running: 'uptake' } },
] as const;

const HEADS = {
  setting: { cycle: 'W', running: 'km/h' },
  heartRate: { cycle: 'heart rate, /min', running: 'heart rate, /min' },
  uptake: { cycle: 'uptake, mL/(kg min)', running: 'uptake, mL/(kg min)' },
} as const;

/** Steady stages of one test, typed one under the other. */
export function StageTable({ caption, at, stages, onStages, problems, mayGrow }: StageTableProps) {
  const type = (place: number, key: keyof TypedStage, text: string): void =>
    onStages(stages.map((stage, each) => (each === place ? { ...stage, [key]: text } : stage)));
  return (
    <>
      <table className={styles['stages']}>
        <caption>{caption}</caption>
        <thead>
          <tr>
            <th scope="col">stage</th>
            {COLUMNS.map(({ key }) => (
              <th scope="col" key={key}>
                {HEADS[key][at]}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {stages.map((stage, place) => (
            // Stages are only added at the end, so that their place names them.
            <Stage key={`stage ${place}`} stage={stage} place={place} at={at} problems={problems} onType={type} />
          ))}
        </tbody>
      </table>
      {mayGrow ? (
        <Button label={`Add a stage: ${caption}`} onPress={() => onStages([...stages, EMPTY_STAGE])}>
          Add a stage
        </Button>
      ) : null}
    </>
  );
}

interface StageProps {
  readonly stage: TypedStage;
  readonly place: number;
  readonly at: 'cycle' | 'running';
  readonly problems: readonly Problem[];
  readonly onType: (place: number, key: keyof TypedStage, text: string) => void;
}

function Stage({ stage, place, at, problems, onType }: StageProps) {
  const ofStage = problems.filter(({ field }) => field?.startsWith(`${at}.${place}.`) === true);
  const wrongId = `${at}-${place}-wrong`;
  return (
    <Fragment>
      <tr>
        <th scope="row">{place + 1}</th>
        {COLUMNS.map(({ key, of }) => (
          <td key={key}>
            <input
              aria-label={`Stage ${place + 1}, ${HEADS[key][at]}`}
              aria-invalid={ofStage.some(({ field }) => field === `${at}.${place}.test.${of[at]}.text`)}
              aria-describedby={wrongId}
              inputMode="decimal"
              autoComplete="off"
              value={stage[key]}
              onChange={(event) => onType(place, key, event.target.value)}
            />
          </td>
        ))}
      </tr>
      <tr hidden={ofStage.length === 0}>
        <td colSpan={COLUMNS.length + 1} id={wrongId} className={styles['wrong']}>
          {ofStage.map(({ field, what, why, whatToDo }) => (
            <p key={`${field ?? ''} ${what}`}>
              <strong>{what}</strong> {why} {whatToDo}
            </p>
          ))}
        </td>
      </tr>
    </Fragment>
  );
}
