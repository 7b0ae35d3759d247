import type { ReplacementPolicy } from '#domain/decision.ts';
import type { ExerciseId, FactId, PersonId, SignerId } from '#domain/identity.ts';
import type { Problem } from '#contract/problem.ts';
import { answerOf, notBuilt, type Answer } from './answer.ts';
import { decided, draftOf } from './drafts.ts';
import { personAtHand } from './person-at-hand.ts';
import type { Workplace } from './workplace.ts';

export interface PolicyChoice {
  readonly person: PersonId;
  readonly signer: SignerId;
  readonly exercise: ExerciseId;
  readonly policy: ReplacementPolicy;
  readonly reason: string;
}

/** How much body weight is added back for one lift of one person. A load that goes up by it still waits for its card's signature. */
export const setPolicy = async (
  { store, today, newId }: Workplace,
  asked: PolicyChoice,
): Promise<Answer<{ readonly decision: FactId }>> =>
  answerOf(
    await store.transact((log) => {
      const at = personAtHand(log, today(), { ...asked, basis: null });
      if (at.kind === 'refused') return notBuilt(...at.problems);
      const exercise = at.known.house.exercises.get(asked.exercise);
      if (!exercise || exercise.shareModel === 'none') return notBuilt(nothingToReplace(exercise?.name ?? null));
      const { person, policy, reason } = asked;
      const draft = draftOf(
        newId,
        asked.signer,
        decided({ kind: 'replace body weight', person, exercise: exercise.id, policy, reason }, at.road.upTo),
      );
      return { kind: 'drafts', drafts: [draft], result: { decision: draft.id } };
    }),
  );

const nothingToReplace = (name: string | null): Problem => ({
  what: name === null ? 'There is no such exercise here.' : `${name} moves no body weight.`,
  why: 'A policy says how much of the body weight that a lift moves on the ground is added back.',
  whatToDo: 'Choose a lift that carries the body.',
  field: 'exercise',
});
