import { mostInAll } from './asked-sets.ts';
import { workIncrements, type CardLift } from './card.ts';

/** A signed rule made from its bounds, short enough for a card or a margin; null where none was signed. */
export const showRule = (item: CardLift, show: (increments: number) => string): string | null => {
  const { rule } = item;
  const load = workIncrements(item);
  if (!rule || load === null) return null;
  const most = mostInAll(item.sets.filter(({ kind }) => kind === 'work'));
  const all = most === null ? 'all' : `${most} in every set`;
  const up =
    rule.neverOver >= load + rule.add
      ? `+${show(rule.add)} next time if ${all} at RPE ≤ ${rule.rpeAtMost}, discomfort < ${rule.discomfortBelow}; never over ${show(rule.neverOver)}`
      : `stay at ${show(load)}`;
  return `${up}; up to ${show(rule.takeOff)} off`;
};
