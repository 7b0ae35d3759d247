import { addDays, type Day } from '#units/day.ts';
import type { CardRecord, Outcome, Road, RoadCard } from '#domain/road.ts';

/** Days looked back on: two weeks, the rhythm of talks with a person (our own design). */
export const DAYS_LOOKED_BACK = 14;

export type PastOutcome = Exclude<Outcome, 'none'>;

/** What came back of the cards whose day is past. Called off is kept apart: it is neither done nor neglected. */
export interface Reported {
  readonly of: number;
  readonly done: number;
  readonly calledOff: number;
  readonly notHeard: number;
  /** Cards in order of day. */
  readonly days: readonly PastOutcome[];
}

/** Cards of the last fourteen days before today. One that was taken back counts only where something was recorded for it. */
export const reportedOf = ({ cards, today }: Pick<Road, 'cards' | 'today'>): Reported => {
  const days = pastRecords(cards, today).flatMap(({ outcome }) => (outcome === 'none' ? [] : [outcome]));
  const count = (...outcomes: readonly PastOutcome[]): number => days.filter((each) => outcomes.includes(each)).length;
  return {
    of: days.length,
    done: count('done', 'part done'),
    calledOff: count('called off'),
    notHeard: count('not heard'),
    days,
  };
};

const pastRecords = (cards: readonly RoadCard[], today: Day): readonly CardRecord[] =>
  cards.flatMap((card) =>
    card.state === 'issued' && card.day < today && card.day >= addDays(today, -DAYS_LOOKED_BACK) && counts(card.record)
      ? [card.record]
      : [],
  );

const counts = ({ delivery, outcome }: CardRecord): boolean =>
  (delivery !== 'recalled' && delivery !== 'superseded') || (outcome !== 'none' && outcome !== 'not heard');
