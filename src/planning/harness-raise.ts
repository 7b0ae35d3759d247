import type { Day } from '#units/day.ts';
import type { Machine } from '#domain/catalogue.ts';
import type { Raise } from '#domain/raise.ts';
import { machineSteps, massInFlight, type PlanContext } from './plan-context.ts';
import { harnessState, type Progress } from './progress.ts';

/** Does a signed raise concern what pulls a person down to a treadmill? */
export const isOfHarness = ({ known }: PlanContext, { exercise }: Raise): boolean => {
  const pattern = known.house.exercises.get(exercise)?.pattern;
  return pattern === 'running' || pattern === 'walking';
};

/** A signed step of the harness holds only while the sessions that earned it stand. */
export const isHarnessStepEarned = (context: PlanContext, progress: Progress, raise: Raise): boolean => {
  const machine = treadmillOf(context, raise);
  if (!machine) return false;
  const { earnedBy, painHolds } = harnessState(progress, machine.id);
  return !painHolds && earnedBy.length >= context.known.house.policies.sessionsPerStep;
};

export const takeHarnessRaise = (context: PlanContext, progress: Progress, raise: Raise, on: Day): void => {
  const machine = treadmillOf(context, raise);
  const exercise = context.known.house.exercises.get(raise.exercise);
  const mass = massInFlight(context, on);
  if (!machine || !exercise || !mass) return;
  const state = harnessState(progress, machine.id);
  state.ofBodyWeight = (raise.to * machineSteps(context.known, machine, exercise, on).increment) / mass.kilograms;
  state.earnedBy = [];
  state.lastStepOn = on;
};

const treadmillOf = ({ known }: PlanContext, { unit, increment }: Raise): Machine | null =>
  [...known.house.machines.values()].find(
    (machine) =>
      machine.kind === 'treadmill' &&
      machine.gravity === '0 g' &&
      machine.site === known.mission?.site &&
      machine.unit === unit &&
      machine.increment === increment,
  ) ?? null;
