import { addDays, flightDay, type Day } from '#units/day.ts';
import { kilogramsOf, numberOf, showEntered } from '#units/entered.ts';
import { kilogramsPer } from '#units/mass.ts';
import { stepsNotOver } from '#units/rounding.ts';
import { calibrationFactor } from '#assessing/bar-equivalent.ts';
import { issuedCards, workSetResults } from '#assessing/card-evidence.ts';
import { liftsOf, type LoadLimit } from '#domain/card.ts';
import type { Exercise, Machine } from '#domain/catalogue.ts';
import type { SetResult } from '#domain/fact.ts';
import { ofKind, type Known } from '#domain/known.ts';
import { gateLimit, isBehindGates } from './squat-gates.ts';
import { restrictionsOn, sharesOf, type MachineSteps, type PlanContext } from './plan-context.ts';

/** A limit before it is brought down to the machine's steps [delivered kg]. */
export interface Limit {
  readonly kind: LoadLimit['kind'];
  readonly kilograms: number;
  readonly says: string;
}

export type ShoulderEvidence =
  { readonly kind: 'heaviest'; readonly kilograms: number; readonly says: string } | { readonly kind: 'none' };

/** The heaviest bar carried on the shoulders in the last weeks before launch, or the one that the specialist typed. */
export const shoulderEvidence = (context: PlanContext): ShoulderEvidence => {
  const { known } = context;
  const mission = known.mission;
  if (!mission) return { kind: 'none' };
  const from = addDays(mission.launch, -known.house.policies.shoulderEvidenceDaysBeforeLaunch);
  const tests = ofKind(known, 'lifted').filter(
    (fact) =>
      fact.day >= from &&
      fact.day <= mission.launch &&
      fact.repetitions > 0 &&
      known.house.exercises.get(fact.exercise)?.carriedAt === 'shoulders',
  );
  const typed = ofKind(known, 'carried').filter((fact) => fact.day <= mission.launch);
  const trained = trainedOnShoulders(known, from, mission.launch);
  const bars = [...tests, ...typed, ...trained].map(({ load }) => ({
    kilograms: kilogramsOf(load),
    says: showEntered(load),
  }));
  const heaviest = bars.reduce<(typeof bars)[number] | null>(
    (most, bar) => (most && most.kilograms >= bar.kilograms ? most : bar),
    null,
  );
  return heaviest ? { kind: 'heaviest', ...heaviest } : { kind: 'none' };
};

/** Completed sets of cards under a bar in 1 g, of lifts carried on the shoulders. */
const trainedOnShoulders = (known: Known, from: Day, until: Day): readonly SetResult[] => {
  const cards = issuedCards(known);
  return ofKind(known, 'trained').flatMap((trained) => {
    const card = cards.get(trained.card);
    if (!card || trained.day < from || trained.day > until) return [];
    return liftsOf(card.card)
      .filter((item) => item.carriedAtShoulders && known.house.machines.get(item.machine)?.gravity === '1 g')
      .flatMap((item) => workSetResults(card, item, trained.sets))
      .map(({ result }) => result)
      .filter((result) => result.repetitions > 0);
  });
};

/** Does the shoulder rule bind this exercise on this day? */
export const isShoulderRuleDay = (context: PlanContext, exercise: Exercise, on: Day): boolean => {
  const { mission, house } = context.known;
  if (!mission || exercise.carriedAt !== 'shoulders') return false;
  const day = flightDay(mission.launch, on);
  return day >= 1 && day <= house.policies.shoulderRuleFlightDays;
};

/** Every limit on a load of an exercise on a day, apart from what was signed. */
export const limitsOn = (
  context: PlanContext,
  exercise: Exercise,
  machine: Machine,
  steps: MachineSteps,
  on: Day,
): readonly Limit[] => [
  { kind: 'ceiling', kilograms: steps.ceiling, says: `the machine's ceiling of ${machine.ceiling} ${machine.unit}` },
  ...machineLimits(context, exercise, machine, on),
  ...shoulderLimits(context, exercise, on),
  ...restrictionLimits(context, exercise, machine, on),
  ...gateLimits(context, exercise, machine, steps, on),
];

