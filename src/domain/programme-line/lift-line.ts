import type { Exercise } from '../catalogue.ts';
import { isOne, type SetGroup, type SetIntensity, type Span, type TypedLoad } from '../prescription.ts';
import type { LiftItem, LoadBasis, ProgrammeSet, StepRule } from '../programme.ts';
import { told, type Told } from './line-problem.ts';
import {
  groupsOf,
  liftRefusals,
  targetRefusals,
  warmUpsOf,
  workGroupsOf,
  workSetsOf,
  type Sets,
} from './set-groups.ts';

/** +5 lb lower body, +2.5 lb upper body, or the machine's least step (common practice; the kg beside them likewise). */
export const USUAL_RULES: Readonly<Record<Exercise['bodyPart'], StepRule>> = {
  'lower body': { add: { kg: '2.5', lb: '5' } },
  'upper body': { add: { kg: '1', lb: '2.5' } },
};

/**
 * A lift as its line says it: sets, target and rest. Warm-ups and what happens after the first time stand beside the line.
 * A line without a target is a lift that is found by effort the first time and goes on from the last load.
 */
export const prescriptionOfLift = (item: LiftItem, { perSide }: Pick<Exercise, 'perSide'>): Sets => ({
  kind: 'sets',
  superset: item.superset,
  groups: groupsOf(item.sets, targetOfLift(item), perSide),
  tempo: item.tempo,
  rest: restOf(item.sets),
});

type Target = { readonly load: TypedLoad | null; readonly intensity: SetIntensity | null };

/** What the first set of its line is aimed at. */
export const targetOfLift = (item: LiftItem): Target => {
  const { basis } = item;
  switch (basis.kind) {
    case 'fraction':
      return { load: null, intensity: ofMaximum(basis.of) };
    case 'from last':
      return { load: null, intensity: basis.start === 'effort' ? null : ofMaximum(basis.start) };
    case 'effort':
      return { load: null, intensity: effortOf(item, basis.rpe) };
    case 'fixed':
      return { load: basis.load, intensity: null };
  }
};

const ofMaximum = (of: number): SetIntensity => ({ kind: 'of maximum', of: { least: of, most: of } });

/** A band of one point that a reserve says too is written as the reserve. */
const effortOf = ({ reserve }: LiftItem, [least, most]: readonly [number, number]): SetIntensity =>
  isSaidByReserve(reserve, [least, most])
    ? { kind: 'in reserve', repetitions: { least: reserve, most: reserve } }
    : { kind: 'RPE', rating: { least, most } };

const isSaidByReserve = (reserve: number | null, [least, most]: readonly [number, number]): reserve is number =>
  reserve !== null && least === most && least === 10 - reserve;

/** The shorthand knows rests from five seconds to half an hour; others stay beside the line. */
const SHORTEST_REST = 5;
const LONGEST_REST = 1800;

export const restOf = (sets: readonly { readonly rest: number }[]): number | null => {
  const rest = sets[0]?.rest ?? null;
  return rest !== null && rest >= SHORTEST_REST && rest <= LONGEST_REST ? rest : null;
};

/** A lift as a line writes it anew: what the line does not change stays as it was. */
export const liftAsWritten = (before: LiftItem, exercise: Exercise, written: Sets): Told<LiftItem> => {
  const work = workGroupsOf(written.groups);
  const says = [...liftRefusals(written, exercise), ...targetRefusals(work), ...oneLoadRefusals(work)];
  const [first] = work;
  if (!first || says.length > 0) return told(before, says);
  const line = prescriptionOfLift(before, exercise);
  const was = { ...line, groups: workGroupsOf(line.groups) };
  const warmUps = written.groups.filter((group) => group.warmUp);
  return told(
    {
      ...before,
      ...(isSameTarget(first, was.groups[0]) ? {} : newTarget(before, exercise, first)),
      warmUps: warmUps.length > 0 ? warmUpsOf(warmUps, first) : before.warmUps,
      sets: setsAsWritten(before.sets, was, work, written.rest),
      tempo: written.tempo,
      superset: written.superset,
    },
    [],
  );
};

