import { addDays, flightDay, type Day } from '#units/day.ts';
import { roundedLoad } from '#units/rounding.ts';
import { showSets } from '#domain/asked-sets.ts';
import type { Exercise, Machine } from '#domain/catalogue.ts';
import type { CrossingDetail, CrossingLift } from '#domain/crossing.ts';
import type { ReplacementPolicy } from '#domain/decision.ts';
import type { Estimate } from '#domain/estimate.ts';
import type { ExerciseId } from '#domain/identity.ts';
import type { Known } from '#domain/known.ts';
import { isLiftItem, type LiftItem, type PhaseName, type ProgrammeVersion } from '#domain/programme.ts';
import { derive } from './derive.ts';
import { FLIGHT_SET } from './flight-set.ts';
import { frozenCapacity } from './frozen-capacity.ts';
import { levelLoads } from './level-loads.ts';
import { limitIncrements, limitsOn } from './limits.ts';
import {
  machineAboard,
  machineSteps,
  massInFlight,
  planContext,
  programmeOn,
  replacementPolicy,
  shareByPolicy,
  sharesOf,
  type MachineSteps,
  type PlanContext,
} from './plan-context.ts';
import { policyOptions } from './policy-options.ts';

/** All that one lift's crossing is made from, on the day it is looked at. */
export interface CrossingGround {
  readonly context: PlanContext;
  readonly exercise: Exercise;
  readonly machine: Machine;
  readonly steps: MachineSteps;
  readonly item: LiftItem;
  readonly fraction: number;
  readonly estimate: Estimate;
  readonly mass: number;
  readonly massSays: string;
  readonly on: Day;
}

export interface CrossedSet {
  readonly bar: number;
  readonly added: number;
  readonly target: number;
  /** Whole increments; null under the machine's least. */
  readonly increments: number | null;
  readonly kilograms: number;
  readonly cappedOff: number;
  readonly trueFraction: number;
  readonly shoulderExcess: number;
  readonly row: Float64Array;
}

/** Every lift of the person's programme that has a crossing, or runs on effort. */
export const crossingLifts = (known: Known, today: Day): readonly CrossingLift[] => {
  const context = planContext(known);
  const programme = programmeToShow(context, today);
  const exercises = [...new Set(programme ? liftsInFlight(programme).map((item) => item.exercise) : [])];
  return exercises.flatMap((id): readonly CrossingLift[] => {
    const exercise = known.house.exercises.get(id);
    if (!exercise) return [];
    const ground = groundOf(context, id, today);
    if (!ground) return [{ exercise: id, name: exercise.name, capacity: null, addedBack: null, ceilingLeft: null }];
    const full = crossSet(ground, 1, 1, shareInUse(ground));
    return [
      {
        exercise: id,
        name: exercise.name,
        capacity: ground.estimate.median,
        addedBack: full.added,
        ceilingLeft: ground.steps.ceiling - full.target,
      },
    ];
  });
};

