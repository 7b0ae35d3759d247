import { useState } from 'react';
import type { SettingsWindow } from '#contract/windows/settings-window.ts';
import type { Signer } from '#domain/fact.ts';
import type { Day } from '#units/day.ts';
import { Button, dateWithYear, Table } from '../../parts/parts.ts';
import { GuardedDialog } from './guarded-dialog.tsx';
import { EndDeputyForm } from './end-deputy-form.tsx';
import { History } from './history.tsx';
import styles from './settings-page.module.css';
import { SignerForm } from './signer-form.tsx';

type SignerSetting = SettingsWindow['signers'][number];
type Doing = { readonly kind: 'add' } | { readonly kind: 'change' | 'end'; readonly of: SignerSetting };

interface SignersProps {
  readonly settings: SettingsWindow;
  readonly today: Day;
  readonly onSaid: (said: string | null) => void;
}

/** Whose names go under what is written. */
export function Signers({ settings, today, onSaid }: SignersProps) {
  const [doing, setDoing] = useState<Doing | null>(null);
  const done = (said: string | null): void => {
    setDoing(null);
    onSaid(said);
  };
  const nameOf = (id: Signer['signsFor']): string =>
    settings.signers.find(({ signer }) => signer.id === id)?.signer.name ?? '';
  return (
    <section aria-label="Signers" id="signers" className={styles['stacks']}>
      <h2>Signers</h2>
      <Table caption="Who signs here" isCaptionHidden isWide={false}>
        <thead>
          <tr>
            <th scope="col">name</th>
            <th scope="col">role</th>
            <th scope="col">signs for</th>
            <th scope="col">from</th>
            <th scope="col">until</th>
            <th scope="col" className="on-screen">
              <span className="unseen">what can be done</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {settings.signers.map((each) => (
            <SignerRow
              key={each.signer.id}
              of={each}
              signsFor={each.signer.signsFor === null ? '–' : nameOf(each.signer.signsFor)}
              today={today}
              onDo={setDoing}
            />
          ))}
        </tbody>
      </Table>
      <Button onPress={() => setDoing({ kind: 'add' })}>Add a signer or deputy</Button>
      {doing !== null && (
        <GuardedDialog title={titleOf(doing)} onClose={() => setDoing(null)} place="side">
          {doing.kind === 'end' ? (
            <EndDeputyForm of={doing.of} today={today} onDone={done} />
          ) : (
            <SignerForm
              settings={settings}
              of={doing.kind === 'change' ? doing.of : null}
              today={today}
              onDone={done}
            />
          )}
        </GuardedDialog>
      )}
    </section>
  );
}

const titleOf = (doing: Doing): string => {
  switch (doing.kind) {
    case 'add':
      return 'Add a signer or deputy';
    case 'change':
      return `Change ${doing.of.signer.name}`;
    case 'end':
      return `${doing.of.signer.name} signs no more`;
  }
};

interface SignerRowProps {
  readonly of: SignerSetting;
  readonly signsFor: string;
  readonly today: Day;
  readonly onDo: (doing: Doing) => void;
}

function SignerRow({ of, signsFor, today, onDo }: SignerRowProps) {
  const { name, role, from, until } = of.signer;
  const isOver = until !== null && until < today;
  return (
    <tr>
      <th scope="row">
        {name}
        {of.history.length > 1 && (
          <details className={styles['more']}>
            <summary className="soft small">how it came to stand</summary>
            <History history={of.history} wordOf={(field) => (field === 'signsFor' ? 'signs for' : field)} />
          </details>
        )}
      </th>
      <td data-label="role">{role}</td>
      <td data-label="signs for">{signsFor}</td>
      <td data-label="from">{from === null ? '–' : dateWithYear(from)}</td>
      <td data-label="until">
        {until === null ? '–' : dateWithYear(until)}
        {isOver && <span className="soft small"> over</span>}
      </td>
      <td className="on-screen">
        <span className={styles['acts']}>
          <Button kind="link" label={`Change ${name}`} onPress={() => onDo({ kind: 'change', of })}>
            change
          </Button>
          {role === 'deputy' && !isOver && (
            <Button kind="link" label={`End the time of ${name}`} onPress={() => onDo({ kind: 'end', of })}>
              end
            </Button>
          )}
        </span>
      </td>
    </tr>
  );
}
