import type { Day } from '#units/day.ts';
import type { Exercise } from '#domain/catalogue.ts';
import { insteadOf, type Instead, type Means } from './substitutes.ts';
import { isInFlight, machinesOn } from './machine-on.ts';
import { isMachineOut, restrictionsOn, type PlanContext } from './plan-context.ts';
import { hurtsTooMuch, saidToBeHere } from './re-made.ts';
import { isBehindGates, isUnderBar, mayCarryBar } from './squat-gates.ts';

/**
 * What a person can do on a day instead of an exercise whose machine is not where they are, as the end of a sentence.
 * Empty where the exercise names nothing, or where a physician forbids the exercise itself: then nothing stands in for it.
 */
export const insteadHere = (context: PlanContext, exercise: Exercise, on: Day): string => {
  if (exercise.substitutes.length === 0 || isForbidden(context, exercise, on)) return '';
  const best = bestInsteadOn(context, exercise, on);
  if (!best) return '; nothing here stands in for it';
  const bound = restrictionsOn(context, best.exercise, on).length > 0;
  return `; instead: ${best.says}${bound ? "; the physician's limit holds for it too" : ''}`;
};

/** The first of what can be done instead of an exercise on a day, or null where nothing can, or where it is forbidden itself. */
export const bestInsteadOn = (context: PlanContext, exercise: Exercise, on: Day): Instead | null =>
  exercise.substitutes.length === 0 || isForbidden(context, exercise, on)
    ? null
    : (insteadWith(context, exercise, meansOn(context, on)).find(
        (each) =>
          !isForbidden(context, each.exercise, on) &&
          !isBehindGate(context, each, on) &&
          !isRoundLimit(context, exercise, each.exercise, on) &&
          !hurtsTooMuch(context, each.exercise, on),
      ) ?? null);

const insteadWith = (context: PlanContext, exercise: Exercise, there: readonly Means[]): readonly Instead[] => {
  const name = [exercise.id, ...there].join('|');
  const found = context.instead.get(name) ?? insteadOf(exercise, there, context.known.house.exercises);
  context.instead.set(name, found);
  return found;
};

/** What there is to train with: machines in service, and on the ground the weight of the body. */
const meansOn = (context: PlanContext, on: Day): readonly Means[] => saidToBeHere(context, on) ?? entered(context, on);

const entered = (context: PlanContext, on: Day): readonly Means[] => [
  ...machinesOn(context.known, on)
    .filter((machine) => !isMachineOut(machine, on))
    .map(({ kind }) => kind),
  'no gear' as const,
  ...(isInFlight(context.known, on) ? [] : (['body weight'] as const)),
];

const isForbidden = (context: PlanContext, exercise: Exercise, on: Day): boolean =>
  restrictionsOn(context, exercise, on).some(({ restriction }) => restriction.limit.kind === 'forbidden');

/** What a physician limits by its name is not gone round by another that the limit does not name. */
const isRoundLimit = (context: PlanContext, exercise: Exercise, { id }: Exercise, on: Day): boolean =>
  id !== exercise.id &&
  restrictionsOn(context, exercise, on).some(({ restriction: { scope } }) => scope.kind === 'exercise');

/** Nobody who has not passed the gate before the bar is sent under one in place of something else. */
const isBehindGate = ({ known }: PlanContext, { exercise, on: means }: Instead, on: Day): boolean =>
  isUnderBar(means) &&
  isBehindGates(known, exercise, { gravity: isInFlight(known, on) ? '0 g' : '1 g' }, on) &&
  !mayCarryBar(known, on);
