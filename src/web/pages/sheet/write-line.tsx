import type { KeyboardEvent } from 'react';
import type { SheetCell, SheetColumn } from '#contract/windows/sheet-window.ts';
import type { Day } from '#units/day.ts';
import { Button } from '../../parts/button.tsx';
import { longDate } from '../../parts/dates.ts';
import { join } from '../../parts/join.ts';
import { Problems } from '../../parts/problems.tsx';
import { SignAs } from '../../parts/sign-as.tsx';
import { LineOutcome } from './line-outcome.tsx';
import { useLine, USUAL_REASON, type LineBeingWritten, type OnWritten } from './use-line.ts';
import styles from './write-line.module.css';

export interface WriteLineProps {
  readonly person: string;
  readonly day: Day;
  /** Whose, or what, is written. */
  readonly name: string;
  readonly cell: SheetCell;
  /** What was typed on the cell itself: it takes the place of what stands there. */
  readonly typed: string | null;
  readonly onClose: () => void;
  readonly onWritten: OnWritten;
}

/** One future cell, edited in the trade's shorthand; what it comes to stands beside it while it is typed. */
export const WriteLine = (props: WriteLineProps) => {
  const { person, day, cell, typed, onClose, onWritten } = props;
  const start = typed ?? cell.line ?? '';
  const writing = useLine({ person, track: cell.track, day }, start, onWritten);
  const onKeyDown = (event: KeyboardEvent): void => (event.key === 'Escape' ? onClose() : undefined);
  return (
    <form
      className={join(styles['bar'], 'on-screen')}
      aria-label="Write a session"
      onSubmit={(event) => {
        event.preventDefault();
        writing.sign();
      }}
    >
      <div className={styles['fields']}>
        <LineField {...props} writing={writing} onKeyDown={onKeyDown} />
        <ReasonFields writing={writing} onKeyDown={onKeyDown} />
        <Button kind="main" type="submit" isDisabled={!writing.canSign}>
          Sign
        </Button>
        <Button onPress={onClose}>Leave it</Button>
        <SignAs />
      </div>
      <output id="line-outcome">
        {writing.line.trim() === '' ? <p className="soft">{EXAMPLES[cell.kind]}</p> : null}
        {writing.line.trim() !== '' && writing.outcome ? <LineOutcome written={writing.outcome} /> : null}
      </output>
      <Problems problems={writing.problems} />
    </form>
  );
};

interface FieldsProps {
  readonly writing: LineBeingWritten;
  readonly onKeyDown: (event: KeyboardEvent) => void;
}

const LineField = ({ day, name, cell, typed, writing, onKeyDown }: WriteLineProps & FieldsProps) => (
  <label className={styles['line']}>
    <span>
      <b>{name}</b>, {longDate(day)}{' '}
      <span className="soft">
        now {cell.planned} {cell.unit}
      </span>
    </span>
    <input
      value={writing.line}
      onChange={(event) => writing.setLine(event.target.value)}
      autoFocus // oxlint-disable-line jsx-a11y/no-autofocus -- the cell was opened to be typed into
      onFocus={({ target }) => (typed === null ? target.select() : undefined)}
      onKeyDown={onKeyDown}
      autoComplete="off"
      spellCheck={false}
      aria-describedby="line-outcome"
      aria-invalid={(writing.outcome?.problems.length ?? 0) > 0}
    />
  </label>
);

const ReasonFields = ({ writing, onKeyDown }: FieldsProps) => (
  <>
    <label>
      Reason
      <input
        value={writing.reason}
        placeholder={USUAL_REASON}
        onChange={(event) => writing.setReason(event.target.value)}
        onKeyDown={onKeyDown}
      />
    </label>
    <label className={styles['lasts']}>
      <input type="checkbox" checked={writing.lasts} onChange={(event) => writing.setLasts(event.target.checked)} />{' '}
      from here on
    </label>
  </>
);

const EXAMPLES = {
  lift: 'Write it as 4 × 6 @ 80 %, rest 2:30; 3 × 8 @ 2 RIR; 225 × 5 @ RPE 8; top 6 then 2 × 8 −10 %.',
  bouts: 'Write it as 4 × 4 min @ 90 % HRR, 3 min easy; 30 min @ 130 W; 6 × 30 s @ RPE 9, 2 min easy.',
  drill: 'Write it as 3 × 10, rest 1:00; 3 × 30 s; 5 × 8 × 7 s/3 s @ 100 % CF, rest 2:30.',
} as const;

const whyNot = ({ past, state }: SheetColumn): string => {
  if (past) return 'This day is past: it stands as it was issued and done.';
  return state === 'issued'
    ? 'This card is issued and stands as it was signed. Write a session ahead that can still be issued.'
    : 'This session has no line to write here. Open the cell with Enter: it says why.';
};

/** Why what stands under the cursor is not to be written. */
export const CannotWrite = ({ column }: { readonly column: SheetColumn }) => (
  <div className={join(styles['bar'], 'on-screen')}>
    <output>{whyNot(column)}</output>
  </div>
);
