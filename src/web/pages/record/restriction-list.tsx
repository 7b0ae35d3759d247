import type { RecordWindow } from '#contract/windows/record-window.ts';
import type { Day } from '#units/day.ts';
import { Button, dateWithYear, join } from '../../parts/parts.ts';
import type { Doing } from './record-dialog.tsx';
import styles from './record-page.module.css';

interface RestrictionListProps {
  readonly record: RecordWindow;
  readonly today: Day;
  readonly onDo: (doing: Doing) => void;
}

/** What a physician has limited, binding ones first. */
export function RestrictionList({ record, today, onDo }: RestrictionListProps) {
  if (record.restrictions.length === 0) return null;
  const bindingFirst = record.restrictions.toSorted((a, b) => Number(a.lifted) - Number(b.lifted));
  return (
    <section aria-label="Restrictions" className={styles['restrictions']}>
      <h2>Restrictions</h2>
      <ul>
        {bindingFirst.map((entry) => (
          <Restriction key={entry.fact.id} entry={entry} record={record} today={today} onDo={onDo} />
        ))}
      </ul>
    </section>
  );
}

function Restriction({
  entry,
  record,
  today,
  onDo,
}: RestrictionListProps & { readonly entry: RecordWindow['restrictions'][number] }) {
  const { restriction } = entry.fact;
  const line = record.lines.find(({ fact }) => fact.id === entry.fact.id);
  const isOverdue = restriction.reviewOn !== null && restriction.reviewOn < today;
  return (
    <li className={join(styles['restriction'], entry.lifted && styles['gone'])}>
      {entry.lifted ? <del>{entry.says}</del> : <b>{entry.says}</b>}
      {entry.lifted ? ' (lifted)' : ` from ${dateWithYear(restriction.from)}`}, told by {restriction.toldBy} on{' '}
      {dateWithYear(restriction.toldOn)}
      {restriction.confirmed ? '' : ', not confirmed'}
      {restriction.reviewOn !== null &&
        `, review ${isOverdue ? 'was due ' : ''}on ${dateWithYear(restriction.reviewOn)}${isOverdue && !entry.lifted ? ': it still binds' : ''}`}
      .{' '}
      {!entry.lifted && (
        <>
          <Button
            kind="link"
            onPress={() => onDo({ kind: 'lift', restriction: entry })}
            label={`Lifted: ${entry.says}`}
          >
            record its lifting
          </Button>{' '}
          {line && (
            <Button kind="link" onPress={() => onDo({ kind: 'correct', line })} label={`Correct: ${entry.says}`}>
              correct{restriction.confirmed ? '' : ' or confirm'}
            </Button>
          )}
        </>
      )}
    </li>
  );
}
