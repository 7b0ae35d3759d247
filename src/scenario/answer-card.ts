import type { FactBody } from '#domain/fact.ts';
import type { Instant } from '#domain/identity.ts';
import { liftsOf } from '#domain/card.ts';
import type { IssuedCard } from '#domain/issued-card.ts';
import { type Day, addDays, flightDay } from '#units/day.ts';
import type { Incident } from './incident.ts';
import type { InventedPerson } from './invented-person.ts';
import { dayOfMoment, momentAfter } from './moment.ts';
import { performItem, type TrainingDay } from './perform-item.ts';
import { normal, type Random } from './random.ts';
import { hurtsOf, notesOf, resultOf, type Session } from './written-down.ts';

/** Something that a person reports, and when it reaches the ground. */
export interface Reported {
  readonly at: Instant;
  readonly bodies: readonly FactBody[];
}

/** What the ground does not know for sure: how the machine really pulls on a day, over what it is told. */
export type TruePull = (day: Day) => number;

const FORM_SPREAD = 0.02;

/** What became of an issued card, from a person who does not exist. Nothing where nothing is ever heard. */
export const answerCard = (
  person: InventedPerson,
  document: IssuedCard,
  truePull: TruePull,
  random: Random,
): readonly Reported[] => {
  const incident = incidentOf(person, document);
  const day = dayTrained(person, document);
  const at = arrival(person, document, day, random);
  if (incident?.kind === 'not heard') return [];
  if (incident?.kind === 'called off' || incident?.kind === 'missed')
    return [{ at, bodies: [notTrained(incident, document)] }];
  return reportsOf(train(person, document, day, truePull(day), random), incident, at, random);
};

/** The day on which a card's session is trained: its own, unless two cards were swapped. */
export const dayTrained = (person: InventedPerson, document: IssuedCard): Day => {
  const incident = incidentOf(person, document);
  return incident?.kind === 'trained on' ? addDays(document.mission.launch, incident.flightDay - 1) : document.card.day;
};

const incidentOf = (person: InventedPerson, { card, mission }: IssuedCard): Incident | undefined =>
  person.incidents[flightDay(mission.launch, card.day)];

const train = (person: InventedPerson, document: IssuedCard, day: Day, pullsBy: number, random: Random): Session => {
  const onDay: TrainingDay = {
    sinceLaunch: day - document.mission.launch,
    pullsBy,
    form: FORM_SPREAD * normal(random),
  };
  return {
    person,
    document,
    day,
    items: liftsOf(document.card).map((item) => performItem(person, item, onDay, random)),
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
