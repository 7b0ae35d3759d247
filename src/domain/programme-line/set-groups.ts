import type { Exercise } from '../catalogue.ts';
import { isOne, only, type Prescription, type SetGroup, type SetIntensity, type TypedLoad } from '../prescription.ts';
import type { ProgrammeSet, WarmUpSet } from '../programme.ts';

export type Sets = Extract<Prescription, { readonly kind: 'sets' }>;

/** Nobody types more than nine digits; 1 − 0.07 is 0.9299999999999999 in binary. */
const rounded = (value: number): number => Number(value.toPrecision(9));

/** Work sets as a line groups them: neighbours that are alike together, the target at the first. */
export const groupsOf = (
  sets: readonly ProgrammeSet[],
  target: { readonly load: TypedLoad | null; readonly intensity: SetIntensity | null },
  perSide: boolean,
): readonly SetGroup[] => {
  const runs: ProgrammeSet[][] = [];
  for (const set of sets) {
    const run = runs.at(-1);
    if (run?.[0] && isAlike(run[0], set)) run.push(set);
    else runs.push([set]);
  }
  const isTop = runs[0]?.length === 1 && runs.some(([set], place) => place > 0 && offTheTop(set) !== null);
  return runs.map((run, place) => ({
    warmUp: false,
    top: isTop && place === 0,
    sets: only(run.length),
    each: { kind: 'repetitions', count: only(run[0]?.repetitions ?? 1), orMore: false },
    perSide,
    ...(place === 0 ? target : { load: null, intensity: offTheTop(run[0]) }),
  }));
};

const isAlike = (a: ProgrammeSet, b: ProgrammeSet): boolean =>
  a.repetitions === b.repetitions && (a.loadBy ?? 1) === (b.loadBy ?? 1);

const offTheTop = (set: ProgrammeSet | undefined): SetIntensity | null =>
  set?.loadBy === undefined || set.loadBy === 1 ? null : { kind: 'off the top', by: rounded(1 - set.loadBy) };

/** What an item has no place for: a card says exactly what to do, set by set. */
export const setRefusals = ({ groups, tempo, superset }: Sets, exercise: Exercise): readonly string[] => [
  ...(tempo ? ['A tempo is not printed on cards yet: leave it out.'] : []),
  ...(superset ? ['Supersets are not planned yet: leave the letter out.'] : []),
  ...(groups.some((group) => !group.warmUp) ? [] : ['Write at least one set that is no warm-up.']),
  ...groups.flatMap((group) => groupRefusals(group, exercise)),
];

const groupRefusals = ({ sets, each, perSide }: SetGroup, exercise: Exercise): readonly string[] => {
  const count = each.kind === 'repetitions' ? each.count : each.seconds;
  return [
    ...(isOne(sets) && isOne(count) ? [] : ['A card says one number: write 4 × 6 where the line says 3–4 × 6–8.']),
    ...(each.kind === 'repetitions' && each.orMore ? ['Sets “or more” are not planned yet: write one number.'] : []),
    ...(perSide && !exercise.perSide ? [`${exercise.name} has no sides: leave /side out.`] : []),
  ];
};

/** Later sets are measured from the first one, which is the heaviest: every limit is held against it. */
export const targetRefusals = (groups: readonly SetGroup[]): readonly string[] => {
  const [first, ...later] = groups;
  if (!first) return [];
  const asPercentToo = (intensity: SetIntensity): boolean =>
    intensity.kind === 'of maximum' && first.intensity?.kind === 'of maximum';
  const mixed = later.some(
    ({ load, intensity }) =>
      load !== null || (intensity !== null && intensity.kind !== 'off the top' && !asPercentToo(intensity)),
  );
  const heavier = later.some(({ intensity }) => intensity !== null && comparedWith(first, intensity) > 1);
  return [
    ...(groups.some(({ intensity }) => intensity?.kind === 'of maximum' && !isOne(intensity.of))
      ? ['A card says one load: write 80 % where the line says 75–80 %.']
      : []),
    ...(first.load !== null && first.load.unit === null ? ['Say kg or lb after the load, such as 100 kg × 5.'] : []),
    ...(mixed
      ? ['Later sets are measured from the first: write them as −10 %, or as a percentage where the first is one.']
      : []),
    ...(heavier ? ['Write the heaviest set first: limits are held against it.'] : []),
  ];
};

/** A set's load as a part of the first work set's. */
const comparedWith = ({ intensity: first }: SetGroup, intensity: SetIntensity): number => {
  if (intensity.kind === 'off the top') return rounded(1 - intensity.by);
  if (intensity.kind !== 'of maximum') return 1;
  return rounded(first?.kind === 'of maximum' ? intensity.of.least / first.of.least : intensity.of.least);
};

const repetitionsOf = ({ each }: SetGroup): number => (each.kind === 'repetitions' ? each.count.least : 0);

export const workSetsOf = (groups: readonly SetGroup[], rest: number): readonly ProgrammeSet[] =>
  groups.flatMap((group, place) => {
    const by = place === 0 || group.intensity === null ? 1 : comparedWith(groups[0] ?? group, group.intensity);
    return Array.from({ length: group.sets.least }, () => ({
      repetitions: repetitionsOf(group),
      rest,
      ...(by === 1 ? {} : { loadBy: by }),
    }));
  });

/** Of the work load, where a warm-up names none: common practice. */
const EASY_WARM_UP = 0.6;

export const warmUpsOf = (groups: readonly SetGroup[], first: SetGroup): readonly WarmUpSet[] =>
  groups.flatMap((group) =>
    Array.from({ length: group.sets.least }, () => ({
      of: group.intensity ? comparedWith(first, group.intensity) : EASY_WARM_UP,
      repetitions: repetitionsOf(group),
    })),
  );
