import { addDays, type Day } from '#units/day.ts';
import { capacityReader } from '#assessing/capacity.ts';
import { raisesOf, type CardItem } from '#domain/card.ts';
import type { ExerciseId } from '#domain/identity.ts';
import type { Known } from '#domain/known.ts';
import type { Raise } from '#domain/raise.ts';
import type { Road, RoadCard } from '#domain/road.ts';
import type { Snapshot } from '#actions/snapshot.ts';
import type { LiftPerson, LiftSession, LiftWindow } from '#contract/windows/lift-window.ts';
import { itemLine } from './item-line.ts';
import { followedBy, isOurs, peopleInOrder, personLine } from './person-head.ts';
import { cardOf, sheetCell } from './sheet-cell.ts';
import { estimateOf, lastHere } from './sheet-rows.ts';
import { onePerDay, sheetColumn } from './sheet-window.ts';

const DAYS_BACK = 28;
const DAYS_AHEAD = 21;
/** Sessions that are shown to either side of today. */
const PAST_SHOWN = 4;
const AHEAD_SHOWN = 2;

interface OurPerson {
  readonly known: Known;
  readonly road: Road;
  readonly cards: readonly RoadCard[];
}

interface Placed {
  readonly card: RoadCard;
  readonly item: CardItem;
}

/** One lift of everybody who is ours; null where there is no such exercise. */
export const liftWindow = (snapshot: Snapshot, exercise: ExerciseId): LiftWindow | null => {
  const entry = snapshot.house.exercises.get(exercise);
  if (!entry) return null;
  const people = ourPeople(snapshot);
  const placed = people.map((person) => ({ person, sessions: sessionsOf(person, exercise) }));
  return {
    exercise,
    name: entry.name,
    today: snapshot.today,
    people: placed.flatMap(({ person, sessions }) => liftPerson(snapshot, person, sessions) ?? []),
    without: placed.flatMap(({ person: { known, cards }, sessions }) =>
      sessions.length > 0 ? [] : [{ id: known.person, name: known.name, why: whyWithout(known, cards, entry.name) }],
    ),
    lifts: liftsOfPeople(people),
  };
};

const ourPeople = (snapshot: Snapshot): readonly OurPerson[] =>
  peopleInOrder(snapshot)
    .filter(isOurs)
    .flatMap((known) => {
      const road = snapshot.road(known.person);
      return road ? [{ known, road, cards: cardsShown(road) }] : [];
    });

const cardsShown = ({ cards, today }: Road): readonly RoadCard[] =>
  onePerDay(cards.filter(({ day }) => day >= addDays(today, -DAYS_BACK) && day <= addDays(today, DAYS_AHEAD)));

const sessionsOf = ({ cards }: OurPerson, exercise: ExerciseId): readonly Placed[] =>
  cards.flatMap((card) => cardOf(card).items.flatMap((item) => (item.exercise === exercise ? [{ card, item }] : [])));

const liftPerson = (snapshot: Snapshot, { known, road }: OurPerson, sessions: readonly Placed[]): LiftPerson | null => {
  const { today } = snapshot;
  const past = sessions.filter(({ card }) => card.day < today);
  const ahead = sessions.filter(({ card }) => card.day >= today);
  const like = (ahead[0] ?? past.at(-1))?.item;
  if (!like) return null;
  const { id, name, group, dayLabel } = personLine(known, today);
  const shown = past.map((placed) => liftSession(known, placed, today));
  return {
    id,
    name,
    group,
    dayLabel,
    past: shown.slice(-PAST_SHOWN),
    ahead: ahead.slice(0, AHEAD_SHOWN).map((placed) => liftSession(known, placed, today)),
    estimate: estimateOf(known, capacityReader(known), like, today),
    lastHere: lastHere(known, road, like),
    ramp: rampOf(like),
    raise: raiseOf(road, like, ahead),
    discomfort: discomfortOf(shown),
    unread: unreadOf(shown),
  };
};

const liftSession = (known: Known, { card, item }: Placed, today: Day): LiftSession => {
  const {
    day,
    missionDay,
    title,
    state,
    past,
    delivery,
    outcome,
    calledOff,
    card: id,
    gaps,
  } = sheetColumn(card, today);
  const shorthand = itemLine(known, item);
  const lines = {
    line: card.state === 'issued' ? null : shorthand,
    shorthand,
    isWritten: card.state !== 'issued' && item.asWritten !== null,
  };
  const cell = sheetCell(item, card, lines);
  return { day, missionDay, title, state, past, delivery, outcome, calledOff, card: id, gaps, cell };
};

const rampOf = (item: CardItem): string | null => {
  if (item.kind !== 'lift' || !item.ramp) return null;
  const { effortStep, shareStep, steps } = item.ramp;
  return `effort ${effortStep + 1} of ${steps}, body weight ${shareStep + 1} of ${steps}`;
};

/** What waits as a proposal, else what the next card would ask to sign. */
const raiseOf = ({ proposals }: Road, { exercise }: CardItem, ahead: readonly Placed[]): Raise | null => {
  const open = proposals.filter(({ state }) => state === 'open').flatMap(({ raises }) => raises);
  const [next] = ahead;
  const onNext = next && next.card.state !== 'issued' ? raisesOf({ items: [next.item] })[0] : null;
  return open.find((raise) => raise.exercise === exercise) ?? onNext ?? null;
};

const discomfortOf = (sessions: readonly LiftSession[]): LiftPerson['discomfort'] => {
  const last = sessions.findLast(({ cell }) => cell.hurt !== null);
  return last?.cell.hurt ? { ...last.cell.hurt, missionDay: last.missionDay } : null;
};

const unreadOf = (sessions: readonly LiftSession[]): LiftPerson['unread'] => {
  const last = sessions.findLast(({ cell }) => cell.note !== null && !cell.note.read);
  return last?.cell.note ? { text: last.cell.note.text, missionDay: last.missionDay } : null;
};

const whyWithout = (known: Known, cards: readonly RoadCard[], name: string): string => {
  if (followedBy(known).length === 0) return 'follows no programme yet';
  const out = cards.flatMap((card) => cardOf(card).leftOut).find(({ exerciseName }) => exerciseName === name);
  return out?.says ?? 'not in the sessions of these weeks';
};

const liftsOfPeople = (people: readonly OurPerson[]): LiftWindow['lifts'] => {
  const items = people.flatMap(({ cards }) => cards.flatMap((card) => cardOf(card).items));
  const names = new Map(items.map(({ exercise, exerciseName }) => [exercise, exerciseName] as const));
  return [...names].map(([id, name]) => ({ id, name })).toSorted((a, b) => a.name.localeCompare(b.name));
};
