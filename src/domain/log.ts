import { digestOf } from './digest.ts';
import { defaultAudience } from './audience.ts';
import type { Draft, Envelope, Fact, FactKind, Sequence } from './fact.ts';
import type { Digest, FactId, Instant } from './identity.ts';

/** Gives a draft its place in the log, its audience and its digest. */
export const enterInLog = (draft: Draft, sequence: Sequence, recordedAt: Instant): Fact => {
  const entry = {
    ...draft.body,
    id: draft.id,
    sequence,
    recordedAt,
    recordedBy: draft.recordedBy,
    audience: defaultAudience(draft.body),
    supersedes: draft.supersedes,
    reason: draft.reason,
  };
  return { ...entry, digest: digestOf(entry) };
};

/** The digest that a fact must have. */
export const expectedDigest = (fact: Fact): Digest => {
  const { digest: _, ...entry } = fact as Envelope;
  return digestOf(entry);
};

/** Facts of the log up to a place that nothing in it supersedes or takes back. */
export const currentFacts = (log: readonly Fact[], upTo: Sequence): readonly Fact[] => {
  const seen = log.filter((fact) => fact.sequence <= upTo);
  const superseded = new Set<FactId>(seen.flatMap((fact) => fact.supersedes ?? []));
  return seen.filter((fact) => fact.kind !== 'retracted' && !superseded.has(fact.id));
};

export const endOfLog = (log: readonly Fact[]): Sequence => (log.at(-1)?.sequence ?? 0) as Sequence;

export const isKind =
  <Kind extends FactKind>(kind: Kind) =>
  (fact: Fact): fact is Fact<Kind> =>
    fact.kind === kind;

export const factsOfKind = <Kind extends FactKind>(facts: readonly Fact[], kind: Kind): readonly Fact<Kind>[] =>
  facts.filter(isKind(kind));
