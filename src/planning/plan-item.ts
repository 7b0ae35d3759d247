import { fraction, repetitions } from '#units/quantity.ts';
import { stepsNearest, stepsNotUnder } from '#units/rounding.ts';
import type { CardItem, CardLift, CardSet, LoadLimit, SetLoad } from '#domain/card.ts';
import type { Side } from '#domain/effort.ts';
import { settingsFor } from '#domain/known.ts';
import type { ProgrammeSet } from '#domain/programme.ts';
import { showMissionDay } from '#domain/mission-day.ts';
import { fractionAllowing } from '#science/strength/repetition-maximum.ts';
import { capped, effortCap, restrictedSays } from './effort-cap.ts';
import { FIRST_HERE_FEELS, FIRST_HERE_SAYS, isFirstHere } from './first-here.ts';
import { isShoulderRuleDay, limitIncrements, limitsOn, shoulderEvidence, type Limit } from './limits.ts';
import { machineSteps, restrictionsOn, type MachineSteps, type PlanContext } from './plan-context.ts';
import { plannedRepetitions } from './planned-repetitions.ts';
import { trackState, type Progress } from './progress.ts';
import { raiseOf } from './raise-of.ts';
import { setReckoning } from './rows.ts';
import { signedRule } from './signed-rule.ts';
import { isBehindGates, isUnderBar, leftOutBehind, mayCarryBar, nextGate } from './squat-gates.ts';
import { sidesOf, targetOf, trackOf, type ItemAt, type Target } from './target.ts';

export type PlannedItem =
  | { readonly kind: 'item'; readonly item: CardItem }
  /** Gap: something must be entered or signed before it can be issued. */
  | {
      readonly kind: 'left out';
      readonly says: string;
      readonly gap: boolean;
      /** It is too early in the flight for it: a day of nothing else has no session. */
      readonly early?: true;
    };

/** Rest after a warm-up set [s]; common practice. */
const WARM_UP_REST = 60;

/** One item of the programme in absolute terms for one person on one day. */
export const planItem = (context: PlanContext, progress: Progress, at: ItemAt): PlannedItem => {
  const leftOut = (says: string, gap = false): PlannedItem => ({ kind: 'left out', says, gap });
  const restrictions = restrictionsOn(context, at.exercise, at.day).map(({ restriction }) => restriction.limit);
  if (restrictions.some((limit) => limit.kind === 'forbidden')) return leftOut('left out: limited by the physician');
  if (at.adjustments.some((each) => each.change.kind === 'leave out')) return leftOut('left out: by agreement');
  const reached = targetOf(context, progress, at);
  if (reached.kind === 'gap') return leftOut(reached.says, true);
  if (isBehindGate(context, at)) return leftOut(leftOutBehind(nextGate(context.known, at.day)));
  if (needsShoulderEvidence(context, at, reached.target))
    return leftOut('No bar carried on the shoulders before launch is recorded: type the heaviest one, signed.', true);
  const loads = loadsOf(context, progress, at, reached.target);
  if (loads.kind === 'under the least')
    return leftOut(
      `left out: ${loads.says} allows less than the machine's least of ${at.machine.least} ${at.machine.unit}`,
    );
  if (isLeastTooHeavy(at, reached.target, loads))
    return leftOut(
      `left out: the lightest load here, ${at.machine.least} ${at.machine.unit}, is more than ${plannedRepetitions(at.item)} repetitions allow`,
    );
  return { kind: 'item', item: cardItem(context, progress, at, reached.target, loads) };
};

/**
 * A squat or a hip hinge under a bar, or of a load that is not found by effort, of somebody who was never seen under a bar, or not since
 * landing: no card sends them there before the gates are passed.
 */
const isBehindGate = ({ known }: PlanContext, at: ItemAt): boolean =>
  (at.item.basis.kind !== 'effort' || isUnderBar(at.machine.kind)) &&
  isBehindGates(known, at.exercise, at.machine, at.day) &&
  !mayCarryBar(known, at.day);

