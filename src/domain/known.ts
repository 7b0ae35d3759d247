import type { Day } from '#units/day.ts';
import { kilogramsOf } from '#units/entered.ts';
import type { Exercise, Machine, Setting, Site } from './catalogue.ts';
import type { BreathingRule, CatalogueEntry, Fact, FactKind, Sequence, Signer } from './fact.ts';
import type { ExerciseId, MachineId, MissionId, PersonId, ProgrammeVersionId, SignerId, SiteId } from './identity.ts';
import { currentFacts, factsOfKind } from './log.ts';
import type { MissionDates } from './mission-day.ts';
import { DEFAULT_POLICIES, type Policies } from './policies.ts';
import type { ProgrammeVersion } from './programme.ts';

/** The house as it stood at a place in the log: what is shared by all people. */
export interface House {
  readonly upTo: Sequence;
  readonly exercises: ReadonlyMap<ExerciseId, Exercise>;
  readonly machines: ReadonlyMap<MachineId, Machine>;
  readonly sites: ReadonlyMap<SiteId, Site>;
  readonly programmes: ReadonlyMap<ProgrammeVersionId, ProgrammeVersion>;
  readonly signers: ReadonlyMap<SignerId, Signer>;
  readonly missions: ReadonlyMap<MissionId, Mission>;
  readonly calibrations: readonly Fact<'calibrated'>[];
  readonly policies: Policies;
}

export interface Mission extends MissionDates {
  readonly id: MissionId;
  readonly name: string;
  readonly site: SiteId;
}

/** What is known of one person at a place in the log. */
export interface Known {
  readonly house: House;
  readonly person: PersonId;
  readonly name: string;
  readonly sex: 'female' | 'male';
  readonly birthDate: Day | null;
  /** Years of resistance training before the first test; null: not recorded. */
  readonly trainingAge: number | null;
  readonly mission: Mission | null;
  readonly assignment: Fact<'assigned'> | null;
  readonly breathing: BreathingRule;
  /** Current facts of this person, in order of the log. */
  readonly facts: readonly Fact[];
}

/** The house up to a place in the log; a later entry of the same thing replaces an earlier one. */
export const houseAt = (log: readonly Fact[], upTo: Sequence): House => {
  const facts = currentFacts(log, upTo);
  const seen = log.filter((fact) => fact.sequence <= upTo);
  /** A plan takes the first machine that will do: what was changed later keeps its first place. */
  const mapOf = <Key extends string, Value extends { readonly id: Key }>(
    pick: (entry: CatalogueEntry) => Value | null,
  ): ReadonlyMap<Key, Value> => inFirstPlaces(pickFrom(facts, pick), pickFrom(seen, pick));
  const signersOf = (each: readonly Fact[]): readonly Signer[] => factsOfKind(each, 'signs').map((fact) => fact.signer);
  return {
    upTo,
    exercises: mapOf((entry) => (entry.kind === 'exercise' ? entry.exercise : null)),
    machines: mapOf((entry) => (entry.kind === 'machine' ? entry.machine : null)),
    sites: mapOf((entry) => (entry.kind === 'site' ? entry.site : null)),
    programmes: mapOf((entry) => (entry.kind === 'programme' ? entry.version : null)),
    signers: inFirstPlaces(signersOf(facts), signersOf(seen)),
    missions: new Map(factsOfKind(facts, 'dated').map((fact) => [fact.mission, missionOf(fact)] as const)),
    calibrations: factsOfKind(facts, 'calibrated'),
    policies: factsOfKind(facts, 'policies set').reduce(
      (policies, fact) => ({ ...policies, ...fact.policies }),
      DEFAULT_POLICIES,
    ),
  };
};

const pickFrom = <Value>(facts: readonly Fact[], pick: (entry: CatalogueEntry) => Value | null): readonly Value[] =>
  factsOfKind(facts, 'catalogued').flatMap(({ entry }) => {
    const picked = pick(entry);
    return picked === null ? [] : [picked];
  });

