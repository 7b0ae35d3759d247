import { addDays, weekdayOf, type Day } from '#units/day.ts';
import { totalMinutes, type Card } from '#domain/card.ts';
import type { Road, RoadCard } from '#domain/road.ts';
import type { DaySpan, PhaseSpan } from './road-spans.ts';

/**
 * The least time for all exercise (common practice, no source): before launch two blocks of two hours or four single hours
 * a week; in flight two and a half hours a day with set-up and stowing. A taper and the quarantine are meant to hold less.
 */
export const TIME_PRACTICE = { aWeekBeforeLaunch: 240, aDayInFlight: 150 } as const;
const WEEK = 7;

/** Planned cards that lack an entry or a signature wait; the others can be issued. */
export type CardState = 'issued' | 'can be issued' | 'waiting' | 'expected';
export type Counts = Readonly<Record<CardState, number>>;

export interface RoadWeek extends DaySpan {
  readonly cards: Counts;
  /** True minutes of its cards, overhead included. */
  readonly minutes: Counts;
  /** Minutes that practice asks for; null where it asks for none. */
  readonly practice: number | null;
}

/** What a phase holds of the time that practice asks for. */
export interface PhaseTime {
  readonly sessionsAWeek: number;
  /** Minutes that the programme's blocks reserve. */
  readonly reservedAWeek: number;
  /** True minutes of a week of its cards, overhead included; null where it has no whole week of them. */
  readonly trueAWeek: number | null;
  readonly practiceAWeek: number | null;
  readonly cards: Counts;
}

/** Cards that stand: what was recalled or superseded is no part of the road any more. */
export const standingCards = ({ cards }: Road): readonly RoadCard[] =>
  cards.filter(
    (card) => card.state !== 'issued' || card.record.delivery === 'issued' || card.record.delivery === 'received',
  );

export const mondayOf = (on: Day): Day => addDays(on, -weekdayOf(on));

export const roadWeeks = (
  road: DaySpan,
  phases: readonly PhaseSpan[],
  cards: readonly RoadCard[],
): readonly RoadWeek[] => {
  const byWeek = new Map<Day, RoadCard[]>();
  for (const card of cards) {
    const monday = mondayOf(card.day);
    byWeek.set(monday, [...(byWeek.get(monday) ?? []), card]);
  }
  return Array.from({ length: Math.ceil((road.last - road.first + 1) / WEEK) }, (_, place) => {
    const first = addDays(road.first, place * WEEK);
    const own = byWeek.get(first) ?? [];
    const span = { first, last: addDays(first, WEEK - 1) };
    return { ...span, cards: countsOf(own), minutes: minutesOf(own), practice: practiceOver(span, phases) };
  });
};

export const phaseTime = (span: PhaseSpan, cards: readonly RoadCard[]): PhaseTime => {
  const own = cards.filter(({ day }) => day >= span.first && day <= span.last);
  const sessions = span.held?.phase.sessions ?? [];
  return {
    sessionsAWeek: sessions.length,
    reservedAWeek: sessions.reduce((sum, session) => sum + session.blockMinutes, 0),
    trueAWeek: trueMinutesAWeek(own, sessions.length),
    practiceAWeek: practiceAWeek(span),
    cards: countsOf(own),
  };
};

/** By the mean of its cards, so that a week cut by an edge of the phase does not count as a light one. */
const trueMinutesAWeek = (cards: readonly RoadCard[], sessionsAWeek: number): number | null =>
  cards.length === 0 ? null : (sumOf(minutesOf(cards)) / cards.length) * sessionsAWeek;

const practiceAWeek = ({ side, held }: PhaseSpan): number | null => {
  if (side === 'in flight') return TIME_PRACTICE.aDayInFlight * WEEK;
  const meantToHoldLess = held?.phase.name === 'taper' || held?.phase.name === 'quarantine';
  return side === 'before launch' && !meantToHoldLess ? TIME_PRACTICE.aWeekBeforeLaunch : null;
};

/** Day by day: a week that launch cuts asks for a part of each. */
const practiceOver = ({ first, last }: DaySpan, phases: readonly PhaseSpan[]): number | null => {
  const parts = phases.flatMap((phase) => {
    const days = Math.min(last, phase.last) - Math.max(first, phase.first) + 1;
    const aWeek = practiceAWeek(phase);
    return days > 0 && aWeek !== null ? [(aWeek * days) / WEEK] : [];
  });
  return parts.length === 0 ? null : parts.reduce((total, part) => total + part, 0);
};

const cardOf = (each: RoadCard): Card => (each.state === 'issued' ? each.record.document.card : each.card);

const countsOf = (cards: readonly RoadCard[]): Counts => totals(cards, () => 1);
const minutesOf = (cards: readonly RoadCard[]): Counts => totals(cards, (card) => totalMinutes(cardOf(card)));

const totals = (cards: readonly RoadCard[], amount: (card: RoadCard) => number): Counts => {
  const totalOf = (state: CardState): number =>
    cards.filter((card) => stateOf(card) === state).reduce((total, card) => total + amount(card), 0);
  return {
    issued: totalOf('issued'),
    'can be issued': totalOf('can be issued'),
    waiting: totalOf('waiting'),
    expected: totalOf('expected'),
  };
};

const stateOf = (card: RoadCard): CardState => {
  if (card.state !== 'planned') return card.state;
  return card.gaps.length === 0 ? 'can be issued' : 'waiting';
};

export const sumOf = (counts: Counts): number => Object.values(counts).reduce((total, count) => total + count, 0);
