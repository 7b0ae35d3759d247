import type { Decision } from '#domain/decision.ts';
import type { Fact, Sequence } from '#domain/fact.ts';
import { idOf, instant } from '#domain/identity.ts';
import type { Known } from '#domain/known.ts';

/** What would be known if this were signed now: to be looked at, never entered. */
export const asIfDecided = (known: Known, ...decisions: readonly Decision[]): Known => ({
  ...known,
  facts: [...known.facts, ...decisions.map((decision, place) => looked(known, decision, place))],
});

const looked = (known: Known, decision: Decision, place: number): Fact<'decided'> => ({
  kind: 'decided',
  decision,
  answers: null,
  basis: known.house.upTo,
  id: idOf(`looked at ${place}`),
  sequence: (known.house.upTo + 1 + place) as Sequence,
  recordedAt: instant('1970-01-01T00:00:00.000Z'),
  recordedBy: idOf('nobody'),
  audience: ['person and specialist'],
  supersedes: null,
  reason: null,
  digest: idOf('none'),
});
