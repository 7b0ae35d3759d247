import type { Exercise, Machine, Site } from '#domain/catalogue.ts';
import type { Fact, Sequence } from '#domain/fact.ts';
import type { ExerciseId, FactId, MissionId, PersonId } from '#domain/identity.ts';
import { houseAt, type Mission } from '#domain/known.ts';
import { currentFacts, factsOfKind } from '#domain/log.ts';
import type { Day } from '#units/day.ts';
import { kilogramsOf } from '#units/entered.ts';

/** A person of the log, as far as a file can be compared with it. */
export interface PersonOnRecord {
  readonly id: PersonId;
  readonly name: string;
  readonly sex: 'female' | 'male';
  readonly birthDate: Day | null;
  /** The newest body mass [kg], or null where none was measured. */
  readonly bodyMass: number | null;
  readonly assignment: { readonly mission: MissionId; readonly role: 'prime' | 'backup'; readonly fact: FactId } | null;
}

export interface MissionOnRecord extends Mission {
  readonly fact: FactId;
}

/** The person's own estimated one-repetition maximum [kg at the bar], or null where there is none. */
export type OwnEstimate = (person: PersonId, exercise: ExerciseId) => number | null;
/** One-repetition maximum [kg] from a load [kg] and (effective) repetitions; null where the formula does not reach. */
export type OneRepMax = (load: number, repetitions: number) => number | null;

/** What is known before the file is opened. */
export interface BringInContext {
  readonly today: Day;
  readonly exercises: readonly Exercise[];
  readonly machines: readonly Machine[];
  readonly sites: readonly Site[];
  readonly people: readonly PersonOnRecord[];
  readonly missions: readonly MissionOnRecord[];
  readonly tests: readonly Fact<'lifted'>[];
  readonly measurements: readonly Fact<'measured'>[];
  readonly ownEstimate: OwnEstimate;
  readonly oneRepMax: OneRepMax;
}

const peopleOf = (facts: readonly Fact[]): readonly PersonOnRecord[] => {
  const measured = factsOfKind(facts, 'measured');
  const assigned = factsOfKind(facts, 'assigned');
  const introduced = new Map(factsOfKind(facts, 'introduced').map((fact) => [fact.person, fact]));
  return [...introduced.values()].map(({ person, name, sex, birthDate }) => {
    const masses = measured.flatMap((fact) => (fact.person === person && fact.what === 'body mass' ? [fact] : []));
    const newest = masses.toSorted((one, other) => one.day - other.day).at(-1);
    const last = assigned.findLast((fact) => fact.person === person);
    return {
      id: person,
      name,
      sex,
      birthDate,
      bodyMass: newest ? kilogramsOf(newest.value) : null,
      assignment: last ? { mission: last.mission, role: last.role, fact: last.id } : null,
    };
  });
};

/** A jump or a stand is measured in centimetres or seconds: the numbers of a file are no loads of it. */
const isLoaded = ({ pattern }: Exercise): boolean => pattern !== 'jump' && pattern !== 'balance';

/** The context of a bring-in at a place in the log. */
export const bringInContext = (
  log: readonly Fact[],
  upTo: Sequence,
  given: { readonly today: Day; readonly ownEstimate: OwnEstimate; readonly oneRepMax: OneRepMax },
): BringInContext => {
  const facts = currentFacts(log, upTo);
  const house = houseAt(log, upTo);
  const dated = new Map(factsOfKind(facts, 'dated').map((fact) => [fact.mission, fact.id]));
  return {
    ...given,
    exercises: [...house.exercises.values()].filter(isLoaded),
    machines: [...house.machines.values()],
    sites: [...house.sites.values()],
    people: peopleOf(facts),
    missions: [...house.missions.values()].flatMap((mission) => {
      const fact = dated.get(mission.id);
      return fact ? [{ ...mission, fact }] : [];
    }),
    tests: factsOfKind(facts, 'lifted'),
    measurements: factsOfKind(facts, 'measured'),
  };
};