/** The crossing of one lift: the sum, the limits, the levels, the policies and the road to the full load. */
export const crossingOf = (
  known: Known,
  id: ExerciseId,
  today: Day,
  policy?: ReplacementPolicy,
): CrossingDetail | null => {
  const context = planContext(known);
  const ground = groundOf(context, id, today);
  if (!ground) return null;
  const { policies } = known.house;
  const lift = derive(known, today, today).lifts.find((each) => each.exercise === id);
  const [effortStep, shareStep] = [lift?.effortStep ?? 0, lift?.shareStep ?? 0];
  const signed = replacementPolicy(context, ground.exercise);
  const share = shareByPolicy(policy ?? signed, sharesOf(context, ground.exercise));
  const [effort, shareRamp] = [policies.effortSteps[effortStep] ?? 1, policies.shareSteps[shareStep] ?? 1];
  const set = crossSet(ground, effort, shareRamp, share);
  const limits = shownLimits(ground, set);
  return {
    exercise: id,
    name: ground.exercise.name,
    prescription: `${showSets(ground.item.sets)} at ${Math.round(ground.fraction * 100)} % of ${ground.estimate.of === 1 ? 'the one-repetition maximum' : `the ${ground.estimate.of}-repetition maximum`}`,
    shareModel: ground.exercise.shareModel,
    bodyMass: { kilograms: ground.mass, says: ground.massSays },
    workShare: sharesOf(context, ground.exercise).work,
    effort,
    share: shareRamp,
    effortStep,
    shareStep,
    steps: policies.effortSteps.length,
    bar: set.bar,
    added: set.added,
    target: set.target,
    load: set.increments === null ? null : { text: loadText(ground, set.increments), kilograms: set.kilograms },
    cappedOff: set.cappedOff,
    cappedOffSays: cappedSays(limits, set),
    trueFraction: set.trueFraction,
    limits,
    levels: levelLoads(ground, set),
    shoulderExcess: ground.exercise.carriedAt === 'shoulders' ? set.shoulderExcess : null,
    policies: policyOptions(ground),
    signedPolicy: signed,
    workings: [
      {
        reckoning: FLIGHT_SET.name,
        item: ground.item.id,
        given: givensSpelled(ground, set),
        cells: FLIGHT_SET.spell(set.row, 0),
      },
    ],
    road: roadUp(ground, share),
  };
};

/** Every step of the ramps, crossed alike. */
const roadUp = (ground: CrossingGround, share: number): CrossingDetail['road'] => {
  const { policies } = ground.context.known.house;
  return policies.effortSteps.map((effort, place) => {
    const shareStep = policies.shareSteps[place] ?? 1;
    const rung = crossSet(ground, effort, shareStep, share);
    return {
      effort,
      share: shareStep,
      bar: rung.bar,
      added: rung.added,
      target: rung.target,
      load: rung.increments === null ? 'under the least' : loadText(ground, rung.increments),
      trueFraction: rung.trueFraction,
    };
  });
};

/** The programme that the person follows, else the first that the house has: a crossing can be looked at before. */
const programmeToShow = (context: PlanContext, today: Day): ProgrammeVersion | null =>
  programmeOn(context, dayInFlight(context, today)) ?? [...context.known.house.programmes.values()].at(0) ?? null;

const IN_FLIGHT: readonly PhaseName[] = ['main flight', 'last flight weeks', 'first flight weeks'];

/** What is lifted in flight: in its main phase or, where a programme has none, in the one that comes nearest to it. */
const liftsInFlight = ({ phases }: ProgrammeVersion): readonly LiftItem[] => {
  const flown = IN_FLIGHT.flatMap((name) => phases.filter((phase) => phase.name === name)).at(0);
  return flown?.sessions.flatMap((session) => session.items.filter(isLiftItem)) ?? [];
};

const dayInFlight = ({ known }: PlanContext, today: Day): Day =>
  known.mission
    ? (Math.max(today, addDays(known.mission.launch, known.house.policies.firstResistiveFlightDay - 1)) as Day)
    : today;

const groundOf = (context: PlanContext, id: ExerciseId, today: Day): CrossingGround | null => {
  const { known } = context;
  const exercise = known.house.exercises.get(id);
  const machine = machineAboard(known, 'resistive machine');
  const programme = programmeToShow(context, today);
  const item = programme && liftsInFlight(programme).find((each) => each.exercise === id && each.leading);
  if (!exercise || !machine || !item || !known.mission) return null;
  const fraction =
    item.basis.kind === 'fraction'
      ? item.basis.of
      : item.basis.kind === 'from last' && item.basis.start !== 'effort'
        ? item.basis.start
        : null;
  const on = dayInFlight(context, today);
  const frozen = frozenCapacity(context, exercise, machine, on);
  const reading = frozen?.reading ?? context.capacity.on(exercise, machine, on);
  const mass = massInFlight(context, on);
  if (fraction === null || reading.kind !== 'estimate' || !mass) return null;
  const steps = machineSteps(known, machine, exercise, frozen?.cause.day ?? on);
  return {
    context,
    exercise,
    machine,
    steps,
    item,
    fraction,
    estimate: reading.estimate,
    mass: mass.kilograms,
    massSays: mass.says,
    on,
  };
};

