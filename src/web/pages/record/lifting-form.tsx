import { useState } from 'react';
import type { Fact } from '#domain/fact.ts';
import { isoOfDay } from '#units/day.ts';
import { Field, Fields } from '../../parts/parts.ts';
import { FactForm, useFactForm, type Build, type FormProps } from './fact-form.tsx';
import { typedDay, typedWords } from './typed-values.ts';

/** A restriction ends when a physician says so; loads come back as raises, each signed. */
export function LiftingForm({
  restriction,
  says,
  person,
  house,
  correcting,
  onDone,
}: FormProps<'restriction lifted'> & { readonly restriction: Fact<'restricted'>; readonly says: string }) {
  const form = useFactForm(correcting, onDone);
  const [toldBy, setToldBy] = useState('');
  const [on, setOn] = useState(isoOfDay(house.today));
  const build: Build = (problems) => {
    const by = typedWords(toldBy, 'toldBy', problems);
    const day = typedDay(on, 'on', problems);
    return by === null || day === null
      ? null
      : [{ kind: 'restriction lifted', person, restriction: restriction.id, toldBy: by, on: day }];
  };
  return (
    <FactForm form={form} build={build} fields={['toldBy', 'on']} correcting={correcting} onCancel={onDone}>
      <p>
        Lifts: <b>{says}</b>. Loads do not jump back: each comes back as a raise that somebody signs.
      </p>
      <Fields>
        <Field
          label="Told by"
          name="toldBy"
          value={toldBy}
          onChange={setToldBy}
          problems={form.problems}
          hint="the physician’s name"
          isFirst
        />
        <Field label="On" name="on" type="date" value={on} onChange={setOn} problems={form.problems} />
      </Fields>
    </FactForm>
  );
}
