import type { Day } from '#units/day.ts';
import { kilogramsOf, showEntered } from '#units/entered.ts';
import { repetitions } from '#units/quantity.ts';
import { liftsOf, type CardLift, type CardSet } from '#domain/card.ts';
import { capacityMachine, type Exercise } from '#domain/catalogue.ts';
import type { CapacityKey } from '#domain/estimate.ts';
import type { Fact, SetResult } from '#domain/fact.ts';
import type { CardId } from '#domain/identity.ts';
import type { IssuedCard } from '#domain/issued-card.ts';
import { ofKind, type Known } from '#domain/known.ts';
import { barEquivalentOf, deliveredBy, onTheBar } from './bar-equivalent.ts';
import type { Reading } from './observation.ts';
import { readSet, reserveOf, type ReserveReading, type SetReading } from './read-set.ts';

/** Issued cards of a person by identity. */
export const issuedCards = (known: Known): ReadonlyMap<CardId, IssuedCard> => {
  const kept = cardsByIdentity.get(known) ?? cardsOf(known);
  cardsByIdentity.set(known, kept);
  return kept;
};

/** Every key of every exercise asks for them. */
const cardsByIdentity = new WeakMap<Known, ReadonlyMap<CardId, IssuedCard>>();

const cardsOf = (known: Known): ReadonlyMap<CardId, IssuedCard> =>
  new Map(
    ofKind(known, 'decided').flatMap(({ decision }) =>
      decision.kind === 'issue' ? [[decision.card.id, decision.card] as const] : [],
    ),
  );

/** Results of cards for one key: of each session the mean over the work sets at the heaviest planned load. */
export const cardReadings = (known: Known, exercise: Exercise, key: CapacityKey, of: number): readonly Reading[] => {
  const cards = issuedCards(known);
  return ofKind(known, 'trained').flatMap((trained) => {
    const card = cards.get(trained.card);
    const item = card && liftsOf(card.card).find((each) => each.exercise === exercise.id && isOn(known, each, key));
    return card && item ? [readResult(known, exercise, of, trained, card, item)] : [];
  });
};

const isOn = (known: Known, item: CardLift, key: CapacityKey): boolean => {
  const machine = known.house.machines.get(item.machine);
  return machine !== undefined && capacityMachine(machine) === key.machine;
};

const readResult = (
  known: Known,
  exercise: Exercise,
  of: number,
  trained: Fact<'trained'>,
  card: IssuedCard,
  item: CardLift,
): Reading => {
  const sets = heaviestWorkSets(card, item, trained.sets);
  const says = sets.map(({ result }) => `${showEntered(result.load)} × ${result.repetitions}`).join(', ');
  const unused = (why: string): Reading => ({
    kind: 'unused',
    unused: { day: trained.day, fact: trained.id, kind: 'card', says, why },
  });
  const readings = sets.map(({ result, planned }) => readOne(known, exercise, of, trained.day, item, result, planned));
  const used = readings.flatMap((reading) => (reading.kind === 'read' ? [reading] : []));
  if (used.length === 0)
    return unused(readings.find((reading) => reading.kind === 'unused')?.why ?? 'no work set was recorded');
  const mean = (numbers: readonly number[]): number =>
    numbers.reduce((sum, number) => sum + number, 0) / numbers.length;
  const y = mean(used.map((reading) => Math.log(reading.maximum)));
  return {
    kind: 'observation',
    observation: {
      day: trained.day,
      y,
      variance: mean(used.map((reading) => reading.logSd ** 2)),
      lowerBound: used.every((reading) => reading.lowerBound),
      facts: [trained.id],
      kind: 'card',
      point: Math.exp(y),
      range: null,
      says,
      confidence: 'usual',
      why: used[0]?.why ?? null,
    },
  };
};

const readOne = (
  known: Known,
  exercise: Exercise,
  of: number,
  day: Day,
  item: CardLift,
  result: SetResult,
  planned: CardSet,
): SetReading => {
  if (result.repetitions < 1) return { kind: 'unused', why: 'no repetition was completed' };
  const delivered = deliveredBy(known, item.machine, day, kilogramsOf(result.load));
  const bar = isInOneG(known, item) ? onTheBar(delivered.kilograms) : barEquivalentOf(known, exercise, delivered);
  if (bar.kind === 'none') return { kind: 'unused', why: bar.why };
  return readSet(bar.kilograms, result.repetitions, reserveOfResult(item, result, planned), of, known.trainingAge);
};

const isInOneG = (known: Known, item: CardLift): boolean => known.house.machines.get(item.machine)?.gravity === '1 g';

/**
 * Repetitions missed: failure, unless the set might have been left out. Effort not recorded: the prescribed reserve, where
 * there is one; a set that was to go on as it went well says "at least" without the reserve that was left.
 */
const reserveOfResult = (item: CardLift, result: SetResult, planned: CardSet): ReserveReading => {
  if (result.effort) return reserveOf(result.effort);
  if (result.repetitions < planned.repetitions)
    return planned.optional ? { kind: 'unknown' } : { kind: 'reported', reserve: repetitions(0) };
  if (planned.orMore) return { kind: 'unknown' };
  return item.reserve === null ? { kind: 'unknown' } : { kind: 'prescribed', reserve: repetitions(item.reserve) };
};

const heaviestWorkSets = (card: IssuedCard, item: CardLift, results: readonly SetResult[]) => {
  const work = workSetResults(card, item, results);
  const heaviest = Math.max(...work.map((set) => set.increments));
  return work.filter((set) => set.increments === heaviest);
};

/** The work sets of an item with what was done, in order; sets without a result are not among them. */
export const workSetResults = (card: IssuedCard, item: CardLift, results: readonly SetResult[]) =>
  card.sets
    .filter((set) => set.item === item.item)
    .flatMap((set) => {
      const planned = item.sets[set.place];
      const result = results.find((each) => each.set === set.id);
      return planned?.kind === 'work' && result
        ? [{ result, planned, increments: planned.load.increments, side: planned.side }]
        : [];
    });
