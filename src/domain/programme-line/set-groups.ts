import { isAskedAlike } from '../asked-sets.ts';
import type { Exercise } from '../catalogue.ts';
import { isOne, only, type Prescription, type SetGroup, type SetIntensity, type TypedLoad } from '../prescription.ts';
import type { ProgrammeSet, WarmUpSet } from '../programme.ts';

export type Sets = Extract<Prescription, { readonly kind: 'sets' }>;

/** Nobody types more than nine digits; 1 − 0.07 is 0.9299999999999999 in binary. */
const rounded = (value: number): number => Number(value.toPrecision(9));

/**
 * Work sets as a line groups them: neighbours that are alike together, the target at the first; at the last where they stand
 * one by one: "6, 6, 6+ @ 80 %".
 */
export const groupsOf = (
  sets: readonly ProgrammeSet[],
  target: { readonly load: TypedLoad | null; readonly intensity: SetIntensity | null },
  perSide: boolean,
): readonly SetGroup[] => {
  const runs = oneByOne(runsOf(sets));
  const isTop = runs[0]?.length === 1 && runs.some(([set], place) => place > 0 && offTheTop(set) !== null);
  const aimed = target.load === null && isOneByOne(runs) ? runs.length - 1 : 0;
  return runs.map((run, place) => ({
    warmUp: false,
    top: isTop && place === 0,
    sets: { least: Math.max(1, run.filter(({ optional }) => !optional).length), most: run.length },
    each: eachOf(run[0]),
    perSide,
    ...(place === aimed ? target : { load: null, intensity: offTheTop(run[0]) }),
  }));
};

/** What may be left out ends its run: "3–4 × 6, 2 × 6". */
const runsOf = (sets: readonly ProgrammeSet[]): readonly (readonly ProgrammeSet[])[] => {
  const runs: ProgrammeSet[][] = [];
  for (const set of sets) {
    const run = runs.at(-1);
    const last = run?.at(-1);
    if (run && last && isAlike(last, set) && !(last.optional && !set.optional)) run.push(set);
    else runs.push([set]);
  }
  return runs;
};

/** "6, 6, 6+" and not "2 × 6, 6+": so the trade writes a last set that goes on. */
const oneByOne = (runs: readonly (readonly ProgrammeSet[])[]): readonly (readonly ProgrammeSet[])[] => {
  const [first, second, ...more] = runs;
  const goesOn =
    more.length === 0 &&
    first?.length === 2 &&
    second?.length === 1 &&
    second[0]?.orMore === true &&
    !first.some(({ optional, orMore }) => optional || orMore);
  return goesOn ? [...first.map((set) => [set]), second] : runs;
};

const isOneByOne = (runs: readonly (readonly ProgrammeSet[])[]): boolean =>
  runs.length === ONE_BY_ONE && runs.every(([set, ...others]) => others.length === 0 && (set?.loadBy ?? 1) === 1);

const ONE_BY_ONE = 3;

const eachOf = (set: ProgrammeSet | undefined): SetGroup['each'] => {
  const least = set?.repetitions ?? 1;
  return { kind: 'repetitions', count: { least, most: set?.most ?? least }, orMore: set?.orMore ?? false };
};

const isAlike = (a: ProgrammeSet, b: ProgrammeSet): boolean =>
  isAskedAlike(a, b) && (a.loadBy ?? 1) === (b.loadBy ?? 1);

const offTheTop = (set: ProgrammeSet | undefined): SetIntensity | null =>
  set?.loadBy === undefined || set.loadBy === 1 ? null : { kind: 'off the top', by: rounded(1 - set.loadBy) };

/** Groups that are no warm-up. A target that stands at the last of them alone is meant for all: "6, 6, 6+ @ 80 %". */
export const workGroupsOf = (groups: readonly SetGroup[]): readonly SetGroup[] => {
  const work = groups.filter((group) => !group.warmUp);
  const last = work.at(-1);
  const bare = work.slice(0, -1);
  if (!last || bare.length === 0 || bare.some(hasTarget) || !hasTarget(last)) return work;
  if (
    last.intensity?.kind === 'off the top' ||
    (last.load !== null && !bare.every((group) => isCountAlike(group, last)))
  )
    return work;
  const { load, intensity } = last;
  return [...bare, { ...last, load: null, intensity: null }].map((group, place) =>
    place === 0 ? { ...group, load, intensity } : group,
  );
};

const hasTarget = ({ load, intensity }: SetGroup): boolean => load !== null || intensity !== null;

/** Of a last set with a load of its own and other repetitions nobody knows whether the load is meant for all. */
const isCountAlike = ({ each: a }: SetGroup, { each: b }: SetGroup): boolean =>
  a.kind === 'repetitions' && b.kind === 'repetitions' && a.count.least === b.count.least;

/** What a lift has no place for. */
export const liftRefusals = ({ groups }: Sets, exercise: Exercise): readonly string[] => [
  ...someWork(groups),
  ...(groups.some(({ each }) => each.kind === 'hold')
    ? ['A lift under a load counts repetitions: write 3 × 8, not seconds.']
    : []),
  ...(groups.some((group) => group.warmUp && !isPlain(group))
    ? ['A warm-up says one number: write w 2 × 5 where the line says w 2–3 × 5.']
    : []),
  ...sideRefusals(groups, exercise),
];

/** What a drill has no place for. */
export const drillRefusals = ({ groups, tempo, superset }: Sets, exercise: Exercise): readonly string[] => [
  ...(tempo ? [`${exercise.name} is done without a load here: a tempo is of lifts, leave it out.`] : []),
  ...(superset ? ['Supersets are of lifts under a load: leave the letter out.'] : []),
  ...someWork(groups),
  ...(groups.every(({ sets }) => isOne(sets))
    ? []
    : ['A drill says one number of sets: write 3 × 8–12 where the line says 3–4 × 8–12.']),
  ...(groups.some(({ each }) => each.kind === 'repetitions' && each.orMore)
    ? ['A drill does not go on: write a range, such as 3 × 8–12.']
    : []),
  ...sideRefusals(groups, exercise),
];

const someWork = (groups: readonly SetGroup[]): readonly string[] =>
  groups.some((group) => !group.warmUp) ? [] : ['Write at least one set that is no warm-up.'];

const isPlain = ({ sets, each }: SetGroup): boolean =>
  isOne(sets) && (each.kind === 'repetitions' ? isOne(each.count) && !each.orMore : isOne(each.seconds));

const sideRefusals = (groups: readonly SetGroup[], { name, perSide }: Exercise): readonly string[] =>
  groups.some((group) => group.perSide) && !perSide ? [`${name} has no sides: leave /side out.`] : [];

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

const askedOf = ({ each }: SetGroup): Pick<ProgrammeSet, 'repetitions' | 'most' | 'orMore'> => {
  const { least, most } = each.kind === 'repetitions' ? each.count : only(0);
  return {
    repetitions: least,
    ...(most > least ? { most } : {}),
    ...(each.kind === 'repetitions' && each.orMore ? { orMore: true } : {}),
  };
};

export const workSetsOf = (groups: readonly SetGroup[], rest: number): readonly ProgrammeSet[] =>
  groups.flatMap((group, place) => {
    const by = place === 0 || group.intensity === null ? 1 : comparedWith(groups[0] ?? group, group.intensity);
    return Array.from({ length: group.sets.most }, (_, count) => ({
      ...askedOf(group),
      ...(count < group.sets.least ? {} : { optional: true as const }),
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
      repetitions: askedOf(group).repetitions,
    })),
  );
