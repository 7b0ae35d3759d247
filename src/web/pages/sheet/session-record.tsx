import { useEffect, useRef, useState } from 'react';
import type { SheetColumn, SheetWindow } from '#contract/windows/sheet-window.ts';
import { Button } from '../../parts/button.tsx';
import { Actions } from '../../parts/dialog.tsx';
import { Problems } from '../../parts/problems.tsx';
import { useRecording } from '../../windows.ts';
import { CalledOffForm } from './called-off-form.tsx';
import { ResultsForm } from './results-form.tsx';
import styles from './sheet.module.css';

export interface SessionRecordProps {
  readonly sheet: SheetWindow;
  readonly column: SheetColumn;
  /** The item that the form opens at; null for the whole session. */
  readonly item: string | null;
}

type Shown = 'results' | 'called off' | null;

/** What became of an issued card, typed in: results, called off, missed, received. */
export const SessionRecord = ({ sheet, column, item }: SessionRecordProps) => {
  const [shown, setShown] = useState<Shown>(null);
  const [said, setSaid] = useState('');
  const { record, isSending, problems } = useRecording();
  const [asked, setAsked] = useState(false);
  const section = useRef<HTMLElement>(null);
  // What was pressed goes with its form: the keyboard goes on from here.
  useEffect(() => {
    if (said !== '') section.current?.focus();
  }, [said]);
  const { card } = column;
  if (!card) return null;
  const person = sheet.person.id;
  const done = (says: string) => (): void => {
    setShown(null);
    setSaid(says);
  };
  const open = (form: Shown): void => {
    setSaid('');
    setShown(form);
  };
  const say = (body: Parameters<typeof record>[0][number]['body'], says: string): void => {
    setAsked(true);
    record([{ body }], done(says));
  };
  const hasCome = column.day <= sheet.today;
  return (
    <section className={styles['record']} aria-label="What became of it" ref={section} tabIndex={-1}>
      <h3>What became of it</h3>
      {shown === null ? (
        <Actions>
          {hasCome ? (
            <Button kind="main" onPress={() => open('results')}>
              {column.outcome === 'done' || column.outcome === 'part done' ? 'Correct the results' : 'Type results in'}
            </Button>
          ) : null}
          <Button onPress={() => open('called off')}>Called off</Button>
          {hasCome ? (
            <Button
              isDisabled={isSending}
              onPress={() => say({ kind: 'missed', person, day: column.day, card }, 'Recorded as missed.')}
            >
              Missed
            </Button>
          ) : null}
          {column.delivery === 'issued' ? (
            <Button
              isDisabled={isSending}
              onPress={() =>
                say(
                  { kind: 'received', person, card, what: 'card', how: 'confirmed by the person', on: sheet.today },
                  'Receipt recorded.',
                )
              }
            >
              Card received
            </Button>
          ) : null}
        </Actions>
      ) : null}
      {asked ? <Problems problems={problems} /> : null}
      <output className="soft">{said}</output>
      {shown === 'results' ? (
        <ResultsForm
          sheet={sheet}
          column={column}
          item={item}
          onDone={done('Results recorded.')}
          onLeave={() => setShown(null)}
        />
      ) : null}
      {shown === 'called off' ? (
        <CalledOffForm
          sheet={sheet}
          column={column}
          onDone={done('Recorded as called off.')}
          onLeave={() => setShown(null)}
        />
      ) : null}
    </section>
  );
};
