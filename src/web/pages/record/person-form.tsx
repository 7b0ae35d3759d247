import { useState } from 'react';
import { isoOfDay } from '#units/day.ts';
import { Choice, Field, Fields } from '../../parts/parts.ts';
import { FactForm, useFactForm, type Build, type FormProps } from './fact-form.tsx';
import { typedAmount, typedDayOrNone, typedWords } from './typed-values.ts';

const FIELDS = ['name', 'sex', 'birthDate', 'trainingAge.text'];

const SEXES = [
  { value: 'female', label: 'female' },
  { value: 'male', label: 'male' },
];

/** Who a person is: a new person, or a correction. */
export function PersonForm({
  person,
  correcting,
  onDone,
  onRecorded = onDone,
}: FormProps<'introduced'> & { readonly onRecorded?: () => void }) {
  const form = useFactForm(correcting, onRecorded);
  const [name, setName] = useState(correcting?.name ?? '');
  const [sex, setSex] = useState<string>(correcting?.sex ?? '');
  const [birth, setBirth] = useState(
    correcting === null || correcting.birthDate === null ? '' : isoOfDay(correcting.birthDate),
  );
  const [years, setYears] = useState(correcting?.trainingAge?.text ?? '');
  const { problems } = form;
  const build: Build = (found) => {
    const named = typedWords(name, 'name', found);
    const birthDate = typedDayOrNone(birth, 'birthDate', found);
    const trainingAge = years.trim() === '' ? null : typedAmount(years, 'years', 'trainingAge.text', found);
    const chosen = sex === 'female' || sex === 'male' ? sex : typedWords('', 'sex', found);
    if (named === null || (chosen !== 'female' && chosen !== 'male')) return null;
    return [{ kind: 'introduced', person, name: named, sex: chosen, birthDate, trainingAge }];
  };
  return (
    <FactForm form={form} build={build} fields={FIELDS} correcting={correcting} onCancel={onDone}>
      <Field label="Name" name="name" value={name} onChange={setName} problems={problems} isFirst />
      <Fields>
        <Choice
          label="Sex"
          name="sex"
          value={sex}
          onChange={setSex}
          options={SEXES}
          nothing="choose …"
          hint="Chooses the segment table of the body model."
          problems={problems}
        />
        <Field
          label="Birth date"
          name="birthDate"
          type="date"
          value={birth}
          onChange={setBirth}
          problems={problems}
          hint="may be left open"
        />
        <Field
          label="Training age"
          name="trainingAge.text"
          value={years}
          onChange={setYears}
          unit="years"
          inputMode="decimal"
          problems={problems}
          hint="of resistance training; may be left open"
        />
      </Fields>
    </FactForm>
  );
}
