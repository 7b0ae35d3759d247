import { useState } from 'react';
import type { Problem } from '#contract/problem.ts';
import type { HouseWindow } from '#contract/windows/house-window.ts';
import type { RecordWindow } from '#contract/windows/record-window.ts';
import { Button, Choice, Field, Fields } from '../../parts/parts.ts';
import { FactForm, useFactForm, type Build, type FormProps } from './fact-form.tsx';
import styles from './record-page.module.css';
import { SideChoice } from './test-form.tsx';
import {
  emptySetting,
  fieldsOfSettings,
  lastSettings,
  rowsFor,
  settingsOf,
  settingsWithout,
  type TypedSetting,
} from './typed-settings.ts';
import { chosenFrom } from './typed-values.ts';

type SetUpFormProps = FormProps<'set up'> & { readonly record: RecordWindow };

/** How a person sets a machine for an exercise: named fields, with a side where the two differ. It is printed on the card. */
export function SetUpForm({ person, house, record, correcting, onDone }: SetUpFormProps) {
  const form = useFactForm(correcting, onDone);
  const [machine, setMachine] = useState<string>(correcting?.machine ?? '');
  const [exercise, setExercise] = useState<string>(correcting?.exercise ?? '');
  const [rows, setRows] = useState<readonly TypedSetting[]>(() => rowsFor(correcting?.settings ?? [], []));
  const chosen = house.machines.find(({ id }) => id === machine);
  const exercises = house.exercises.filter(
    ({ machineKinds }) => !chosen || machineKinds.length === 0 || machineKinds.includes(chosen.kind),
  );
  const choose = (onMachine: string, lift: string): void => {
    setMachine(onMachine);
    setExercise(lift);
    const named = house.exercises.find(({ id }) => id === lift)?.settingFields ?? [];
    setRows(rowsFor(lastSettings(record, onMachine, lift), named));
  };
  const build: Build = (problems) => {
    const on = chosenFrom(house.machines, machine, 'machine', problems);
    const lift = chosenFrom(exercises, exercise, 'exercise', problems);
    const settings = settingsOf(rows, problems);
    if (on === null || lift === null || settings === null) return null;
    return [{ kind: 'set up', person, machine: on.id, exercise: lift.id, settings }];
  };
  const put = (key: string, after: Partial<TypedSetting>): void =>
    setRows((before) => before.map((each) => (each.key === key ? { ...each, ...after } : each)));
  return (
    <FactForm
      form={form}
      build={build}
      fields={['machine', 'exercise', ...fieldsOfSettings(rows.length)]}
      correcting={correcting}
      onCancel={onDone}
    >
      <WhereFields
        machines={house.machines}
        machine={machine}
        onMachine={(id) => choose(id, exercise)}
        exercises={exercises}
        exercise={exercise}
        onExercise={(id) => choose(machine, id)}
        problems={form.problems}
      />
      {rows.map((row, place) => (
        <SettingRow
          key={row.key}
          row={row}
          place={place}
          problems={form.problems}
          onPut={(after) => put(row.key, after)}
          onLeaveOut={() => setRows((before) => settingsWithout(before, row.key))}
        />
      ))}
      <p className="soft small">
        An empty value leaves the line out. What is recorded here stands for this person on this machine until the next
        time, and is printed on the cards that are issued from now on.
      </p>
      <Button onPress={() => setRows((before) => [...before, emptySetting(crypto.randomUUID())])}>Add a setting</Button>
    </FactForm>
  );
}

interface WhereFieldsProps {
  readonly machines: HouseWindow['machines'];
  readonly machine: string;
  readonly onMachine: (id: string) => void;
  readonly exercises: HouseWindow['exercises'];
  readonly exercise: string;
  readonly onExercise: (id: string) => void;
  readonly problems: readonly Problem[];
}

const WhereFields = (props: WhereFieldsProps) => (
  <Fields>
    <Choice
      label="Machine"
      name="machine"
      value={props.machine}
      onChange={props.onMachine}
      options={props.machines.map(({ id, name, gravity }) => ({ value: id, label: `${name} (${gravity})` }))}
      nothing="choose …"
      problems={props.problems}
    />
    <Choice
      label="Exercise"
      name="exercise"
      value={props.exercise}
      onChange={props.onExercise}
      options={props.exercises.map(({ id, name }) => ({ value: id, label: name }))}
      nothing="choose …"
      problems={props.problems}
    />
  </Fields>
);

interface SettingRowProps {
  readonly row: TypedSetting;
  readonly place: number;
  readonly problems: readonly Problem[];
  readonly onPut: (after: Partial<TypedSetting>) => void;
  readonly onLeaveOut: () => void;
}

function SettingRow({ row, place, problems, onPut, onLeaveOut }: SettingRowProps) {
  return (
    <fieldset className={styles['setting']} aria-label={row.field === '' ? `Setting ${place + 1}` : row.field}>
      <Field
        label="Setting"
        name={`settings.${place}.field`}
        value={row.field}
        onChange={(field) => onPut({ field })}
        problems={problems}
        placeholder="such as: bar stop"
      />
      <Field
        label="Value"
        name={`settings.${place}.value`}
        value={row.value}
        onChange={(value) => onPut({ value })}
        problems={problems}
      />
      <SideChoice value={row.side} onChange={(side) => onPut({ side })} />
      <Button
        kind="link"
        label={`Leave out ${row.field === '' ? `setting ${place + 1}` : row.field}`}
        onPress={onLeaveOut}
      >
        leave out
      </Button>
    </fieldset>
  );
}