/** Under a bar the lightest load is heavy for some: more than the planned repetitions allow is not offered. */
const isLeastTooHeavy = (at: ItemAt, target: Target, loads: Loads): boolean => {
  if (at.machine.gravity !== '1 g' || !target.estimate || target.basis === 'effort') return false;
  const lightest = Math.min(...loads.work.values()) * target.steps.increment;
  return lightest <= target.steps.least && lightest / target.estimate.median > allowedFraction(at, target);
};

const needsShoulderEvidence = (context: PlanContext, at: ItemAt, target: Target): boolean =>
  target.basis === 'fraction' &&
  isShoulderRuleDay(context, at.exercise, at.day) &&
  shoulderEvidence(context).kind === 'none';

interface Loads {
  readonly kind: 'loads';
  /** Whole increments for each side. */
  readonly work: ReadonlyMap<Side | null, number>;
  readonly limits: readonly LoadLimit[];
}

const loadsOf = (
  context: PlanContext,
  progress: Progress,
  at: ItemAt,
  target: Target,
): Loads | { readonly kind: 'under the least'; readonly says: string } => {
  // A load keeps the calibration of its cause, a limit is held by the calibration of the day.
  const today = machineSteps(context.known, at.machine, at.exercise, at.day);
  const limits: readonly Limit[] = limitsOn(context, at.exercise, at.machine, today, at.day);
  const work = new Map<Side | null, number>();
  const least = stepsNotUnder(target.steps.least, target.steps.step) * target.steps.perStep;
  const marked: LoadLimit[] = [];
  for (const side of sidesOf(at.exercise)) {
    const held = heldBy(context, progress, at, target, side);
    const all = [
      ...limits.map((limit) => ({
        kind: limit.kind,
        increments: limitIncrements(limit, today),
        binds: false,
        says: limit.says,
      })),
      ...held,
    ];
    const tightest = all.reduce((least, limit) => (limit.increments < least.increments ? limit : least));
    const asked = deloaded(at, askedIncrements(target, side, least), target.steps);
    const chosen = Math.min(asked, tightest.increments);
    if (chosen < least && tightest.increments < least) return { kind: 'under the least', says: tightest.says };
    const load = Math.max(chosen, least);
    work.set(side, load);
    if (marked.length === 0)
      marked.push(...all.map((limit) => ({ ...limit, binds: limit === tightest && asked > tightest.increments })));
  }
  return { kind: 'loads', work, limits: marked };
};

/** Limits that this person's own last sessions set on a load that comes from a fraction. */
const heldBy = (
  context: PlanContext,
  progress: Progress,
  at: ItemAt,
  target: Target,
  side: Side | null,
): readonly LoadLimit[] => {
  if (target.basis === 'effort' || target.basis === 'fixed') return [];
  const track = trackState(progress, trackOf(at), side);
  const why = whyHeld(progress, at);
  const kept = why === null ? null : track.inUse;
  const released = target.basis === 'from last' || isBackOffReleased(context, progress, at);
  const backedOff = released ? null : track.backedOff;
  const easier = at.deload ? track.inUse : null;
  return [
    ...(easier === null
      ? []
      : [
          {
            kind: 'signed load' as const,
            increments: easier,
            binds: false,
            says: 'the load in use: nothing goes up in an easier session',
          },
        ]),
    ...(kept === null || why === null
      ? []
      : [
          {
            kind: 'signed load' as const,
            increments: kept,
            binds: false,
            says: why,
          },
        ]),
    ...(backedOff === null
      ? []
      : [
          {
            kind: 'back-off' as const,
            increments: backedOff,
            binds: false,
            says: 'the back-off: coming back is a raise',
          },
        ]),
  ];
};

/** Why a load may not go up today, whatever earned it. */
export const whyHeld = (progress: Progress, at: ItemAt): string | null => {
  const lift = progress.lifts.get(at.exercise.id);
  if (at.adjustments.some((each) => each.change.kind === 'hold')) return 'a signed hold: the load stays';
  if (lift?.painHolds) return 'discomfort last time: the load holds';
  return lift && lift.unread.length > 0 ? 'a note that nobody has read yet: the load stays' : null;
};

