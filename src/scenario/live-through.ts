import type { FactBody } from '#domain/fact.ts';
import type { CardId, Instant, PersonId } from '#domain/identity.ts';
import type { IssuedCard } from '#domain/issued-card.ts';
import { currentFacts, endOfLog, factsOfKind, isKind } from '#domain/log.ts';
import { type Day, addDays } from '#units/day.ts';
import { type Agenda, agenda } from './agenda.ts';
import { answerCard, dayTrained, type Reported, type TrueWorld } from './answer-card.ts';
import { type Chronicle, draftNamed, type Pen, pen, writeTogether } from './chronicle.ts';
import { failingTracks } from './failing-tracks.ts';
import type { InventedPerson } from './invented-person.ts';
import { missionWith } from './missions.ts';
import { dayOfMoment, momentOf } from './moment.ts';
import type { AtTheDesk, Office } from './office.ts';
import { drawnIdentity, randomStream } from './random.ts';
import { type Review, reviewsBefore } from './reviews.ts';
import { SCENARIO_SEED } from './scenario-log.ts';
import { truePull } from './script/house-script.ts';
import { isOutOn } from './script/outage-script.ts';
import type { Moment } from './script/script-entry.ts';
import { scriptUntil } from './script/script.ts';
import { signerOn } from './signers.ts';

/** What the log would not take: the result of a card that had one already. */
export interface Refused {
  readonly at: Instant;
  readonly person: PersonId;
  readonly card: CardId;
  readonly says: string;
}

export interface Lived extends Chronicle {
  readonly refused: readonly Refused[];
}

/** What grows while the scenario is lived through. */
interface Life {
  readonly today: Day;
  readonly seed: number;
  readonly office: Office;
  readonly pen: Pen;
  readonly agenda: Agenda;
  readonly newId: () => string;
  readonly refused: Refused[];
}

/** The scenario with its cards: every week reviewed and issued, every card answered, up to the night before today. */
export const liveThrough = (today: Day, office: Office, seed: number = SCENARIO_SEED): Lived => {
  const identities = randomStream(seed, 'identities of documents');
  const newId = (): string => drawnIdentity(identities);
  const life: Life = { today, seed, office, pen: pen(), agenda: agenda(), newId, refused: [] };
  for (const moment of scriptUntil(today, seed))
    life.agenda.add({ at: moment[0].at, happen: () => enter(life, moment) });
  for (const review of reviewsBefore(today)) life.agenda.add({ at: review.at, happen: () => holdReview(life, review) });
  life.agenda.runUntil(momentOf(today, '00:00'));
  return { ...life.pen.finished(), refused: life.refused };
};

const deskAt = ({ today, newId }: Life, at: Instant): AtTheDesk => {
  const day = dayOfMoment(at);
  return { today: day, at, signer: signerOn(day, today), newId };
};

/** Enters what the script says; a restriction and the recalls that it entails are one writing. */
const enter = (life: Life, entries: Moment): void => {
  const written = writeTogether(life.pen, entries, (log) =>
    log
      .slice(-entries.length)
      .filter(isKind('restricted'))
      .flatMap((fact) => life.office.recall(log, fact.id, deskAt(life, fact.recordedAt))),
  );
  for (const fact of written)
    if (fact.kind === 'decided' && fact.decision.kind === 'recall')
      answerRecall(life, fact.decision.person, fact.decision.card, addDays(dayOfMoment(fact.recordedAt), 1));
};

/** Recalls are read up over voice and acknowledged at the next morning's contact. */
const answerRecall = (life: Life, person: PersonId, card: CardId, on: Day): void => {
  const at = momentOf(on, RECEIVED);
  const happen = (): void => {
    const body: FactBody = { kind: 'received', person, card, what: 'recall', how: 'read up over voice', on };
    life.pen.write(at, [draftNamed(`recall received ${card}`, deskAt(life, at).signer, body)]);
  };
  life.agenda.add({ at, happen });
};

/** Reads what was written since the last review, backs off where repetitions were missed, issues the week. */
const holdReview = (life: Life, { person, at, from, until }: Review): void => {
  const desk = deskAt(life, at);
  readNotes(life, person, desk);
  backOff(life, person, desk);
  const drafts = life.office.issue(life.pen.log(), { ...desk, person: person.id, from, until });
  for (const fact of life.pen.write(at, drafts))
    if (fact.kind === 'decided' && fact.decision.kind === 'issue') send(life, person, fact.decision.card);
};

