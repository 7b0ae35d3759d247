import { mostOf } from '#domain/asked-sets.ts';
import type { CardLift, CardSet } from '#domain/card.ts';
import type { Side } from '#domain/effort.ts';
import type { ExerciseId } from '#domain/identity.ts';
import { kilogramsPer } from '#units/mass.ts';
import { trueMaximum, truePossible, trueShare } from './bodily-truth.ts';
import type { InventedPerson } from './invented-person.ts';
import { normal, type Random } from './random.ts';

/** The day on which a body meets a card. */
export interface TrainingDay {
  /** Days of flight that the body shows, negative before launch. */
  readonly sinceLaunch: number;
  /** Nothing weighs anything: what a lift moves of the body on the ground is not moved. */
  readonly weightless: boolean;
  /** What the machine pulls over what it is told. */
  readonly pullsBy: number;
  /** How this day is for this body (log scale). */
  readonly form: number;
}

export interface PerformedSet {
  readonly place: number;
  readonly increments: number;
  readonly repetitions: number;
  /** Repetitions that would still have gone; fractions count. */
  readonly reserve: number;
  readonly side: Side | null;
}

export interface PerformedItem {
  readonly item: CardLift;
  readonly sets: readonly PerformedSet[];
  /** Discomfort at the shoulders, 0 to 10. */
  readonly shoulders: number;
}

const SET_SPREAD = 0.015;

/** Does the work sets of an item as far as the body goes. Warm-ups are done and not written down. */
export const performItem = (
  person: InventedPerson,
  item: CardLift,
  day: TrainingDay,
  random: Random,
): PerformedItem => {
  const work = item.sets.flatMap((set, place) => (set.kind === 'work' ? [{ set, place }] : []));
  const shoulders = discomfort(person, item, pulled(item, heaviest(work.map(({ set }) => set)), day));
  const sets: PerformedSet[] = [];
  for (const { set, place } of shoulders >= STOPS ? work.slice(0, SETS_BEFORE_STOPPING) : work)
    sets.push(performSet(person, item, { set, place, before: sets }, day, random));
  return { item, sets, shoulders };
};

/** From here on an exercise is stopped; the second set is the last. */
const STOPS = 5;
const SETS_BEFORE_STOPPING = 2;

const heaviest = (sets: readonly CardSet[]): number => Math.max(0, ...sets.map((set) => set.load.increments));

const pulled = (item: CardLift, increments: number, { weightless, pullsBy }: TrainingDay): number =>
  increments * Number(item.increment) * kilogramsPer(item.unit) * (weightless ? pullsBy : 1);

interface NextSet {
  readonly set: CardSet;
  readonly place: number;
  readonly before: readonly PerformedSet[];
}

const performSet = (
  person: InventedPerson,
  item: CardLift,
  { set, place, before }: NextSet,
  day: TrainingDay,
  random: Random,
): PerformedSet => {
  const increments = chosenLoad(set, before.at(-1));
  const bar = pulled(item, increments, day) - (day.weightless ? trueShare(item.exercise) * person.bodyMass : 0);
  const maximum = maximumOn(person, item.exercise, day, set.side) * Math.exp(SET_SPREAD * normal(random));
  const earlier = before.filter((one) => one.side === set.side).length;
  const possible = truePossible(maximum, bar, earlier);
  const repetitions = Math.min(mostOf(set), Math.floor(possible));
  return { place, increments, repetitions, reserve: possible - repetitions, side: set.side };
};

const maximumOn = (
  person: InventedPerson,
  exercise: ExerciseId,
  { sinceLaunch, form }: TrainingDay,
  side: Side | null,
): number => {
  const maximum = trueMaximum(person, exercise, sinceLaunch, side);
  if (maximum === null) throw new RangeError(`${person.name} has never done ${exercise}.`);
  return maximum * Math.exp(form);
};

/** Where a card says "start at", the next set is heavier or lighter until the effort lies in its band. */
const chosenLoad = (set: CardSet, before: PerformedSet | undefined): number => {
  if (set.load.kind === 'set' || !before) return set.load.increments;
  const [from, to] = set.load.rpe;
  const rating = 10 - before.reserve;
  if (rating > to) return inFives(before.increments * 0.9);
  if (rating >= from) return before.increments;
  return Math.max(before.increments + 1, inFives(before.increments * (rating < 0 ? 1.5 : 1.1)));
};

const inFives = (increments: number): number => Math.round(increments / 5) * 5;

/** Shoulders complain of what they carry over what they bear: 4 at once, 5 from a tenth over it. */
const discomfort = (person: InventedPerson, item: CardLift, kilograms: number): number => {
  const bear = person.habits.shouldersBear;
  if (bear === null || !item.carriedAtShoulders || kilograms <= bear) return 0;
  return kilograms > bear * 1.1 ? STOPS : 4;
};