/** Two clean sessions at the lower load earn the way back; it stands on the card as a raise. */
const isBackOffReleased = (context: PlanContext, progress: Progress, at: ItemAt): boolean =>
  (progress.lifts.get(at.exercise.id)?.earnedBy.length ?? 0) >= context.known.house.policies.sessionsPerStep;

const askedIncrements = (target: Target, side: Side | null, least: number): number => {
  switch (target.basis) {
    case 'fraction':
      return stepsNearest(target.kilograms, target.steps.step) * target.steps.perStep;
    case 'from last':
      return target.increments.get(side) ?? least;
    case 'effort':
      return target.startAt ?? least;
    case 'fixed':
      return target.increments;
  }
};

const deloaded = (at: ItemAt, increments: number, steps: MachineSteps): number =>
  at.deload ? Math.floor((increments * at.deload.loadBy) / steps.perStep + 1e-6) * steps.perStep : increments;

const cardItem = (context: PlanContext, progress: Progress, at: ItemAt, target: Target, loads: Loads): CardLift => {
  const { known } = context;
  const heaviest = Math.max(...loads.work.values());
  const trueFraction = fillRow(context, at, target, heaviest);
  const ramping =
    target.basis === 'fraction' &&
    target.ramp !== null &&
    target.ramp.effortStep + target.ramp.shareStep < 2 * (target.ramp.steps - 1);
  const isFirst = isFirstHere(context, progress, at);
  const cap = leastOf(effortCap(context, at.exercise, at.day), isFirst ? FIRST_HERE_FEELS : null);
  return {
    kind: 'lift',
    item: at.item.id,
    track: at.item.track,
    leading: at.item.leading,
    place: 0,
    exercise: at.exercise.id,
    exerciseName: at.exercise.name,
    carriedAtShoulders: at.exercise.carriedAt === 'shoulders',
    machine: at.machine.id,
    machineName: at.machine.name,
    unit: at.machine.unit,
    increment: at.machine.increment,
    priority: at.item.priority,
    basis: target.basis,
    asWritten: at.asWritten,
    settings: settingsFor(known, at.machine.id, at.exercise.id),
    last: lastText(context, progress, at),
    cues: at.exercise.cues,
    sets: setsOf(at, target, loads, cap),
    tempo: at.item.tempo,
    superset: at.item.superset === null ? null : { letter: at.item.superset, inTurnWith: [] },
    // On the way up the load leaves more in reserve than the programme means: an unrecorded effort says only "at least".
    reserve: target.basis === 'effort' || ramping || cap !== null ? null : at.item.reserve,
    shouldFeel: capped(at.item.shouldFeel, leastOf(cap, ramping ? RAMP_FEELS : null)),
    ramp: target.basis === 'fraction' ? target.ramp : null,
    rule:
      target.basis === 'from last' && !at.deload && cap === null
        ? signedRule(context, at, target, heaviest, loads.limits)
        : null,
    limits: loads.limits,
    raise: raiseOf(context, progress, at, target, loads.work),
    row: target.row,
    says: [...(isFirst ? [FIRST_HERE_SAYS] : []), ...saysOf(context, at, target, loads, trueFraction, ramping)],
  };
};

/** The row learns the load that was chosen; answers the true fraction, where there is a capacity. */
const fillRow = (context: PlanContext, at: ItemAt, target: Target, increments: number): number | null => {
  if (target.row === null) return null;
  context.rows.setLoad(at.machine, target.row, increments * target.steps.increment);
  return context.rows.at(target.row, setReckoning(at.machine).trueFraction);
};

