import type { Day } from '#units/day.ts';
import type { IssuedCard } from '#domain/issued-card.ts';
import type { CardId, PersonId, SignerId } from '#domain/identity.ts';
import { issueDocuments } from '#planning/issue.ts';
import type { Problem } from '#contract/problem.ts';
import { answerOf, notBuilt, type Answer } from './answer.ts';
import { decided, draftOf } from './drafts.ts';
import { personAtHand } from './person-at-hand.ts';
import type { Workplace } from './workplace.ts';

export interface IssueRequest {
  readonly person: PersonId;
  readonly signer: SignerId;
  readonly days: readonly Day[];
  readonly basis: number;
  /** Typed reasons for raises above the policy's step, by track. */
  readonly reasons: Readonly<Record<string, string>>;
}

/** Issuing is the signature: every card with the list of raises that its signer saw, or none. */
export const issueDays = async (
  { store, today, newId, program }: Workplace,
  asked: IssueRequest,
): Promise<Answer<{ readonly cards: readonly CardId[]; readonly documents: readonly IssuedCard[] }>> =>
  answerOf(
    await store.transact((log, now) => {
      const at = personAtHand(log, today(), asked);
      if (at.kind === 'refused') return notBuilt(...at.problems);
      const issued = issueDocuments(at.known, at.road, asked.days, {
        signer: at.signer,
        signsFor: at.signsFor,
        issuedAt: now,
        newId,
        program,
        reasons: asked.reasons,
      });
      if (issued.kind === 'refused') return notBuilt(...issued.refusals.map(cannotIssue));
      return {
        kind: 'drafts',
        drafts: issued.documents.map((card) =>
          draftOf(
            newId,
            asked.signer,
            decided({ kind: 'issue', person: asked.person, card, raises: card.raises }, at.road.upTo),
            { supersedes: null, reason: typedReasons(card, asked.reasons) },
          ),
        ),
        result: { cards: issued.documents.map((card) => card.id), documents: issued.documents },
      };
    }),
  );

/** The reasons that were typed for raises on this card: they stand beside the signature. */
const typedReasons = ({ raises }: IssuedCard, reasons: IssueRequest['reasons']): string | null => {
  const typed = raises.flatMap(({ track, exerciseName }) => {
    const reason = reasons[track]?.trim();
    return reason ? [`${exerciseName}: ${reason}`] : [];
  });
  return typed.length > 0 ? [...new Set(typed)].join('; ') : null;
};

const cannotIssue = (says: string): Problem => ({
  what: says,
  why: 'A card can be trained from as soon as it is issued: it goes out whole and right, or not at all.',
  whatToDo: 'Put that right, or leave the day out.',
  field: 'days',
});
