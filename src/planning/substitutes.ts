import {
  QUALITIES,
  type Exercise,
  type ExerciseSubstitute,
  type LooseKind,
  type MachineKind,
  type Quality,
} from '#domain/catalogue.ts';
import type { ExerciseId } from '#domain/identity.ts';

/** What something can be done on. */
export type Means = MachineKind | LooseKind;

/** What can be done instead of an exercise, on what, and how much of it that covers. */
export interface Instead {
  readonly exercise: Exercise;
  readonly on: Means;
  /** Small gear that nobody enters: whether it is there has to be seen. */
  readonly ifThere: boolean;
  /** 0 nothing to 1 all of what the exercise trains. */
  readonly covers: ExerciseSubstitute['covers'];
  /** Qualities of which nothing is covered. */
  readonly uncovered: readonly Quality[];
  readonly says: string;
}

/**
 * What can be done instead of an exercise with what is there: the same elsewhere first, then its substitutes in their
 * order. What is not rated comes after what is, and what asks for gear that may not be there comes last.
 */
export const insteadOf = (
  exercise: Exercise,
  there: readonly Means[],
  exercises: ReadonlyMap<ExerciseId, Exercise>,
): readonly Instead[] => {
  const others = exercise.substitutes.flatMap((each) => {
    const found = exercises.get(each.exercise);
    return found ? [{ found, covers: each.covers }] : [];
  });
  return [{ found: exercise, covers: {} }, ...others]
    .flatMap(({ found, covers }) =>
      meansOf(found, there).map((means) => instead(found, means, covers, found === exercise)),
    )
    .toSorted((one, other) => rankOf(one) - rankOf(other));
};

const rankOf = ({ ifThere, exercise, on }: Instead): number => (ifThere ? 2 : isUnloaded(exercise, on) ? 1 : 0);

type Found = Pick<Instead, 'on' | 'ifThere'>;

/** The ways in which it can be done here: on what is known to be there or, failing that, with gear that may be. */
const meansOf = (exercise: Exercise, there: readonly Means[]): readonly Found[] => {
  const known = exercise.machineKinds.filter((kind) => there.includes(kind));
  if (known.length > 0) return known.map((on) => ({ on, ifThere: false }));
  return exercise.machineKinds.filter((kind) => mayBeThere(kind, there)).map((on) => ({ on, ifThere: true }));
};

/** A bar to hang from is of use only where a body has weight. */
const mayBeThere = (kind: Means, there: readonly Means[]): boolean =>
  kind === 'band' || kind === 'hand gear' || (kind === 'hanging bar' && there.includes('body weight'));

const UNDER_LOAD: readonly Means[] = ['resistive machine', 'free bar', 'cable column', 'dumbbells'];

/** Rated under load, and done here without one: then the rating does not hold. */
const isUnloaded = ({ machineKinds }: Exercise, on: Means): boolean =>
  on === 'body weight' && machineKinds.some((kind) => UNDER_LOAD.includes(kind));

const instead = (exercise: Exercise, means: Found, rated: Instead['covers'], isSame: boolean): Instead => {
  const unloaded = isUnloaded(exercise, means.on);
  const covers = unloaded ? {} : rated;
  const worth = unloaded
    ? 'not rated without a load'
    : isSame
      ? 'with a load of its own, first session at RPE 6 or less'
      : showCoverage(covers);
  return {
    exercise,
    ...means,
    covers,
    uncovered: QUALITIES.filter((quality) => covers[quality] === 0),
    says: `${isSame ? 'the same' : exercise.name} ${showMeans(means)}, ${worth}`,
  };
};

const WITH: Readonly<Record<Means, string>> = {
  'resistive machine': 'on the resistive machine',
  'free bar': 'with the free bar',
  'cable column': 'on the cable column',
  dumbbells: 'with dumbbells',
  treadmill: 'in the harness of the treadmill',
  cycle: 'on the cycle',
  rower: 'on the rower',
  'no gear': 'with nothing',
  'body weight': 'with body weight alone',
  'hanging bar': 'from a bar',
  band: 'with a band',
  'hand gear': 'with hand gear',
};

const showMeans = ({ on, ifThere }: Found): string => `${WITH[on]}${ifThere ? ', if it is there' : ''}`;

/** "covers strength 0.6, power uncovered". */
export const showCoverage = (covers: Instead['covers']): string => {
  const rated = QUALITIES.flatMap((quality) => {
    const of = covers[quality];
    return of === undefined ? [] : [{ quality, of }];
  });
  const covered = rated.filter(({ of }) => of > 0).map(({ quality, of }) => `${quality} ${of}`);
  const uncovered = rated.filter(({ of }) => of === 0).map(({ quality }) => `${quality} uncovered`);
  return [...(covered.length > 0 ? [`covers ${covered.join(', ')}`] : []), ...uncovered].join(', ') || 'not rated';
};
