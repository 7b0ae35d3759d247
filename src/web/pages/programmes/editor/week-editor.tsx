import type { Exercise } from '#domain/catalogue.ts';
import type { ProgrammeItem } from '#domain/programme.ts';
import { blockOf, holds, isOnePlace, isSamePlace, type Place } from '#web/parts/block/selection.ts';
import { join } from '#web/parts/parts.ts';
import { placeOf } from '../../sheet/use-range.ts';
import { dayName } from '../day-name.ts';
import { ItemLine } from '../item-line.tsx';
import { CellInput } from './cell-input.tsx';
import type { Draft, DraftPhase, Slot } from './draft.ts';
import type { PlacedProblem } from './draft-problems.ts';
import type { Week } from './use-week.ts';
import {
  BLOCK_ROW,
  columnsOf,
  FIRST_ITEM_ROW,
  longestList,
  rowCount,
  slotAt,
  textAt,
  TITLE_ROW,
  type DayColumn,
} from './week.ts';
import { readCell } from './write-cells.ts';
import styles from './week.module.css';

export interface WeekEditorProps {
  readonly draft: Draft;
  readonly phase: DraftPhase;
  readonly week: Week;
  readonly exercises: readonly Exercise[];
  readonly problems: readonly PlacedProblem[];
  /** Has an item changed against the version that the draft was made from? */
  readonly isChanged: (item: ProgrammeItem) => boolean;
}

/** The week of a phase: days side by side, a line in each cell. One tab stop; arrows move, typing writes. */
export const WeekEditor = (props: WeekEditorProps) => {
  const { phase, week } = props;
  const columns = columnsOf(phase);
  const rows = Array.from({ length: rowCount(phase) }, (_, row) => row);
  return (
    <div className={styles['frame']}>
      {/* A table with one tab stop, moved by arrows, is what the role "grid" means. */}
      <table
        role="grid" // oxlint-disable-line jsx-a11y/no-noninteractive-element-to-interactive-role -- as above
        aria-label={`Week of ${phase.name}`}
        aria-multiselectable
        className={styles['week']}
        onKeyDown={week.onKeyDown}
        onCopy={week.onCopy}
        onCut={week.onCut}
        onPaste={week.onPaste}
        onDoubleClick={(event) => {
          const place = placeOf(event.target);
          if (place) week.type(place);
        }}
        {...week.range.pointing}
      >
        <thead>
          <tr>
            <th className={styles['corner']}>
              <span className="unseen">row</span>
            </th>
            {columns.map(({ weekday, session }, column) => (
              // A day keeps its place, and the keyboard with it, when its session comes or goes.
              <th key={column} scope="col" className={session ? styles['day'] : styles['free']}>
                {dayName(phase, weekday, columns[column]?.session ? 'whole' : 'short')}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr
              key={row}
              className={join(
                row === TITLE_ROW && styles['titles'],
                row === BLOCK_ROW && styles['blocks'],
                row >= FIRST_ITEM_ROW + longestList(phase) && styles['spare'],
              )}
            >
              <th scope="row">{rowName(row)}</th>
              {columns.map((day, column) => (
                <Cell key={column} {...props} day={day} place={{ row, column }} />
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
};

const rowName = (row: number): string => {
  if (row === TITLE_ROW) return 'session';
  return row === BLOCK_ROW ? 'minutes' : String(row - FIRST_ITEM_ROW + 1);
};

const Cell = (props: WeekEditorProps & { readonly day: DayColumn; readonly place: Place }) => {
  const { phase, week, exercises, problems, day, place } = props;
  const { selection } = week.range;
  const wrong = problems.filter((each) => each.place !== null && isSamePlace(each.place, place));
  const isTyping = week.typing !== null && isSamePlace(week.typing.place, place);
  const isChosen = !isOnePlace(selection) && holds(blockOf(selection), place);
  return (
    <td
      data-place={`${place.row}:${place.column}`}
      tabIndex={isSamePlace(selection.cursor, place) ? 0 : -1}
      aria-selected={isChosen || isSamePlace(selection.cursor, place)}
      title={wrong.length > 0 ? wrong.map(({ problem }) => `${problem.what} ${problem.why}`).join(' ') : undefined}
      className={join(
        !day.session && styles['free'],
        isChosen && styles['chosen'],
        wrong.length > 0 && styles['wrong'],
        isChangedCell(props) && styles['changed'],
      )}
    >
      {place.row < FIRST_ITEM_ROW ? (
        textAt(phase, place, exercises)
      ) : (
        <ItemText slot={slotAt(phase, place)} exercises={exercises} />
      )}
      {wrong.length > 0 ? <span className="unseen"> not in order: {wrong[0]?.problem.what}</span> : null}
      {isTyping ? <TypedCell {...props} /> : null}
    </td>
  );
};

const isChangedCell = ({ phase, place, isChanged }: WeekEditorProps & { readonly place: Place }): boolean => {
  const slot = slotAt(phase, place);
  return place.row >= FIRST_ITEM_ROW && slot.kind === 'item' && isChanged(slot.item);
};

const TypedCell = ({
  draft,
  phase,
  week,
  exercises,
  day,
  place,
}: WeekEditorProps & { readonly day: DayColumn; readonly place: Place }) => (
  <CellInput
    label={`${rowName(place.row)}, ${dayName(phase, day.weekday, 'whole')}`}
    isFromRight={place.column > columnsOf(phase).length / 2}
    start={week.typing?.start ?? ''}
    exercises={exercises}
    read={
      place.row < FIRST_ITEM_ROW
        ? null
        : (text) => readCell(draft, phase, day.session, slotAt(phase, place), text, exercises)
    }
    onDone={week.typed}
    onLeave={week.leave}
  />
);

const ItemText = ({ slot, exercises }: { readonly slot: Slot; readonly exercises: readonly Exercise[] }) => {
  if (slot.kind === 'blank') return null;
  if (slot.kind === 'unread') return <span className={styles['unread']}>{slot.text}</span>;
  const { item } = slot;
  return <ItemLine item={item} exercise={exercises.find(({ id }) => id === item.exercise)} />;
};
