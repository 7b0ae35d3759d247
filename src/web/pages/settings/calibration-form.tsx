import { useState } from 'react';
import type { Problem } from '#contract/problem.ts';
import type { MachineSetting } from '#contract/windows/settings-window.ts';
import type { FactBody } from '#domain/fact.ts';
import { isoOfDay, type Day } from '#units/day.ts';
import { asTyped, Field } from '../../parts/parts.ts';
import { typedAmount, typedDay } from '../record/typed-values.ts';
import type { Labels } from './at-its-field.ts';
import { ChangeForm, useChange, type BuildChange } from './change-form.tsx';
import { deliveredOver } from './delivered-over.ts';
import styles from './settings-page.module.css';

interface CalibrationFormProps {
  readonly of: MachineSetting;
  /** The calibration that is corrected; null for a new one. */
  readonly correcting: MachineSetting['calibrations'][number] | null;
  readonly today: Day;
  readonly onDone: (said: string | null) => void;
}

const LABELS: Labels = { day: 'Day', factor: 'Delivered over set', set: 'Set', delivered: 'Delivered' };

/** What a machine delivers of what is set, from a day on. It moves no load by itself; it raises a proposal. */
export function CalibrationForm({ of: { machine }, correcting, today, onDone }: CalibrationFormProps) {
  const [day, setDay] = useState(isoOfDay(correcting?.fact.day ?? today));
  const [set, setSet] = useState('');
  const [delivered, setDelivered] = useState('');
  const [factor, setFactor] = useState<string>(correcting?.fact.factor ?? '');
  const measured = deliveredOver(asTyped(set), asTyped(delivered));
  const shown = measured ?? factor;
  const asksWhy = correcting !== null;
  const change = useChange({ supersedes: correcting?.fact.id ?? null, labels: LABELS, asksWhy, onDone });
  const build: BuildChange = (problems) => calibrationOf(machine.id, day, shown, problems);
  const { problems } = change;
  const pair = { inputMode: 'decimal', unit: machine.unit, problems } as const;
  return (
    <ChangeForm
      change={change}
      build={build}
      labels={LABELS}
      asksWhy={asksWhy}
      action={asksWhy ? 'Correct' : 'Record'}
      onCancel={() => onDone(null)}
    >
      <Field label="Day" name="day" type="date" value={day} onChange={setDay} problems={problems} isFirst />
      <div className={styles['numbers']}>
        <Field {...pair} label="Set" name="set" value={set} onChange={setSet} />
        <Field {...pair} label="Delivered" name="delivered" value={delivered} onChange={setDelivered} />
        <Field
          label="Delivered over set"
          name="factor"
          value={shown}
          onChange={(text) => {
            setSet('');
            setDelivered('');
            setFactor(text);
          }}
          inputMode="decimal"
          problems={problems}
          hint="typed, or from the two"
        />
      </div>
      <p className="soft small">
        Counts from its day on, until the next. No load changes by it: it raises a proposal for everybody on this
        machine.
      </p>
    </ChangeForm>
  );
}

const calibrationOf = (
  machine: Extract<FactBody, { readonly kind: 'calibrated' }>['machine'],
  day: string,
  factor: string,
  problems: Problem[],
): FactBody | null => {
  const on = typedDay(day, 'day', problems);
  const typed = typedAmount(factor, '', 'factor', problems);
  return on === null || typed === null ? null : { kind: 'calibrated', machine, day: on, factor: typed.text };
};
