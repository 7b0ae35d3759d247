import type { Day } from '#units/day.ts';
import type { Fact } from '#domain/fact.ts';
import type { IssuedCard } from '#domain/issued-card.ts';
import { ofKind, type Known } from '#domain/known.ts';

/** What is entered of a person's days: derivations ask for it every day, so it is sifted once. */
export interface Calendar {
  readonly available: readonly Fact<'available'>[];
  readonly setAside: readonly Fact<'set aside'>[];
  /** In order of their days. */
  readonly walks: readonly Fact<'space walk'>[];
  readonly holds: readonly Fact<'road holds'>[];
  readonly looks: readonly Fact<'looked at'>[];
  /** Cards that stand, by their day. */
  readonly issued: ReadonlyMap<Day, IssuedCard>;
}

export const calendarOf = (known: Known): Calendar => ({
  available: ofKind(known, 'available'),
  setAside: ofKind(known, 'set aside'),
  walks: ofKind(known, 'space walk').toSorted((a, b) => a.day - b.day),
  holds: ofKind(known, 'road holds'),
  looks: ofKind(known, 'looked at').toSorted((a, b) => a.day - b.day),
  issued: standingCards(known),
});

const standingCards = (known: Known): ReadonlyMap<Day, IssuedCard> => {
  const standing = new Map<Day, IssuedCard>();
  for (const { decision } of ofKind(known, 'decided')) {
    if (decision.kind === 'issue') standing.set(decision.card.card.day, decision.card);
    if (decision.kind === 'recall')
      for (const [day, card] of standing) if (card.id === decision.card) standing.delete(day);
  }
  return standing;
};

/** Does a span hold a day? An end of null is open. */
export const holdsDay = ({ from, until }: { readonly from: Day; readonly until: Day | null }, on: Day): boolean =>
  from <= on && (until === null || on <= until);
