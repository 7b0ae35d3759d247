import { cardCode, readCardCode } from '#domain/card-code.ts';
import type { Known } from '#domain/known.ts';
import type { CardRecord, Road, RoadCard } from '#domain/road.ts';
import type { Day } from '#units/day.ts';
import type { Snapshot } from '#actions/snapshot.ts';
import { planIssue } from '#planning/issue.ts';
import { workingsOf } from '#planning/workings.ts';
import { cardText } from '#interchange/plain-text/card-text.ts';
import { weekText } from '#interchange/plain-text/week-text.ts';
import { idOf } from '#domain/identity.ts';
import type {
  CardWindow,
  IssuedCardWindow,
  IssuePreviewWindow,
  PlannedCardWindow,
  WeekTextWindow,
  WorkingWindow,
} from '#contract/windows/card-window.ts';
import { showPiece } from '#domain/show-piece.ts';
import { cardOf } from './sheet-cell.ts';
import { showWorkSets } from './set-runs.ts';

export const issuedWindow = ({ document, delivery, outcome, recall }: CardRecord): IssuedCardWindow => ({
  kind: 'issued',
  document,
  code: cardCode(document.digest),
  record: { delivery, outcome, recall },
  plainText: cardText(document),
});

const plannedWindow = (
  { name, mission }: Known,
  card: Extract<RoadCard, { readonly gaps: readonly string[] }>['card'],
  gaps: readonly string[],
): PlannedCardWindow => ({ kind: 'planned', card, personName: name, missionName: mission?.name ?? '', gaps });

/** The card of a day: what stands, else what is planned. A withdrawn one is shown only where nothing else is. */
export const cardOfDay = (known: Known, road: Road, day: Day): CardWindow | null => {
  const cards = road.cards.filter((card) => card.day === day);
  const issued = cards.flatMap((card) => (card.state === 'issued' ? [card.record] : []));
  const standing = issued.findLast(({ delivery }) => delivery === 'issued' || delivery === 'received');
  if (standing) return issuedWindow(standing);
  const computed = cards.find((card) => card.state !== 'issued');
  if (computed) return plannedWindow(known, computed.card, computed.gaps);
  const withdrawn = issued.at(-1);
  return withdrawn ? issuedWindow(withdrawn) : null;
};

/** An issued card by its identity or by the code that stands on it. */
export const issuedCardNamed = (snapshot: Snapshot, named: string): IssuedCardWindow | null => {
  const reading = readCardCode(named);
  const isIt = ({ document }: CardRecord): boolean =>
    document.id === named || (reading.kind === 'code' && cardCode(document.digest) === reading.code);
  for (const person of snapshot.people)
    for (const card of snapshot.road(person)?.cards ?? [])
      if (card.state === 'issued' && isIt(card.record)) return issuedWindow(card.record);
  return null;
};

export const issuePreviewWindow = (known: Known, road: Road, days: readonly Day[]): IssuePreviewWindow => {
  const { cards, raises, refusals } = planIssue(known, road, days);
  return {
    upTo: road.upTo,
    cards: cards.map(({ card }) => plannedWindow(known, card, [])),
    raises,
    replaces: cards.flatMap(({ replaces }) =>
      replaces ? [{ code: cardCode(replaces.document.digest), missionDay: replaces.document.card.missionDay }] : [],
    ),
    refusals,
  };
};

const WEEK = 7;

/** Seven days of issued cards from a day on, as one plain text. */
export const weekTextWindow = (road: Road, from: Day): WeekTextWindow =>
  weekText(
    road.cards.flatMap((card) =>
      card.state === 'issued' &&
      card.day >= from &&
      card.day < from + WEEK &&
      (card.record.delivery === 'issued' || card.record.delivery === 'received')
        ? [card.record.document]
        : [],
    ),
  );

export const workingWindow = (known: Known, road: Road, day: Day, item: string): WorkingWindow | null => {
  for (const card of road.cards.filter((each) => each.day === day).toReversed()) {
    const found = cardOf(card).items.find((each) => each.item === item);
    if (found)
      return {
        exerciseName: found.exerciseName,
        load: found.kind === 'lift' ? showWorkSets(found, 'with unit') : showPiece(found),
        workings: workingsOf(known, road, day, idOf(item)),
        limits: found.kind === 'lift' ? found.limits : [],
      };
  }
  return null;
};
