import { mostOf } from '#domain/asked-sets.ts';
import type { LiftItem } from '#domain/programme.ts';

/** The repetitions that the load of an item has to allow: the most that any set at the full load asks for. */
export const plannedRepetitions = ({ sets }: LiftItem): number => {
  const full = sets.filter(({ loadBy }) => (loadBy ?? 1) === 1);
  return full.length > 0 ? Math.max(...full.map(mostOf)) : 1;
};