const readNotes = ({ pen: { log, seen, write } }: Life, person: InventedPerson, { at, signer }: AtTheDesk): void => {
  const facts = currentFacts(log(), seen());
  const read = new Set(factsOfKind(facts, 'read').map((fact) => fact.note));
  const unread = factsOfKind(facts, 'noted').filter((note) => note.person === person.id && !read.has(note.id));
  write(
    at,
    unread.map((note) => draftNamed(`read ${note.id}`, signer, { kind: 'read', person: person.id, note: note.id })),
  );
};

/** A tenth off every track on which repetitions were missed twice. */
const backOff = (
  { pen: { log, seen, write } }: Life,
  person: InventedPerson,
  { today, at, signer }: AtTheDesk,
): void => {
  for (const track of failingTracks(log(), person.id, today)) {
    const from = addDays(today, 1);
    const reason = 'Repetitions missed in the last two sessions.';
    const change = { kind: 'back off', by: 0.1 } as const;
    const decision = { kind: 'adjust', person: person.id, track, change, from, until: null, reason } as const;
    const body: FactBody = { kind: 'decided', decision, answers: null, basis: seen() };
    write(at, [draftNamed(`back off ${person.id} ${track} ${today}`, signer, body)]);
  }
};

const RECEIVED = '06:30';
const TRAINED = '17:00';

const send = (life: Life, person: InventedPerson, document: IssuedCard): void => {
  const next = addDays(dayOfMoment(document.issuedAt), 1);
  const at = momentOf(next, RECEIVED);
  life.agenda.add({ at, happen: () => receive(life, document, next) });
  const session = momentOf(dayTrained(person, document), TRAINED);
  life.agenda.add({ at: session, happen: () => trainFrom(life, person, document) });
};

const receive = (life: Life, { id, card }: IssuedCard, on: Day): void => {
  const { at, signer } = deskAt(life, momentOf(on, RECEIVED));
  const body: FactBody = {
    kind: 'received',
    person: card.person,
    card: id,
    what: 'card',
    how: 'file sent up, acknowledged by the crew',
    on,
  };
  life.pen.write(at, [draftNamed(`received ${id}`, signer, body)]);
};

/** Nobody trains from a card that was called back or replaced. */
const trainFrom = (life: Life, person: InventedPerson, document: IssuedCard): void => {
  if (isWithdrawn(life, document.id)) return;
  const random = randomStream(life.seed, `${person.id} trains ${document.card.missionDay}`);
  for (const reported of answerCard(person, document, trueWorld(person, life.today), random))
    life.agenda.add({ at: reported.at, happen: () => takeDown(life, document, reported) });
};

const trueWorld = ({ mission }: InventedPerson, today: Day): TrueWorld => {
  const { landing } = missionWith(mission);
  return {
    pullsBy: truePull(today),
    isOut: isOutOn(today),
    landing: landing && landing[1] < 0 ? addDays(today, landing[1]) : null,
  };
};

const isWithdrawn = ({ pen: { log } }: Life, card: CardId): boolean =>
  log().some(
    (fact) =>
      fact.kind === 'decided' &&
      ((fact.decision.kind === 'recall' && fact.decision.card === card) ||
        (fact.decision.kind === 'issue' && fact.decision.card.replaces === card)),
  );

/** Takes a report down, unless the card has its result already. */
const takeDown = (life: Life, document: IssuedCard, { at, bodies }: Reported): void => {
  const { log, write } = life.pen;
  const taken = currentFacts(log(), endOfLog(log())).some(
    (fact) => fact.kind === 'trained' && fact.card === document.id,
  );
  if (taken && bodies.some((body) => body.kind === 'trained')) {
    const says = 'This card has its result already; the second copy says the same and was left out.';
    life.refused.push({ at, person: document.card.person, card: document.id, says });
    return;
  }
  const { signer } = deskAt(life, at);
  write(
    at,
    bodies.map((body, place) => draftNamed(`report ${document.id} ${place}`, signer, body)),
  );
};
