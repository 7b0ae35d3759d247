import type { ReactNode } from 'react';
import { Link } from 'wouter';
import type { SheetCell, SheetColumn, SheetRow, SheetWindow } from '#contract/windows/sheet-window.ts';
import { Await } from '../../parts/await.tsx';
import { Button } from '../../parts/button.tsx';
import { longDate } from '../../parts/dates.ts';
import { Actions, Dialog } from '../../parts/dialog.tsx';
import { showChange, showFraction, showIncrements } from '../../parts/loads.ts';
import { WorkingPanel } from '../../parts/working-panel.tsx';
import { Problems } from '../../parts/problems.tsx';
import { useRecording, useWorking } from '../../windows.ts';
import { sessionState } from '../../parts/session-state.ts';
import { SessionRecord } from './session-record.tsx';
import styles from './panel.module.css';

export interface CellPanelProps {
  readonly sheet: SheetWindow;
  readonly column: SheetColumn;
  readonly exercise: SheetRow;
  readonly cell: SheetCell;
  readonly onClose: () => void;
  readonly onAdjust: (change: 'hold' | 'back off' | 'keep' | 'leave out') => void;
  readonly onWrite: () => void;
}

const Term = ({ name, children }: { readonly name: string; readonly children: ReactNode }) => (
  <div>
    <dt>{name}</dt>
    <dd>{children}</dd>
  </div>
);

const percent = (value: number): string => `${value >= 0 ? '+' : '−'}${Math.abs(value * 100).toFixed(0)} %`;

const Numbers = ({ cell, exercise }: { readonly cell: SheetCell; readonly exercise: SheetRow }) => (
  <dl className={styles['terms']}>
    <Term name="planned">
      <strong>{cell.planned}</strong> {cell.kind === 'lift' ? cell.unit : ''}
    </Term>
    {cell.done === null ? null : <Term name="done">{cell.done}</Term>}
    {cell.trueFraction === null ? null : (
      <Term name="true fraction of capacity">{showFraction(cell.trueFraction)}</Term>
    )}
    {cell.shoulderExcess === null ? null : (
      <Term name="shoulders, against the ground">{percent(cell.shoulderExcess)}</Term>
    )}
    {cell.ceilingLeft === null ? null : <Term name="ceiling left">{cell.ceilingLeft}</Term>}
    {exercise.estimate ? <Term name="capacity">{exercise.estimate}</Term> : null}
    {exercise.lastHere ? <Term name="last here">{exercise.lastHere}</Term> : null}
    {exercise.rule ? <Term name="signed rule">{exercise.rule}</Term> : null}
  </dl>
);

const RaiseLine = ({
  raise,
  isSigned,
}: {
  readonly raise: NonNullable<SheetCell['raise']>;
  readonly isSigned: boolean;
}) => (
  <p className={styles['raise']}>
    <strong>
      {raise.from === null ? 'First load' : `${showIncrements(raise.from, raise.increment)} →`}{' '}
      {showIncrements(raise.to, raise.increment)} {raise.unit}
    </strong>
    {raise.atTheBar === null ? '' : `, ${showChange(raise.atTheBar)} at the bar`}: {raise.cause}.{' '}
    {isSigned ? 'Signed with this card.' : 'It goes up only when it is signed with the card.'}
  </p>
);

const Limits = ({ cell }: { readonly cell: SheetCell }) =>
  cell.limits.length > 0 ? (
    <>
      <h3>Limits</h3>
      <ul className={styles['limits']}>
        {cell.limits.map(({ kind, increments, binds, says }) => (
          <li key={`${kind} ${says}`} className={binds ? styles['binds'] : undefined}>
            {showIncrements(increments, cell.increment)} {cell.unit}, {kind}: {says}
            {binds ? <strong> · sets this load</strong> : null}
          </li>
        ))}
      </ul>
    </>
  ) : null;

const NoteLine = ({ sheet, note }: { readonly sheet: SheetWindow; readonly note: NonNullable<SheetCell['note']> }) => {
  const { record, isSending, problems } = useRecording();
  return (
    <div className={styles['quoted']}>
      <q>{note.text}</q>
      {note.read ? null : (
        <>
          {' '}
          <Button
            isDisabled={isSending}
            onPress={() => record([{ body: { kind: 'read', person: sheet.person.id, note: note.fact } }])}
          >
            Mark as read
          </Button>
          <Problems problems={problems} />
        </>
      )}
    </div>
  );
};

const Reckonings = ({ sheet, column, cell }: Pick<CellPanelProps, 'sheet' | 'column' | 'cell'>) => {
  const query = useWorking(sheet.person.id, column.day, cell.item, cell.hasWorking);
  if (!cell.hasWorking) return <p className="soft">This item runs without a reckoning: by effort, or as fixed.</p>;
  return (
    <Await query={query}>
      {({ workings }) => workings.map((working) => <WorkingPanel key={working.reckoning} working={working} />)}
    </Await>
  );
};

/** One item of one session: its load, what limits it, what came of it, and how it was reckoned. */
export const CellPanel = (props: CellPanelProps) => {
  const { sheet, column, exercise, cell, onClose, onAdjust, onWrite } = props;
  const cardPath = column.card ? `/cards/${column.card}` : `/people/${sheet.person.id}/cards/${column.day}`;
  return (
    <Dialog title={`${exercise.name}, ${longDate(column.day)}`} isOpen onClose={onClose} place="side">
      <p className="soft">
        {column.missionDay} · {column.title} · {sessionState(column)} · <Link href={cardPath}>the whole card</Link>
      </p>
      <Numbers cell={cell} exercise={exercise} />
      {cell.raise ? <RaiseLine raise={cell.raise} isSigned={column.state === 'issued'} /> : null}
      {cell.says.map((says) => (
        <p key={says}>{says}</p>
      ))}
      {cell.note ? <NoteLine sheet={sheet} note={cell.note} /> : null}
      <Limits cell={cell} />
      <Actions>
        <Button onPress={() => onAdjust('hold')}>Hold</Button>
        <Button onPress={() => onAdjust('back off')}>Back off 10 %</Button>
        <Button onPress={() => onAdjust('keep')}>Keep</Button>
        {cell.line === null ? null : (
          <>
            <Button onPress={() => onAdjust('leave out')}>Leave out</Button>
            <Button onPress={onWrite}>Write it</Button>
          </>
        )}
      </Actions>
      {column.card ? <SessionRecord sheet={sheet} column={column} item={cell.item} /> : null}
      <h3 className={styles['part']}>Working</h3>
      <Reckonings sheet={sheet} column={column} cell={cell} />
    </Dialog>
  );
};
