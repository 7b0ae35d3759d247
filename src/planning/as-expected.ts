import { workIncrements, type Card, type CardItem, type CardLift, type CardSet } from '#domain/card.ts';

/** One step of a lift's own rule in so many days, where nothing is known yet: modest, our own design, and never signed. */
const DAYS_PER_EXPECTED_STEP = 28;

/**
 * A card beyond the horizon as it may be by then: lifts that go from the last load climb by a step every four weeks, never
 * over what one signature covers today. It says so on the card, and cannot be issued.
 */
export const asExpected = (card: Card, daysBeyond: number): Card => {
  const steps = Math.floor(daysBeyond / DAYS_PER_EXPECTED_STEP);
  return steps < 1 || card.deload ? card : { ...card, items: card.items.map((item) => climbed(item, steps)) };
};

const climbed = (item: CardItem, steps: number): CardItem => {
  if (item.kind !== 'lift' || item.rule === null || item.asWritten !== null) return item;
  const up = roomOf(item, steps);
  if (up === 0) return item;
  const show = Number((up * Number(item.increment)).toFixed(6));
  return {
    ...item,
    sets: item.sets.map((set) => heavier(set, up)),
    says: [...item.says, `expected ${show} ${item.unit} over today's load: a step every four weeks, if it goes on so`],
  };
};

/** Whole steps of the rule that stay under its bound. */
const roomOf = (item: CardLift, steps: number): number => {
  const [work, rule] = [workIncrements(item), item.rule];
  if (work === null || rule === null || rule.add <= 0) return 0;
  const room = Math.floor((rule.neverOver - work) / rule.add);
  return Math.max(0, Math.min(steps, room)) * rule.add;
};

const heavier = (set: CardSet, up: number): CardSet =>
  set.kind === 'work' && set.load.kind === 'set'
    ? { ...set, load: { kind: 'set', increments: set.load.increments + up } }
    : set;
