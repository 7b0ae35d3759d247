import type { Problem } from '#contract/problem.ts';
import type { Draft, Fact } from '#domain/fact.ts';
import type { FactId, SignerId } from '#domain/identity.ts';
import { factsOfKind } from '#domain/log.ts';

/** The facts of a log by identity, and which of them corrects which. */
export interface Corrections {
  readonly byId: Map<FactId, Fact>;
  readonly by: Map<FactId, Fact>;
}

export const correctionsIn = (log: readonly Fact[]): Corrections => ({
  byId: new Map(log.map((fact) => [fact.id, fact])),
  by: new Map(log.flatMap((fact) => (fact.supersedes === null ? [] : [[fact.supersedes, fact] as const]))),
});

/** Why a draft cannot take its place in the log: its identity is taken, or what it corrects cannot be corrected. */
export const supersessionProblem = (draft: Draft, log: readonly Fact[], corrections: Corrections): Problem | null => {
  if (corrections.byId.has(draft.id))
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
  const first = corrections.by.get(draft.supersedes);
  if (first) return alreadyCorrected(first, log);
  if (!corrections.byId.has(draft.supersedes))
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
