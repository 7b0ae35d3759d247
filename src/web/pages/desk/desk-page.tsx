import { Link } from 'wouter';
import type { DeskWindow } from '#contract/windows/desk-window.ts';
import { Await } from '../../parts/await.tsx';
import { longDate } from '../../parts/dates.ts';
import { Empty, Page } from '../../parts/page.tsx';
import { useDesk } from '../../windows.ts';
import { DeskLineRow } from './desk-line-row.tsx';
import { PeopleTable } from './people-table.tsx';
import styles from './desk.module.css';

const COUNTS = ['nothing', 'one thing', 'two things', 'three things', 'four things', 'five things', 'six things'];

const leadOf = ({ lines }: DeskWindow): string => {
  const count = COUNTS[lines.length] ?? `${lines.length} things`;
  return lines.length > 1 ? `${count} need you, worst first` : `${count} needs you`;
};

const Desk = ({ desk }: { readonly desk: DeskWindow }) => (
  <Page title={longDate(desk.today)} lead={leadOf(desk)}>
    {desk.lines.length > 0 ? (
      <ul className={styles['lines']} aria-label="What needs you now, worst first">
        {desk.lines.map((line) => (
          <DeskLineRow key={`${line.kind} ${line.person} ${line.says}`} line={line} today={desk.today} />
        ))}
      </ul>
    ) : null}
    {desk.people.length > 0 ? (
      <PeopleTable desk={desk} />
    ) : (
      <Empty>
        Nobody is here yet. <Link href="/in-and-out">Bring people and their tests in</Link> from a spreadsheet; then let
        them follow a programme.
      </Empty>
    )}
  </Page>
);

/** What needs the specialist now, then everybody on one line. */
export const DeskPage = () => <Await query={useDesk()}>{(desk) => <Desk desk={desk} />}</Await>;
