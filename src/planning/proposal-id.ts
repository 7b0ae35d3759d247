import { digestOf } from '#domain/digest.ts';
import type { ExerciseId, FactId, PersonId, ProposalId } from '#domain/identity.ts';

/** A proposal is its rule, its subject and the facts that triggered it: declined stays declined until new evidence. */
export const proposalId = (
  rule: string,
  person: PersonId,
  subject: ExerciseId | string,
  because: readonly FactId[],
): ProposalId => digestOf({ rule, person, subject, because: because.toSorted() }).slice(0, 32) as ProposalId;
