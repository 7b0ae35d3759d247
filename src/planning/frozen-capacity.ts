import type { Day } from '#units/day.ts';
import { capacityMachine, type Exercise, type Machine } from '#domain/catalogue.ts';
import type { CapacityReading } from '#assessing/capacity.ts';
import { testsOf } from '#assessing/test-evidence.ts';
import { dayOfAnchor } from '#domain/mission-day.ts';
import type { PlanContext } from './plan-context.ts';

/** Why a capacity is read on a day: the lift's first day, a new test, a signed re-base. */
export interface CapacityCause {
  readonly day: Day;
  readonly kind: 'first load' | 'new test' | 're-base';
}

/**
 * The capacity that loads of an exercise are made from on a day. It is read at a cause and stands until the next: an
 * estimate that moves by itself changes no load.
 */
export const frozenCapacity = (
  context: PlanContext,
  exercise: Exercise,
  machine: Machine,
  on: Day,
): { readonly reading: CapacityReading; readonly cause: CapacityCause } | null => {
  const cause = causesOf(context, exercise, machine).findLast((each) => each.day <= on);
  return cause ? { reading: context.capacity.on(exercise, machine, cause.day), cause } : null;
};

const causesOf = (context: PlanContext, exercise: Exercise, machine: Machine): readonly CapacityCause[] => {
  const name = `${exercise.id} ${machine.gravity} ${capacityMachine(machine)}`;
  const kept = context.causes.get(name);
  if (kept) return kept;
  const made = causes(context, exercise, machine);
  context.causes.set(name, made);
  return made;
};

const causes = (context: PlanContext, exercise: Exercise, machine: Machine): readonly CapacityCause[] => {
  const first = firstDay(context, machine);
  if (first === null) return [];
  const key = { exercise: exercise.id, gravity: machine.gravity, machine: capacityMachine(machine) } as const;
  const tests = testsOf(context.known, exercise, key).map((test) => ({ day: test.day, kind: 'new test' as const }));
  const reBases = context.decisions.flatMap(({ decision }) =>
    decision.kind === 're-base' && decision.exercise === exercise.id
      ? [{ day: decision.from, kind: 're-base' as const }]
      : [],
  );
  return [
    { day: first, kind: 'first load' as const },
    ...[...tests, ...reBases].filter((each) => each.day > first),
  ].toSorted((a, b) => a.day - b.day);
};

/** The day on which the first programme takes hold where the machine stands: in flight not before launch. */
const firstDay = ({ known, decisions }: PlanContext, { gravity }: Machine): Day | null => {
  if (!known.mission) return null;
  const follows = decisions.flatMap(({ decision }) =>
    decision.kind === 'follow' ? [dayOfAnchor(decision.from, known.mission)] : [],
  );
  const days = follows.filter((day) => day !== null);
  if (days.length === 0) return null;
  const first = Math.min(...days) as Day;
  return gravity === '0 g' ? (Math.max(known.mission.launch, first) as Day) : first;
};
