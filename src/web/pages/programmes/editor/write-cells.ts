import type { Exercise } from '#domain/catalogue.ts';
import { readLine, type LineReading } from '#domain/programme-line/read-line.ts';
import type { Laid } from '#web/parts/block/fill.ts';
import type { Place } from '#web/parts/block/selection.ts';
import { BLANK, withPhase, type Draft, type DraftPhase, type DraftSession, type Slot } from './draft.ts';
import { newItemId, newSessionId, placeIn } from './new-names.ts';
import { BLOCK_ROW, columnsOf, FIRST_ITEM_ROW, TITLE_ROW } from './week.ts';

/** What is to stand in a cell: text as typed, or an item copied whole, with all that its line does not say. */
export type CellValue = string | Slot;

/** Lays values into cells of one phase, one after another: a later one sees what an earlier one made. */
export const withCells = (
  draft: Draft,
  phase: number,
  cells: readonly Laid<CellValue>[],
  exercises: readonly Exercise[],
): Draft => {
  const columns = columnsOf(draft.phases[phase] ?? NO_PHASE);
  // Places are those of the grid as it was seen: sessions come and go while cells are laid.
  return cells.reduce((now, { place, value }) => {
    const day = columns[place.column];
    return day
      ? withCell(now, phase, { place, weekday: day.weekday, session: day.session?.id ?? null, value }, exercises)
      : now;
  }, draft);
};

const NO_PHASE: DraftPhase = {
  name: 'main flight',
  span: { first: { from: 'launch', days: 0 }, last: null },
  deload: null,
  sessions: [],
  source: '',
};

interface Laying {
  readonly place: Place;
  readonly weekday: number;
  readonly session: DraftSession['id'] | null;
  readonly value: CellValue;
}

const withCell = (draft: Draft, at: number, laying: Laying, exercises: readonly Exercise[]): Draft => {
  const phase = draft.phases[at];
  if (!phase) return draft;
  const { weekday, value, place } = laying;
  const stands = phase.sessions.find((session) =>
    laying.session === null ? session.weekday === weekday : session.id === laying.session,
  );
  if (!stands && isNothing(value)) return draft;
  const session = stands ?? newSession(draft, phase, weekday);
  const changed = changedSession(draft, phase, session, place.row, value, exercises);
  const sessions = stands
    ? phase.sessions.map((each) => (each === stands ? changed : each))
    : [...phase.sessions, changed];
  return withPhase(draft, at, () => ({
    ...phase,
    sessions: sessions.filter((each) => !isEmptySession(each)).toSorted((a, b) => a.weekday - b.weekday),
  }));
};

const isNothing = (value: CellValue): boolean =>
  typeof value === 'string' ? value.trim() === '' : value.kind === 'blank';

/** A day whose every cell was cleared has no session any more. */
const isEmptySession = ({ title, slots }: DraftSession): boolean =>
  title.trim() === '' && slots.every(({ kind }) => kind === 'blank');

const USUAL_BLOCK = '60';

const newSession = (draft: Draft, phase: DraftPhase, weekday: number): DraftSession => ({
  id: newSessionId(draft, phase.name, weekday),
  title: `Day ${weekday}`,
  weekday,
  block: phase.sessions[0]?.block ?? USUAL_BLOCK,
  slots: [],
});

const changedSession = (
  draft: Draft,
  phase: DraftPhase,
  session: DraftSession,
  row: number,
  value: CellValue,
  exercises: readonly Exercise[],
): DraftSession => {
  const text = typeof value === 'string' ? value : '';
  if (row === TITLE_ROW) return { ...session, title: text.trim() };
  if (row === BLOCK_ROW) return { ...session, block: text.trim() };
  const at = row - FIRST_ITEM_ROW;
  const before = session.slots[at] ?? BLANK;
  const slot =
    typeof value === 'string'
      ? slotFrom(draft, phase, session, before, value, exercises)
      : copied(draft, session, value);
  const filled = [...session.slots, ...Array.from({ length: Math.max(0, at - session.slots.length) }, () => BLANK)];
  return { ...session, slots: withoutEnd([...filled.slice(0, at), slot, ...filled.slice(at + 1)]) };
};

/** Blank places at the end of a list are no places. */
const withoutEnd = (slots: readonly Slot[]): readonly Slot[] => {
  const last = slots.findLastIndex(({ kind }) => kind !== 'blank');
  return slots.slice(0, last + 1);
};

const slotFrom = (
  draft: Draft,
  phase: DraftPhase,
  session: DraftSession,
  before: Slot,
  text: string,
  exercises: readonly Exercise[],
): Slot => {
  if (text.trim() === '') return BLANK;
  const reading = readCell(draft, phase, session, before, text, exercises);
  return reading.kind === 'item'
    ? { kind: 'item', item: reading.item }
    : { kind: 'unread', text: text.trim(), before: beforeOf(before) };
};

const beforeOf = (slot: Slot) => (slot.kind === 'item' ? slot.item : slot.kind === 'unread' ? slot.before : null);

/** What a line would be in a place: also asked while it is typed. */
export const readCell = (
  draft: Draft,
  phase: DraftPhase,
  session: DraftSession | null,
  before: Slot,
  text: string,
  exercises: readonly Exercise[],
): LineReading =>
  readLine(text, {
    exercises,
    before: beforeOf(before),
    place: placeIn(draft, phase, session ?? newSession(draft, phase, 1)),
  });

/** A copy is an item of its own on the same track: its line, and all that stands beside it, goes along. */
const copied = (draft: Draft, session: DraftSession, slot: Slot): Slot =>
  slot.kind === 'item'
    ? { kind: 'item', item: { ...slot.item, id: newItemId(draft, session.id, slot.item.exercise) } }
    : slot.kind === 'unread'
      ? { ...slot, before: null }
      : BLANK;
