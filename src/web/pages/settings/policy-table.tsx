import { useState } from 'react';
import { dayFromIso } from '#units/day.ts';
import type { SettingsWindow } from '#contract/windows/settings-window.ts';
import { POLICY_TERMS } from '#domain/policy-terms.ts';
import { DEFAULT_POLICIES, type Policies } from '#domain/policies.ts';
import { Button, dateWithYear, join, Table } from '../../parts/parts.ts';
import { GuardedDialog } from './guarded-dialog.tsx';
import { standingFor } from './policy-fact.ts';
import { PolicyForm } from './policy-form.tsx';
import { POLICY_WORDS, shownPolicy } from './policy-words.ts';
import styles from './settings-page.module.css';

interface PolicyTableProps {
  readonly settings: SettingsWindow;
  readonly onSaid: (said: string | null) => void;
}

/** What this team has set for itself, with the defaults where they differ and what those rest on. */
export function PolicyTable({ settings, onSaid }: PolicyTableProps) {
  const [name, setName] = useState<keyof Policies | null>(null);
  return (
    <section aria-label="Policies" id="policies" className={join(styles['policies'], styles['stacks'])}>
      <h2>Policies</h2>
      <Table caption="Practice that a team may set for itself" isCaptionHidden>
        <thead>
          <tr>
            <th scope="col">policy</th>
            <th scope="col">value</th>
            <th scope="col">what it means</th>
            <th scope="col">the default rests on</th>
            <th scope="col" className="on-screen">
              <span className="unseen">what can be done</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {(Object.keys(POLICY_WORDS) as (keyof Policies)[]).map((each) => (
            <PolicyRow key={each} name={each} settings={settings} onChange={() => setName(each)} />
          ))}
        </tbody>
      </Table>
      {name !== null && (
        <GuardedDialog title={POLICY_WORDS[name].title} onClose={() => setName(null)} place="side">
          <PolicyForm
            name={name}
            settings={settings}
            onDone={(said) => {
              setName(null);
              onSaid(said);
            }}
          />
        </GuardedDialog>
      )}
    </section>
  );
}

interface PolicyRowProps {
  readonly name: keyof Policies;
  readonly settings: SettingsWindow;
  readonly onChange: () => void;
}

function PolicyRow({ name, settings, onChange }: PolicyRowProps) {
  const { title, means } = POLICY_WORDS[name];
  const [value, byDefault] = [shownPolicy(name, settings.policies), shownPolicy(name, DEFAULT_POLICIES)];
  return (
    <tr id={name}>
      <th scope="row">{title}</th>
      <td>
        {value}
        {value !== byDefault && <div className="soft small">as shipped: {byDefault}</div>}
        <SetBy name={name} settings={settings} />
      </td>
      <td className="soft">{means}</td>
      <td data-label="rests on" className="soft small">
        {POLICY_TERMS[name].restsOn}
      </td>
      <td className="on-screen">
        <Button kind="link" label={`Set ${title}`} onPress={onChange}>
          set
        </Button>
      </td>
    </tr>
  );
}

function SetBy({ name, settings }: Omit<PolicyRowProps, 'onChange'>) {
  const standing = standingFor(name, settings);
  if (standing === null) return null;
  const { fact, by } = standing;
  const day = dayFromIso(fact.recordedAt.slice(0, 10));
  return (
    <div className="soft small">
      set by {by}
      {day !== null && `, ${dateWithYear(day)}`}
      {fact.reason !== null && `, because ${fact.reason}`}
    </div>
  );
}
