import type { ReactNode } from 'react';
import { Link, useLocation } from 'wouter';
import type { PersonHead } from '#contract/windows/person-head.ts';
import { useHouse } from '../windows.ts';
import { useTitle } from './page.tsx';
import { PersonSwitcher } from './person-switcher.tsx';
import { useShortcut } from './shortcut.ts';
import styles from './person-frame.module.css';

export type PersonTab = 'Sheet' | 'Road' | 'Capacity' | 'Crossing' | 'Record';

const TABS: readonly { readonly tab: PersonTab; readonly path: string }[] = [
  { tab: 'Sheet', path: '' },
  { tab: 'Road', path: '/road' },
  { tab: 'Capacity', path: '/capacity' },
  { tab: 'Crossing', path: '/crossing' },
  { tab: 'Record', path: '/record' },
];

const countsOf = ({ of, done, calledOff, notHeard }: PersonHead['reported']): string =>
  of === 0
    ? 'no card in the last 14 days'
    : [
        `reported ${done} of ${of}`,
        ...(calledOff > 0 ? [`${calledOff} called off`] : []),
        ...(notHeard > 0 ? [`${notHeard} not heard`] : []),
        '14 days',
      ].join(', ');

const bodyOf = ({ age, sex, stature, bodyMass }: PersonHead): string =>
  [
    sex,
    ...(age === null ? [] : [`${age} y`]),
    ...(stature ? [stature] : []),
    ...(bodyMass ? [bodyMass.text] : []),
  ].join(' · ');

export interface PersonFrameProps {
  readonly person: PersonHead;
  readonly active: PersonTab;
  readonly children: ReactNode;
}

/** Name, day and counts of a person, the person's pages, and the way to the next one (key N). */
export const PersonFrame = ({ person, active, children }: PersonFrameProps) => {
  useTitle(`${person.name}, ${active}`);
  const [, go] = useLocation();
  const house = useHouse().data;
  const tail = TABS.find(({ tab }) => tab === active)?.path ?? '';
  useShortcut('n', () => {
    if (person.next) go(`/people/${person.next.id}${tail}`);
  });
  return (
    <>
      <header className={styles['head']}>
        <h1>{person.name}</h1>
        <p className="soft">
          {person.dayLabel} · {countsOf(person.reported)}
          <br />
          <span className="small on-screen">
            {bodyOf(person)}
            {person.programme ? ` · ${person.programme}` : ''}
          </span>
        </p>
        <div className={`${styles['way'] ?? ''} on-screen`}>
          {house ? <PersonSwitcher house={house} person={person.id} tail={tail} /> : null}
          <span>
            {person.place} of {person.ofPeople}
            {person.next ? (
              <>
                {' '}
                · next: <Link href={`/people/${person.next.id}${tail}`}>{person.next.name}</Link> <kbd>N</kbd>
              </>
            ) : null}
          </span>
        </div>
      </header>
      <nav className={`${styles['tabs'] ?? ''} on-screen`} aria-label={`Pages of ${person.name}`}>
        {TABS.map(({ tab, path }) => (
          <Link key={tab} href={`/people/${person.id}${path}`} aria-current={tab === active ? 'page' : undefined}>
            {tab}
          </Link>
        ))}
      </nav>
      {children}
    </>
  );
};
