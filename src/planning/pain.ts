import type { Exercise } from '#domain/catalogue.ts';
import type { Fact } from '#domain/fact.ts';
import type { ItemId } from '#domain/identity.ts';
import type { Policies } from '#domain/policies.ts';

/** What discomfort asks of a load. One rule everywhere; common practice, the physician may set other limits. */
export type PainBand = 'go on' | 'hold' | 'stop' | 'end the session';

/** A rise of so many points by next morning counts as the next band. */
const RISE_OVER_NIGHT = 2;

export const painBand = (score: number, policies: Policies): PainBand => {
  if (score >= policies.discomfortEndsSession) return 'end the session';
  if (score >= policies.discomfortStops) return 'stop';
  return score >= policies.discomfortHolds ? 'hold' : 'go on';
};

/** Worst discomfort of a lift in a session: named for its item, or at a site that the lift loads. */
export const painOf = (
  hurts: readonly Fact<'hurt'>[],
  item: ItemId | null,
  exercise: Pick<Exercise, 'loads'>,
  policies: Policies,
): { readonly score: number; readonly band: PainBand; readonly facts: readonly Fact<'hurt'>[] } => {
  const felt = hurts.filter(
    (fact) => (item !== null && fact.item === item) || (fact.item === null && exercise.loads.includes(fact.site)),
  );
  const worst = (when: 'during' | 'next morning'): number =>
    Math.max(0, ...felt.filter((fact) => fact.when === when).map((fact) => fact.score));
  const [during, morning] = [worst('during'), worst('next morning')];
  const score = Math.max(during, morning);
  const band = painBand(score, policies);
  return { score, band: morning - during >= RISE_OVER_NIGHT ? nextBand(band) : band, facts: felt };
};

const nextBand = (band: PainBand): PainBand =>
  band === 'go on' ? 'hold' : band === 'hold' ? 'stop' : 'end the session';
