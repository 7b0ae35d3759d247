import type { Day } from '#units/day.ts';
import { kilogramsOf, numberOf } from '#units/entered.ts';
import { kilogramsPer } from '#units/mass.ts';
import { stepsNearest, stepsNotOver } from '#units/rounding.ts';
import type { Ramp } from '#domain/card.ts';
import type { Exercise, Machine } from '#domain/catalogue.ts';
import type { Side } from '#domain/effort.ts';
import type { Estimate } from '#domain/estimate.ts';
import type { FactId, ProposalId } from '#domain/identity.ts';
import type { Deload, LiftItem } from '#domain/programme.ts';
import type { Raise } from '#domain/raise.ts';
import type { StandingAdjustment } from './adjustments.ts';
import { fractionFirstHere, isFirstHere } from './first-here.ts';
import { frozenCapacity, type CapacityCause } from './frozen-capacity.ts';
import {
  machineSteps,
  massInFlight,
  replacementPolicy,
  shareByPolicy,
  sharesOf,
  wholeMultiple,
  type MachineSteps,
  type PlanContext,
} from './plan-context.ts';
import { setReckoning } from './rows.ts';
import { liftState, ruleTotalOf, trackState, type LiftState, type Progress, type TrackPlace } from './progress.ts';
import { proposalId } from './proposal-id.ts';

export interface ItemAt {
  readonly day: Day;
  readonly item: LiftItem;
  readonly exercise: Exercise;
  readonly machine: Machine;
  /** What an easier week takes off, in an easier week. */
  readonly deload: Deload | null;
  readonly adjustments: readonly StandingAdjustment[];
  /** The line by which somebody set the item for this day. */
  readonly asWritten: string | null;
}

export const trackOf = ({ item, exercise, machine }: ItemAt): TrackPlace => ({
  track: item.track,
  exercise: exercise.id,
  machine: machine.id,
});

/** The load that an item asks for, before limits. */
export type Target = {
  readonly steps: MachineSteps;
  readonly row: number | null;
  readonly estimate: Estimate | null;
  readonly bodyMassFact: FactId | null;
} & (
  | {
      readonly basis: 'fraction';
      readonly kilograms: number;
      /** Null in 1 g: nothing is added back there, and effort has no ramp. */
      readonly ramp: Ramp | null;
      readonly cause: Raise['cause'];
      readonly because: readonly FactId[];
      readonly proposal: ProposalId | null;
    }
  | {
      readonly basis: 'from last';
      readonly increments: ReadonlyMap<Side | null, number>;
      readonly cause: Raise['cause'];
      readonly because: readonly FactId[];
      readonly proposal: ProposalId | null;
    }
  | { readonly basis: 'effort'; readonly startAt: number | null; readonly rpe: readonly [number, number] }
  | { readonly basis: 'fixed'; readonly increments: number }
);

export type Reached =
  { readonly kind: 'target'; readonly target: Target } | { readonly kind: 'gap'; readonly says: string };

/** Which load an item asks for on a day, from its basis and the person's progress. */
export const targetOf = (context: PlanContext, progress: Progress, at: ItemAt): Reached => {
  const byHand = at.adjustments.find((each) => each.change.kind === 'load');
  if (byHand?.change.kind === 'load') return fixedTarget(context, at, kilogramsOf(byHand.change.load));
  const { basis } = at.item;
  switch (basis.kind) {
    case 'fixed':
      return fixedTarget(context, at, kilogramsOf(basis.load));
    case 'effort':
      return effortTarget(context, progress, at, basis.rpe);
    case 'fraction':
      return fractionTarget(context, progress, at, basis.of);
    case 'from last':
      if (sidesOf(at.exercise).every((side) => isReadyForLast(progress, at, side)))
        return lastTarget(context, progress, at);
      return basis.start === 'effort'
        ? effortTarget(context, progress, at, at.item.shouldFeel)
        : fractionTarget(context, progress, at, basis.start);
  }
};

export const sidesOf = (exercise: Exercise): readonly (Side | null)[] =>
  exercise.perSide ? ['left', 'right'] : [null];

const isReadyForLast = (progress: Progress, at: ItemAt, side: Side | null): boolean => {
  const track = trackState(progress, trackOf(at), side);
  return track.next !== null && track.atTop;
};

const fixedTarget = (context: PlanContext, at: ItemAt, kilograms: number): Reached => {
  const steps = machineSteps(context.known, at.machine, at.exercise, at.day);
  // A load that somebody typed is what the machine is to show, whatever it delivers.
  const shownStep =
    steps.perStep * numberOf({ text: at.machine.increment, unit: at.machine.unit }) * kilogramsPer(at.machine.unit);
  const increments = stepsNearest(kilograms, shownStep) * steps.perStep;
  return {
    kind: 'target',
    target: { basis: 'fixed', increments, steps, row: null, estimate: null, bodyMassFact: null },
  };
};

