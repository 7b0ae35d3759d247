import { useState } from 'react';
import type { Problem } from '#contract/problem.ts';
import { isoOfDay } from '#units/day.ts';
import { WEEKDAYS } from '../../parts/dates.ts';
import { Field, Fields } from '../../parts/parts.ts';
import { FactForm, useFactForm, type Build, type FormProps } from './fact-form.tsx';
import { typedDay, typedDayOrNone, typedNumber } from './typed-values.ts';

/** From Monday before launch, from launch day in flight: both are said. */
const names = WEEKDAYS.map((_, place) => `minutes.${place}`);

/** An empty day has no minutes: nobody must type five noughts. */
const minutesOf = (texts: readonly string[], problems: Problem[]): readonly number[] =>
  texts.map((text, place) => (text.trim() === '' ? 0 : (typedNumber(text, `minutes.${place}`, problems) ?? 0)));

/** Minutes for training on each day of a week, set-up and stow with them. */
export function WeeklyMinutesForm({ person, house, correcting, onDone }: FormProps<'available'>) {
  const form = useFactForm(correcting, onDone);
  const [minutes, setMinutes] = useState<readonly string[]>(() =>
    WEEKDAYS.map((_, place) => (correcting === null ? '' : String(correcting.minutes[place] ?? ''))),
  );
  const [from, setFrom] = useState(isoOfDay(correcting?.from ?? house.today));
  const [until, setUntil] = useState(correcting && correcting.until !== null ? isoOfDay(correcting.until) : '');
  const build: Build = (problems) => {
    const read = minutesOf(minutes, problems);
    const first = typedDay(from, 'from', problems);
    const last = typedDayOrNone(until, 'until', problems);
    if (minutes.every((text) => text.trim() === '')) problems.push(NOTHING);
    return first === null ? null : [{ kind: 'available', person, from: first, until: last, minutes: read }];
  };
  return (
    <FactForm form={form} build={build} fields={['from', 'until', ...names]} correcting={correcting} onCancel={onDone}>
      <p>Minutes that this person has for training, set-up and stow with them. An empty day has none.</p>
      <Fields>
        {WEEKDAYS.map((day, place) => (
          <Field
            key={day}
            label={`${day}, day ${place + 1}`}
            name={`minutes.${place}`}
            value={minutes[place] ?? ''}
            onChange={(text) => setMinutes(minutes.map((each, at) => (at === place ? text : each)))}
            problems={form.problems}
            inputMode="numeric"
            unit="min"
            isNarrow
            isFirst={place === 0}
          />
        ))}
      </Fields>
      <p className="soft small">Before launch weeks run from Monday; in flight from launch day, which is day 1.</p>
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
    </FactForm>
  );
}

const NOTHING: Problem = {
  field: 'minutes.0',
  what: 'No minutes are typed.',
  why: 'A week of empty days would leave every session out.',
  whatToDo: 'Type the minutes of the days that have some, or a 0 where that is meant.',
};
