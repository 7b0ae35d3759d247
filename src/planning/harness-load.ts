import { fraction, kilograms, machineLoad } from '#units/quantity.ts';
import { flightDay, type Day } from '#units/day.ts';
import { stepsNearest, stepsNotOver } from '#units/rounding.ts';
import type { HarnessPull } from '#domain/card.ts';
import type { Exercise, Machine } from '#domain/catalogue.ts';
import { idOf, type TrackId } from '#domain/identity.ts';
import type { Raise } from '#domain/raise.ts';
import { HARNESS_PULL } from './bout-reckonings.ts';
import { fillReckoning, type FilledReckoning } from './filled-reckoning.ts';
import { limitIncrements, limitsOn } from './limits.ts';
import { isOverOneSignature, tooMuchAtOnce } from './piece-raise.ts';
import { machineSteps, massInFlight, type MachineSteps, type PlanContext } from './plan-context.ts';
import { harnessState, type HarnessState, type Progress } from './progress.ts';
import { proposalId } from './proposal-id.ts';
import { isAnyHeld } from './why-piece-held.ts';

export type Harnessed =
  | {
      readonly kind: 'harness';
      readonly pull: HarnessPull;
      readonly raise: Raise | null;
      readonly reckonings: readonly FilledReckoning[];
      readonly says: readonly string[];
    }
  | { readonly kind: 'left out'; readonly says: string; readonly gap: boolean };

export interface HarnessAt {
  readonly day: Day;
  readonly track: TrackId;
  readonly exercise: Exercise;
  readonly machine: Machine;
  /** Why nothing may go up today: a hold, discomfort, an easier week, a line for a single day; or null. */
  readonly held: string | null;
}

/** What to set on the harness of a treadmill on a day: the load in force, one step more where sessions have earned it. */
export const harnessOn = (context: PlanContext, progress: Progress, at: HarnessAt): Harnessed => {
  const mass = massInFlight(context, at.day);
  if (!mass)
    return {
      kind: 'left out',
      says: 'No body mass before launch is known: weigh, or fix one by signature.',
      gap: true,
    };
  const state = harnessState(progress, at.machine.id);
  const step = shareOn(context, state, at);
  const steps = machineSteps(context.known, at.machine, at.exercise, at.day);
  const chosen = chosenPull(context, state, at, { steps, mass: mass.kilograms, share: step.share });
  if (chosen.kind === 'left out') return chosen;
  const { increments } = chosen;
  const set = increments * steps.increment;
  const reckoned = fillReckoning(HARNESS_PULL, {
    'share in force': [fraction(step.share), { kind: 'policy', says: step.says }],
    'body mass': [kilograms(mass.kilograms), { kind: 'fact', fact: mass.fact, says: mass.says }],
    'set pull': [machineLoad(set), { kind: 'rounding', says: roundingOf(at.machine) }],
  });
  const { unit, increment } = at.machine;
  return {
    kind: 'harness',
    pull: { increments, unit, increment, ofBodyWeight: set / mass.kilograms, share: step.share },
    raise: raiseOf(context, state, at, increments, step.earned),
    reckonings: reckoned.kind === 'filled' ? [reckoned] : [],
    says: chosen.says,
  };
};

const roundingOf = ({ name }: Machine): string =>
  `pull to the nearest step, every limit down, the least of them: ${name}`;

interface Step {
  readonly share: number;
  readonly earned: boolean;
  readonly says: string;
}

/** Share of body weight in force, and whether a step more has been earned. */
const shareOn = (context: PlanContext, state: HarnessState, at: HarnessAt): Step => {
  const { harnessStart, harnessStep, harnessMost } = context.known.house.policies;
  const now = Math.min(state.share ?? harnessStart, harnessMost);
  const earned = now < harnessMost && isStepEarned(context, state, at);
  const share = earned ? Math.min(harnessMost, now + harnessStep) : now;
  const percent = (of: number): string => `${Number((of * 100).toFixed(1))} %`;
  return {
    share,
    earned,
    says: `where the ramp stands: from ${percent(harnessStart)} in steps of ${percent(harnessStep)} to ${percent(harnessMost)} of body weight`,
  };
};

