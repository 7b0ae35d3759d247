import { stepsNearest } from '#units/rounding.ts';
import { flightDay, type Day } from '#units/day.ts';
import type { HarnessPull } from '#domain/card.ts';
import type { Exercise, Machine } from '#domain/catalogue.ts';
import type { TrackId } from '#domain/identity.ts';
import type { Raise } from '#domain/raise.ts';
import { limitIncrements, limitsOn } from './limits.ts';
import { machineSteps, massInFlight, type PlanContext } from './plan-context.ts';
import { harnessState, type HarnessState, type Progress } from './progress.ts';
import { proposalId } from './proposal-id.ts';

export type Harnessed =
  | {
      readonly kind: 'harness';
      readonly pull: HarnessPull;
      readonly raise: Raise | null;
      readonly says: readonly string[];
    }
  | { readonly kind: 'gap'; readonly says: string };

interface At {
  readonly day: Day;
  readonly track: TrackId;
  readonly exercise: Exercise;
  readonly machine: Machine;
}

/** What to set on the harness of a treadmill on a day: the load in force, one step more where sessions have earned it. */
export const harnessOn = (context: PlanContext, progress: Progress, at: At): Harnessed => {
  const mass = massInFlight(context, at.day);
  if (!mass) return { kind: 'gap', says: 'No body mass before launch is known: weigh, or fix one by signature.' };
  const state = harnessState(progress, at.machine.id);
  const { share, earned } = shareOn(context, state, at.day);
  const steps = machineSteps(context.known, at.machine, at.exercise, at.day);
  const limits = limitsOn(context, at.exercise, at.machine, steps, at.day).map((limit) => ({
    says: limit.says,
    increments: limitIncrements(limit, steps),
  }));
  const tightest = limits.reduce((least, limit) => (limit.increments < least.increments ? limit : least));
  const asked = stepsNearest(share * mass.kilograms, steps.step) * steps.perStep;
  const increments = Math.min(asked, tightest.increments);
  if (increments * steps.increment < steps.least)
    return { kind: 'gap', says: `The harness pulls at least ${at.machine.least} ${at.machine.unit}.` };
  const { unit, increment } = at.machine;
  return {
    kind: 'harness',
    pull: { increments, unit, increment, ofBodyWeight: (increments * steps.increment) / mass.kilograms },
    raise: raiseOf(context, state, at, increments, mass.kilograms / steps.increment, earned),
    says: increments < asked ? [`held by ${tightest.says}`] : [],
  };
};

/** Share of body weight in force, and whether a step more has been earned. */
const shareOn = (
  context: PlanContext,
  state: HarnessState,
  on: Day,
): { readonly share: number; readonly earned: boolean } => {
  const { harnessStart, harnessStep, harnessMost, sessionsPerStep, daysBetweenRaises } = context.known.house.policies;
  const now = state.ofBodyWeight ?? harnessStart;
  const earned =
    !state.painHolds &&
    now < harnessMost &&
    state.earnedBy.length >= sessionsPerStep &&
    state.lastStepOn !== null &&
    on - state.lastStepOn >= daysBetweenRaises &&
    isSettled(context, on) &&
    !context.declined.has(proposalOf(context, state));
  return { share: earned ? Math.min(harnessMost, now + harnessStep) : now, earned };
};

/** In the first two weeks the load stays where it starts: strap split and skin come first (common practice). */
const SETTLING_DAYS = 14;
const isSettled = ({ known }: PlanContext, on: Day): boolean =>
  known.mission !== null && flightDay(known.mission.launch, on) > SETTLING_DAYS;

const proposalOf = ({ known }: PlanContext, { earnedBy }: HarnessState) =>
  proposalId('harness step', known.person, 'harness', earnedBy);

const raiseOf = (
  context: PlanContext,
  state: HarnessState,
  { track, exercise, machine }: At,
  to: number,
  ofWhole: number,
  earned: boolean,
): Raise | null => {
  const from = state.ofBodyWeight === null ? null : Math.round(state.ofBodyWeight * ofWhole);
  if (from !== null && to <= from) return null;
  return {
    track,
    exercise: exercise.id,
    exerciseName: `${exercise.name}, harness`,
    from,
    to,
    unit: machine.unit,
    increment: machine.increment,
    atTheBar: null,
    trueFraction: null,
    effortStep: null,
    shareStep: null,
    cause: from === null ? 'first load' : earned ? 'ramp step' : 'back from less',
    because: earned ? [...state.earnedBy] : [],
    cautions: [],
    needsReason: false,
    proposal: earned ? proposalOf(context, state) : null,
  };
};
