import { useState } from 'react';
import type { FactBody } from '#domain/fact.ts';
import type { PersonId } from '#domain/identity.ts';
import { isoOfDay, type Day } from '#units/day.ts';
import { Field } from '../../parts/parts.ts';
import { AmountFields, massUnitOf } from './amount-fields.tsx';
import { FactForm, useFactForm, type Build, type FormProps } from './fact-form.tsx';
import { typedAmount, typedDay } from './typed-values.ts';

export type Measured = 'body mass' | 'stature' | 'heaviest bar';

const UNITS: Readonly<Record<Measured, readonly string[]>> = {
  'body mass': ['kg', 'lb'],
  stature: ['cm', 'in'],
  'heaviest bar': ['kg', 'lb'],
};

const HINTS: Readonly<Record<Measured, string>> = {
  'body mass': 'In flight the last one before launch counts, until a signature says otherwise.',
  stature: 'Scales the body figure and the segments.',
  'heaviest bar': 'Carried on the shoulders, bar included, where no test says it: the shoulder rule starts from it.',
};

/** Body mass, stature, or the heaviest bar carried: a day and a number. */
export function MeasurementForm({
  what,
  person,
  house,
  correcting,
  onDone,
}: FormProps<'measured' | 'carried'> & { readonly what: Measured }) {
  const form = useFactForm(correcting, onDone);
  const before = correcting === null ? null : correcting.kind === 'carried' ? correcting.load : correcting.value;
  const [day, setDay] = useState(isoOfDay(correcting?.day ?? house.today));
  const [value, setValue] = useState(before?.text ?? '');
  const [unit, setUnit] = useState<string>(before?.unit ?? UNITS[what][0] ?? 'kg');
  const name = what === 'heaviest bar' ? 'load.text' : 'value.text';
  const build: Build = (problems) => {
    const on = typedDay(day, 'day', problems);
    const amount = typedAmount(value, unit, name, problems);
    return on === null || amount === null ? null : [bodyOf(what, person, on, amount.text, unit)];
  };
  return (
    <FactForm form={form} build={build} fields={['day', name]} correcting={correcting} onCancel={onDone}>
      <Field label="Day" name="day" type="date" value={day} onChange={setDay} problems={form.problems} />
      <AmountFields
        label={what.charAt(0).toUpperCase() + what.slice(1)}
        name={name}
        value={value}
        onValue={setValue}
        unit={unit}
        units={UNITS[what]}
        onUnit={setUnit}
        problems={form.problems}
        hint={HINTS[what]}
      />
    </FactForm>
  );
}

const bodyOf = (what: Measured, person: PersonId, day: Day, text: string, unit: string): FactBody => {
  switch (what) {
    case 'body mass':
      return { kind: 'measured', person, day, what, value: { text, unit: massUnitOf(unit) } };
    case 'stature':
      return { kind: 'measured', person, day, what, value: { text, unit: unit === 'in' ? 'in' : 'cm' } };
    case 'heaviest bar':
      return { kind: 'carried', person, day, load: { text, unit: massUnitOf(unit) } };
  }
};
