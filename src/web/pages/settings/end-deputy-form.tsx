import { useState } from 'react';
import type { SettingsWindow } from '#contract/windows/settings-window.ts';
import { isoOfDay, type Day } from '#units/day.ts';
import { Field } from '../../parts/parts.ts';
import { typedDay } from '../record/typed-values.ts';
import { ChangeForm, useChange, type BuildChange } from './change-form.tsx';
import { SIGNER_LABELS } from './typed-signer.ts';

interface EndDeputyFormProps {
  readonly of: SettingsWindow['signers'][number];
  readonly today: Day;
  readonly onDone: (said: string | null) => void;
}

/** A deputy signs no more after a day. What was signed before stands. */
export function EndDeputyForm({ of: { signer, history }, today, onDone }: EndDeputyFormProps) {
  const [until, setUntil] = useState(isoOfDay(today));
  const change = useChange({ supersedes: history[0]?.fact ?? null, labels: SIGNER_LABELS, asksWhy: true, onDone });
  const build: BuildChange = (problems) => {
    const last = typedDay(until, 'signer.until', problems);
    return last === null ? null : { kind: 'signs', signer: { ...signer, until: last } };
  };
  return (
    <ChangeForm
      change={change}
      build={build}
      labels={SIGNER_LABELS}
      asksWhy
      action="End it"
      onCancel={() => onDone(null)}
    >
      <Field
        label="Last day of signing"
        name="signer.until"
        type="date"
        value={until}
        onChange={setUntil}
        problems={change.problems}
        hint="What was signed by then stands."
        isFirst
      />
    </ChangeForm>
  );
}
