import { useState } from 'react';
import type { Problem } from '#contract/problem.ts';
import type { HouseWindow } from '#contract/windows/house-window.ts';
import type { RecordWindow } from '#contract/windows/record-window.ts';
import type { Fact, FactBody } from '#domain/fact.ts';
import { idOf, type MissionId, type PersonId } from '#domain/identity.ts';
import { isoOfDay } from '#units/day.ts';
import { Choice, Field, Fields } from '../../parts/parts.ts';
import { FactForm, useFactForm, type Build, type FormProps } from './fact-form.tsx';
import styles from './record-page.module.css';
import { chosenFrom, typedDay, typedDayOrNone, typedWords } from './typed-values.ts';

const FIELDS = ['name', 'site', 'launch', 'landing'];

interface Typed {
  readonly mission: string;
  readonly name: string;
  readonly site: string;
  readonly launch: string;
  readonly earliest: string;
  readonly latest: string;
  readonly role: string;
  readonly team: string;
  /** "yes" or nothing. */
  readonly spaceWalks: string;
}

const NEW = 'new';

/** A mission's dates, and this person's place on it. What is anchored to launch or landing moves along. */
export function MissionForm({ record, person, house, onDone }: FormProps & { readonly record: RecordWindow }) {
  const form = useFactForm(null, onDone);
  const assigned = assignmentOf(record);
  const [typed, setTyped] = useState<Typed>(() =>
    startOf(house, assigned?.mission ?? house.missions[0]?.id ?? null, assigned),
  );
  const type = (key: keyof Typed) => (text: string) => setTyped((before) => ({ ...before, [key]: text }));
  const { problems } = form;
  const build: Build = (found) => bodiesOf(typed, house, person, found);
  return (
    <FactForm form={form} build={build} fields={FIELDS} correcting={null} onCancel={onDone}>
      <p>Dates are of the mission: they move for everybody on it. Issued cards stand as they are.</p>
      <Fields>
        <Choice
          label="Mission"
          value={typed.mission}
          onChange={(mission) => setTyped(startOf(house, mission === NEW ? null : mission, assigned))}
          options={[
            ...house.missions.map(({ id, name }) => ({ value: id, label: name })),
            { value: NEW, label: 'a new mission' },
          ]}
        />
        <Field label="Name" name="name" value={typed.name} onChange={type('name')} problems={problems} />
      </Fields>
      <Choice
        label="Site aboard"
        name="site"
        value={typed.site}
        onChange={type('site')}
        options={house.sites
          .filter(({ place }) => place === 'aboard')
          .map(({ id, name }) => ({ value: id, label: name }))}
        nothing="choose …"
        problems={problems}
      />
      <DateFields typed={typed} type={type} problems={problems} />
      <PlaceFields typed={typed} type={type} />
    </FactForm>
  );
}

interface TypedFieldsProps {
  readonly typed: Typed;
  readonly type: (key: keyof Typed) => (text: string) => void;
}

function DateFields({ typed, type, problems }: TypedFieldsProps & { readonly problems: readonly Problem[] }) {
  return (
    <Fields>
      <Field
        label="Launch"
        name="launch"
        type="date"
        value={typed.launch}
        onChange={type('launch')}
        problems={problems}
      />
      <Field
        label="Landing, earliest"
        name="landing"
        type="date"
        value={typed.earliest}
        onChange={type('earliest')}
        problems={problems}
        hint="may be left open"
      />
      <Field
        label="Landing, latest"
        type="date"
        value={typed.latest}
        onChange={type('latest')}
        hint="if it is a range"
      />
    </Fields>
  );
}

function PlaceFields({ typed, type }: TypedFieldsProps) {
  return (
    <>
      <Fields>
        <Choice
          label="Role"
          value={typed.role}
          onChange={type('role')}
          options={[
            { value: 'prime', label: 'prime' },
            { value: 'backup', label: 'backup' },
          ]}
        />
        <Choice
          label="Team"
          value={typed.team}
          onChange={type('team')}
          options={[
            { value: 'ours', label: 'ours' },
            { value: 'another team', label: 'another team: machines and minutes only' },
          ]}
        />
      </Fields>
      <label className={styles['tick']}>
        <input
          type="checkbox"
          checked={typed.spaceWalks === 'yes'}
          onChange={(event) => type('spaceWalks')(event.target.checked ? 'yes' : '')}
        />
        Prepares for space walks: hands and forearms are trained for a pressurised suit
      </label>
    </>
  );
}

const assignmentOf = ({ lines }: RecordWindow): Fact<'assigned'> | null =>
  lines.flatMap(({ fact, standing }) => (fact.kind === 'assigned' && standing === 'stands' ? [fact] : []))[0] ?? null;

const startOf = (house: HouseWindow, id: string | null, assigned: Fact<'assigned'> | null): Typed => {
  const mission = house.missions.find((each) => each.id === id);
  const aboard = house.sites.filter(({ place }) => place === 'aboard');
  return {
    mission: mission?.id ?? NEW,
    name: mission?.name ?? '',
    site: aboard.length === 1 ? (aboard[0]?.id ?? '') : '',
    launch: mission ? isoOfDay(mission.launch) : '',
    earliest: mission?.landing ? isoOfDay(mission.landing.earliest) : '',
    latest: mission?.landing ? isoOfDay(mission.landing.latest) : '',
    role: assigned?.role ?? 'prime',
    team: assigned?.team ?? 'ours',
    spaceWalks: assigned?.spaceWalks === true ? 'yes' : '',
  };
};

const bodiesOf = (
  typed: Typed,
  house: HouseWindow,
  person: PersonId,
  problems: Problem[],
): readonly FactBody[] | null => {
  const name = typedWords(typed.name, 'name', problems);
  const site = chosenFrom(house.sites, typed.site, 'site', problems);
  const launch = typedDay(typed.launch, 'launch', problems);
  const earliest = typedDayOrNone(typed.earliest, 'landing', problems);
  const latest = typedDayOrNone(typed.latest, 'landing', problems);
  if (name === null || !site || launch === null) return null;
  const known = house.missions.find(({ id }) => id === typed.mission)?.id;
  const mission: MissionId = known ?? idOf<'mission'>(crypto.randomUUID());
  const landing = earliest === null ? null : { earliest, latest: latest ?? earliest };
  return [
    { kind: 'dated', mission, name, site: site.id, launch, landing },
    {
      kind: 'assigned',
      person,
      mission,
      role: typed.role === 'backup' ? 'backup' : 'prime',
      team: typed.team === 'another team' ? 'another team' : 'ours',
      spaceWalks: typed.spaceWalks === 'yes',
    },
  ];
};
