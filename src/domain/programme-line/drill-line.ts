import type { Exercise } from '../catalogue.ts';
import { isOne, type Span } from '../prescription.ts';
import type { DrillItem, DrillSet, DrillWork, HandTarget } from '../programme.ts';
import type { Bouts } from './bouts-line.ts';
import { told, type Told } from './line-problem.ts';
import { restOf } from './lift-line.ts';
import { drillRefusals, type Sets } from './set-groups.ts';

/** What a line says of a drill; a rest or a band of effort that it does not name is null. */
export interface WrittenDrill {
  readonly work: readonly DrillWork[];
  readonly target: HandTarget | null;
  readonly rest: number | null;
  readonly rpe: readonly [number, number] | null;
}

export const writtenDrillOf = ({ sets, target }: DrillItem): WrittenDrill => ({
  work: sets.map(({ work }) => work),
  target,
  rest: restOf(sets),
  rpe: null,
});

/** Shorthand without a load, as a drill. */
export const drillOfSets = (written: Sets, exercise: Exercise): Told<WrittenDrill> => {
  const { groups, rest } = written;
  const bands = groups.flatMap(({ intensity }) => (intensity?.kind === 'RPE' ? [intensity.rating] : []));
  const [band] = bands;
  const loaded = groups.some(({ load, intensity }) => load !== null || (intensity && intensity.kind !== 'RPE'));
  const work = groups.flatMap(({ sets, each }) =>
    Array.from({ length: sets.least }, (): DrillWork =>
      each.kind === 'hold'
        ? { kind: 'hold', seconds: each.seconds.least, ...mostOfSpan(each.seconds) }
        : { kind: 'repetitions', count: each.count.least, ...mostOfSpan(each.count) },
    ),
  );
  return told({ work, target: null, rest, rpe: band ? [band.least, band.most] : null }, [
    ...drillRefusals(written, exercise),
    ...(groups.some(({ warmUp, top }) => warmUp || top) ? ['A drill has no warm-up and no top set.'] : []),
    ...(loaded ? ['No machine loads this: write 3 × 10, 3 × 30 s, or how it should feel, such as @ RPE 6.'] : []),
  ]);
};

export const mostOfSpan = ({ least, most }: Span): { readonly most?: number } => (most > least ? { most } : {});

/** A hold of more than a minute reads like a bout of endurance; without a target of endurance it is a hold. */
export const drillOfLongHolds = ({ repeats, seconds, intensity, easy }: Bouts): Told<WrittenDrill> => {
  const rating = intensity?.kind === 'RPE' ? intensity.rating : null;
  return told(
    {
      work: Array.from({ length: repeats.least }, () => ({ kind: 'hold', seconds })),
      target: null,
      rest: easy,
      rpe: rating ? [rating.least, rating.most] : null,
    },
    [
      ...(isOne(repeats) ? [] : ['A card says one number: write 3 × 90 s where the line says 2–3 × 90 s.']),
      ...(intensity && intensity.kind !== 'RPE'
        ? ['This is held, not run or ridden: write seconds, or how it should feel, such as 3 × 90 s @ RPE 6.']
        : []),
    ],
  );
};

/** A drill as a line writes it anew. No rest named is none; rests that differ stay while the line says what it said. */
export const drillAsWritten = (before: DrillItem, written: WrittenDrill): DrillItem => {
  const was = writtenDrillOf(before);
  const rest = written.rest ?? 0;
  const isSameRest = written.rest === was.rest;
  const isSameWork = JSON.stringify(was.work) === JSON.stringify(written.work);
  const sets: readonly DrillSet[] = isSameWork
    ? before.sets.map((set) => (isSameRest ? set : { ...set, rest }))
    : written.work.map((work) => ({ work, rest }));
  return { ...before, sets, target: written.target, shouldFeel: written.rpe ?? before.shouldFeel };
};
