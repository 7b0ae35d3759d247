import type { SignerId } from '#domain/identity.ts';
import { problemOf } from '#contract/facts/fact-issue.ts';
import { parseFactBody } from '#contract/facts/parse-fact.ts';
import type { Problem } from '#contract/problem.ts';
import { answerOf, notBuilt, refused, type Answer } from './answer.ts';
import { draftOf } from './drafts.ts';
import { entryProblems } from './entry-problems.ts';
import { atEntry, type CheckedEntry, type Entry } from './entry.ts';
import { recallsAfter } from './recalls-after.ts';
import { writerOn } from './signing.ts';
import { snapshotOf } from './snapshot.ts';
import type { Workplace } from './workplace.ts';

export interface Recorded {
  /** Cards that a restriction among the entries took back in the same transaction. */
  readonly recalled: number;
}

/** Records what was typed by hand: all entries or none, with every problem at once. */
export const recordFacts = async (
  { store, today, newId }: Workplace,
  signer: SignerId,
  entries: readonly Entry[],
): Promise<Answer<Recorded>> => {
  const readings = entries.map(readEntry);
  const unread = readings.flatMap((reading) => (reading.kind === 'refused' ? reading.problems : []));
  const checked = readings.flatMap((reading) => (reading.kind === 'read' ? [reading.entry] : []));
  if (unread.length > 0) return refused(unread);
  return answerOf(
    await store.transact((log, now) => {
      const writer = writerOn(snapshotOf(log, today()).house, signer, today());
      const problems = [
        ...(writer.kind === 'refused' ? [writer.problem] : []),
        ...entryProblems(log, checked, today()),
      ];
      if (problems.length > 0) return notBuilt(...problems);
      const drafts = checked.map(({ body, supersedes, reason }) =>
        draftOf(newId, signer, body, { supersedes, reason: supersedes === null ? reason?.trim() || null : reason }),
      );
      const recalls = recallsAfter(log, drafts, { now, today: today() }, (body) => draftOf(newId, signer, body));
      return { kind: 'drafts', drafts: [...drafts, ...recalls], result: { recalled: recalls.length } };
    }),
  );
};

type EntryReading =
  | { readonly kind: 'read'; readonly entry: CheckedEntry }
  | { readonly kind: 'refused'; readonly problems: readonly Problem[] };

const readEntry = (entry: Entry, place: number): EntryReading => {
  const reading = parseFactBody(entry.body);
  if (reading.kind === 'body') return { kind: 'read', entry: { ...entry, body: reading.body } };
  const problems = reading.issues.map(problemOf);
  return { kind: 'refused', problems: problems.map((problem) => atEntry(problem, place)) };
};
