import type { Decision } from '#domain/decision.ts';
import type { Draft, Fact, FactBody, Sequence } from '#domain/fact.ts';
import { idOf, type Instant, type ProposalId, type SignerId } from '#domain/identity.ts';
import { endOfLog, enterInLog } from '#domain/log.ts';

export interface Correction {
  readonly supersedes: Draft['supersedes'];
  readonly reason: string | null;
}

const NO_CORRECTION: Correction = { supersedes: null, reason: null };

export const draftOf = (
  newId: () => string,
  recordedBy: SignerId,
  body: FactBody,
  correction: Correction = NO_CORRECTION,
): Draft => ({ id: idOf(newId()), body, recordedBy, ...correction });

export const decided = (decision: Decision, basis: Sequence, answers: ProposalId | null = null): FactBody => ({
  kind: 'decided',
  decision,
  answers,
  basis,
});

/** The log as it would stand with drafts entered: to look ahead inside one transaction. */
export const logWith = (log: readonly Fact[], drafts: readonly Draft[], now: Instant): readonly Fact[] => [
  ...log,
  ...drafts.map((draft, place) => enterInLog(draft, (endOfLog(log) + 1 + place) as Sequence, now)),
];
