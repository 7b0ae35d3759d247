import { addDays, type Day } from '#units/day.ts';
import { personOf, houseAt, knownIn, peopleAt, type House, type Known } from '#domain/known.ts';
import { currentFacts, endOfLog } from '#domain/log.ts';
import type { Fact, Sequence } from '#domain/fact.ts';
import type { PersonId } from '#domain/identity.ts';
import type { Road } from '#domain/road.ts';
import { derive } from '#planning/derive.ts';

/** Four weeks: the horizon and as much again of what is only expected. */
const DAYS_AHEAD = 28;

/** The log as it stands at one place and one day, with what follows from it, each worked out when it is first asked. */
export interface Snapshot {
  readonly log: readonly Fact[];
  readonly upTo: Sequence;
  readonly today: Day;
  readonly house: House;
  readonly people: readonly PersonId[];
  readonly known: (person: PersonId) => Known | null;
  readonly road: (person: PersonId) => Road | null;
}

/** Roads with what they depend on: the same standing, the same road. */
type KeptRoads = Map<PersonId, { readonly standing: string; readonly road: Road | null }>;

export const snapshotOf = (log: readonly Fact[], today: Day, roads: KeptRoads = new Map()): Snapshot => {
  const upTo = endOfLog(log);
  const house = houseAt(log, upTo);
  const factsOf = factsByPerson(currentFacts(log, upTo));
  const known = keeping((person: PersonId) => knownIn(house, factsOf.get(person) ?? [], person));
  const standing = (person: PersonId): string =>
    [today, ...[null, person].map((whose) => lastOf(factsOf.get(whose) ?? []))].join(' ');
  const road = keeping((person: PersonId) => {
    const kept = roads.get(person);
    if (kept?.standing === standing(person)) return kept.road;
    const found = known(person);
    const made = found && derive(found, today, addDays(today, DAYS_AHEAD));
    roads.set(person, { standing: standing(person), road: made });
    return made;
  });
  return { log, upTo, today, house, people: peopleAt(log, upTo), known, road };
};

/** Current facts change by a new last one, by one fewer, or by both: number and last tell. */
const lastOf = (facts: readonly Fact[]): string => `${facts.length}:${facts.at(-1)?.id ?? ''}`;

const factsByPerson = (facts: readonly Fact[]): ReadonlyMap<PersonId | null, readonly Fact[]> => {
  const byPerson = new Map<PersonId | null, Fact[]>();
  for (const fact of facts) {
    const person = personOf(fact);
    const own = byPerson.get(person);
    if (own) own.push(fact);
    else byPerson.set(person, [fact]);
  }
  return byPerson;
};

const keeping = <Key, Value>(make: (key: Key) => Value): ((key: Key) => Value) => {
  const kept = new Map<Key, { readonly value: Value }>();
  return (key) => {
    const found = kept.get(key) ?? { value: make(key) };
    kept.set(key, found);
    return found.value;
  };
};

/**
 * The last snapshot is kept until the log or the day moves on; a new one takes over the roads of people about whom, and
 * about whose house, nothing was recorded in between.
 */
export const snapshotReader = (facts: () => readonly Fact[], today: () => Day): (() => Snapshot) => {
  const roads: KeptRoads = new Map();
  let last: Snapshot | null = null;
  return () => {
    const [log, day] = [facts(), today()];
    if (!last || last.upTo !== endOfLog(log) || last.today !== day) last = snapshotOf(log, day, roads);
    return last;
  };
};
