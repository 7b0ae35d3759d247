import { addDays, type Day } from '#units/day.ts';
import type { Fact } from '#domain/fact.ts';
import type { PlanContext } from '../plan-context.ts';
import { placeOnRoad } from './place-on-road.ts';
import { sideOf } from './side-of.ts';

/** Days on which the road holds, and the phase that goes on; null where none was in force when it began. */
export interface HoldOfRoad {
  readonly fact: Fact<'road holds'>;
  readonly first: Day;
  readonly last: Day;
  readonly phase: string | null;
  /** Does it end by itself, at launch or landing? */
  readonly endsThere: boolean;
}

export const holdsOfRoad = (context: PlanContext, drawnTo: Day): readonly HoldOfRoad[] =>
  context.calendar.holds
    .filter(({ from }) => from <= drawnTo)
    .map((fact) => {
      const wanted = fact.until === null || fact.until > drawnTo ? drawnTo : fact.until;
      const last = lastOnSide(context, fact.from, wanted);
      return {
        fact,
        first: fact.from,
        last,
        phase: placeOnRoad(context, fact.from)?.phase.name ?? null,
        endsThere: last < wanted,
      };
    });

const lastOnSide = (context: PlanContext, from: Day, until: Day): Day => {
  const side = sideOf(context, from);
  let last = from;
  while (last < until && sideOf(context, addDays(last, 1)) === side) last = addDays(last, 1);
  return last;
};
