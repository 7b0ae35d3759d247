import { problemOf } from '#contract/facts/fact-issue.ts';
import { parseDraft } from '#contract/facts/parse-fact.ts';
import type { Problem } from '#contract/problem.ts';
import type { Draft, Fact, FactBody, Sequence } from '#domain/fact.ts';
import type { Instant } from '#domain/identity.ts';
import { endOfLog, enterInLog } from '#domain/log.ts';
import { correctionsIn, supersessionProblem } from './supersession.ts';

export type Entered =
  | { readonly kind: 'facts'; readonly facts: readonly Fact[] }
  | { readonly kind: 'refused'; readonly problems: readonly Problem[] };

/** Gives drafts their places at the end of a log, or says everything that is wrong with any of them. */
export const enterDrafts = (log: readonly Fact[], drafts: readonly Draft[], now: Instant): Entered => {
  const corrections = correctionsIn(log);
  const end = endOfLog(log);
  const facts: Fact[] = [];
  const problems: Problem[] = [];
  drafts.forEach((draft, place) => {
    const here = (problem: Problem): Problem => ({ ...problem, field: `drafts.${place}.${problem.field ?? ''}` });
    const reading = parseDraft(draft);
    if (reading.kind === 'refused') {
      problems.push(...reading.issues.map(problemOf).map(here));
      return;
    }
    const problem = supersessionProblem(reading.draft, log, corrections);
    if (problem) problems.push(here(problem));
    const fact = enterInLog(asJsonCarries(reading.draft), (end + place + 1) as Sequence, now);
    corrections.byId.set(fact.id, fact);
    if (fact.supersedes !== null && !corrections.by.has(fact.supersedes)) corrections.by.set(fact.supersedes, fact);
    facts.push(fact);
  });
  return problems.length > 0 ? { kind: 'refused', problems } : { kind: 'facts', facts };
};

/** A fact in memory is the one that a later reading of the file gives: JSON has no negative zero. */
const asJsonCarries = (draft: Draft): Draft => ({ ...draft, body: JSON.parse(JSON.stringify(draft.body)) as FactBody });
