import { Link } from 'wouter';
import type { DeskLink } from '#contract/windows/desk-window.ts';
import type { Day } from '#units/day.ts';
import { datesInWords } from '../road/dates-in-words.ts';
import { DeskLineRow } from './desk-line-row.tsx';
import type { Asked, PersonNeed } from './needs-by-person.ts';
import styles from './desk.module.css';

/** One person: what is urgent stands open, several proposals fold into one line, what the road asks for is one paragraph. */
export const PersonNeeds = ({ need, today }: { readonly need: PersonNeed; readonly today: Day }) => (
  <li className={styles['needs']}>
    <Link className={styles['who']} href={`/people/${need.person}`}>
      {need.name}
    </Link>
    <div>
      <ul>
        {[...need.urgent, ...(need.proposals.length === 1 ? need.proposals : [])].map((line) => (
          <DeskLineRow key={`${line.kind} ${line.says}`} line={line} today={today} />
        ))}
      </ul>
      {need.proposals.length > 1 ? <Proposals need={need} today={today} /> : null}
      {need.asks.length > 0 ? <Asks asks={need.asks} /> : null}
    </div>
  </li>
);

const Proposals = ({ need: { proposals }, today }: { readonly need: PersonNeed; readonly today: Day }) => (
  <details className={styles['more']}>
    <summary>
      {proposals.length} proposals wait for an answer: <span className="soft">{shortOf(proposals)}</span>
    </summary>
    <ul>
      {proposals.map((line) => (
        <DeskLineRow key={line.proposal} line={line} today={today} />
      ))}
    </ul>
  </details>
);

const LONGEST = 130;
const LONGEST_OF_ONE = 46;

/** "Back squat 265 to 270 lb; Heel raise 340 to 345 lb; …": what each is about. */
const shortOf = (proposals: PersonNeed['proposals']): string => {
  const all = proposals.map(({ says }) => cut((says.split(/[,;(]/)[0] ?? says).trim(), LONGEST_OF_ONE)).join('; ');
  return cut(all, LONGEST);
};

const cut = (says: string, longest: number): string =>
  says.length <= longest ? says : `${says.slice(0, longest - 1).trimEnd()}…`;

const Asks = ({ asks }: { readonly asks: readonly Asked[] }) => (
  <p className={styles['asks']}>
    {asks.map(({ person, kind, says, link }) => (
      <span key={`${kind} ${says}`} className={styles['ask']}>
        {datesInWords(says)}{' '}
        <Link className={styles['there']} href={addressOf(person, link.to)}>
          {link.says}
        </Link>
      </span>
    ))}
  </p>
);

const addressOf = (person: string, to: DeskLink): string => {
  switch (to) {
    case 'sheet':
      return `/people/${person}`;
    case 'road':
    case 'record':
      return `/people/${person}/${to}`;
    case 'test':
    case 'squat gate':
    case 'weekly minutes':
      return `/people/${person}/record?record=${encodeURIComponent(to)}`;
  }
};
