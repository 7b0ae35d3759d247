import { useState } from 'react';
import type { Problem } from '#contract/problem.ts';
import type { SettingsWindow } from '#contract/windows/settings-window.ts';
import type { Signer } from '#domain/fact.ts';
import type { Day } from '#units/day.ts';
import { Choice, Field, Fields } from '../../parts/parts.ts';
import { ChangeForm, useChange, type BuildChange } from './change-form.tsx';
import { SIGNER_LABELS, signerOf, typedSignerOf, type TypedSigner } from './typed-signer.ts';

interface SignerFormProps {
  readonly settings: SettingsWindow;
  /** Null: somebody new. */
  readonly of: SettingsWindow['signers'][number] | null;
  readonly today: Day;
  readonly onDone: (said: string | null) => void;
}

/** A person who may sign; a deputy signs for somebody, between two days. */
export function SignerForm({ settings, of, today, onDone }: SignerFormProps) {
  const asksWhy = of !== null;
  const [typed, setTyped] = useState(() => typedSignerOf(of?.signer ?? null, today));
  const type = (key: keyof TypedSigner) => (text: string) => setTyped((before) => ({ ...before, [key]: text }));
  const change = useChange({ supersedes: of?.history[0]?.fact ?? null, labels: SIGNER_LABELS, asksWhy, onDone });
  const specialists = settings.signers.map(({ signer }) => signer).filter(({ role }) => role === 'specialist');
  const build: BuildChange = (problems) => {
    const signer = signerOf(typed, of?.signer ?? null, specialists, problems);
    return signer && { kind: 'signs', signer };
  };
  const { problems } = change;
  return (
    <ChangeForm
      change={change}
      build={build}
      labels={SIGNER_LABELS}
      asksWhy={asksWhy}
      action={asksWhy ? 'Change' : 'Record'}
      onCancel={() => onDone(null)}
    >
      <Fields>
        <Field label="Name" name="signer.name" value={typed.name} onChange={type('name')} problems={problems} isFirst />
        {of === null && (
          <Choice
            label="Role"
            name="signer.role"
            value={typed.role}
            onChange={type('role')}
            options={['deputy', 'specialist', 'physician'].map((role) => ({ value: role, label: role }))}
            problems={problems}
          />
        )}
      </Fields>
      {typed.role === 'deputy' && (
        <DeputyFields typed={typed} type={type} specialists={specialists} problems={problems} />
      )}
    </ChangeForm>
  );
}

interface DeputyFieldsProps {
  readonly typed: TypedSigner;
  readonly type: (key: keyof TypedSigner) => (text: string) => void;
  readonly specialists: readonly Signer[];
  readonly problems: readonly Problem[];
}

/** For whom, and between which days. */
const DeputyFields = ({ typed, type, specialists, problems }: DeputyFieldsProps) => (
  <>
    <Choice
      label="Signs for"
      name="signer.signsFor"
      value={typed.signsFor}
      onChange={type('signsFor')}
      options={specialists.map(({ id, name }) => ({ value: id, label: name }))}
      nothing="choose …"
      problems={problems}
    />
    <Fields>
      <Field
        label="From"
        name="signer.from"
        type="date"
        value={typed.from}
        onChange={type('from')}
        problems={problems}
      />
      <Field
        label="Until, with that day"
        name="signer.until"
        type="date"
        value={typed.until}
        onChange={type('until')}
        problems={problems}
      />
    </Fields>
  </>
);
