import type { FactBody } from '#domain/fact.ts';
import type { Instant, MachineId } from '#domain/identity.ts';
import { liftsOf } from '#domain/card.ts';
import type { IssuedCard } from '#domain/issued-card.ts';
import { type Day, addDays, flightDay } from '#units/day.ts';
import { daysFlown } from './days-flown.ts';
import type { Incident } from './incident.ts';
import type { InventedPerson } from './invented-person.ts';
import { dayOfMoment, momentAfter } from './moment.ts';
import { performItem, type TrainingDay } from './perform-item.ts';
import { performPiece, piecesOf } from './perform-piece.ts';
import { normal, type Random } from './random.ts';
import { hurtsOf, notesOf, resultOf, type Session } from './written-down.ts';

/** Something that a person reports, and when it reaches the ground. */
export interface Reported {
  readonly at: Instant;
  readonly bodies: readonly FactBody[];
}

/** What the ground does not know for sure, and what it hears late. */
export interface TrueWorld {
  /** How the resistive machine aboard really pulls on a day, over what it is told. */
  readonly pullsBy: (day: Day) => number;
  readonly isOut: (machine: MachineId, day: Day) => boolean;
  /** When the person lands or landed, where that is known. */
  readonly landing: Day | null;
}

const FORM_SPREAD = 0.02;

/** What became of an issued card, from a person who does not exist. Nothing where nothing is ever heard. */
export const answerCard = (
  person: InventedPerson,
  document: IssuedCard,
  world: TrueWorld,
  random: Random,
): readonly Reported[] => {
  const incident = incidentOf(person, document);
  const day = dayTrained(person, document);
  const at = arrival(person, document, day, random);
  if (incident?.kind === 'not heard') return [];
  if (incident?.kind === 'called off' || incident?.kind === 'missed')
    return [{ at, bodies: [notTrained(incident, document)] }];
  return reportsOf(train(person, document, day, world, random), incident, at, random);
};

/** The day on which a card's session is trained: its own, unless two cards were swapped. */
export const dayTrained = (person: InventedPerson, document: IssuedCard): Day => {
  const incident = incidentOf(person, document);
  return incident?.kind === 'trained on' ? addDays(document.mission.launch, incident.flightDay - 1) : document.card.day;
};

const incidentOf = (person: InventedPerson, { card, mission }: IssuedCard): Incident | undefined =>
  person.incidents[flightDay(mission.launch, card.day)];

const train = (person: InventedPerson, document: IssuedCard, day: Day, world: TrueWorld, random: Random): Session => {
  const { launch } = document.mission;
  const onDay: TrainingDay = {
    sinceLaunch: daysFlown(day, launch, world.landing),
    weightless: day >= launch && (world.landing === null || day < world.landing),
    pullsBy: world.pullsBy(day),
    form: FORM_SPREAD * normal(random),
  };
  // What stands on a machine that is out is not done, and nothing is written of it.
  const pieces = piecesOf(document.card.items).filter(
    (item) => item.kind === 'drill' || !world.isOut(item.machine, day),
  );
  return {
    person,
    document,
    day,
    items: liftsOf(document.card).map((item) => performItem(person, item, onDay, random)),
    pieces: pieces.map((item) => performPiece(person, item, onDay, random)),
  };
};

const reportsOf = (
  session: Session,
  incident: Incident | undefined,
  at: Instant,
  random: Random,
): readonly Reported[] => {
  const result = resultOf(session, random);
  const bodies = [result, ...hurtsOf(session, random), ...notesOf(session, incident)];
  const again = { at: momentAfter(dayOfMoment(at), SECOND_COPY + 60 * random()), bodies: [result] };
  return [{ at, bodies }, ...(incident?.kind === 'sent twice' ? [again] : [])];
};

/** Minutes after midnight: results come down in the morning, a second copy in the afternoon. */
const MORNING = 7 * 60;
const SECOND_COPY = 14 * 60;

/** The next morning, now and then a day or two later; from a quiet time everything together and in no order. */
const arrival = ({ habits }: InventedPerson, { mission }: IssuedCard, day: Day, random: Random): Instant => {
  const [minute, chance] = [MORNING + 90 * random(), random()];
  const late = habits.prompt ? 0 : Number(chance > 0.85) + Number(chance > 0.95);
  const on = flightDay(mission.launch, day);
  if (habits.quiet && on >= habits.quiet.from && on <= habits.quiet.until)
    return momentAfter(addDays(mission.launch, habits.quiet.heardOn - 1), minute);
  return momentAfter(addDays(day, 1 + late), minute);
};

const notTrained = (
  incident: Extract<Incident, { readonly kind: 'called off' | 'missed' }>,
  { card, id }: IssuedCard,
): FactBody => {
  const about = { person: card.person, day: card.day, card: id };
  return incident.kind === 'missed'
    ? { kind: 'missed', ...about }
    : { kind: 'called off', ...about, cause: incident.cause, text: incident.text };
};
