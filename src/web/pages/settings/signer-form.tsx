import { useState } from 'react';
import type { Problem } from '#contract/problem.ts';
import type { HouseWindow } from '#contract/windows/house-window.ts';
import type { Signer } from '#domain/fact.ts';
import { idOf } from '#domain/identity.ts';
import { Choice, Field, Fields } from '../../parts/parts.ts';
import { FactForm, useFactForm, type Build } from '../record/fact-form.tsx';
import { chosenFrom, typedDay, typedWords } from '../record/typed-values.ts';

const FIELDS = ['signer.name', 'signer.signsFor', 'signer.from', 'signer.until'];

interface Typed {
  readonly name: string;
  readonly role: string;
  readonly signsFor: string;
  readonly from: string;
  readonly until: string;
}

interface SignerFormProps {
  readonly house: HouseWindow;
  readonly onDone: () => void;
}

/** A person who may sign; a deputy signs for somebody, between two days. */
export function SignerForm({ house, onDone }: SignerFormProps) {
  const form = useFactForm(null, onDone);
  const [typed, setTyped] = useState<Typed>({ name: '', role: 'deputy', signsFor: '', from: '', until: '' });
  const type = (key: keyof Typed) => (text: string) => setTyped((before) => ({ ...before, [key]: text }));
  const { problems } = form;
  const specialists = house.signers.filter(({ role }) => role === 'specialist');
  const build: Build = (found) => {
    const signer = signerOf(typed, specialists, found);
    return signer === null ? null : [{ kind: 'signs', signer }];
  };
  return (
    <FactForm form={form} build={build} fields={FIELDS} correcting={null} onCancel={onDone}>
      <Fields>
        <Field label="Name" name="signer.name" value={typed.name} onChange={type('name')} problems={problems} isFirst />
        <Choice
          label="Role"
          value={typed.role}
          onChange={type('role')}
          options={['deputy', 'specialist', 'physician'].map((role) => ({ value: role, label: role }))}
        />
      </Fields>
      {typed.role === 'deputy' && (
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
              label="Until"
              name="signer.until"
              type="date"
              value={typed.until}
              onChange={type('until')}
              problems={problems}
            />
          </Fields>
        </>
      )}
    </FactForm>
  );
}

const signerOf = (typed: Typed, specialists: readonly Signer[], problems: Problem[]): Signer | null => {
  const name = typedWords(typed.name, 'signer.name', problems);
  const id = idOf<'signer'>(crypto.randomUUID());
  if (typed.role !== 'deputy') {
    const role = typed.role === 'physician' ? 'physician' : 'specialist';
    return name === null ? null : { id, name, role, signsFor: null, from: null, until: null };
  }
  const specialist = chosenFrom(specialists, typed.signsFor, 'signer.signsFor', problems);
  const from = typedDay(typed.from, 'signer.from', problems);
  const until = typedDay(typed.until, 'signer.until', problems);
  if (name === null || specialist === null || from === null || until === null) return null;
  if (until < from) problems.push(ENDS_BEFORE_IT_BEGINS);
  return { id, name, role: 'deputy', signsFor: specialist.id, from, until };
};

const ENDS_BEFORE_IT_BEGINS: Problem = {
  field: 'signer.until',
  what: 'The last day is before the first.',
  why: 'A deputy signs from one day to another.',
  whatToDo: 'Correct one of them.',
};
