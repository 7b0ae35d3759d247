import { problemOf } from '#contract/facts/fact-issue.ts';
import { parseDraft } from '#contract/facts/parse-fact.ts';
import type { Problem } from '#contract/problem.ts';
import type { Draft, Fact, FactBody, Sequence } from '#domain/fact.ts';
import type { Instant } from '#domain/identity.ts';
import { endOfLog, enterInLog } from '#domain/log.ts';
import { addCorrections, noCorrections, supersessionProblem, type Corrections } from './supersession.ts';

export type Entered =
  | { readonly kind: 'facts'; readonly facts: readonly Fact[] }
  | { readonly kind: 'refused'; readonly problems: readonly Problem[] };

/** Gives drafts their places at the end of a log, or says everything that is wrong with any of them. */
export const enterDrafts = (
  log: readonly Fact[],
  inLog: Corrections,
  drafts: readonly Draft[],
  now: Instant,
): Entered => {
  const inBatch = noCorrections();
  const facts: Fact[] = [];
  const problems: Problem[] = [];
  drafts.forEach((draft, place) => {
    const here = (problem: Problem): Problem => ({ ...problem, field: `drafts.${place}.${problem.field ?? ''}` });
    const reading = parseDraft(draft);
    if (reading.kind === 'refused') {
      problems.push(...reading.issues.map(problemOf).map(here));
      return;
    }
    const problem = supersessionProblem(reading.draft, log, [inLog, inBatch]);
    if (problem) problems.push(here(problem));
    const fact = enterInLog(asJsonCarries(reading.draft), (endOfLog(log) + place + 1) as Sequence, now);
    addCorrections(inBatch, [fact]);
    facts.push(fact);
  });
  return problems.length > 0 ? { kind: 'refused', problems } : { kind: 'facts', facts };
};

/** A fact in memory is the one that a later reading of the file gives: JSON has no negative zero. */
const asJsonCarries = (draft: Draft): Draft => ({ ...draft, body: JSON.parse(JSON.stringify(draft.body)) as FactBody });
