import { useState } from 'react';
import type { RecordLine } from '#contract/windows/record-window.ts';
import { Button, Choice, Table } from '../../parts/parts.ts';
import { isCorrectable, type Doing } from './record-dialog.tsx';
import styles from './record-page.module.css';

interface RecordTableProps {
  readonly lines: readonly RecordLine[];
  readonly onDo: (doing: Doing) => void;
}

/** Every fact, newest first; what stands no more is struck through and keeps its reason. */
export function RecordTable({ lines, onDo }: RecordTableProps) {
  const [kind, setKind] = useState('');
  const shown = kind === '' ? lines : lines.filter((line) => line.kind === kind);
  const kinds = [...new Set(lines.map((line) => line.kind))].toSorted();
  return (
    <section className={styles['entries']}>
      <div className="on-screen">
        <Choice
          label="Show"
          value={kind}
          onChange={setKind}
          options={kinds.map((each) => ({ value: each, label: each }))}
          nothing={`all ${lines.length} entries`}
        />
      </div>
      <Table caption="Every entry, newest first" isCaptionHidden>
        <thead>
          <tr>
            <th scope="col">when</th>
            <th scope="col">kind</th>
            <th scope="col">what</th>
            <th scope="col">recorded</th>
            <th scope="col" className="on-screen">
              <span className="unseen">what can be done</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {shown.map((line) => (
            <Line key={line.fact.id} line={line} onDo={onDo} />
          ))}
        </tbody>
      </Table>
    </section>
  );
}

function Line({ line, onDo }: { readonly line: RecordLine; readonly onDo: (doing: Doing) => void }) {
  const stands = line.standing === 'stands';
  return (
    <tr id={line.fact.id} className={stands ? undefined : styles['gone']}>
      <td className={styles['when']}>{line.when}</td>
      <td className="soft">{line.kind}</td>
      <td>
        {stands ? line.says : <del>{line.says}</del>}
        {!stands && (
          <div className={styles['why']}>
            {line.standing}
            {line.supersededBy !== null && ` by entry ${line.supersededBy}`}
            {line.reason !== null && `: ${line.reason}`}
          </div>
        )}
        {stands && line.reason !== null && <div className={styles['why']}>because: {line.reason}</div>}
      </td>
      <td className="soft small">
        {line.by}, <br />
        {line.fact.recordedAt.slice(0, 16).replace('T', ' ')} UTC, entry {line.fact.sequence}
      </td>
      <td className={styles['act']}>
        {stands && isCorrectable(line) && (
          <Button kind="link" label={`Correct: ${line.says}`} onPress={() => onDo({ kind: 'correct', line })}>
            correct
          </Button>
        )}{' '}
        {stands && mayBeTakenBack(line) && (
          <Button kind="link" label={`Take back: ${line.says}`} onPress={() => onDo({ kind: 'take back', line })}>
            take back
          </Button>
        )}
      </td>
    </tr>
  );
}

/** What went out, what binds and what others rest on is answered, never deleted. */
const mayBeTakenBack = ({ fact }: RecordLine): boolean => {
  if (fact.kind === 'decided') return fact.decision.kind !== 'issue' && fact.decision.kind !== 'recall';
  return !['introduced', 'restricted', 'signs', 'catalogued', 'retracted', 'dated'].includes(fact.kind);
};