/** What stands, by identity, in the order in which each was first entered. */
const inFirstPlaces = <Key extends string, Value extends { readonly id: Key }>(
  standing: readonly Value[],
  ever: readonly Value[],
): ReadonlyMap<Key, Value> => {
  const last = new Map(standing.map((each) => [each.id, each] as const));
  const places = [...new Set(ever.map(({ id }) => id))];
  return new Map(
    places.flatMap((id) => {
      const found = last.get(id);
      return found === undefined ? [] : [[id, found] as const];
    }),
  );
};

/** Everybody who was introduced, in order of introduction. */
export const peopleAt = (log: readonly Fact[], upTo: Sequence): readonly PersonId[] => [
  ...new Set(factsOfKind(currentFacts(log, upTo), 'introduced').map((fact) => fact.person)),
];

/** What stood in the log of one person up to a place, or null where nobody introduced them by then. */
export const knownAt = (log: readonly Fact[], person: PersonId, upTo: Sequence): Known | null =>
  knownIn(houseAt(log, upTo), currentFacts(log, upTo), person);

/** The same from facts already sifted: for many people at one place in the log. */
export const knownIn = (house: House, current: readonly Fact[], person: PersonId): Known | null => {
  const facts = current.filter((fact) => personOf(fact) === person);
  const introduced = factsOfKind(facts, 'introduced').at(-1);
  if (!introduced) return null;
  const assignment = factsOfKind(facts, 'assigned').at(-1) ?? null;
  return {
    house,
    person,
    name: introduced.name,
    sex: introduced.sex,
    birthDate: introduced.birthDate,
    trainingAge: introduced.trainingAge ? Number(introduced.trainingAge.text) : null,
    mission: (assignment && house.missions.get(assignment.mission)) ?? null,
    assignment,
    breathing: factsOfKind(facts, 'breathing set').at(-1)?.rule ?? 'exhale through the hard part',
    facts,
  };
};

/** The person a fact is about, or null where it is about the house. */
export const personOf = (fact: Fact): PersonId | null => {
  if (fact.kind === 'decided') return fact.decision.person;
  return 'person' in fact ? fact.person : null;
};

export const ofKind = <Kind extends FactKind>({ facts }: Known, kind: Kind): readonly Fact<Kind>[] => {
  const sifted = siftedByKind.get(facts) ?? new Map<FactKind, readonly Fact[]>();
  siftedByKind.set(facts, sifted);
  const found = sifted.get(kind) ?? factsOfKind(facts, kind);
  sifted.set(kind, found);
  // Whatever stands under a kind was sifted by it.
  return found as readonly Fact<Kind>[];
};

/** Facts never change, and planning asks for the same kinds thousands of times: each is sifted out once. */
const siftedByKind = new WeakMap<readonly Fact[], Map<FactKind, readonly Fact[]>>();

/** Last body mass on or before a day [kg], with its fact; null where none was measured by then. */
export const bodyMassOn = (
  known: Known,
  on: Day,
): { readonly kilograms: number; readonly fact: Fact<'measured'> } | null => {
  const masses = ofKind(known, 'measured').filter((fact) => fact.what === 'body mass' && fact.day <= on);
  const newest = masses.reduce<Fact<'measured'> | null>(
    (last, fact) => (last && last.day > fact.day ? last : fact),
    null,
  );
  return newest && newest.what === 'body mass' ? { kilograms: kilogramsOf(newest.value), fact: newest } : null;
};

/** A person's settings of a machine for an exercise; the last ones stand. */
export const settingsFor = (known: Known, machine: MachineId, exercise: ExerciseId): readonly Setting[] =>
  ofKind(known, 'set up').findLast((fact) => fact.machine === machine && fact.exercise === exercise)?.settings ?? [];

const missionOf = (fact: Fact<'dated'>): Mission => ({
  id: fact.mission,
  name: fact.name,
  site: fact.site,
  launch: fact.launch,
  landing: fact.landing,
});
