import type { Day } from '#units/day.ts';
import type { Change } from '#domain/decision.ts';
import type { Fact } from '#domain/fact.ts';
import type { TrackId } from '#domain/identity.ts';
import type { PlanContext } from './plan-context.ts';

export interface StandingAdjustment {
  readonly fact: Fact<'decided'>;
  readonly track: TrackId;
  readonly change: Change;
  readonly from: Day;
}

/** Adjustments that stand on a day: begun, not past their end, not ended by signature. */
export const adjustmentsOn = (context: PlanContext, on: Day): readonly StandingAdjustment[] => {
  const ended = new Set(
    context.decisions.flatMap(({ decision }) => (decision.kind === 'end adjustment' ? [decision.adjustment] : [])),
  );
  return context.decisions.flatMap((fact) => {
    const { decision } = fact;
    if (decision.kind !== 'adjust' || ended.has(fact.id)) return [];
    if (decision.from > on || (decision.until !== null && on > decision.until)) return [];
    return [{ fact, track: decision.track, change: decision.change, from: decision.from }];
  });
};
