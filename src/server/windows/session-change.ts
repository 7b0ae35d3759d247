import { totalMinutes, type Card } from '#domain/card.ts';
import type { ItemId } from '#domain/identity.ts';
import type { SessionMinutes } from '#contract/windows/written-window.ts';

export const minutesOf = (before: Card, after: Card): SessionMinutes => ({
  was: Math.round(totalMinutes(before)),
  is: Math.round(totalMinutes(after)),
  block: after.blockMinutes,
});

/** What a session leaves out now that it did not before, but for what was asked to be left out. */
export const newlyLeftOut = (
  before: Card,
  after: Card,
  isAsked: (item: ItemId) => boolean = () => false,
): readonly string[] => {
  const already = new Set(before.leftOut.map(({ item }) => item));
  return after.leftOut
    .filter(({ item }) => !already.has(item) && !isAsked(item))
    .map(({ exerciseName, says }) => `${exerciseName}: ${says}`);
};
