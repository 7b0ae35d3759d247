import { useState } from 'react';
import type { SettingsWindow } from '#contract/windows/settings-window.ts';
import { idOf } from '#domain/identity.ts';
import { Choice, Field, Fields } from '../../parts/parts.ts';
import { typedWords } from '../record/typed-values.ts';
import type { Labels } from './at-its-field.ts';
import { ChangeForm, useChange, type BuildChange } from './change-form.tsx';

interface SiteFormProps {
  /** Null: a new site. */
  readonly of: SettingsWindow['sites'][number] | null;
  readonly onDone: (said: string | null) => void;
}

const LABELS: Labels = { 'entry.site.name': 'Name', 'entry.site.place': 'Place' };

/** A place where somebody trains. Whether it is on the ground or aboard stays. */
export function SiteForm({ of, onDone }: SiteFormProps) {
  const [name, setName] = useState(of?.site.name ?? '');
  const [place, setPlace] = useState<string>(of?.site.place ?? 'ground');
  const asksWhy = of !== null;
  const change = useChange({ supersedes: of?.history[0]?.fact ?? null, labels: LABELS, asksWhy, onDone });
  const build: BuildChange = (problems) => {
    const typed = typedWords(name, 'entry.site.name', problems);
    if (typed === null) return null;
    const id = of?.site.id ?? idOf<'site'>(crypto.randomUUID());
    const site = { id, name: typed, place: place === 'aboard' ? ('aboard' as const) : ('ground' as const) };
    return { kind: 'catalogued', entry: { kind: 'site', site } };
  };
  return (
    <ChangeForm
      change={change}
      build={build}
      labels={LABELS}
      asksWhy={asksWhy}
      action={asksWhy ? 'Rename' : 'Enter'}
      onCancel={() => onDone(null)}
    >
      <Fields>
        <Field label="Name" name="entry.site.name" value={name} onChange={setName} problems={change.problems} isFirst />
        {of === null && (
          <Choice
            label="Place"
            name="entry.site.place"
            value={place}
            onChange={setPlace}
            options={[
              { value: 'ground', label: 'on the ground' },
              { value: 'aboard', label: 'aboard' },
            ]}
            problems={change.problems}
            hint="Stays: its machines are loaded in that gravity."
          />
        )}
      </Fields>
    </ChangeForm>
  );
}