const gateLimits = (
  { known }: PlanContext,
  exercise: Exercise,
  machine: Machine,
  { least }: MachineSteps,
  on: Day,
): readonly Limit[] => (isBehindGates(known, exercise, machine, on) ? gateLimit(known, on, least) : []);

const machineLimits = (context: PlanContext, exercise: Exercise, machine: Machine, on: Day): readonly Limit[] => {
  const factor = kilogramsPer(machine.unit) * calibrationFactor(context.known, machine.id, on);
  return machine.limits
    .filter((limit) => limit.exercise === exercise.id)
    .map((limit) => ({
      kind: 'machine limit' as const,
      kilograms: numberOf({ text: limit.most, unit: machine.unit }) * factor,
      says: `the machine's limit for this exercise${limit.attachment ? ` with the ${limit.attachment}` : ''}, ${limit.most} ${machine.unit}`,
    }));
};

const shoulderLimits = (context: PlanContext, exercise: Exercise, on: Day): readonly Limit[] => {
  if (exercise.carriedAt !== 'shoulders') return [];
  const signed = context.decisions.findLast(
    ({ decision }) => decision.kind === 'limit shoulders' && decision.from <= on,
  );
  const own: readonly Limit[] =
    signed?.decision.kind === 'limit shoulders'
      ? [
          {
            kind: 'shoulder limit',
            kilograms: kilogramsOf(signed.decision.load),
            says: `the signed limit of this person's shoulders, ${showEntered(signed.decision.load)}`,
          },
        ]
      : [];
  const evidence = shoulderEvidence(context);
  if (!isShoulderRuleDay(context, exercise, on) || evidence.kind === 'none') return own;
  return [
    ...own,
    {
      kind: 'shoulder rule',
      kilograms: evidence.kilograms,
      says: `the shoulder rule of the first ${context.known.house.policies.shoulderRuleFlightDays} flight days: the heaviest bar carried before launch, ${evidence.says}`,
    },
  ];
};

const restrictionLimits = (context: PlanContext, exercise: Exercise, machine: Machine, on: Day): readonly Limit[] =>
  restrictionsOn(context, exercise, on).flatMap(({ restriction: { limit } }) => {
    const says = "the physician's restriction";
    if (limit.kind === 'load at most')
      return [{ kind: 'restriction' as const, kilograms: kilogramsOf(limit.load), says }];
    if (limit.kind !== 'fraction at most') return [];
    const kilograms = restrictedToFraction(context, exercise, machine, limit.of, on);
    return [{ kind: 'restriction' as const, kilograms, says }];
  });

/** A fraction of the last capacity before flight, in bar-equivalent, as a machine load. Without a capacity: nothing at all. */
const restrictedToFraction = (
  context: PlanContext,
  exercise: Exercise,
  machine: Machine,
  of: number,
  on: Day,
): number => {
  const { known, capacity } = context;
  const launch = known.mission?.launch;
  if (launch === undefined) return 0;
  if (machine.gravity === '1 g') {
    const onGround = capacity.on(exercise, machine, Math.min(launch, on) as Day);
    return onGround.kind === 'estimate' ? of * onGround.estimate.median : 0;
  }
  const reading = capacity.on(exercise, machine, launch);
  const mass = massBeforeLaunch(context);
  return reading.kind === 'estimate' ? of * reading.estimate.median + sharesOf(context, exercise).work * mass : 0;
};

const massBeforeLaunch = (context: PlanContext): number => {
  const launch = context.known.mission?.launch;
  const masses = ofKind(context.known, 'measured').filter(
    (fact) => fact.what === 'body mass' && launch !== undefined && fact.day <= launch,
  );
  const newest = masses.reduce<(typeof masses)[number] | null>(
    (last, fact) => (last && last.day > fact.day ? last : fact),
    null,
  );
  return newest?.what === 'body mass' ? kilogramsOf(newest.value) : 0;
};

/** Limits in whole increments, brought down to rounding steps. */
export const limitIncrements = (limit: Limit, steps: MachineSteps): number =>
  stepsNotOver(limit.kilograms, steps.step) * steps.perStep;
