import { heightOf, type Block } from '#web/parts/block/selection.ts';
import { BLANK, withPhase, type Draft, type Slot } from './draft.ts';
import { columnsOf, FIRST_ITEM_ROW } from './week.ts';

/** Moves the chosen places of each day one up or down, past what stands there; null where there is no room. */
export const movedCells = (draft: Draft, at: number, block: Block, by: -1 | 1): Draft | null => {
  const phase = draft.phases[at];
  const [top, bottom] = [block.top - FIRST_ITEM_ROW, block.bottom - FIRST_ITEM_ROW];
  if (!phase || top < 0 || top + by < 0) return null;
  const chosen = new Set(
    columnsOf(phase)
      .slice(block.left, block.right + 1)
      .flatMap(({ session }) => session?.id ?? []),
  );
  if (chosen.size === 0) return null;
  return withPhase(draft, at, (each) => ({
    ...each,
    sessions: each.sessions.map((session) =>
      chosen.has(session.id) ? { ...session, slots: movedSlots(session.slots, top, bottom, by) } : session,
    ),
  }));
};

const movedSlots = (slots: readonly Slot[], top: number, bottom: number, by: -1 | 1): readonly Slot[] => {
  const long = Array.from({ length: Math.max(slots.length, bottom + 2) }, (_, place) => slots[place] ?? BLANK);
  const moving = long.slice(top, bottom + 1);
  const rest = [...long.slice(0, top), ...long.slice(bottom + 1)];
  const next = [...rest.slice(0, top + by), ...moving, ...rest.slice(top + by)];
  const last = next.findLastIndex(({ kind }) => kind !== 'blank');
  return next.slice(0, last + 1);
};

export const movedBlock = (block: Block, by: -1 | 1): Block => ({
  ...block,
  top: block.top + by,
  bottom: block.top + by + heightOf(block) - 1,
});