const shareInUse = (ground: CrossingGround): number =>
  shareByPolicy(replacementPolicy(ground.context, ground.exercise), sharesOf(ground.context, ground.exercise));

/** Crosses one work set at given steps and share, with every limit of the day but the fortnight's shoulder rule off its days. */
export const crossSet = (ground: CrossingGround, effort: number, shareStep: number, share: number): CrossedSet => {
  const { context, exercise, machine, steps, on } = ground;
  const row = new Float64Array(FLIGHT_SET.width);
  row.set([
    effort,
    ground.fraction,
    ground.estimate.median,
    shareStep,
    share,
    sharesOf(context, exercise).work,
    ground.mass,
    0,
  ]);
  FLIGHT_SET.fill(row, 0);
  const target = row[FLIGHT_SET.place('target')] as number;
  const limits = limitsOn(context, exercise, machine, steps, on).map((limit) => limit.kilograms);
  const chosen = roundedLoad(target, limits, steps.step, steps.least);
  const kilograms = (chosen ?? 0) * steps.step;
  row[FLIGHT_SET.place('load')] = kilograms;
  FLIGHT_SET.fill(row, 0);
  const cell = (place: number): number => row[place] as number;
  return {
    bar: cell(FLIGHT_SET.place('bar')),
    added: cell(FLIGHT_SET.place('added')),
    target,
    increments: chosen === null ? null : chosen * steps.perStep,
    kilograms,
    cappedOff: cell(FLIGHT_SET.place('capped off')),
    trueFraction: cell(FLIGHT_SET.place('true fraction')),
    shoulderExcess: cell(FLIGHT_SET.place('shoulder excess')),
    row,
  };
};

const shownLimits = (ground: CrossingGround, set: CrossedSet): CrossingDetail['limits'] => {
  const limits = limitsOn(ground.context, ground.exercise, ground.machine, ground.steps, ground.on);
  const tightest = Math.min(...limits.map((limit) => limit.kilograms));
  return limits.map((limit) => ({
    kind: limit.kind,
    increments: limitIncrements(limit, ground.steps),
    binds: limit.kilograms === tightest && set.target > limit.kilograms,
    says: limit.says,
  }));
};

const cappedSays = (limits: CrossingDetail['limits'], set: CrossedSet): string | null => {
  const binding = limits.find((limit) => limit.binds);
  return binding
    ? `${set.cappedOff.toFixed(1)} kg capped off by ${binding.says}; feet and ankles are made up by heel raises and running, the rest by more repetitions or one leg at a time.`
    : null;
};

export const loadText = ({ machine }: CrossingGround, increments: number): string =>
  `${Number((increments * Number(machine.increment)).toFixed(6))} ${machine.unit}`;

const givensSpelled = (ground: CrossingGround, set: CrossedSet) =>
  FLIGHT_SET.givens.map((name, place) => ({
    name,
    value: set.row[place] as number,
    from:
      name === 'maximum'
        ? ({
            kind: 'estimate',
            exercise: ground.exercise.name,
            facts: ground.estimate.facts,
            says: ground.estimate.basis,
          } as const)
        : name === 'share' || name === 'work share'
          ? ({ kind: 'model', formula: 'body/work-share', says: 'planar segment model, de Leva 1996' } as const)
          : ({
              kind: 'policy',
              says:
                name === 'body mass'
                  ? ground.massSays
                  : `flight day ${flightDay(ground.context.known.mission?.launch ?? ground.on, ground.on)}`,
            } as const),
  }));
