import { isCardLift, type CardItem, type CardLift, type CardSet } from '#domain/card.ts';

/**
 * Lifts of one letter are done in turn: after the warm-ups a round is a set of each (both sides, where there are sides), and
 * the longest of their rests is taken once, after the last of them. Who has more sets goes on alone.
 */
export interface Turn {
  readonly item: CardItem;
  /** Of a lift, the sets of this turn, with the rest that is taken after each. */
  readonly sets: readonly CardSet[];
}

const letterOf = (item: CardItem): string | null =>
  item.kind === 'lift' && item.superset ? item.superset.letter.charAt(0) : null;

const lettered = (items: readonly CardItem[], letter: string | null): readonly CardLift[] =>
  letter === null ? [] : items.filter(isCardLift).filter((item) => letterOf(item) === letter);

/** What is done one after the other in a session; a superset stands where its first lift stands. */
export const turnsOf = (items: readonly CardItem[]): readonly Turn[] =>
  items.flatMap((item) => {
    const letter = letterOf(item);
    const partners = letter === null ? [] : lettered(items, letter);
    if (partners.length < 2) return [{ item, sets: item.kind === 'lift' ? item.sets : [] }];
    return partners[0] === item ? turnsOfSuperset(partners) : [];
  });

const turnsOfSuperset = (lifts: readonly CardLift[]): readonly Turn[] => [
  ...lifts.flatMap((item) => {
    const sets = item.sets.filter(({ kind }) => kind === 'warm-up');
    return sets.length > 0 ? [{ item, sets }] : [];
  }),
  ...roundsOf(lifts).flatMap((round) => {
    const rest = restOf(round);
    return round.map(({ item, sets }, place) => ({
      item,
      sets: withLastRest(sets, place === round.length - 1 ? rest : 0),
    }));
  }),
];

/** Turns that go round together; the first round, then the second, as long as anybody has sets. */
const roundsOf = (lifts: readonly CardLift[]): readonly (readonly Turn[])[] => {
  const turns = lifts.map((item) => ({ item, rounds: setsByRound(item) }));
  const count = Math.max(...turns.map(({ rounds }) => rounds.length));
  return Array.from({ length: count }, (_, round) =>
    turns.flatMap(({ item, rounds }) => {
      const sets = rounds[round];
      return sets ? [{ item, sets }] : [];
    }),
  );
};

/** Left and right of a set belong to one round. */
const setsByRound = ({ sets }: CardLift): readonly (readonly CardSet[])[] => {
  const work = sets.filter(({ kind }) => kind === 'work');
  const sides = Math.max(1, new Set(work.map(({ side }) => side)).size);
  return Array.from({ length: Math.ceil(work.length / sides) }, (_, round) =>
    work.slice(round * sides, (round + 1) * sides),
  );
};

const restOf = (round: readonly Turn[]): number => Math.max(...round.map(({ sets }) => sets.at(-1)?.rest ?? 0));

const withLastRest = (sets: readonly CardSet[], rest: number): readonly CardSet[] =>
  sets.map((set, place) => (place === sets.length - 1 ? { ...set, rest } : set));

/** What is done in turn stands together, where its first lift stands. */
export const together = (items: readonly CardItem[]): readonly CardItem[] =>
  items.flatMap((item): readonly CardItem[] => {
    const partners = lettered(items, letterOf(item));
    if (partners.length < 2) return [item];
    return partners[0] === item ? partners : [];
  });

/** Each lift of a superset says with which places it alternates, and the rest that is taken after all of them. */
export const inTurn = (items: readonly CardItem[]): readonly CardItem[] =>
  items.map((item) => {
    if (item.kind !== 'lift' || item.superset === null) return item;
    const partners = lettered(items, letterOf(item));
    // Whose partner was left out is done alone, as it would be without a letter.
    if (partners.length < 2) return { ...item, superset: null };
    const others = partners.filter((each) => each !== item).map(({ place }) => place);
    return { ...item, superset: { ...item.superset, inTurnWith: others }, sets: withSharedRests(item, partners) };
  });

const withSharedRests = (item: CardLift, partners: readonly CardLift[]): readonly CardSet[] => [
  ...item.sets.filter(({ kind }) => kind === 'warm-up'),
  ...roundsOf(partners).flatMap((round) =>
    round.flatMap((turn) => (turn.item === item ? withLastRest(turn.sets, restOf(round)) : [])),
  ),
];
