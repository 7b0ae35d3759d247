import type { Exercise, Machine } from '#domain/catalogue.ts';
import { isOne, type Prescription, type SetGroup, type SetIntensity, type Span } from '#domain/prescription.ts';
import type { LiftItem, LoadBasis, ProgrammeItem, ProgrammeSet, WarmUpSet } from '#domain/programme.ts';
import { readShorthand } from '#domain/shorthand/read-shorthand.ts';
import { boutsAsWritten, drillAsWritten } from './piece-as-written.ts';

/** An item of the programme as a line of shorthand would have it, or every reason why it cannot be planned so. */
export type ItemAsWritten =
  | { readonly kind: 'item'; readonly item: ProgrammeItem }
  | { readonly kind: 'refused'; readonly says: readonly string[] };

interface Means {
  readonly exercise: Exercise;
  readonly machine: Machine | null;
}

/** What the line does not say (rest, warm-ups, a target) stays as the programme has it. */
export const itemAsWritten = (item: ProgrammeItem, { exercise, machine }: Means, line: string): ItemAsWritten => {
  if (item.kind === 'bouts') return boutsAsWritten(item, line);
  if (item.kind === 'drill') return drillAsWritten(item, exercise, line);
  const reading = readShorthand(line);
  if (reading.kind === 'problems') return refused(...reading.problems.map(({ says }) => says));
  const { prescription } = reading;
  if (prescription.kind === 'bouts') return refused(BOUTS);
  if (!machine) return refused('There is no machine here to load: leave it out, or go where one is.');
  const says = refusals(prescription, { exercise, machine });
  return says.length > 0
    ? refused(...says)
    : { kind: 'item', item: written(item, { exercise, machine }, prescription) };
};

const refused = (...says: readonly string[]): ItemAsWritten => ({ kind: 'refused', says });

type Place = { readonly exercise: Exercise; readonly machine: Machine };

type Sets = Extract<Prescription, { readonly kind: 'sets' }>;

const BOUTS = 'Bouts of endurance are not planned on this line: write sets, such as 4 × 6 @ 80 %.';

/** What a card cannot print yet: it says exactly what to do, set by set. */
const refusals = ({ groups, tempo, superset }: Sets, { exercise }: Place): readonly string[] => [
  ...(tempo ? ['A tempo is not printed on cards yet: leave it out, and write a note.'] : []),
  ...(superset ? ['Supersets are not planned yet: leave the letter out.'] : []),
  ...(groups.some((group) => !group.warmUp) ? [] : ['Write at least one set that is no warm-up.']),
  ...groups.flatMap((group) => groupRefusals(group, exercise)),
  ...targetRefusals(groups.filter((group) => !group.warmUp)),
];

const groupRefusals = ({ sets, each, perSide }: SetGroup, exercise: Exercise): readonly string[] => {
  const count = each.kind === 'repetitions' ? each.count : each.seconds;
  return [
    ...(isOne(sets) && isOne(count) ? [] : ['A card says one number: write 4 × 6 where the line says 3–4 × 6–8.']),
    ...(each.kind === 'hold' ? ['Holds in seconds are not planned here yet: write repetitions.'] : []),
    ...(each.kind === 'repetitions' && each.orMore ? ['Sets “or more” are not planned yet: write one number.'] : []),
    ...(perSide && !exercise.perSide ? [`${exercise.name} has no sides: leave /side out.`] : []),
  ];
};

const targetRefusals = (groups: readonly SetGroup[]): readonly string[] => {
  const [first, ...later] = groups;
  const mixed = later.some(
    ({ load, intensity }) =>
      load !== null ||
      (intensity !== null && intensity.kind !== 'off the top' && intensity.kind !== first?.intensity?.kind),
  );
  const differs = later.some(({ intensity }) => intensity?.kind === 'RPE' || intensity?.kind === 'in reserve');
  const heavier = first !== undefined && later.some(({ intensity }) => intensity && comparedWith(first, intensity) > 1);
  return [
    ...(mixed || differs
      ? ['Later sets are measured from the first: write them as −10 %, or as a percentage where the first is one.']
      : []),
    ...(heavier ? ['Write the heaviest set first: limits are held against it.'] : []),
  ];
};

const written = (item: LiftItem, { machine }: Place, { groups, rest }: Sets): LiftItem => {
  const work = groups.filter((group) => !group.warmUp);
  const first = work[0] as SetGroup;
  const warmUps = groups.filter((group) => group.warmUp);
  return {
    ...item,
    basis: basisOf(item, first, machine),
    warmUps: warmUps.length > 0 ? warmUps.flatMap((group) => warmUpSets(group, first)) : item.warmUps,
    sets: work.flatMap((group) => workSets(group, first, rest ?? item.sets[0]?.rest ?? 0)),
    reserve: reserveOf(item, first.intensity),
    shouldFeel: feelsOf(item, first.intensity),
  };
};

const basisOf = ({ basis }: LiftItem, { load, intensity }: SetGroup, { unit }: Machine): LoadBasis => {
  if (load) return { kind: 'fixed', load: { text: load.text, unit: load.unit ?? unit } };
  if (intensity?.kind === 'of maximum') return { kind: 'fraction', of: intensity.of.least };
  if (intensity?.kind === 'in reserve') return { kind: 'effort', rpe: ratingsOf(intensity.repetitions) };
  return intensity?.kind === 'RPE' ? { kind: 'effort', rpe: [intensity.rating.least, intensity.rating.most] } : basis;
};

/** Two in reserve is RPE 8 (Zourdos 2016). */
const ratingsOf = ({ least, most }: Span): readonly [number, number] => [Math.max(1, 10 - most), 10 - least];

const feelsOf = ({ shouldFeel }: LiftItem, intensity: SetIntensity | null): readonly [number, number] => {
  if (intensity?.kind === 'RPE') return [intensity.rating.least, intensity.rating.most];
  return intensity?.kind === 'in reserve' ? ratingsOf(intensity.repetitions) : shouldFeel;
};

/** A reserve that the line does not name is not the programme's any more, where the line sets its own load. */
const reserveOf = ({ reserve }: LiftItem, intensity: SetIntensity | null): number | null =>
  intensity === null ? reserve : null;

const workSets = (group: SetGroup, first: SetGroup, rest: number): readonly ProgrammeSet[] =>
  Array.from({ length: group.sets.least }, () => ({
    repetitions: repetitionsOf(group),
    rest,
    ...(group === first || group.intensity === null ? {} : { loadBy: comparedWith(first, group.intensity) }),
  }));

const warmUpSets = (group: SetGroup, first: SetGroup): readonly WarmUpSet[] =>
  Array.from({ length: group.sets.least }, () => ({
    of: group.intensity ? comparedWith(first, group.intensity) : EASY_WARM_UP,
    repetitions: repetitionsOf(group),
  }));

/** Of the work load, where a warm-up names none: common practice. */
const EASY_WARM_UP = 0.6;

/** A set's load as a part of the first work set's. */
const comparedWith = ({ intensity: first }: SetGroup, intensity: SetIntensity): number => {
  if (intensity.kind === 'off the top') return 1 - intensity.by;
  if (intensity.kind !== 'of maximum') return 1;
  return first?.kind === 'of maximum' ? intensity.of.least / first.of.least : intensity.of.least;
};

const repetitionsOf = ({ each }: SetGroup): number => (each.kind === 'repetitions' ? each.count.least : 0);
