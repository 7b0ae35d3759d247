import type { Day } from '#units/day.ts';
import { isInFlight } from '../machine-on.ts';
import type { PlanContext } from '../plan-context.ts';

export type RoadSide = 'before launch' | 'in flight' | 'after landing';

export const sideOf = ({ known }: Pick<PlanContext, 'known'>, on: Day): RoadSide => {
  if (isInFlight(known, on)) return 'in flight';
  return known.mission === null || on < known.mission.launch ? 'before launch' : 'after landing';
};
