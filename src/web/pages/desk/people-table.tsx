import { Link } from 'wouter';
import type { DeskPerson, DeskWindow } from '#contract/windows/desk-window.ts';
import { Table } from '../../parts/table.tsx';
import { LoadTrend } from './load-trend.tsx';
import { ReportedStrip } from './reported-strip.tsx';
import styles from './desk.module.css';

const GROUPS = [
  { group: 'in flight', label: 'In flight' },
  { group: 'before launch', label: 'Before launch' },
  { group: 'returned', label: 'Returned' },
  { group: 'no mission', label: 'No mission' },
] as const;

const unitOf = (people: readonly DeskPerson[], lift: 'squat' | 'deadlift'): string => {
  const units = new Set(people.filter((person) => person[lift].newest !== null).map((person) => person[lift].unit));
  return units.size === 1 ? ([...units][0] ?? '') : '';
};

const Row = ({ person, mixed }: { readonly person: DeskPerson; readonly mixed: boolean }) => (
  <tr>
    <th scope="row">
      <Link className={styles['person']} href={`/people/${person.id}`}>
        {person.name}
      </Link>
      {person.restrictions > 0 ? (
        <span className={styles['restricted']}>
          {' '}
          {person.restrictions === 1 ? 'restriction' : `${person.restrictions} restrictions`}
        </span>
      ) : null}
      {person.team === 'another team' ? <span className="faint small"> another team</span> : null}
    </th>
    <td>{person.dayLabel.replace(' · ', ', ')}</td>
    <td className={styles['next']}>{person.nextEvent ?? <span className="faint">–</span>}</td>
    <td>
      <LoadTrend trend={person.squat} lift="Squat" />
      {mixed && person.squat.newest !== null ? <span className="soft small"> {person.squat.unit}</span> : null}
    </td>
    <td>
      <LoadTrend trend={person.deadlift} lift="Deadlift" />
      {mixed && person.deadlift.newest !== null ? <span className="soft small"> {person.deadlift.unit}</span> : null}
    </td>
    <td>
      <ReportedStrip reported={person.reported} />
    </td>
  </tr>
);

const LiftLink = ({ id, children }: { readonly id: string | null; readonly children: string }) =>
  id === null ? (
    children
  ) : (
    <Link href={`/lift/${id}`} title={`${children}, all people`}>
      {children}
    </Link>
  );

/** Everybody on one line. */
export const PeopleTable = ({ desk: { people, lifts } }: { readonly desk: DeskWindow }) => {
  const unit = unitOf(people, 'squat');
  const mixed = unit === '' || unit !== unitOf(people, 'deadlift');
  return (
    <Table caption="Everybody" isCaptionHidden>
      <thead>
        <tr>
          <th scope="col">Person</th>
          <th scope="col">Day</th>
          <th scope="col" className={styles['next']}>
            Next
          </th>
          <th scope="col">
            <LiftLink id={lifts.squat}>Squat</LiftLink>{' '}
            <span className="faint">machine load{mixed ? '' : `, ${unit}`}</span>
          </th>
          <th scope="col">
            <LiftLink id={lifts.deadlift}>Deadlift</LiftLink>
          </th>
          <th scope="col">Reported, 14 days</th>
        </tr>
      </thead>
      {GROUPS.map(({ group, label }) => {
        const inGroup = people.filter((person) => person.group === group);
        return inGroup.length > 0 ? (
          <tbody key={group}>
            <tr className={styles['group']}>
              <th scope="rowgroup" colSpan={6}>
                {label}
              </th>
            </tr>
            {inGroup.map((person) => (
              <Row key={person.id} person={person} mixed={mixed} />
            ))}
          </tbody>
        ) : null;
      })}
    </Table>
  );
};
