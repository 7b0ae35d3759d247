import { digestOf } from '#domain/digest.ts';
import type { FactBody } from '#domain/fact.ts';
import type { FactIssue } from './fact-issue.ts';

/**
 * Documents inside a fact that name themselves by the digest of their content: an issued card and a programme version.
 * Looked at when a fact is entered; afterwards the digest of the fact covers them.
 */
export const documentIssues = (body: FactBody): readonly FactIssue[] => {
  if (body.kind === 'catalogued' && body.entry.kind === 'programme') {
    const { id, ...content } = body.entry.version;
    return agree(['entry', 'version', 'id'], id, digestOf(content));
  }
  if (body.kind === 'decided' && body.decision.kind === 'issue') {
    const { digest, ...document } = body.decision.card;
    return agree(['decision', 'card', 'digest'], digest, digestOf(document));
  }
  return [];
};

const agree = (path: readonly string[], named: string, made: string): readonly FactIssue[] =>
  named === made
    ? []
    : [
        {
          path,
          what: `The document names the digest ${named.slice(0, 12)}…, its content has ${made.slice(0, 12)}….`,
          why: 'A document is known by the digest of its content, so that nobody changes it unseen.',
          whatToDo: 'Make the document anew from its content.',
        },
      ];
