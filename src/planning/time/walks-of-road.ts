import type { Day } from '#units/day.ts';
import type { Fact } from '#domain/fact.ts';
import { isInFlight } from '../machine-on.ts';
import type { PlanContext } from '../plan-context.ts';

/** A space walk, and whether hands and shoulders were looked at after it. */
export interface WalkOfRoad {
  readonly fact: Fact<'space walk'>;
  readonly state: 'ahead' | 'to be looked at' | 'not sound' | 'sound' | 'not in flight';
  readonly look: Fact<'looked at'> | null;
}

export const walksOfRoad = (context: PlanContext, today: Day): readonly WalkOfRoad[] => {
  const { walks, looks } = context.calendar;
  return walks.map((fact, place) => {
    const next = walks[place + 1]?.day ?? Infinity;
    const look = looks.findLast(({ day }) => day >= fact.day && day < next && day <= today) ?? null;
    return { fact, look, state: stateOf(context, fact, look, today) };
  });
};

const stateOf = (
  { known }: PlanContext,
  { day }: Fact<'space walk'>,
  look: Fact<'looked at'> | null,
  today: Day,
): WalkOfRoad['state'] => {
  if (!isInFlight(known, day)) return 'not in flight';
  if (look) return look.passed ? 'sound' : 'not sound';
  return day >= today ? 'ahead' : 'to be looked at';
};
