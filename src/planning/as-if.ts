import type { Decision } from '#domain/decision.ts';
import type { Fact, Sequence } from '#domain/fact.ts';
import { idOf, instant } from '#domain/identity.ts';
import type { Known } from '#domain/known.ts';

/** What would be known if this were signed now: to be looked at, never entered. */
export const asIfDecided = (known: Known, decision: Decision): Known => {
  const looked: Fact<'decided'> = {
    kind: 'decided',
    decision,
    answers: null,
    basis: known.house.upTo,
    id: idOf('looked at'),
    sequence: (known.house.upTo + 1) as Sequence,
    recordedAt: instant('1970-01-01T00:00:00.000Z'),
    recordedBy: idOf('nobody'),
    audience: ['person and specialist'],
    supersedes: null,
    reason: null,
    digest: idOf('none'),
  };
  return { ...known, facts: [...known.facts, looked] };
};
