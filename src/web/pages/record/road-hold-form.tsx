import { useState } from 'react';
import { isoOfDay } from '#units/day.ts';
import { Field, Fields } from '../../parts/parts.ts';
import { FactForm, useFactForm, type Build, type FormProps } from './fact-form.tsx';
import { typedDay, typedDayOrNone } from './typed-values.ts';

/** From a day on the programme stays in its phase, until it goes on. */
export function RoadHoldForm({ person, house, correcting, onDone }: FormProps<'road holds'>) {
  const form = useFactForm(correcting, onDone);
  const [from, setFrom] = useState(isoOfDay(correcting?.from ?? house.today));
  const [until, setUntil] = useState(correcting && correcting.until !== null ? isoOfDay(correcting.until) : '');
  const [text, setText] = useState(correcting?.text ?? '');
  const build: Build = (problems) => {
    const first = typedDay(from, 'from', problems);
    const last = typedDayOrNone(until, 'until', problems);
    return first === null ? null : [{ kind: 'road holds', person, from: first, until: last, text: text.trim() }];
  };
  return (
    <FactForm form={form} build={build} fields={['from', 'until', 'text']} correcting={correcting} onCancel={onDone}>
      <p>The road holds: sessions stay in the phase of the first day. To let it go on, correct this entry.</p>
      <Fields>
        <Field label="From" name="from" type="date" value={from} onChange={setFrom} problems={form.problems} />
        <Field
          label="Until"
          name="until"
          type="date"
          value={until}
          onChange={setUntil}
          problems={form.problems}
          hint="may be left open"
        />
      </Fields>
      <Field label="Why, in a few words" name="text" value={text} onChange={setText} problems={form.problems} />
    </FactForm>
  );
}
