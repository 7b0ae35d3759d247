import { addDays, type Day } from '#units/day.ts';
import { liftsOf, totalMinutes } from '#domain/card.ts';
import { cardCode } from '#domain/card-code.ts';
import type { Known } from '#domain/known.ts';
import type { Road, RoadCard } from '#domain/road.ts';
import type { Snapshot } from '#actions/snapshot.ts';
import type { SheetColumn, SheetWindow } from '#contract/windows/sheet-window.ts';
import { followedBy, isOurs, personHead } from './person-head.ts';
import { cardOf } from './sheet-cell.ts';
import { sheetGroups } from './sheet-rows.ts';
import { sheetStrips } from './sheet-strips.ts';

const DAYS_BACK = 21;
/** A week more than can usually be issued, so that a fill or a copied week has a place to go. */
const DAYS_AHEAD = 20;

/** Whatever can be issued is seen, however far a policy lets cards go ahead. */
const lastDayOf = ({ house: { policies } }: Known, today: Day): Day =>
  addDays(today, Math.max(DAYS_AHEAD, policies.horizonDays - 1));

export const sheetWindow = (snapshot: Snapshot, known: Known, road: Road): SheetWindow => {
  const { today } = snapshot;
  const [from, to] = [addDays(today, -DAYS_BACK), lastDayOf(known, today)];
  const cards = onePerDay(road.cards.filter(({ day }) => day >= from && day <= to));
  return {
    person: personHead(snapshot, known),
    today,
    upTo: snapshot.upTo,
    columns: cards.map((card) => sheetColumn(card, today)),
    strips: cards.length > 0 ? sheetStrips(known, { ...road, cards }, today, { from, to }) : [],
    groups: sheetGroups(known, road, cards, today),
    canIssue: daysToIssue(road),
    unit: cards.flatMap((card) => liftsOf(cardOf(card)).map((item) => item.unit))[0] ?? 'lb',
    empty: cards.length > 0 ? null : whyEmpty(known, road),
  };
};

/** Planned days without a gap: what issuing takes now. */
export const daysToIssue = (road: Road): readonly Day[] => [
  ...new Set(road.cards.flatMap((card) => (card.state === 'planned' && card.gaps.length === 0 ? [card.day] : []))),
];

/** A card that was taken back gives way to the one that stands on its day, unless something was done on it. */
export const onePerDay = (cards: readonly RoadCard[]): readonly RoadCard[] =>
  cards.filter(
    (card) =>
      !isWithdrawn(card) ||
      card.record.results.length > 0 ||
      !cards.some((other) => other !== card && other.day === card.day && !isWithdrawn(other)),
  );

const isWithdrawn = (card: RoadCard): card is Extract<RoadCard, { readonly state: 'issued' }> =>
  card.state === 'issued' && (card.record.delivery === 'recalled' || card.record.delivery === 'superseded');

export const sheetColumn = (road: RoadCard, today: Day): SheetColumn => {
  const card = cardOf(road);
  const record = road.state === 'issued' ? road.record : null;
  return {
    day: road.day,
    missionDay: card.missionDay,
    title: card.title,
    state: road.state,
    past: road.day < today,
    card: record?.document.id ?? null,
    code: record && cardCode(record.document.digest),
    delivery: record?.delivery ?? null,
    outcome: record?.outcome ?? null,
    calledOff: record?.calledOff ? `${record.calledOff.cause}: ${record.calledOff.text}` : null,
    minutes: Math.round(totalMinutes(card)),
    blockMinutes: card.blockMinutes,
    deload: card.deload,
    gaps: road.state === 'issued' ? [] : road.gaps,
  };
};

const whyEmpty = (known: Known, road: Road): string => {
  if (!isOurs(known)) return `${known.name} belongs to another team: only machines and minutes are shared.`;
  if (!known.mission) return `${known.name} has no mission yet: assign one, and the flight programme can begin.`;
  if (followedBy(known).length === 0) return `${known.name} follows no programme yet: choose one under Programmes.`;
  return road.gaps[0]?.says ?? 'No session lies between three weeks ago and three weeks from now.';
};
