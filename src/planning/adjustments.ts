import type { Day } from '#units/day.ts';
import type { Change } from '#domain/decision.ts';
import type { Fact } from '#domain/fact.ts';
import type { TrackId } from '#domain/identity.ts';

export interface StandingAdjustment {
  readonly fact: Fact<'decided'>;
  readonly track: TrackId;
  readonly change: Change;
  readonly from: Day;
  readonly until: Day | null;
}

/** Adjustments that were not ended by signature, of all days. */
export const adjustmentsOf = (decisions: readonly Fact<'decided'>[]): readonly StandingAdjustment[] => {
  const ended = new Set(
    decisions.flatMap(({ decision }) => (decision.kind === 'end adjustment' ? [decision.adjustment] : [])),
  );
  return decisions.flatMap((fact) => {
    const { decision } = fact;
    if (decision.kind !== 'adjust' || ended.has(fact.id)) return [];
    const { track, change, from, until } = decision;
    return [{ fact, track, change, from, until }];
  });
};

/** Those that stand on a day: begun, and not past their end. */
export const adjustmentsOn = (
  { adjustments }: { readonly adjustments: readonly StandingAdjustment[] },
  on: Day,
): readonly StandingAdjustment[] =>
  adjustments.filter(({ from, until }) => from <= on && (until === null || on <= until));
