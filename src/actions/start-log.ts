import type { FactBody, Signer } from '#domain/fact.ts';
import { idOf } from '#domain/identity.ts';
import { shippedFacts } from '#shipped/shipped-house.ts';
import { answerOf, notBuilt, type Answer } from './answer.ts';
import { draftOf } from './drafts.ts';
import type { Workplace } from './workplace.ts';

/** Starts an empty log: who signs, and what ships. Nobody else is in it. */
export const startEmpty = (workplace: Workplace, signerName: string): Promise<Answer<{ readonly signer: Signer }>> => {
  const signer: Signer = {
    id: idOf(workplace.newId()),
    name: signerName.trim(),
    role: 'specialist',
    signsFor: null,
    from: null,
    until: null,
  };
  return startWith(workplace, signer, [{ kind: 'signs', signer }, ...shippedFacts()]);
};

/** Enters the first facts of a log, unless it has some. */
export const startWith = async (
  { store, newId }: Workplace,
  signer: Signer,
  bodies: readonly FactBody[],
): Promise<Answer<{ readonly signer: Signer }>> =>
  answerOf(
    await store.transact((log) =>
      log.length > 0
        ? notBuilt({
            what: 'This log has been started already.',
            why: 'What is in it stays.',
            whatToDo: 'Go on with it.',
            field: null,
          })
        : {
            kind: 'drafts',
            drafts: bodies.map((body) => draftOf(newId, signer.id, body)),
            result: { signer },
          },
    ),
  );
