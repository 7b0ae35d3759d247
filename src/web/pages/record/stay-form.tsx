import { useState } from 'react';
import { isoOfDay } from '#units/day.ts';
import { Choice, Field, Fields } from '../../parts/parts.ts';
import { FactForm, useFactForm, type Build, type FormProps } from './fact-form.tsx';
import { chosenFrom, typedDay, typedDayOrNone } from './typed-values.ts';

/** Where somebody trains on the ground: sessions of those days are made for what that site has. */
export function StayForm({ person, house, correcting, onDone }: FormProps<'stays'>) {
  const form = useFactForm(correcting, onDone);
  const [site, setSite] = useState<string>(correcting?.site ?? '');
  const [from, setFrom] = useState(isoOfDay(correcting?.from ?? house.today));
  const [until, setUntil] = useState(correcting && correcting.until !== null ? isoOfDay(correcting.until) : '');
  const sites = house.sites.filter(({ place }) => place === 'ground');
  const build: Build = (problems) => {
    const chosen = chosenFrom(sites, site, 'site', problems);
    const first = typedDay(from, 'from', problems);
    const last = typedDayOrNone(until, 'until', problems);
    return chosen && first !== null && problems.length === 0
      ? [{ kind: 'stays', person, site: chosen.id, from: first, until: last }]
      : null;
  };
  return (
    <FactForm form={form} build={build} fields={['site', 'from', 'until']} correcting={correcting} onCancel={onDone}>
      <Choice
        label="Trains at"
        name="site"
        value={site}
        onChange={setSite}
        options={sites.map(({ id, name }) => ({ value: id, label: name }))}
        nothing="choose …"
        problems={form.problems}
      />
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
