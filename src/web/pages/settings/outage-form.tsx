import { useState } from 'react';
import type { Problem } from '#contract/problem.ts';
import type { MachineSetting } from '#contract/windows/settings-window.ts';
import type { Machine } from '#domain/catalogue.ts';
import type { FactBody } from '#domain/fact.ts';
import { addDays, isoOfDay, type Day } from '#units/day.ts';
import { dateWithYear, Field, Fields } from '../../parts/parts.ts';
import { typedDay, typedDayOrNone, typedWords } from '../record/typed-values.ts';
import type { Labels } from './at-its-field.ts';
import { CardsBetween } from './cards-between.tsx';
import { ChangeForm, useChange, type BuildChange } from './change-form.tsx';

interface OutageFormProps {
  readonly of: MachineSetting;
  readonly today: Day;
  readonly onDone: (said: string | null) => void;
}

const LABELS: Labels = {
  'entry.machine.outOfService.from': 'From',
  'entry.machine.outOfService.until': 'Until',
  'entry.machine.outOfService.reason': 'Reason',
};

const machineFact = (machine: Machine, outOfService: Machine['outOfService']): FactBody => ({
  kind: 'catalogued',
  entry: { kind: 'machine', machine: { ...machine, outOfService } },
});

/** Out of service from a day, to a day where that is known; new dates where it is out already. */
export function OutOfServiceForm({ of, today, onDone }: OutageFormProps) {
  const { machine, history, cards } = of;
  const standing = machine.outOfService;
  const [from, setFrom] = useState(isoOfDay(standing?.from ?? today));
  const [until, setUntil] = useState(standing && standing.until !== null ? isoOfDay(standing.until) : '');
  const [reason, setReason] = useState(standing?.reason ?? '');
  const change = useChange({ supersedes: history[0]?.fact ?? null, labels: LABELS, asksWhy: false, onDone });
  const build: BuildChange = (problems) => outOf({ machine, from, until, reason }, problems);
  const signed = { ...change, submit: (each: BuildChange) => change.submit(each, `out of service: ${reason.trim()}`) };
  const { problems } = change;
  return (
    <ChangeForm
      change={signed}
      build={build}
      labels={LABELS}
      asksWhy={false}
      action={standing === null ? 'Take out of service' : 'Change'}
      onCancel={() => onDone(null)}
    >
      <Fields>
        <Field
          label="From"
          name="entry.machine.outOfService.from"
          type="date"
          value={from}
          onChange={setFrom}
          problems={problems}
          isFirst
        />
        <Field
          label="Until, with that day"
          name="entry.machine.outOfService.until"
          type="date"
          value={until}
          onChange={setUntil}
          problems={problems}
          hint="may be left open"
        />
      </Fields>
      <Field
        label="Reason"
        name="entry.machine.outOfService.reason"
        value={reason}
        onChange={setReason}
        problems={problems}
        hint="Cards say it where a lift is left out."
        isRequired
      />
      <CardsBetween cards={cards} from={from} until={until} />
    </ChangeForm>
  );
}

interface Typed {
  readonly machine: Machine;
  readonly from: string;
  readonly until: string;
  readonly reason: string;
}

const outOf = ({ machine, ...typed }: Typed, problems: Problem[]): FactBody | null => {
  const from = typedDay(typed.from, 'entry.machine.outOfService.from', problems);
  const until = typedDayOrNone(typed.until, 'entry.machine.outOfService.until', problems);
  const reason = typedWords(typed.reason, 'entry.machine.outOfService.reason', problems);
  return from === null || reason === null ? null : machineFact(machine, { from, until, reason });
};

/** In service again from a day on: the days before stay on the sheets. */
export function BackInServiceForm({ of, today, onDone }: OutageFormProps) {
  const { machine, history } = of;
  const out = machine.outOfService;
  const [on, setOn] = useState(isoOfDay(today));
  const change = useChange({ supersedes: history[0]?.fact ?? null, labels: BACK_LABELS, asksWhy: false, onDone });
  const signed = { ...change, submit: (each: BuildChange) => change.submit(each, `back in service on ${on}`) };
  const build: BuildChange = (problems) => {
    const day = typedDay(on, 'back', problems);
    if (day === null || out === null) return null;
    return machineFact(machine, day <= out.from ? null : { ...out, until: addDays(day, -1) });
  };
  return (
    <ChangeForm
      change={signed}
      build={build}
      labels={BACK_LABELS}
      asksWhy={false}
      action="Back in service"
      onCancel={() => onDone(null)}
    >
      {out !== null && (
        <p className="soft">
          Out since {dateWithYear(out.from)}: {out.reason}
        </p>
      )}
      <Field
        label="First day in service again"
        name="back"
        type="date"
        value={on}
        onChange={setOn}
        problems={change.problems}
        isFirst
      />
    </ChangeForm>
  );
}

const BACK_LABELS: Labels = { back: 'First day in service again' };
