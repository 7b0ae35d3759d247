import type { Exercise } from '#domain/catalogue.ts';
import { idOf } from '#domain/identity.ts';
import type { ItemCondition, LiftItem, LoadBasis, ProgrammeSet, StepRule, WarmUpSet } from '#domain/programme.ts';

/**
 * One line of a training day, from which the phases are written: main flight as it stands, first flight weeks with one
 * set fewer, by feel, and always as a fraction of capacity or by effort; the last ones with one set fewer at the load.
 */
export interface ProgrammeLine {
  /** Stem of the item's identity, such as "squat-heavy". */
  readonly name: string;
  readonly track: string;
  readonly leading: boolean;
  readonly exercise: Exercise;
  /** 1 is kept longest. */
  readonly priority: number;
  readonly load: LineLoad;
  /** Sets (for each side, where the exercise has sides), repetitions, seconds of rest. */
  readonly work: { readonly sets: number; readonly repetitions: number; readonly rest: number };
  readonly warmUps: readonly WarmUpSet[];
  readonly reserve: number | null;
  readonly shouldFeel: readonly [number, number];
  readonly source: string;
}

export type LineLoad =
  /** A fraction of capacity to begin with, then the last load and the step rule. */
  | { readonly kind: 'fraction, then last'; readonly of: number }
  /** No capacity: found by effort, then the last load and the step rule. */
  | { readonly kind: 'effort, then last' }
  | { readonly kind: 'effort'; readonly rpe: readonly [number, number] }
  /** A fraction of capacity that stays one, whatever was done last. */
  | { readonly kind: 'fraction'; readonly of: number };

/** Effort of the first flight weeks: technique by feel (common practice). */
const BY_FEEL = [5, 6] as const;

/** +5 lb lower body, +2.5 lb upper body, or the machine's least step (common practice; the kg beside them likewise). */
const STEP_RULES: Readonly<Record<Exercise['bodyPart'], StepRule>> = {
  'lower body': { add: { kg: '2.5', lb: '5' } },
  'upper body': { add: { kg: '1', lb: '2.5' } },
};

const FIRST_WEEKS_SOURCE =
  'First flight weeks: one set fewer, RPE 5 to 6; early loads are planned low for adaptation and comfort (Petersen 2016, Extrem Physiol Med 5:9, seen); sets and effort are our own design.';

export const itemForMainFlight = (line: ProgrammeLine): LiftItem => ({
  ...shared(line),
  id: idOf(`${line.name}-main`),
  basis: basisOf(line),
  sets: workSets(line.work, line.work.sets),
  reserve: line.reserve,
  shouldFeel: line.shouldFeel,
  source: line.source,
});

export const itemForFirstWeeks = (line: ProgrammeLine): LiftItem => ({
  ...shared(line),
  id: idOf(`${line.name}-first`),
  basis: firstWeeksBasis(line),
  sets: workSets(line.work, line.work.sets - 1),
  // The band of effort says how hard it is: while the ramps are low, the reserve of main flight would be untrue.
  reserve: null,
  shouldFeel: BY_FEEL,
  source: `${FIRST_WEEKS_SOURCE} ${line.source}`,
});

const LAST_WEEKS_SOURCE =
  'Last flight weeks: one set fewer, the load stays, so that nobody lands sore: common practice, our own figures.';

/** The load of main flight with one set fewer. */
export const itemForLastWeeks = (line: ProgrammeLine): LiftItem => ({
  ...itemForMainFlight(line),
  id: idOf(`${line.name}-last`),
  sets: workSets(line.work, line.work.sets - 1),
  source: `${LAST_WEEKS_SOURCE} ${line.source}`,
});

const shared = ({ track, leading, exercise, priority, warmUps }: ProgrammeLine) => ({
  kind: 'lift' as const,
  condition: 'everyone' as const,
  track: idOf<'track'>(track),
  leading,
  exercise: exercise.id,
  machineKind: 'resistive machine' as const,
  tempo: null,
  superset: null,
  priority,
  warmUps,
});

/** The same line under a free bar in 1 g. */
export const itemOnGround = (line: ProgrammeLine, phase: string): LiftItem =>
  itemOn('free bar', line, { phase, condition: 'everyone' });

/** The same line on any kind of machine, for everyone or for some. */
export const itemOn = (
  machineKind: LiftItem['machineKind'],
  line: ProgrammeLine,
  { phase, condition }: { readonly phase: string; readonly condition: ItemCondition },
): LiftItem => ({ ...itemForMainFlight(line), id: idOf(`${line.name}-${phase}`), machineKind, condition });

const basisOf = ({ load, exercise }: ProgrammeLine): LoadBasis => {
  const rule = STEP_RULES[exercise.bodyPart];
  switch (load.kind) {
    case 'fraction, then last':
      return { kind: 'from last', start: load.of, rule };
    case 'effort, then last':
      return { kind: 'from last', start: 'effort', rule };
    case 'effort':
    case 'fraction':
      return load;
  }
};

const firstWeeksBasis = ({ load }: ProgrammeLine): LoadBasis =>
  load.kind === 'fraction, then last' || load.kind === 'fraction'
    ? { kind: 'fraction', of: load.of }
    : { kind: 'effort', rpe: BY_FEEL };

const workSets = ({ repetitions, rest }: ProgrammeLine['work'], sets: number): readonly ProgrammeSet[] =>
  Array.from({ length: sets }, () => ({ repetitions, rest }));
