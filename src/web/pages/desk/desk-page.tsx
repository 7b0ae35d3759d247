import { Link } from 'wouter';
import type { DeskWindow } from '#contract/windows/desk-window.ts';
import { Await } from '../../parts/await.tsx';
import { longDate } from '../../parts/dates.ts';
import { Empty, Page } from '../../parts/page.tsx';
import { useDesk } from '../../windows.ts';
import { needsByPerson } from './needs-by-person.ts';
import { PeopleTable } from './people-table.tsx';
import { PersonNeeds } from './person-needs.tsx';
import styles from './desk.module.css';

const COUNTS = ['nobody', 'one person', 'two people', 'three people', 'four people', 'five people', 'six people'];

const leadOf = (people: number): string => {
  const count = COUNTS[people] ?? `${people} people`;
  return people > 1 ? `${count} need you, worst first` : `${count} needs you`;
};

const Desk = ({ desk }: { readonly desk: DeskWindow }) => {
  const needs = needsByPerson(desk.lines);
  return (
    <Page title={longDate(desk.today)} lead={leadOf(needs.length)}>
      {needs.length > 0 ? (
        <ul className={styles['lines']} aria-label="What needs you now, worst first">
          {needs.map((need) => (
            <PersonNeeds key={need.person} need={need} today={desk.today} />
          ))}
        </ul>
      ) : null}
      {desk.people.length > 0 ? (
        <PeopleTable desk={desk} />
      ) : (
        <Empty>
          Nobody is here yet. <Link href="/in-and-out">Bring people and their tests in</Link> from a spreadsheet; then
          let them follow a programme.
        </Empty>
      )}
    </Page>
  );
};

/** What needs the specialist now, then everybody on one line. */
export const DeskPage = () => <Await query={useDesk()}>{(desk) => <Desk desk={desk} />}</Await>;
