import type { Day } from '#units/day.ts';
import { showEntered } from '#units/entered.ts';
import type { Exercise } from '#domain/catalogue.ts';
import type { RestrictionLimit } from '#domain/restriction.ts';
import { restrictionsOn, type PlanContext } from './plan-context.ts';

/** Where breath must not be held nobody works harder than this; our own reading of "no straining". */
export const LOWEST_STRAIN = 7;

/** The highest effort that the physician allows for an exercise on a day, or null where there is no such limit. */
export const effortCap = (context: PlanContext, exercise: Exercise, on: Day): number | null => {
  const caps = restrictionsOn(context, exercise, on).flatMap(({ restriction: { limit } }) =>
    limit.kind === 'RPE at most' ? [limit.rpe] : limit.kind === 'no straining' ? [LOWEST_STRAIN] : [],
  );
  return caps.length > 0 ? Math.min(...caps) : null;
};

export const capped = ([low, high]: readonly [number, number], cap: number | null): readonly [number, number] =>
  cap === null ? [low, high] : [Math.min(low, cap), Math.min(high, cap)];

/** What the physician's limits say on a card: what binds, never why. */
export const restrictedSays = (context: PlanContext, exercise: Exercise, on: Day): readonly string[] =>
  restrictionsOn(context, exercise, on).map(({ restriction: { limit } }) => {
    if (limit.kind === 'RPE at most') return `limited by the physician: effort at most RPE ${limit.rpe}`;
    return limit.kind === 'no straining'
      ? 'limited by the physician: no straining, breathe throughout'
      : 'limited by the physician';
  });

/** Where whoever is there chooses the load, the card has to say how much the physician allows. */
export const loadSays = ({ load }: Extract<RestrictionLimit, { readonly kind: 'load at most' }>): string =>
  `limited by the physician: at most ${showEntered(load)}`;
