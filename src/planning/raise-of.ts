import type { Side } from '#domain/effort.ts';
import type { Raise } from '#domain/raise.ts';
import { massInFlight, sharesOf, type PlanContext } from './plan-context.ts';
import { allowedFraction, whyHeld } from './plan-item.ts';
import { plannedRepetitions } from './planned-repetitions.ts';
import { trackState, type Progress } from './progress.ts';
import { trackOf, type ItemAt, type Target } from './target.ts';

/** The raise that a planned load stands for against the load in use, or null where it is none. */
export const raiseOf = (
  context: PlanContext,
  progress: Progress,
  at: ItemAt,
  target: Target,
  work: ReadonlyMap<Side | null, number>,
): Raise | null => {
  if (target.basis === 'effort') return null;
  const raised = [...work]
    .map(([side, to]) => ({ from: trackState(progress, trackOf(at), side).inUse, to }))
    .filter(({ from, to }) => from === null || to > from);
  const most = raised.reduce<(typeof raised)[number] | null>(
    (highest, each) => (highest && highest.to >= each.to ? highest : each),
    null,
  );
  if (!most) return null;
  const worth = worthOf(context, at, target);
  const [was, is] = [most.from === null ? null : worth(most.from), worth(most.to)];
  const atTheBar = was && is && was.bar > 0 ? is.bar / was.bar - 1 : null;
  const byHand = at.asWritten !== null || target.basis === 'fixed';
  const cause = most.from === null ? 'first load' : byHand ? 'by hand' : target.cause;
  const held = byHand && most.from !== null ? whyHeld(progress, at) : null;
  const reason = held !== null || needsReason(context, target, most, atTheBar, cause);
  return {
    track: at.item.track,
    exercise: at.exercise.id,
    exerciseName: at.exercise.name,
    from: most.from,
    to: most.to,
    unit: at.machine.unit,
    increment: at.machine.increment,
    atTheBar,
    trueFraction: fractions(was, is),
    effortStep: target.basis === 'fraction' ? (target.ramp?.effortStep ?? null) : null,
    shareStep: target.basis === 'fraction' ? (target.ramp?.shareStep ?? null) : null,
    cause,
    because: target.basis === 'fixed' ? [] : target.because,
    cautions: [
      ...(held === null ? [] : [`Written over ${held}: type the reason.`]),
      ...cautionsOf(context, at, target, is?.fraction ?? null, reason && held === null),
    ],
    needsReason: reason,
    proposal: target.basis === 'fixed' ? null : target.proposal,
  };
};

/** One step of both ramps lifts the machine load by less than this; more is a return from a limit. Our own design. */
const RAMP_STEP_AT_MOST = 1.25;

/** More at the bar than the policy lets one signature cover; a single step of the machine cannot be made smaller. */
const needsReason = (
  context: PlanContext,
  target: Target,
  { from, to }: { readonly from: number | null; readonly to: number },
  atTheBar: number | null,
  cause: Raise['cause'],
): boolean =>
  from !== null &&
  to - from > target.steps.perStep &&
  !(cause === 'ramp step' && to <= from * RAMP_STEP_AT_MOST) &&
  // A load that was worth nothing at the bar has no percentage: what comes after it is a return, and wants a reason.
  (atTheBar === null || atTheBar > context.known.house.policies.raiseAtMost);

interface Worth {
  readonly bar: number;
  readonly fraction: number | null;
}

const fractions = (was: Worth | null, is: Worth | null): Raise['trueFraction'] =>
  is === null || is.fraction === null ? null : { was: was?.fraction ?? null, is: is.fraction };

/** Bar-equivalent and fraction of capacity of a load in increments. */
const worthOf = (context: PlanContext, at: ItemAt, target: Target) => {
  const moved = bodyMoved(context, at);
  return (increments: number): Worth | null => {
    if (moved === null) return null;
    const bar = increments * target.steps.increment - moved;
    return { bar, fraction: target.estimate ? bar / target.estimate.median : null };
  };
};

/** Body mass that the machine lifts in place of gravity: none in 1 g, where a bar is a bar. */
const bodyMoved = (context: PlanContext, at: ItemAt): number | null => {
  if (at.machine.gravity === '1 g') return 0;
  const mass = massInFlight(context, at.day);
  return mass && sharesOf(context, at.exercise).work * mass.kilograms;
};

const cautionsOf = (
  context: PlanContext,
  at: ItemAt,
  target: Target,
  is: number | null,
  reason: boolean,
): readonly string[] => {
  const over = is === null ? 0 : is / allowedFraction(at, target);
  const most = context.known.house.policies.raiseAtMost;
  return [
    ...(over > 1
      ? [
          `By the segment model this is ${Math.round(over * 100)} % of the maximum for ${plannedRepetitions(at.item)} repetitions.`,
        ]
      : []),
    ...(reason ? [`More than ${Math.round(most * 100)} % at the bar in one step: type the reason.`] : []),
  ];
};
