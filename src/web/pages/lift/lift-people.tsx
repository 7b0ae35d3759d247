import { useEffect, useState, type FocusEvent, type KeyboardEvent, type ReactNode } from 'react';
import { Link, useLocation } from 'wouter';
import type { LiftPerson, LiftSession, LiftWindow } from '#contract/windows/lift-window.ts';
import { onePlace, selectionAfter, type Bounds } from '../../parts/block/selection.ts';
import { writeTabSeparated } from '../../parts/block/tab-separated.ts';
import { Button } from '../../parts/button.tsx';
import { CopyButton } from '../../parts/copy-button.tsx';
import { useShortcut } from '../../parts/shortcut.ts';
import { startAt } from '../sheet/use-range.ts';
import { WriteLine } from '../sheet/write-line.tsx';
import { LiftRow, NEAR } from './lift-row.tsx';
import { columnsOf, liftRows } from './lift-columns.ts';
import styles from './lift.module.css';

/** The next session of somebody that can still be written. */
const nextToWrite = ({ ahead }: LiftPerson): LiftSession | null => ahead.find(({ cell }) => cell.line !== null) ?? null;

const focusRow = (at: number): void => document.querySelector<HTMLElement>(`[data-person="${at}"]`)?.focus();

const rowOf = (target: EventTarget): number | null => {
  const row = target instanceof Element ? target.closest('[data-person]') : null;
  return row ? Number(row.getAttribute('data-person')) : null;
};

/** Rows of people with a cursor: arrows move, Enter opens the person's sheet at this lift, E writes the next session. */
export const LiftPeople = ({ lift }: { readonly lift: LiftWindow }) => {
  const [at, setAt] = useState(0);
  const [isWriting, setIsWriting] = useState(false);
  const [, go] = useLocation();
  const person = lift.people[at];
  const bounds: Bounds = { top: 0, left: 0, bottom: lift.people.length - 1, right: 0 };
  const moveTo = (next: number): void => {
    setAt(next);
    setIsWriting(false);
  };
  const open = (): void => (person ? go(`/people/${person.id}?lift=${lift.exercise}`) : undefined);
  useEffect(() => startAt('[data-person="0"]'), []);
  useShortcut('e', () => setIsWriting(true));
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key === 'Enter' && !(event.target instanceof HTMLAnchorElement)) {
      event.preventDefault();
      open();
      return;
    }
    const { key, shiftKey: shift } = event;
    const control = event.ctrlKey || event.metaKey || key === 'Home' || key === 'End';
    const moved = selectionAfter(onePlace({ row: at, column: 0 }), bounds, { key, shift, control });
    if (!moved) return;
    event.preventDefault();
    moveTo(moved.cursor.row);
    focusRow(moved.cursor.row);
  };
  const close = (): void => {
    setIsWriting(false);
    focusRow(at);
  };
  return (
    <>
      {isWriting && person ? <Writing lift={lift} person={person} onClose={close} /> : null}
      <LiftTable lift={lift} at={at} onKeyDown={onKeyDown} onRow={(row) => (row === at ? undefined : moveTo(row))} />
      <div className={`${styles['tools'] ?? ''} on-screen`}>
        <CopyButton text={() => writeTabSeparated(liftRows(lift))}>Copy as a table</CopyButton>
        <Button onPress={() => window.print()}>Print</Button>
        <span className="soft small">
          <kbd>↑</kbd> <kbd>↓</kbd> between people, <kbd>Enter</kbd> opens the sheet at this lift, <kbd>E</kbd> writes
          the next session.
        </span>
      </div>
    </>
  );
};

const Writing = ({
  lift,
  person,
  onClose,
}: {
  readonly lift: LiftWindow;
  readonly person: LiftPerson;
  readonly onClose: () => void;
}) => {
  const next = nextToWrite(person);
  if (!next)
    return (
      <output className={styles['cannot']}>
        {person.name} has no session of this lift ahead that can still be written: what is issued stands as it was
        signed.
      </output>
    );
  return (
    <WriteLine
      key={`${person.id} ${next.day} ${next.cell.track}`}
      person={person.id}
      day={next.day}
      name={`${person.name}, ${lift.name.toLowerCase()}`}
      cell={next.cell}
      typed={null}
      onClose={onClose}
      onWritten={onClose}
    />
  );
};

interface LiftTableProps {
  readonly lift: LiftWindow;
  readonly at: number;
  readonly onKeyDown: (event: KeyboardEvent) => void;
  readonly onRow: (row: number) => void;
}

const Head = ({ children, isFar = false }: { readonly children: ReactNode; readonly isFar?: boolean }) => (
  <th scope="col" className={isFar ? styles['far'] : undefined}>
    {children}
  </th>
);

const LiftTable = ({ lift, at, onKeyDown, onRow }: LiftTableProps) => {
  const { past, ahead } = columnsOf(lift);
  return (
    <div className={styles['frame']}>
      <table
        role="grid" // oxlint-disable-line jsx-a11y/no-noninteractive-element-to-interactive-role -- rows moved by arrows
        aria-label={`${lift.name}, all people`}
        className={styles['people']}
        onKeyDown={onKeyDown}
        onFocus={(event: FocusEvent) => {
          const row = rowOf(event.target);
          if (row !== null) onRow(row);
        }}
      >
        <thead>
          <tr>
            <Head>person</Head>
            {past.map((says, place) => (
              <Head key={says} isFar={place < past.length - NEAR}>
                {says}
              </Head>
            ))}
            {ahead.map((says) => (
              <Head key={says}>{says}</Head>
            ))}
            <Head>estimate</Head>
            <Head>last here</Head>
            <Head>ramp</Head>
            <Head>raise</Head>
            <Head>discomfort, note</Head>
          </tr>
        </thead>
        <tbody>
          {lift.people.map((person, row) => (
            <LiftRow key={person.id} lift={lift} person={person} row={row} isCursor={row === at}>
              <Link href={`/people/${person.id}?lift=${lift.exercise}`} tabIndex={-1}>
                {person.name}
              </Link>
            </LiftRow>
          ))}
        </tbody>
      </table>
    </div>
  );
};
