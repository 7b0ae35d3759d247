import { useState } from 'react';
import { SET_ASIDE } from '#domain/fact.ts';
import { isoOfDay } from '#units/day.ts';
import { Choice, Field, Fields } from '../../parts/parts.ts';
import { FactForm, useFactForm, type Build, type FormProps } from './fact-form.tsx';
import { typedDay, typedNumber } from './typed-values.ts';

/** Days on which there is less time than the programme means, or none, with what takes it. */
export function SetAsideForm({ person, house, correcting, onDone }: FormProps<'set aside'>) {
  const form = useFactForm(correcting, onDone);
  const [what, setWhat] = useState<string>(correcting?.what ?? SET_ASIDE[0]);
  const [from, setFrom] = useState(isoOfDay(correcting?.from ?? house.today));
  const [until, setUntil] = useState(isoOfDay(correcting?.until ?? house.today));
  const [minutes, setMinutes] = useState(correcting === null ? '0' : String(correcting.minutes));
  const [text, setText] = useState(correcting?.text ?? '');
  const build: Build = (problems) => {
    const first = typedDay(from, 'from', problems);
    const last = typedDay(until, 'until', problems);
    const left = typedNumber(minutes, 'minutes', problems);
    const chosen = SET_ASIDE.find((each) => each === what);
    return first === null || last === null || left === null || !chosen
      ? null
      : [{ kind: 'set aside', person, from: first, until: last, what: chosen, minutes: left, text: text.trim() }];
  };
  return (
    <FactForm
      form={form}
      build={build}
      fields={['from', 'until', 'minutes', 'text']}
      correcting={correcting}
      onCancel={onDone}
    >
      <Fields>
        <Choice
          label="For"
          value={what}
          onChange={setWhat}
          options={SET_ASIDE.map((each) => ({ value: each, label: each }))}
        />
        <Field
          label="Minutes left on each day"
          name="minutes"
          value={minutes}
          onChange={setMinutes}
          problems={form.problems}
          inputMode="numeric"
          unit="min"
          isNarrow
        />
      </Fields>
      <Fields>
        <Field label="First day" name="from" type="date" value={from} onChange={setFrom} problems={form.problems} />
        <Field label="Last day" name="until" type="date" value={until} onChange={setUntil} problems={form.problems} />
      </Fields>
      <Field label="In a few words" name="text" value={text} onChange={setText} problems={form.problems} />
    </FactForm>
  );
}
