import type { Problem } from '#contract/problem.ts';
import type { Draft, Fact } from '#domain/fact.ts';
import type { FactId, SignerId } from '#domain/identity.ts';
import { factsOfKind } from '#domain/log.ts';

/** Which identities a run of facts takes, and which fact corrects which. */
export interface Corrections {
  readonly ids: Set<FactId>;
  readonly by: Map<FactId, Fact>;
}

export const noCorrections = (): Corrections => ({ ids: new Set(), by: new Map() });

export const addCorrections = (to: Corrections, facts: readonly Fact[]): void => {
  for (const fact of facts) {
    to.ids.add(fact.id);
    if (fact.supersedes !== null && !to.by.has(fact.supersedes)) to.by.set(fact.supersedes, fact);
  }
};

/**
 * Why a draft cannot take its place in the log: its identity is taken, or what it corrects cannot be corrected. It is
 * looked at against the log and against what the same transaction enters before it.
 */
export const supersessionProblem = (
  draft: Draft,
  log: readonly Fact[],
  [inLog, inBatch]: readonly [Corrections, Corrections],
): Problem | null => {
  const isThere = (id: FactId): boolean => inLog.ids.has(id) || inBatch.ids.has(id);
  if (isThere(draft.id))
    return problem(
      'id',
      'This fact is in the log already.',
      'Its identity is taken.',
      'Do not enter it a second time.',
    );
  if (draft.supersedes === null)
    return draft.body.kind === 'retracted'
      ? problem('supersedes', 'It takes back nothing.', 'It names no fact.', 'Name the fact that it takes back.')
      : null;
  const first = inLog.by.get(draft.supersedes) ?? inBatch.by.get(draft.supersedes);
  if (first) return alreadyCorrected(first, log);
  if (!isThere(draft.supersedes))
    return problem(
      'supersedes',
      'It corrects a fact that is not there.',
      'The log has none.',
      'Look at the record anew.',
    );
  return draft.reason === null
    ? problem('reason', 'A correction without a reason.', 'The old fact stays visible.', 'Say why it was wrong.')
    : null;
};

const problem = (field: string, what: string, why: string, whatToDo: string): Problem => ({
  what,
  why,
  whatToDo,
  field,
});

const alreadyCorrected = (first: Fact, log: readonly Fact[]): Problem =>
  problem(
    'supersedes',
    `This fact was already corrected by ${nameOf(log, first.recordedBy)} on ${first.recordedAt.slice(0, 10)}.`,
    `Fact ${first.sequence} ${first.kind === 'retracted' ? 'takes it back' : 'stands in its place'}${
      first.reason === null ? '' : `: "${first.reason}"`
    }.`,
    `Look at fact ${first.sequence}; if that is wrong too, correct that one.`,
  );

const nameOf = (log: readonly Fact[], id: SignerId): string =>
  factsOfKind(log, 'signs').findLast(({ signer }) => signer.id === id)?.signer.name ?? id;