const effortTarget = (
  context: PlanContext,
  progress: Progress,
  at: ItemAt,
  rpe: readonly [number, number],
): Reached => {
  const steps = machineSteps(context.known, at.machine, at.exercise, at.day);
  const starts = sidesOf(at.exercise).flatMap((side) => trackState(progress, trackOf(at), side).next ?? []);
  const startAt = starts.length > 0 ? Math.min(...starts) : null;
  return {
    kind: 'target',
    target: { basis: 'effort', startAt, rpe, steps, row: null, estimate: null, bodyMassFact: null },
  };
};

const fractionTarget = (context: PlanContext, progress: Progress, at: ItemAt, fraction: number): Reached => {
  const frozen = frozenCapacity(context, at.exercise, at.machine, at.day);
  if (!frozen || frozen.reading.kind === 'none') return effortTarget(context, progress, at, at.item.shouldFeel);
  const { estimate } = frozen.reading;
  if (at.machine.gravity === '1 g')
    return groundTarget(context, progress, at, fractionAsked(at, fraction), estimate, frozen.cause);
  const mass = massInFlight(context, at.day);
  if (!mass) return { kind: 'gap', says: 'No body mass before launch is known: weigh, or fix one by signature.' };
  const asked = fractionAsked(at, fraction);
  const step = stepOn(context, liftState(progress, at.exercise.id), at);
  const steps = machineSteps(context.known, at.machine, at.exercise, frozen.cause.day);
  const row = context.rows.add(at.machine, givensOf(context, at, asked, step.ramp, estimate, mass.kilograms));
  return {
    kind: 'target',
    target: {
      basis: 'fraction',
      kilograms: context.rows.at(row, setReckoning(at.machine).target),
      ramp: step.ramp,
      cause:
        step.raised || isFollowingRamp(progress, at, step.ramp)
          ? 'ramp step'
          : frozen.cause.kind === 'first load'
            ? 'back from less'
            : frozen.cause.kind,
      because: step.because,
      proposal: step.proposal,
      steps,
      row,
      estimate,
      bodyMassFact: mass.fact,
    },
  };
};

const fractionAsked = ({ adjustments }: ItemAt, fraction: number): number => {
  const by = adjustments.find((each) => each.change.kind === 'fraction by');
  return by?.change.kind === 'fraction by' ? fraction * by.change.by : fraction;
};

/** In 1 g a fraction of the maximum is what hangs on the bar. */
const groundTarget = (
  context: PlanContext,
  progress: Progress,
  at: ItemAt,
  asked: number,
  estimate: Estimate,
  cause: CapacityCause,
): Reached => {
  const fraction = isFirstHere(context, progress, at) ? Math.min(asked, fractionFirstHere(at, estimate.of)) : asked;
  const row = context.rows.add(at.machine, [fraction, estimate.median, 0]);
  return {
    kind: 'target',
    target: {
      basis: 'fraction',
      kilograms: context.rows.at(row, setReckoning(at.machine).target),
      ramp: null,
      cause: cause.kind === 'first load' ? 'back from less' : cause.kind,
      because: [],
      proposal: null,
      steps: machineSteps(context.known, at.machine, at.exercise, cause.day),
      row,
      estimate,
      bodyMassFact: null,
    },
  };
};

const givensOf = (
  context: PlanContext,
  at: ItemAt,
  fraction: number,
  ramp: Ramp,
  estimate: Estimate,
  mass: number,
): readonly number[] => {
  const shares = sharesOf(context, at.exercise);
  const share = shareByPolicy(replacementPolicy(context, at.exercise), shares);
  return [ramp.effort, fraction, estimate.median, ramp.share, share, shares.work, mass, 0];
};

/** The ramp step in force, or the next where results have earned it and nobody declined. */
const stepOn = (context: PlanContext, lift: LiftState, at: ItemAt) => {
  const { policies } = context.known.house;
  const steps = Math.max(policies.effortSteps.length, policies.shareSteps.length);
  const isTop = lift.effortStep >= policies.effortSteps.length - 1 && lift.shareStep >= policies.shareSteps.length - 1;
  const earned = lift.earnedBy.length >= policies.sessionsPerStep;
  const id = earned ? proposalId('ramp step', context.known.person, at.exercise.id, lift.earnedBy) : null;
  const raised =
    !at.deload &&
    !isTop &&
    id !== null &&
    lift.lastStepOn !== null &&
    at.day - lift.lastStepOn >= policies.daysBetweenRaises &&
    mayRaise(context, lift, at, id);
  const up = (step: number, of: readonly number[]): number => Math.min(step + (raised ? 1 : 0), of.length - 1);
  const [effortStep, shareStep] = [up(lift.effortStep, policies.effortSteps), up(lift.shareStep, policies.shareSteps)];
  const ramp: Ramp = {
    effort: policies.effortSteps[effortStep] as number,
    share: policies.shareSteps[shareStep] as number,
    effortStep,
    shareStep,
    steps,
  };
  return { ramp, raised, because: raised ? [...lift.earnedBy] : [], proposal: raised ? id : null };
};