const setsOf = (at: ItemAt, target: Target, loads: Loads, cap: number | null): readonly CardSet[] => {
  const work = at.deload ? at.item.sets.slice(0, Math.max(1, at.item.sets.length - at.deload.fewerSets)) : at.item.sets;
  const load = (increments: number): SetLoad =>
    target.basis === 'effort'
      ? { kind: 'start at', increments, rpe: capped(target.rpe, cap) }
      : { kind: 'set', increments };
  const sides = [...loads.work];
  const warmUps = at.item.warmUps.flatMap((warmUp) =>
    sides.map(([side, increments]) => ({
      kind: 'warm-up' as const,
      load: { kind: 'set' as const, increments: warmUpIncrements(increments, warmUp.of, target.steps) },
      repetitions: warmUp.repetitions,
      side,
      rest: WARM_UP_REST,
    })),
  );
  return [
    ...warmUps,
    ...work.flatMap((set) => {
      const asked = askedOf(set);
      const { loadBy } = set;
      return sides.map(([side, increments]) => ({
        ...asked,
        kind: 'work' as const,
        load: load(loadBy === undefined ? increments : warmUpIncrements(increments, loadBy, target.steps)),
        side,
      }));
    }),
  ];
};

/** Most sets have the load of the first. */
const askedOf = (set: ProgrammeSet): Omit<ProgrammeSet, 'loadBy'> => {
  if (!('loadBy' in set)) return set;
  const { loadBy: _, ...asked } = set;
  return asked;
};

const warmUpIncrements = (work: number, of: number, steps: MachineSteps): number => {
  const least = stepsNotUnder(steps.least, steps.step) * steps.perStep;
  return Math.min(work, Math.max(least, Math.floor((work * of) / steps.perStep + 1e-6) * steps.perStep));
};

/** While either ramp is below its top a work set should feel no harder than this; common practice. */
const RAMP_FEELS = 6;

const leastOf = (one: number | null, other: number | null): number | null =>
  one === null || other === null ? (one ?? other) : Math.min(one, other);

const saysOf = (
  context: PlanContext,
  at: ItemAt,
  target: Target,
  loads: Loads,
  trueFraction: number | null,
  ramping: boolean,
): readonly string[] => {
  const binding = loads.limits.filter((limit) => limit.binds).map((limit) => `held by ${limit.says}`);
  const restricted = restrictedSays(context, at.exercise, at.day);
  const atBar = ramping && trueFraction !== null ? [onTheWayUp(trueFraction)] : [];
  return [
    ...new Set([
      ...restricted,
      ...binding.filter((says) => !says.includes('physician')),
      ...atBar,
      ...overAllowed(at, target, trueFraction),
    ]),
  ];
};

/** Low on both ramps a lift that moves much of the body may weigh less than the body alone does in 1 g. */
const onTheWayUp = (trueFraction: number): string =>
  trueFraction > 0
    ? `on the way up: ${Math.round(trueFraction * 100)} % of your maximum at the bar`
    : 'on the way up: lighter than your own body alone on the ground';

const overAllowed = (at: ItemAt, target: Target, trueFraction: number | null): readonly string[] => {
  const ratio = trueFraction === null ? 0 : trueFraction / allowedFraction(at, target);
  return ratio > 1
    ? [
        `by the segment model ${Math.round(ratio * 100)} % of the maximum for ${plannedRepetitions(at.item)} repetitions`,
      ]
    : [];
};

/** What the planned repetitions allow, as a fraction of the maximum that the estimate is of. */
export const allowedFraction = (at: ItemAt, target: Target): number => {
  const most = fractionAllowing(repetitions(plannedRepetitions(at.item)));
  const of = target.estimate?.of ?? 1;
  return of === 1 ? most : fraction(most / fractionAllowing(repetitions(of)));
};

const lastText = (context: PlanContext, progress: Progress, at: ItemAt): string | null => {
  const { mission } = context.known;
  const parts = sidesOf(at.exercise).flatMap((side) => {
    const { last } = trackState(progress, trackOf(at), side);
    if (!last || !mission) return [];
    const load = Number((last.increments * Number(at.machine.increment)).toFixed(6));
    const done = `${load} × ${last.repetitions.join(' ')}${last.rating === null ? '' : `, RPE ${last.rating}`}`;
    return [{ day: showMissionDay(mission, last.day).replace('flight ', ''), text: side ? `${side} ${done}` : done }];
  });
  return parts[0] ? `${parts[0].day}: ${parts.map((part) => part.text).join('; ')}` : null;
};
