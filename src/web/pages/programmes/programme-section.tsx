import { useState } from 'react';
import { Link } from 'wouter';
import type { ProgrammesWindow } from '#contract/windows/programmes-window.ts';
import type { ProgrammePhase } from '#domain/programme.ts';
import { showDeload, showSpan } from '#domain/programme-words.ts';
import { keptDraft } from './editor/kept-draft.ts';
import { FollowForm } from './follow-form.tsx';
import { HoldAgainst } from './hold-against.tsx';
import styles from './programmes-page.module.css';
import { WeekGrid } from './week-grid.tsx';

export type VersionEntry = ProgrammesWindow['versions'][number];

interface ProgrammeSectionProps {
  readonly newest: VersionEntry;
  readonly older: readonly VersionEntry[];
  readonly window: ProgrammesWindow;
}

/** One programme: its newest version as it stands, and the versions that it came from. */
export function ProgrammeSection({ newest, older, window }: ProgrammeSectionProps) {
  return (
    <section className={styles['programme']} aria-label={newest.version.name}>
      <Version entry={newest} window={window} />
      {older.map((entry) => (
        <OlderVersion key={entry.version.id} entry={entry} window={window} />
      ))}
    </section>
  );
}

interface VersionProps {
  readonly entry: VersionEntry;
  readonly window: ProgrammesWindow;
}

const OlderVersion = ({ entry, window }: VersionProps) => {
  const [isOpen, setOpen] = useState(false);
  const { version, followers } = entry;
  return (
    <details className={styles['older']} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        {version.name}, version {version.number}{' '}
        <span className="soft">
          {followers.length === 0
            ? 'nobody follows it any more'
            : `followed by ${followers.map(({ name }) => name).join(', ')}`}
        </span>
      </summary>
      {isOpen ? <Version entry={entry} window={window} /> : null}
    </details>
  );
};

/** One immutable version: its phases as weeks, and its followers. */
const Version = ({ entry, window }: VersionProps) => {
  const { version, canFollow } = entry;
  return (
    <article className={styles['version']} id={version.id} aria-label={`${version.name}, version ${version.number}`}>
      <h2>
        {version.name}{' '}
        <span className="soft">
          version {version.number}, {version.id.slice(0, 8)}
        </span>
      </h2>
      <Followers entry={entry} />
      <p className="on-screen">
        <Link href={`/programmes/${version.id}/edit`}>
          {keptDraft(version.id) ? 'Go on with the draft that is kept here' : 'Write the next version'}
        </Link>
      </p>
      <HoldAgainst version={version} window={window} />
      <FollowForm version={version} canFollow={canFollow} />
      {version.phases.map((phase) => (
        <section key={phase.name} className={styles['phase']} aria-label={phase.name}>
          <h3>
            {phase.name.charAt(0).toUpperCase() + phase.name.slice(1)} <span className="soft">{daysOf(phase)}</span>
          </h3>
          <WeekGrid phase={phase} exercises={window.exercises} />
          <p className="soft small">{phase.source}</p>
        </section>
      ))}
    </article>
  );
};

const Followers = ({ entry: { followers } }: { readonly entry: VersionEntry }) => (
  <p>
    {followers.length === 0 ? (
      <span className="soft">Nobody follows it yet.</span>
    ) : (
      <>
        Followed by{' '}
        {followers.map(({ id, name, from }, place) => (
          <span key={id}>
            {place > 0 && ', '}
            <Link href={`/people/${id}`}>{name}</Link> <span className="soft">from {from}</span>
          </span>
        ))}
        .
      </>
    )}
  </p>
);

const daysOf = ({ span, deload }: ProgrammePhase): string =>
  deload === null ? showSpan(span) : `${showSpan(span)}; ${showDeload(deload)}`;