const isStepEarned = (context: PlanContext, state: HarnessState, at: HarnessAt): boolean => {
  const { sessionsPerStep, daysBetweenRaises } = context.known.house.policies;
  return (
    at.held === null &&
    !state.painHolds &&
    state.earnedBy.length >= sessionsPerStep &&
    state.lastStepOn !== null &&
    at.day - state.lastStepOn >= daysBetweenRaises &&
    isSettled(context, at.day) &&
    !isAnyHeld(context, at.day, state.tracks) &&
    !context.declined.has(proposalOf(context, state, at))
  );
};

/** In the first two weeks the load stays where it starts: strap split and skin come first (common practice). */
const SETTLING_DAYS = 14;
const isSettled = ({ known }: PlanContext, on: Day): boolean =>
  known.mission !== null && flightDay(known.mission.launch, on) > SETTLING_DAYS;

const proposalOf = ({ known }: PlanContext, { earnedBy }: HarnessState, { machine }: HarnessAt) =>
  proposalId('harness step', known.person, machine.id, earnedBy);

interface Asked {
  readonly steps: MachineSteps;
  readonly mass: number;
  readonly share: number;
}

type Chosen =
  | { readonly kind: 'pull'; readonly increments: number; readonly says: readonly string[] }
  | Extract<Harnessed, { readonly kind: 'left out' }>;

/** The share to the nearest step, every limit down, the least of them. */
const chosenPull = (
  context: PlanContext,
  state: HarnessState,
  at: HarnessAt,
  { steps, mass, share }: Asked,
): Chosen => {
  const { harnessMost } = context.known.house.policies;
  const asked = stepsNearest(share * mass, steps.step) * steps.perStep;
  const limits = [
    ...limitsOn(context, at.exercise, at.machine, steps, at.day).map((limit) => ({
      kind: limit.kind,
      says: limit.says,
      increments: limitIncrements(limit, steps),
    })),
    {
      kind: 'ceiling',
      says: 'the most of body weight that a harness is set to',
      increments: stepsNotOver(harnessMost * mass, steps.step) * steps.perStep,
    },
    ...(at.held === null || state.inUse === null
      ? []
      : [{ kind: 'signed load', says: at.held, increments: state.inUse }]),
  ];
  const tightest = limits.reduce((least, limit) => (limit.increments < least.increments ? limit : least));
  const increments = Math.min(asked, tightest.increments);
  if (increments * steps.increment >= steps.least - ROUNDING)
    return { kind: 'pull', increments, says: increments < asked ? [`harness held by ${tightest.says}`] : [] };
  return tightest.kind === 'restriction'
    ? { kind: 'left out', says: 'left out: limited by the physician', gap: false }
    : { kind: 'left out', says: `The harness pulls at least ${at.machine.least} ${at.machine.unit}.`, gap: true };
};

/** Loads are sums of binary fractions. */
const ROUNDING = 1e-9;

/** One name for what pulls a person to a treadmill: several tracks are done in it, and it goes up for all of them at once. */
export const trackOfHarness = ({ id }: Machine): TrackId => idOf<'track'>(`harness of ${id}`);

const raiseOf = (
  context: PlanContext,
  state: HarnessState,
  at: HarnessAt,
  to: number,
  earned: boolean,
): Raise | null => {
  const { exercise, machine } = at;
  const from = state.inUse;
  if (from !== null && to <= from) return null;
  const tooMuch = from !== null && !earned && isOverOneSignature(context, from, to);
  return {
    track: trackOfHarness(machine),
    exercise: exercise.id,
    exerciseName: `Harness pull, ${machine.name.toLowerCase()}`,
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
    cautions: tooMuch ? [tooMuchAtOnce(context)] : [],
    needsReason: tooMuch,
    proposal: earned ? proposalOf(context, state, at) : null,
  };
};
