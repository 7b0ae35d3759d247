import { useState } from 'react';
import { isoOfDay } from '#units/day.ts';
import { Field } from '../../parts/parts.ts';
import { FactForm, useFactForm, type Build, type FormProps } from './fact-form.tsx';
import { typedDay } from './typed-values.ts';

/** A space walk of this person. Moved, it is corrected: the old day stays visible with the reason. */
export function SpaceWalkForm({ person, house, correcting, onDone }: FormProps<'space walk'>) {
  const form = useFactForm(correcting, onDone);
  const [day, setDay] = useState(isoOfDay(correcting?.day ?? house.today));
  const [text, setText] = useState(correcting?.text ?? '');
  const build: Build = (problems) => {
    const on = typedDay(day, 'day', problems);
    return on === null ? null : [{ kind: 'space walk', person, day: on, text: text.trim() }];
  };
  return (
    <FactForm form={form} build={build} fields={['day', 'text']} correcting={correcting} onCancel={onDone}>
      <p>Hands are trained for it, then rested before it. If it moves, correct it: the old day stays visible.</p>
      <Field label="Day" name="day" type="date" value={day} onChange={setDay} problems={form.problems} isFirst />
      <Field label="In a few words" name="text" value={text} onChange={setText} problems={form.problems} />
    </FactForm>
  );
}
