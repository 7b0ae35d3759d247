import { useState } from 'react';
import type { HouseWindow } from '#contract/windows/house-window.ts';
import type { Problem } from '#contract/problem.ts';
import type { FactBody } from '#domain/fact.ts';
import type { PersonId } from '#domain/identity.ts';
import type { Effort, Side } from '#domain/effort.ts';
import { isoOfDay } from '#units/day.ts';
import { Choice, Field, Fields } from '../../parts/parts.ts';
import { AmountFields, massUnitOf } from './amount-fields.tsx';
import { FactForm, useFactForm, type Build, type FormProps } from './fact-form.tsx';
import { chosenFrom, typedAmount, typedDay, typedNumber } from './typed-values.ts';

const FIELDS = ['day', 'exercise', 'machine', 'load.text', 'repetitions', 'effort.value', 'side'];

interface Typed {
  readonly day: string;
  readonly exercise: string;
  readonly machine: string;
  readonly load: string;
  readonly unit: string;
  readonly repetitions: string;
  readonly effortKind: string;
  readonly effort: string;
  readonly side: string;
}

/** A set that was lifted as a test, typed in by hand. */
export function TestForm({ person, house, correcting, onDone }: FormProps<'lifted'>) {
  const form = useFactForm(correcting, onDone);
  const [typed, setTyped] = useState<Typed>(() => startOf(house, correcting));
  const type = (key: keyof Typed) => (text: string) => setTyped((before) => ({ ...before, [key]: text }));
  const { problems } = form;
  const perSide = house.exercises.find(({ id }) => id === typed.exercise)?.perSide ?? false;
  const build: Build = (found) => liftedOf(typed, person, house, found);
  return (
    <FactForm form={form} build={build} fields={FIELDS} correcting={correcting} onCancel={onDone}>
      <LiftFields typed={typed} type={type} problems={problems} house={house} />
      <AmountFields
        label="Load"
        name="load.text"
        value={typed.load}
        onValue={type('load')}
        unit={typed.unit}
        units={['kg', 'lb']}
        onUnit={type('unit')}
        problems={problems}
        hint="All that was lifted, the bar included; of dumb-bells, both together."
      />
      <EffortFields typed={typed} type={type} problems={problems} perSide={perSide} />
      <p className="soft small">Without effort a set is a lower bound: it can never raise a load.</p>
    </FactForm>
  );
}

interface TypedFieldsProps {
  readonly typed: Typed;
  readonly type: (key: keyof Typed) => (text: string) => void;
  readonly problems: readonly Problem[];
}

function LiftFields({ typed, type, problems, house }: TypedFieldsProps & { readonly house: HouseWindow }) {
  return (
    <>
      <Fields>
        <Choice
          label="Exercise"
          name="exercise"
          value={typed.exercise}
          onChange={type('exercise')}
          options={house.exercises.map(({ id, name }) => ({ value: id, label: name }))}
          nothing="choose …"
          problems={problems}
        />
        <Field label="Day" name="day" type="date" value={typed.day} onChange={type('day')} problems={problems} />
      </Fields>
      <Choice
        label="Machine or bar"
        name="machine"
        value={typed.machine}
        onChange={type('machine')}
        options={liftingMachines(house).map(({ id, name, gravity }) => ({ value: id, label: `${name} (${gravity})` }))}
        nothing="choose …"
        problems={problems}
      />
    </>
  );
}

function EffortFields({ typed, type, problems, perSide }: TypedFieldsProps & { readonly perSide: boolean }) {
  return (
    <Fields>
      <Field
        label="Repetitions"
        name="repetitions"
        value={typed.repetitions}
        onChange={type('repetitions')}
        inputMode="numeric"
        problems={problems}
        isNarrow
      />
      <Choice
        label="Effort as"
        value={typed.effortKind}
        onChange={type('effortKind')}
        options={[
          { value: 'RPE', label: 'RPE' },
          { value: 'repetitions in reserve', label: 'repetitions in reserve' },
        ]}
        nothing="not recorded"
      />
      {typed.effortKind !== '' && (
        <Field
          label={typed.effortKind === 'RPE' ? 'RPE' : 'In reserve'}
          name="effort.value"
          value={typed.effort}
          onChange={type('effort')}
          inputMode="decimal"
          problems={problems}
          isNarrow
        />
      )}
      {perSide && <SideChoice value={typed.side} onChange={type('side')} />}
    </Fields>
  );
}

/** The fact that the fields come to, or null with every problem said. */
const liftedOf = (typed: Typed, person: PersonId, house: HouseWindow, found: Problem[]): readonly FactBody[] | null => {
  const day = typedDay(typed.day, 'day', found);
  const exercise = chosenFrom(house.exercises, typed.exercise, 'exercise', found);
  const machine = chosenFrom(house.machines, typed.machine, 'machine', found);
  const load = typedAmount(typed.load, massUnitOf(typed.unit), 'load.text', found);
  const repetitions = typedNumber(typed.repetitions, 'repetitions', found);
  const effort = effortOf(typed);
  if (effort === 'unreadable') typedNumber(typed.effort, 'effort.value', found);
  if (day === null || !exercise || !machine || load === null || repetitions === null || effort === 'unreadable')
    return null;
  const [lift, on] = [exercise.id, machine.id];
  const side = sideOf(typed.side);
  return [{ kind: 'lifted', person, day, exercise: lift, machine: on, load, repetitions, effort, side }];
};

export function SideChoice({ value, onChange }: { readonly value: string; readonly onChange: (side: string) => void }) {
  return (
    <Choice
      label="Side"
      value={value}
      onChange={onChange}
      options={[
        { value: 'left', label: 'left' },
        { value: 'right', label: 'right' },
      ]}
      nothing="both"
    />
  );
}

export const sideOf = (text: string): Side | null => (text === 'left' || text === 'right' ? text : null);

const liftingMachines = (house: HouseWindow) =>
  house.machines.filter(({ kind }) => kind === 'free bar' || kind === 'resistive machine');

const startOf = (house: HouseWindow, correcting: FormProps<'lifted'>['correcting']): Typed => {
  const [bar] = liftingMachines(house).filter(({ kind, gravity }) => kind === 'free bar' && gravity === '1 g');
  const { effort } = correcting ?? { effort: null };
  return {
    day: isoOfDay(correcting?.day ?? house.today),
    exercise: correcting?.exercise ?? '',
    machine: correcting?.machine ?? bar?.id ?? '',
    load: correcting?.load.text ?? '',
    unit: correcting?.load.unit ?? bar?.unit ?? 'kg',
    repetitions: correcting === null ? '' : String(correcting.repetitions),
    effortKind: effort?.kind ?? '',
    effort: effort === null ? '' : String(effort.value),
    side: correcting?.side ?? '',
  };
};

const effortOf = ({ effortKind, effort }: Typed): Effort | null | 'unreadable' => {
  if (effortKind !== 'RPE' && effortKind !== 'repetitions in reserve') return null;
  const value = typedNumber(effort, 'effort.value', []);
  return value === null ? 'unreadable' : { kind: effortKind, value };
};
