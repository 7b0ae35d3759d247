import { useEffect, useRef, useState } from 'react';
import type { SheetColumn, SheetWindow } from '#contract/windows/sheet-window.ts';
import type { FactBody } from '#domain/fact.ts';
import type { CardId } from '#domain/identity.ts';
import { Button } from '../../parts/button.tsx';
import { Actions } from '../../parts/dialog.tsx';
import { Problems } from '../../parts/problems.tsx';
import { useRecording } from '../../windows.ts';
import { CalledOffForm } from './called-off-form.tsx';
import { ResultsForm } from './results-form.tsx';
import styles from './panel.module.css';

export interface SessionRecordProps {
  readonly sheet: SheetWindow;
  readonly column: SheetColumn;
  /** The item that the form opens at; null for the whole session. */
  readonly item: string | null;
}

type Shown = 'results' | 'called off' | null;

type Say = (body: FactBody, says: string) => void;

interface ChoicesProps extends Pick<SessionRecordProps, 'sheet' | 'column'> {
  readonly card: CardId;
  readonly isSending: boolean;
  readonly onOpen: (form: Shown) => void;
  readonly onSay: Say;
}

/** What can be said of a session: some of it only when its day has come. */
const Choices = ({ sheet, column, card, isSending, onOpen, onSay }: ChoicesProps) => {
  const person = sheet.person.id;
  const hasCome = column.day <= sheet.today;
  const missed = (): void => onSay({ kind: 'missed', person, day: column.day, card }, 'Recorded as missed.');
  const received = (): void =>
    onSay(
      { kind: 'received', person, card, what: 'card', how: 'confirmed by the person', on: sheet.today },
      'Receipt recorded.',
    );
  return (
    <Actions>
      {hasCome ? (
        <Button kind="main" onPress={() => onOpen('results')}>
          {column.outcome === 'done' || column.outcome === 'part done' ? 'Correct the results' : 'Type results in'}
        </Button>
      ) : null}
      <Button onPress={() => onOpen('called off')}>Called off</Button>
      {hasCome ? (
        <Button isDisabled={isSending} onPress={missed}>
          Missed
        </Button>
      ) : null}
      {column.delivery === 'issued' ? (
        <Button isDisabled={isSending} onPress={received}>
          Card received
        </Button>
      ) : null}
    </Actions>
  );
};

/** The keyboard goes on from here: what was pressed has gone with its form. */
const useFocusAfter = (said: string) => {
  const section = useRef<HTMLElement>(null);
  useEffect(() => {
    if (said !== '') section.current?.focus();
  }, [said]);
  return section;
};

/** What became of an issued card, typed in: results, called off, missed, received. */
export const SessionRecord = ({ sheet, column, item }: SessionRecordProps) => {
  const [shown, setShown] = useState<Shown>(null);
  const [said, setSaid] = useState('');
  const [asked, setAsked] = useState(false);
  const { record, isSending, problems } = useRecording();
  const section = useFocusAfter(said);
  const { card } = column;
  if (!card) return null;
  const open = (form: Shown): void => {
    setSaid('');
    setShown(form);
  };
  const done = (says: string) => (): void => {
    setShown(null);
    setSaid(says);
  };
  const say: Say = (body, says) => {
    setAsked(true);
    record([{ body }], done(says));
  };
  const form = { sheet, column, onLeave: () => setShown(null) };
  return (
    <section className={styles['record']} aria-label="What became of it" ref={section} tabIndex={-1}>
      <h3>What became of it</h3>
      {shown === null ? (
        <Choices sheet={sheet} column={column} card={card} isSending={isSending} onOpen={open} onSay={say} />
      ) : null}
      {asked ? <Problems problems={problems} /> : null}
      <output className="soft">{said}</output>
      {shown === 'results' ? <ResultsForm {...form} item={item} onDone={done('Results recorded.')} /> : null}
      {shown === 'called off' ? <CalledOffForm {...form} onDone={done('Recorded as called off.')} /> : null}
    </section>
  );
};
