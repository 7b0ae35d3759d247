import type { Exercise } from '#domain/catalogue.ts';
import type { Bounds, Place } from '#web/parts/block/selection.ts';
import { BLANK, textOfSlot, type DraftPhase, type DraftSession, type Slot } from './draft.ts';

/** A day of the week of a phase; two sessions on one day, which is a mistake, stand side by side. */
export interface DayColumn {
  readonly weekday: number;
  readonly session: DraftSession | null;
}

const WEEK = [1, 2, 3, 4, 5, 6, 7] as const;

export const columnsOf = ({ sessions }: DraftPhase): readonly DayColumn[] =>
  WEEK.flatMap((weekday): readonly DayColumn[] => {
    const ofDay = sessions.filter((session) => session.weekday === weekday);
    return ofDay.length === 0 ? [{ weekday, session: null }] : ofDay.map((session) => ({ weekday, session }));
  });

/** Two rows for the session itself, then a row for every place of its list. */
export const TITLE_ROW = 0;
export const BLOCK_ROW = 1;
export const FIRST_ITEM_ROW = 2;

/** Room to write on under what stands there. */
const FREE_ROWS = 3;
const LEAST_ROWS = 8;

export const longestList = ({ sessions }: DraftPhase): number =>
  Math.max(0, ...sessions.map(({ slots }) => slots.length));

export const rowCount = (phase: DraftPhase): number =>
  FIRST_ITEM_ROW + Math.max(LEAST_ROWS, longestList(phase) + FREE_ROWS);

export const boundsOf = (phase: DraftPhase): Bounds => ({
  top: 0,
  left: 0,
  bottom: rowCount(phase) - 1,
  right: columnsOf(phase).length - 1,
});

export const slotAt = (phase: DraftPhase, { row, column }: Place): Slot =>
  columnsOf(phase)[column]?.session?.slots[row - FIRST_ITEM_ROW] ?? BLANK;

export const textAt = (phase: DraftPhase, place: Place, exercises: readonly Exercise[]): string => {
  const session = columnsOf(phase)[place.column]?.session;
  if (!session) return '';
  if (place.row === TITLE_ROW) return session.title;
  return place.row === BLOCK_ROW ? session.block : textOfSlot(slotAt(phase, place), exercises);
};
