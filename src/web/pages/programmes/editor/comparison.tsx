import { Fragment, type ReactNode } from 'react';
import { Link } from 'wouter';
import type {
  ChangeCounts,
  ComparedLine,
  ComparedPerson,
  ComparedSession,
  ComparisonWindow,
} from '#contract/windows/comparison-window.ts';
import { longDate, shortDate, Table } from '#web/parts/parts.ts';
import { groupedSessions, missionDaysInWords, type GroupedSessions } from './grouped-sessions.ts';
import styles from './editor.module.css';

/** What a draft would change for each person, before anybody takes it up. */
export const Comparison = ({ window }: { readonly window: ComparisonWindow }) => (
  <>
    <p>
      {window.people.length === 0
        ? 'Nothing changes for anybody'
        : `${peopleWords(window.people.length)}: ${countWords(window.totals)}`}{' '}
      <span className="soft">
        from {longDate(window.today)} to {longDate(window.until)}.
      </span>
    </p>
    {window.newer === null ? null : (
      <p className={styles['caution']}>
        Version {window.newer} was taken up since this draft was begun: what it changed is not in here.
      </p>
    )}
    {window.people.length > 0 ? <PeopleTable people={window.people} /> : null}
    {window.unchanged.length > 0 ? (
      <p className="soft">
        Nothing changes in these days for {window.unchanged.map((each) => unchangedWords(each, window)).join(', ')}.
      </p>
    ) : null}
  </>
);

const peopleWords = (count: number): string => (count === 1 ? 'One person' : `${count} people`);

const unchangedWords = (
  { name, from, fromLabel }: ComparisonWindow['unchanged'][number],
  { until }: ComparisonWindow,
): string => (from > until ? `${name} (follows it from ${fromLabel})` : name);

/** "9 sessions change, 2 loads raised, 4 min more"; what there is none of is not said. */
export const countWords = (counts: ChangeCounts): string => {
  const some = (count: number, one: string, many: string): readonly string[] =>
    count === 0 ? [] : [`${count} ${count === 1 ? one : many}`];
  const { minutes } = counts;
  return [
    ...some(counts.sessionsChanged, 'session changes', 'sessions change'),
    ...some(counts.sessionsNew, 'session is new', 'sessions are new'),
    ...some(counts.sessionsGone, 'session goes', 'sessions go'),
    ...some(counts.itemsAdded, 'exercise added', 'exercises added'),
    ...some(counts.itemsLeftOut, 'exercise left out', 'exercises left out'),
    ...some(counts.loadsRaised, 'load raised', 'loads raised'),
    ...some(counts.loadsLowered, 'load lowered', 'loads lowered'),
    ...some(counts.newGaps, 'new gap', 'new gaps'),
    ...(minutes === 0 ? [] : [`${Math.abs(minutes)} min ${minutes > 0 ? 'more' : 'less'}`]),
  ].join(', ');
};

const PeopleTable = ({ people }: { readonly people: readonly ComparedPerson[] }) => (
  <div className={styles['people']}>
    <Table caption="What changes, person by person" isCaptionHidden>
      <thead>
        <tr>
          <th scope="col">Day</th>
          <th scope="col">Session</th>
          <th scope="col">Exercise</th>
          <th scope="col">Now</th>
          <th scope="col">With this version</th>
          <th scope="col" className="number">
            Minutes
          </th>
        </tr>
      </thead>
      {people.map((person) => (
        <tbody key={person.id}>
          <PersonRow person={person} />
          {groupedSessions(person.sessions).map((group) => (
            <SessionRows key={`${group.alike.day} ${group.alike.title}`} group={group} />
          ))}
        </tbody>
      ))}
    </Table>
  </div>
);

const PersonRow = ({ person }: { readonly person: ComparedPerson }) => (
  <tr>
    <th scope="rowgroup" colSpan={6}>
      <Link href={`/people/${person.id}`}>{person.name}</Link>{' '}
      <span className="soft">
        {person.dayLabel}; {countWords(person.counts)}
        {person.issuedAhead > 0 ? `; ${issuedWords(person.issuedAhead)}` : ''}
      </span>
    </th>
  </tr>
);

const issuedWords = (count: number): string =>
  count === 1 ? 'one card is issued and stands' : `${count} cards are issued and stand`;

const SessionRows = ({ group: { alike, days } }: { readonly group: GroupedSessions }) => {
  const says = sessionWords(alike);
  const span = Math.max(1, alike.lines.length) + (says === '' ? 0 : 1);
  const [first, ...others] = alike.lines;
  const tone = days.every(({ state }) => state === 'expected') ? styles['expected'] : undefined;
  return (
    <Fragment>
      <tr className={tone}>
        <td rowSpan={span}>
          {missionDaysInWords(days.map(({ missionDay }) => missionDay))}{' '}
          <span className="soft small">{days.map(({ day }) => shortDate(day)).join(', ')}</span>
          {expectedWords(days)}
        </td>
        <td rowSpan={span}>
          {alike.title}
          {alike.kind === 'changed' ? null : <b> {alike.kind === 'new' ? 'new' : 'goes'}</b>}
        </td>
        <LineCells line={first ?? null} />
        <td rowSpan={span} className="number">
          {minutesWords(alike)}
        </td>
      </tr>
      {others.map((line, place) => (
        <tr key={`${place} ${line.exerciseName}`} className={tone}>
          <LineCells line={line} />
        </tr>
      ))}
      {says === '' ? null : (
        <tr>
          <td colSpan={3} className="soft small">
            {says}
          </td>
        </tr>
      )}
    </Fragment>
  );
};

/** Beyond the horizon a card is only expected. */
const expectedWords = (days: GroupedSessions['days']): ReactNode => {
  const expected = days.filter(({ state }) => state === 'expected').length;
  if (expected === 0) return null;
  const which = expected === days.length ? 'expected' : `the last ${expected === 1 ? '' : `${expected} `}only expected`;
  return <span className="faint small"> {which}</span>;
};

const sessionWords = ({ reordered, wasTitle, newGaps, goneGaps }: ComparedSession): string =>
  [
    ...(wasTitle === null ? [] : [`Was called ${wasTitle}.`]),
    ...(reordered ? ['The same exercises in another order.'] : []),
    ...newGaps.map((gap) => `New gap: ${gap}`),
    ...goneGaps.map((gap) => `No gap any more: ${gap}`),
  ].join(' ');

const minutesWords = ({ kind, minutes: { was, is, block } }: ComparedSession): string => {
  if (kind === 'new') return `${is} of ${block}`;
  if (kind === 'gone') return `${was} less`;
  return was === is ? `${is} of ${block}` : `${was} → ${is} of ${block}`;
};

const LineCells = ({ line }: { readonly line: ComparedLine | null }) =>
  line === null ? (
    <td colSpan={3} className="soft">
      –
    </td>
  ) : (
    <>
      <td>{line.exerciseName}</td>
      <td>{line.was ?? <span className="soft">–</span>}</td>
      <td>
        {line.is ?? <span className="soft">{line.leftOut ?? 'out'}</span>} <LoadWord load={line.load} />
      </td>
    </>
  );

const LoadWord = ({ load }: Pick<ComparedLine, 'load'>) => {
  if (load === 'raised') return <span className={styles['raised']}>raised</span>;
  return load === 'lowered' ? <span className={styles['lowered']}>lowered</span> : null;
};
