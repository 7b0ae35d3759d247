import type { ProgrammeItem, ProgrammeSet } from '#domain/programme.ts';
import type { StandingAdjustment } from './adjustments.ts';

/** An item with as many sets or bouts more or fewer as signatures say; one is always left, and new ones are like the last. */
export const withSetsBy = (item: ProgrammeItem, adjustments: readonly StandingAdjustment[]): ProgrammeItem => {
  const by = adjustments.reduce((sum, { change }) => (change.kind === 'sets by' ? sum + change.by : sum), 0);
  if (by === 0) return item;
  return item.kind === 'bouts' ? { ...item, bouts: counted(item.bouts, by) } : setsCounted(item, by);
};

const setsCounted = (item: Exclude<ProgrammeItem, { readonly kind: 'bouts' }>, by: number): ProgrammeItem =>
  item.kind === 'lift' ? { ...item, sets: countedLifts(item.sets, by) } : { ...item, sets: counted(item.sets, by) };

/** More sets are more that must be: they stand before those that may be left out. */
const countedLifts = (sets: readonly ProgrammeSet[], by: number): readonly ProgrammeSet[] => {
  const last = sets.findLastIndex(({ optional }) => !optional);
  return by < 0 || last < 0 ? counted(sets, by) : [...counted(sets.slice(0, last + 1), by), ...sets.slice(last + 1)];
};

const counted = <Part>(parts: readonly Part[], by: number): readonly Part[] => {
  const last = parts.at(-1);
  if (last === undefined) return parts;
  const count = Math.max(1, parts.length + by);
  return Array.from({ length: count }, (_, place) => parts[place] ?? last);
};