/** A programme is for every machine of a kind, whatever it shows. */
const oneLoadRefusals = (groups: readonly SetGroup[]): readonly string[] => [
  ...(groups.some(({ intensity }) => intensity?.kind === 'of maximum' && !isOne(intensity.of))
    ? ['A card says one load: write 80 % where the line says 75–80 %.']
    : []),
  ...(groups[0]?.load && groups[0].load.unit === null ? ['Say kg or lb after the load, such as 100 kg × 5.'] : []),
];

/** Rests may differ from set to set; the line names the first, and changes all where it changes. */
const setsAsWritten = (
  before: readonly ProgrammeSet[],
  was: Sets,
  work: readonly SetGroup[],
  rest: number | null,
): readonly ProgrammeSet[] => {
  const newRest = rest ?? before[0]?.rest ?? 0;
  if (shapeOf(work) !== shapeOf(was.groups)) return workSetsOf(work, newRest);
  return rest === null || rest === was.rest ? before : before.map((set) => ({ ...set, rest: newRest }));
};

/** Sets and what comes off the top, without the target of the first. */
const shapeOf = (groups: readonly SetGroup[]): string => JSON.stringify(workSetsOf(groups, 0));

const isSameTarget = ({ load, intensity }: SetGroup, was: SetGroup | undefined): boolean =>
  was !== undefined &&
  JSON.stringify([load?.text, load?.unit, intensity]) ===
    JSON.stringify([was.load?.text, was.load?.unit, was.intensity]);

type NewTarget = Pick<LiftItem, 'basis' | 'reserve' | 'shouldFeel'>;

const newTarget = (before: LiftItem, exercise: Exercise, { load, intensity }: SetGroup): NewTarget => {
  const band = bandOf(intensity);
  return {
    basis: load ? { kind: 'fixed', load: withUnit(load) } : basisOf(before, exercise, intensity),
    reserve: reserveOf(before, intensity),
    shouldFeel: band && (load !== null || feelsAsTargeted(before)) ? band : before.shouldFeel,
  };
};

const withUnit = ({ text, unit }: TypedLoad) => ({ text, unit: unit ?? ('kg' as const) });

/** A percentage on a lift that goes on from its last load is where it starts; else it is the load each time. */
const basisOf = ({ basis }: LiftItem, { bodyPart }: Exercise, intensity: SetIntensity | null): LoadBasis => {
  const rule = basis.kind === 'from last' ? basis.rule : USUAL_RULES[bodyPart];
  const band = bandOf(intensity);
  if (band) return { kind: 'effort', rpe: band };
  if (intensity?.kind !== 'of maximum') return { kind: 'from last', start: 'effort', rule };
  const of = intensity.of.least;
  return basis.kind === 'from last' ? { kind: 'from last', start: of, rule } : { kind: 'fraction', of };
};

/** Two in reserve is RPE 8 (Zourdos 2016). */
export const bandOf = (intensity: SetIntensity | null): readonly [number, number] | null => {
  if (intensity?.kind === 'RPE') return [intensity.rating.least, intensity.rating.most];
  return intensity?.kind === 'in reserve' ? ratingsOf(intensity.repetitions) : null;
};

const ratingsOf = ({ least, most }: Span): readonly [number, number] => [
  Math.max(1, 10 - most),
  Math.max(1, 10 - least),
];

/** One number in reserve, as a line says it; null where it says none, or several. */
export const reserveSaid = (intensity: SetIntensity | null): number | null =>
  intensity?.kind === 'in reserve' && isOne(intensity.repetitions) ? intensity.repetitions.least : null;

const reserveOf = ({ basis, reserve }: LiftItem, intensity: SetIntensity | null): number | null => {
  if (intensity?.kind === 'in reserve') return reserveSaid(intensity);
  return intensity?.kind === 'RPE' || (basis.kind === 'effort' && isSaidByReserve(reserve, basis.rpe)) ? null : reserve;
};

/** A band of its own beside the target stays; one that said the same as the target goes with it. */
const feelsAsTargeted = ({ basis, shouldFeel }: LiftItem): boolean =>
  basis.kind !== 'effort' || (basis.rpe[0] === shouldFeel[0] && basis.rpe[1] === shouldFeel[1]);