/** The lift's ramps were signed higher than the load in use of this track stands on. */
const isFollowingRamp = (progress: Progress, at: ItemAt, ramp: Ramp): boolean =>
  sidesOf(at.exercise).some((side) => {
    const { rampSteps } = trackState(progress, trackOf(at), side);
    return rampSteps !== null && ramp.effortStep + ramp.shareStep > rampSteps;
  });

/** Nothing holds a raise of this lift back: no hold, no unread note, no decline of this very proposal. */
const mayRaise = (context: PlanContext, lift: LiftState, at: ItemAt, id: ProposalId): boolean =>
  lift.unread.length === 0 && !context.declined.has(id) && !at.adjustments.some((each) => each.change.kind === 'hold');

const lastTarget = (context: PlanContext, progress: Progress, at: ItemAt): Reached => {
  const lift = liftState(progress, at.exercise.id);
  const steps = machineSteps(context.known, at.machine, at.exercise, at.day);
  const id =
    lift.ruleEarnedBy.length > 0
      ? proposalId('step rule', context.known.person, at.exercise.id, lift.ruleEarnedBy)
      : null;
  const raised = id !== null && isRuleEarned(context, lift, at, id);
  const add = raised ? ruleIncrements(at, steps) : 0;
  const increments = new Map(
    sidesOf(at.exercise).map((side) => [side, nextIncrements(progress, lift, at, side, add)] as const),
  );
  const frozen = frozenCapacity(context, at.exercise, at.machine, at.day);
  const estimate = frozen?.reading.kind === 'estimate' ? frozen.reading.estimate : null;
  const mass = at.machine.gravity === '0 g' ? massInFlight(context, at.day) : null;
  const asked = at.item.basis.kind === 'from last' && at.item.basis.start !== 'effort' ? at.item.basis.start : null;
  const row = estimate && asked !== null ? lastRow(context, at, asked, estimate, mass?.kilograms ?? null) : null;
  return {
    kind: 'target',
    target: {
      basis: 'from last',
      increments,
      cause: raised || isFollowing(progress, lift, at) ? 'step rule' : 'back from less',
      because: raised ? [...lift.ruleEarnedBy] : [],
      proposal: raised ? id : null,
      steps,
      row,
      estimate,
      bodyMassFact: mass?.fact ?? null,
    },
  };
};

/** The working behind a load that comes from the last one: what the start fraction would give today. */
const lastRow = (
  context: PlanContext,
  at: ItemAt,
  asked: number,
  estimate: Estimate,
  mass: number | null,
): number | null => {
  if (at.machine.gravity === '1 g') return context.rows.add(at.machine, [asked, estimate.median, 0]);
  const top: Ramp = { effort: 1, share: 1, effortStep: 0, shareStep: 0, steps: 1 };
  return mass === null ? null : context.rows.add(at.machine, givensOf(context, at, asked, top, estimate, mass));
};

/** Does this track still have to take what the leading one took? */
const isFollowing = (progress: Progress, lift: LiftState, at: ItemAt): boolean =>
  sidesOf(at.exercise).some(
    (side) => trackState(progress, trackOf(at), side).ruleTotal < ruleTotalOf(lift, at.machine.id, side),
  );

/** The load that counts, what the rule adds today, and what the leading track has taken before this one. */
const nextIncrements = (progress: Progress, lift: LiftState, at: ItemAt, side: Side | null, add: number): number => {
  const track = trackState(progress, trackOf(at), side);
  if (at.deload) return track.next ?? 0;
  const behind = ruleTotalOf(lift, at.machine.id, side) - track.ruleTotal;
  // A track that took this raise before the leading one waits for it.
  return (track.next ?? 0) + Math.max(0, behind) + (behind >= 0 ? add : 0);
};

const isRuleEarned = (context: PlanContext, lift: LiftState, at: ItemAt, id: ProposalId): boolean =>
  !at.deload &&
  (lift.lastRaiseOn === null || at.day - lift.lastRaiseOn >= context.known.house.policies.daysBetweenRaises) &&
  mayRaise(context, lift, at, id);

/** What the step rule adds, in whole increments: the asked step down to whole rounding steps, at least one. */
export const ruleIncrements = (at: ItemAt, steps: MachineSteps): number => {
  if (at.item.basis.kind !== 'from last') return 0;
  const asked = kilogramsOf({ text: at.item.basis.rule.add[at.machine.unit], unit: at.machine.unit });
  return wholeMultiple(asked, steps.step) * steps.perStep;
};

/** Increments that do not pass a mass, down to whole rounding steps. */
export const incrementsNotOver = (kilograms: number, steps: MachineSteps): number =>
  stepsNotOver(kilograms, steps.step) * steps.perStep;
