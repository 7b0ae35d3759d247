import type { Effort } from '#domain/effort.ts';
import { totalMinutes, type CardBouts, type CardLift, type HarnessPull } from '#domain/card.ts';
import type { FactBody, PieceResult, SetResult } from '#domain/fact.ts';
import type { IssuedCard } from '#domain/issued-card.ts';
import { type Day, flightDay } from '#units/day.ts';
import { type Entered, entered } from '#units/entered.ts';
import { feltEffort } from './bodily-truth.ts';
import type { Incident } from './incident.ts';
import type { InventedPerson } from './invented-person.ts';
import type { PerformedItem, PerformedSet } from './perform-item.ts';
import type { PerformedPiece } from './perform-piece.ts';
import type { Random } from './random.ts';

/** A session as it was trained. */
export interface Session {
  readonly person: InventedPerson;
  readonly document: IssuedCard;
  readonly day: Day;
  readonly items: readonly PerformedItem[];
  readonly pieces: readonly PerformedPiece[];
}

/** The result as it is typed: loads as the machine shows them, effort as the person writes it. */
export const resultOf = (session: Session, random: Random): FactBody => {
  const { document, day, items } = session;
  const sets = items.flatMap((performed) =>
    performed.sets.map((set, count) => setResult(session, performed.item, set, count, random)),
  );
  const pieces = session.pieces.map((piece, count) => pieceResult(session, piece, count));
  const ratings = [...sets, ...pieces].flatMap(({ effort }) => (effort ? [effort.value] : []));
  return {
    kind: 'trained',
    person: document.card.person,
    day,
    card: document.id,
    sets,
    pieces,
    sessionRpe: ratings.length > 0 ? Math.round(meanOf(ratings)) : null,
    // Nobody is as quick as the plan, and nobody writes single minutes.
    minutes: 5 * Math.round((totalMinutes(document.card) * (0.97 + 0.12 * random())) / 5),
  };
};

const pieceResult = ({ person, document, day }: Session, piece: PerformedPiece, count: number): PieceResult => {
  const { item, done, watts, speed, heartRate, felt } = piece;
  const effort: Effort | null = felt === null ? null : { kind: 'RPE', value: felt };
  return {
    item: item.item,
    done,
    minutes: item.kind === 'bouts' ? minutesOf(item) : null,
    watts,
    speed,
    harness: item.kind === 'bouts' && item.harness ? harnessOf(item.harness) : null,
    heartRate,
    effort:
      effort && !isBlank(person, flightDay(document.mission.launch, day), count) ? asWritten(person, effort) : null,
  };
};

const minutesOf = ({ warmUpSeconds, bouts, coolDownSeconds }: CardBouts): number =>
  Math.round(bouts.reduce((sum, { seconds, easy }) => sum + seconds + easy, warmUpSeconds + coolDownSeconds) / 60);

const harnessOf = ({ increments, increment, unit }: HarnessPull): Entered =>
  entered(String(Number((increments * Number(increment)).toFixed(6))), unit);

const meanOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

const setResult = (
  { person, document, day }: Session,
  item: CardLift,
  set: PerformedSet,
  count: number,
  random: Random,
): SetResult => {
  const issued = document.sets.find((one) => one.item === item.item && one.place === set.place);
  if (!issued) throw new RangeError(`Card ${document.id} has no set ${set.place} of ${item.item}.`);
  const felt: Effort = { kind: 'RPE', value: feltEffort(set.reserve, random) };
  return {
    set: issued.id,
    repetitions: set.repetitions,
    load: loadOf(item, set.increments),
    effort: isBlank(person, flightDay(document.mission.launch, day), count) ? null : asWritten(person, felt),
    side: set.side,
  };
};

const loadOf = (item: CardLift, increments: number): Entered =>
  entered(String(Number((increments * Number(item.increment)).toFixed(6))), item.unit);

const isBlank = ({ habits }: InventedPerson, onFlightDay: number, count: number): boolean =>
  habits.blankFrom !== null && onFlightDay >= habits.blankFrom && count % 2 === 1;

const asWritten = ({ habits }: InventedPerson, felt: Effort): Effort =>
  habits.effort === 'always 7' ? { kind: 'RPE', value: 7 } : felt;

/** Discomfort of 1 now and then where nothing is wrong; the truth where something is. */
export const hurtsOf = (session: Session, random: Random): readonly FactBody[] => {
  const sore = session.items.filter((performed) => performed.shoulders > 0);
  const during = sore.map((performed) => hurt(session, performed.item, performed.shoulders, 'during'));
  const [first] = sore;
  const after = first ? [hurt(session, first.item, first.shoulders - 2, 'next morning')] : [];
  const [squat] = session.items;
  const little = squat && sore.length === 0 && random() > 0.8 ? [hurt(session, squat.item, 1, 'during')] : [];
  return [...during, ...after, ...little];
};

const hurt = (
  { document, day }: Session,
  item: CardLift,
  score: number,
  when: 'during' | 'next morning',
): FactBody => ({
  kind: 'hurt',
  person: document.card.person,
  day,
  card: document.id,
  item: item.item,
  site: 'shoulder',
  side: score > 2 ? 'right' : null,
  score,
  when,
});

/** What was written beside a lift, where something was. */
export const notesOf = ({ document, day, items }: Session, incident: Incident | undefined): readonly FactBody[] => {
  if (incident?.kind !== 'note' && incident?.kind !== 'contradicting note') return [];
  const performed = items.find(({ item }) => item.exercise === incident.exercise);
  if (!performed) return [];
  return [
    {
      kind: 'noted',
      person: document.card.person,
      day,
      card: document.id,
      item: performed.item.item,
      text: incident.kind === 'note' ? incident.text : contradiction(performed, incident.lighterBy),
    },
  ];
};

/** Says something else than the numbers beside it. */
const contradiction = ({ item, sets }: PerformedItem, lighterBy: number): string => {
  const typed = Math.max(0, ...sets.map((set) => set.increments)) * Number(item.increment);
  return `Strap slipped, did the last two at ${typed - lighterBy}. Back a bit tight, left.`;
};
