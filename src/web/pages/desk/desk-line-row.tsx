import { useState, type ReactNode } from 'react';
import { Link, useLocation } from 'wouter';
import type { DeskAsk, DeskLine } from '#contract/windows/desk-window.ts';
import type { Day } from '#units/day.ts';
import { Button } from '../../parts/button.tsx';
import { Problems } from '../../parts/problems.tsx';
import { useRecording } from '../../windows.ts';
import { LookDialog } from './look-dialog.tsx';
import { ProposalDialog } from './proposal-dialog.tsx';
import { ReceiptDialog } from './receipt-dialog.tsx';
import styles from './desk.module.css';

type Line<Kind extends DeskLine['kind']> = Extract<DeskLine, { readonly kind: Kind }>;

/** A sentence, and the verbs at its end. */
const Row = ({
  line,
  mark,
  verbs,
  children,
}: {
  readonly line: DeskLine;
  readonly mark?: string;
  readonly verbs: ReactNode;
  readonly children?: ReactNode;
}) => (
  <li className={styles['line']}>
    <div className={styles['says']}>
      {mark ? <strong className={styles['mark']}>▲ {mark}: </strong> : null}
      {line.says}
      {children}
    </div>
    <div className={styles['verbs']}>{verbs}</div>
  </li>
);

const Recalled = ({ line, today }: { readonly line: Line<'recalled'>; readonly today: Day }) => {
  const [shown, setShown] = useState<'read-up line' | 'receipt' | null>(null);
  return (
    <Row
      line={line}
      mark="Recalled, not yet received"
      verbs={
        <>
          <Button onPress={() => setShown(shown === 'read-up line' ? null : 'read-up line')}>Read-up line</Button>
          <Button kind="main" onPress={() => setShown('receipt')}>
            Record receipt
          </Button>
        </>
      }
    >
      {shown === 'read-up line' ? <blockquote className={styles['aloud']}>{line.readUp}</blockquote> : null}
      {shown === 'receipt' ? <ReceiptDialog line={line} today={today} onClose={() => setShown(null)} /> : null}
    </Row>
  );
};

const UnreadNote = ({ line }: { readonly line: Line<'unread note'> }) => {
  const { record, isSending, problems } = useRecording();
  const [asked, setAsked] = useState(false);
  const [, go] = useLocation();
  const open = (): void => {
    setAsked(true);
    record([{ body: { kind: 'read', person: line.person, note: line.note } }], () =>
      go(line.card ? `/cards/${line.card}` : `/people/${line.person}/record`),
    );
  };
  return (
    <Row
      line={line}
      verbs={
        <Button
          kind="main"
          onPress={open}
          isDisabled={isSending}
          label={`Open the note of ${line.name}; it counts as read`}
        >
          Open
        </Button>
      }
    >
      {' '}
      <q>{line.text}</q>
      {asked ? <Problems problems={problems} /> : null}
    </Row>
  );
};

const Proposed = ({ line }: { readonly line: Line<'proposal'> }) => {
  const [answer, setAnswer] = useState<'sign' | 'decline' | null>(null);
  return (
    <Row
      line={line}
      verbs={
        <>
          <Button onPress={() => setAnswer('decline')}>Decline</Button>
          {line.canSign ? (
            <Button kind="main" onPress={() => setAnswer('sign')}>
              Sign
            </Button>
          ) : (
            <Link href={`/people/${line.person}`}>Look</Link>
          )}
        </>
      }
    >
      {line.behind.length > 0 ? (
        <details className={styles['behind']}>
          <summary>behind it</summary>
          <ul>
            {line.behind.map((says) => (
              <li key={says}>{says}</li>
            ))}
          </ul>
        </details>
      ) : null}
      {answer ? <ProposalDialog line={line} answer={answer} onClose={() => setAnswer(null)} /> : null}
    </Row>
  );
};

const HandsToBeLookedAt = ({ line, today }: { readonly line: Line<'hands to be looked at'>; readonly today: Day }) => {
  const [isOpen, setOpen] = useState(false);
  return (
    <Row
      line={line}
      mark="Hands"
      verbs={
        <Button kind="main" onPress={() => setOpen(true)}>
          Record a look
        </Button>
      }
    >
      {isOpen ? <LookDialog line={line} today={today} onClose={() => setOpen(false)} /> : null}
    </Row>
  );
};

/** What waits for an answer of its own. */
export type AnsweredLine = Exclude<DeskLine, { readonly kind: DeskAsk }>;

export const DeskLineRow = ({ line, today }: { readonly line: AnsweredLine; readonly today: Day }) => {
  switch (line.kind) {
    case 'recalled':
      return <Recalled line={line} today={today} />;
    case 'hands to be looked at':
      return <HandsToBeLookedAt line={line} today={today} />;
    case 'restriction unconfirmed':
      return (
        <Row
          line={line}
          mark="Not confirmed"
          verbs={<Link href={`/people/${line.person}/record`}>Open the record</Link>}
        />
      );
    case 'unread note':
      return <UnreadNote line={line} />;
    case 'proposal':
      return <Proposed line={line} />;
  }
};
