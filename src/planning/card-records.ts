import type { Day } from '#units/day.ts';
import type { Fact } from '#domain/fact.ts';
import type { CardId } from '#domain/identity.ts';
import { liftsOf, type CardSet } from '#domain/card.ts';
import type { IssuedCard } from '#domain/issued-card.ts';
import { ofKind, type Known } from '#domain/known.ts';
import type { CardRecord, Delivery, Outcome } from '#domain/road.ts';

/** Every issued card with what became of it, in order of issue. */
export const cardRecords = (known: Known, today: Day): readonly CardRecord[] => {
  const read = new Set(ofKind(known, 'read').map((fact) => fact.note));
  const replaced = new Set(issues(known).flatMap(({ document }) => document.replaces ?? []));
  return issues(known).map(({ document, fact }) => recordOf(known, today, document, fact, read, replaced));
};

const issues = (known: Known) =>
  ofKind(known, 'decided').flatMap((fact) =>
    fact.decision.kind === 'issue' ? [{ fact, document: fact.decision.card }] : [],
  );

const recordOf = (
  known: Known,
  today: Day,
  document: IssuedCard,
  issue: Fact<'decided'>,
  read: ReadonlySet<string>,
  replaced: ReadonlySet<CardId>,
): CardRecord => {
  const about = <F extends { readonly card: CardId | null }>(facts: readonly F[]): readonly F[] =>
    facts.filter((fact) => fact.card === document.id);
  const trained = about(ofKind(known, 'trained')).at(-1) ?? null;
  const calledOff = about(ofKind(known, 'called off')).at(-1) ?? null;
  const missed = about(ofKind(known, 'missed')).length > 0;
  const received = about(ofKind(known, 'received'));
  const recall = recallOf(known, document.id);
  return {
    document,
    issuedIn: issue.id,
    delivery: deliveryOf(document.id, recall !== null, replaced, received),
    recall: recall && {
      fact: recall.fact.id,
      says: recall.says,
      receiptRecorded: received.some((fact) => fact.what === 'recall'),
    },
    outcome: outcomeOf(document, trained, calledOff !== null, missed, today),
    results: trained?.sets ?? [],
    trained,
    hurts: about(ofKind(known, 'hurt')),
    notes: about(ofKind(known, 'noted')).map((fact) => ({ fact, read: read.has(fact.id) })),
    calledOff,
  };
};

const recallOf = (known: Known, card: CardId): { readonly fact: Fact<'decided'>; readonly says: string } | null => {
  const fact = ofKind(known, 'decided').findLast(
    ({ decision }) => decision.kind === 'recall' && decision.card === card,
  );
  return fact?.decision.kind === 'recall' ? { fact, says: fact.decision.says } : null;
};

const deliveryOf = (
  card: CardId,
  recalled: boolean,
  replaced: ReadonlySet<CardId>,
  received: readonly Fact<'received'>[],
): Delivery => {
  if (recalled) return 'recalled';
  if (replaced.has(card)) return 'superseded';
  return received.some((fact) => fact.what === 'card') ? 'received' : 'issued';
};

const outcomeOf = (
  document: IssuedCard,
  trained: Fact<'trained'> | null,
  calledOff: boolean,
  missed: boolean,
  today: Day,
): Outcome => {
  if (trained) return isWholeCardDone(document, trained) ? 'done' : 'part done';
  if (calledOff) return 'called off';
  if (missed) return 'missed';
  return document.card.day < today ? 'not heard' : 'none';
};

const isWholeCardDone = (document: IssuedCard, trained: Fact<'trained'>): boolean =>
  piecesDone(document, trained) &&
  document.sets
    .filter((set) => mustBeDone(liftsOf(document.card).find((item) => item.item === set.item)?.sets[set.place]))
    .every((set) => trained.sets.some((result) => result.set === set.id && result.repetitions > 0));

const mustBeDone = (set: CardSet | undefined): boolean => set?.kind === 'work' && !set.optional;

/** Every bout and every set of a drill. */
const piecesDone = ({ card }: IssuedCard, { pieces }: Fact<'trained'>): boolean =>
  card.items.every((item) => {
    if (item.kind === 'lift') return true;
    const result = pieces.find((each) => each.item === item.item);
    return result !== undefined && result.done >= (item.kind === 'bouts' ? item.bouts.length : item.sets.length);
  });

/** Does this card stand, to be trained from? */
export const stands = (record: CardRecord): boolean => record.delivery === 'issued' || record.delivery === 'received';
