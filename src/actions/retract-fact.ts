import type { FactId, SignerId } from '#domain/identity.ts';
import { currentFacts, endOfLog } from '#domain/log.ts';
import type { Fact } from '#domain/fact.ts';
import type { Problem } from '#contract/problem.ts';
import { answerOf, notBuilt, type Answer } from './answer.ts';
import { draftOf } from './drafts.ts';
import { recallsAfter } from './recalls-after.ts';
import { writerOn } from './signing.ts';
import { snapshotOf } from './snapshot.ts';
import type { Workplace } from './workplace.ts';

/** Takes a fact back: it stays visible, with who took it back and why, and counts no more. */
export const retractFact = async (
  { store, today, newId }: Workplace,
  asked: { readonly signer: SignerId; readonly fact: FactId; readonly reason: string },
): Promise<Answer<null>> =>
  answerOf(
    await store.transact((log, now) => {
      const writer = writerOn(snapshotOf(log, today()).house, asked.signer, today());
      const fact = currentFacts(log, endOfLog(log)).find((each) => each.id === asked.fact);
      const problems = [
        ...(writer.kind === 'refused' ? [writer.problem] : []),
        ...(fact ? mayNotGo(fact) : [gone()]),
        ...(asked.reason.trim() === '' ? [reasonMissing()] : []),
      ];
      if (problems.length > 0) return notBuilt(...problems);
      const { fact: supersedes, reason, signer } = asked;
      const draft = draftOf(newId, signer, { kind: 'retracted' }, { supersedes, reason });
      const recalls = recallsAfter(log, [draft], { now, today: today() }, (body) => draftOf(newId, signer, body));
      return { kind: 'drafts', drafts: [draft, ...recalls], result: null };
    }),
  );

/** Documents that went out, recalls, and limits that bind are undone by what answers them, never by deletion. */
const mayNotGo = (fact: Fact): readonly Problem[] => {
  if (fact.kind === 'decided' && (fact.decision.kind === 'issue' || fact.decision.kind === 'recall'))
    return [keptForEver('An issued card and its recall stay.', 'Issue a card that replaces it.')];
  if (fact.kind === 'restricted')
    return [
      keptForEver('A restriction binds until its lifting is signed.', 'Correct it, or record that it was lifted.'),
    ];
  if (RESTED_ON.has(fact.kind)) return [keptForEver('Other entries rest on this one.', 'Correct it instead.')];
  return [];
};

const RESTED_ON: ReadonlySet<Fact['kind']> = new Set(['introduced', 'dated', 'signs', 'catalogued']);

const keptForEver = (what: string, whatToDo: string): Problem => ({
  what,
  why: 'Somebody may have acted on it.',
  whatToDo,
  field: 'fact',
});

const gone = (): Problem => ({
  what: 'This entry does not stand any more.',
  why: 'It was corrected or taken back already.',
  whatToDo: 'Look at the record again.',
  field: 'fact',
});

const reasonMissing = (): Problem => ({
  what: 'No reason was typed.',
  why: 'The entry stays visible, with why it was taken back.',
  whatToDo: 'Type the reason.',
  field: 'reason',
});
