import { useState } from 'react';
import { Link } from 'wouter';
import { ROUTES } from '#contract/routes.ts';
import type { TableReading } from '#contract/bring-in.ts';
import type { Problem } from '#contract/problem.ts';
import { postFile, problemsOf } from '../../api.ts';
import { Problems } from '../../parts/parts.ts';
import { BringInPlan } from './bring-in-plan.tsx';
import { FileDrop } from './file-drop.tsx';
import { IssueTable } from './issue-table.tsx';
import styles from './in-and-out-page.module.css';

interface ReadFile {
  readonly reading: TableReading;
  readonly ticket: string;
}

type Stage =
  | { readonly kind: 'nothing' }
  | { readonly kind: 'reading'; readonly name: string }
  | { readonly kind: 'failed'; readonly problems: readonly Problem[] }
  | { readonly kind: 'read'; readonly file: ReadFile }
  | { readonly kind: 'taken'; readonly recorded: number; readonly name: string };

/** From a spreadsheet to recorded facts: nothing is written before everything is right. */
export function BringIn() {
  const [stage, setStage] = useState<Stage>({ kind: 'nothing' });
  const read = (file: File): void => {
    setStage({ kind: 'reading', name: file.name });
    postFile<ReadFile>(ROUTES.bringInRead, file).then(
      (answer) => setStage({ kind: 'read', file: answer }),
      (error: unknown) => setStage({ kind: 'failed', problems: problemsOf(error) }),
    );
  };
  return (
    <section aria-label="Bring in" className={styles['bring-in']}>
      <h2>Bring in people, tests and missions</h2>
      <p className="soft">
        From CSV or XLSX: one test a row, or one person a row with a column for each lift. Title rows, blank rows and
        averages are passed over. Nothing is recorded before you say so, and then all of it or none.
      </p>
      <FileDrop onFile={read} isReading={stage.kind === 'reading'} />
      <StageView stage={stage} onStage={setStage} />
    </section>
  );
}

function StageView({ stage, onStage }: { readonly stage: Stage; readonly onStage: (stage: Stage) => void }) {
  switch (stage.kind) {
    case 'nothing':
      return null;
    case 'reading':
      return (
        <p>
          <output>Reading {stage.name} …</output>
        </p>
      );
    case 'failed':
      return <Problems problems={stage.problems} />;
    case 'taken':
      return (
        <p className={styles['taken']}>
          <output>
            <b>{stage.recorded} facts recorded</b> from {stage.name}. They stand in the record of each person;{' '}
            <Link href="/">open the Desk</Link>.
          </output>
        </p>
      );
    case 'read': {
      const { reading, ticket } = stage.file;
      if (reading.kind === 'refused')
        return <IssueTable caption={`${reading.fileName} cannot be read`} issues={reading.issues} />;
      return (
        <BringInPlan
          key={ticket}
          reading={reading}
          ticket={ticket}
          onTaken={(recorded) => onStage({ kind: 'taken', recorded, name: reading.fileName })}
          onLeave={() => onStage({ kind: 'nothing' })}
        />
      );
    }
  }
}
