import type { ReactNode } from 'react';
import type { LiftPerson, LiftSession, LiftWindow } from '#contract/windows/lift-window.ts';
import { join } from '../../parts/join.ts';
import { sessionState } from '../../parts/session-state.ts';
import { discomfortText, doneOf, raiseText, sessionsUnder } from './lift-columns.ts';
import styles from './lift.module.css';

const PastCell = ({ session, isFar }: { readonly session: LiftSession | null; readonly isFar: boolean }) => (
  <td className={join(styles['session'], isFar && styles['far'])}>
    {session ? (
      <>
        <span className={styles['day']}>{session.missionDay}</span>
        <span className="soft">{session.cell.planned}</span>
        <span className={join(styles['done'], session.cell.differs && styles['differs'])}>{doneOf(session)}</span>
      </>
    ) : (
      <span className="faint">–</span>
    )}
  </td>
);

const AheadCell = ({ session }: { readonly session: LiftSession | null }) => (
  <td className={join(styles['session'], session?.state === 'planned' && styles['open'])}>
    {session ? (
      <>
        <span className={styles['day']}>
          {session.missionDay}, {sessionState(session)}
        </span>
        <span className={session.state === 'expected' ? 'soft' : undefined}>
          {session.cell.planned} {session.cell.unit}
          {session.cell.raise && session.state !== 'issued' ? ' ↑' : ''}
        </span>
        {session.cell.limits
          .filter(({ binds }) => binds)
          .map(({ says }) => (
            <span key={says} className={styles['held']} title={says}>
              ⊤ {says}
            </span>
          ))}
      </>
    ) : (
      <span className="faint">–</span>
    )}
  </td>
);

const Told = ({ children }: { readonly children: string | null }) => (
  <td className={styles['told']}>{children ? children : <span className="faint">–</span>}</td>
);

export interface LiftRowProps {
  readonly lift: LiftWindow;
  readonly person: LiftPerson;
  readonly row: number;
  readonly isCursor: boolean;
  /** The name, with the way to the person. */
  readonly children: ReactNode;
}

/** Past sessions that a narrow screen keeps. */
export const NEAR = 1;

/** One person's line. */
export const LiftRow = ({ lift, person, row, isCursor, children }: LiftRowProps) => {
  const { past, ahead } = sessionsUnder(lift, person);
  const discomfort = discomfortText(person);
  return (
    <tr data-person={row} tabIndex={isCursor ? 0 : -1} aria-label={person.name}>
      <th scope="row">
        {children}
        <span className={styles['where']}>{person.dayLabel.replace(' · ', ', ')}</span>
      </th>
      {past.map((session, place) => (
        <PastCell key={session?.day ?? `before ${place}`} session={session} isFar={place < past.length - NEAR} />
      ))}
      {ahead.map((session, place) => (
        <AheadCell key={session?.day ?? `after ${place}`} session={session} />
      ))}
      <Told>{person.estimate}</Told>
      <Told>{person.lastHere}</Told>
      <Told>{person.ramp}</Told>
      <Told>{raiseText(person)}</Told>
      <td className={styles['told']}>
        {discomfort === '' ? null : <span className={styles['hurt']}>hurt {discomfort}</span>}
        {person.unread ? (
          <span className={styles['hurt']}>
            ● {person.unread.missionDay}: {person.unread.text}
          </span>
        ) : null}
        {discomfort === '' && !person.unread ? <span className="faint">–</span> : null}
      </td>
    </tr>
  );
};
