import type { Decision } from '#domain/decision.ts';
import type { PersonId, ProposalId, SignerId } from '#domain/identity.ts';
import type { Proposal } from '#domain/road.ts';
import type { Problem } from '#contract/problem.ts';
import { answerOf, notBuilt, type Answer } from './answer.ts';
import { decided, draftOf } from './drafts.ts';
import { personAtHand } from './person-at-hand.ts';
import type { Workplace } from './workplace.ts';

export interface ProposalAnswer {
  readonly person: PersonId;
  readonly proposal: ProposalId;
  readonly signer: SignerId;
  readonly answer: 'sign' | 'decline';
  readonly reason: string;
  /** Another number of sets than was proposed; null where it is signed as it stands. */
  readonly setsBy: number | null;
  readonly basis: number;
}

/** Signs or declines what the tool proposes. Nothing goes up without this or an issued card. */
export const answerProposal = async (
  { store, today, newId }: Workplace,
  asked: ProposalAnswer,
): Promise<Answer<{ readonly decision: Decision }>> =>
  answerOf(
    await store.transact((log) => {
      const at = personAtHand(log, today(), asked);
      if (at.kind === 'refused') return notBuilt(...at.problems);
      const proposal = at.road.proposals.find((each) => each.id === asked.proposal && each.state === 'open');
      if (!proposal) return notBuilt(notOpen());
      const decision = decisionOf(proposal, asked);
      if ('what' in decision) return notBuilt(decision);
      const draft = draftOf(newId, asked.signer, decided(decision, at.road.upTo, proposal.id), {
        supersedes: null,
        reason: asked.reason.trim() === '' ? null : asked.reason,
      });
      return { kind: 'drafts', drafts: [draft], result: { decision } };
    }),
  );

const decisionOf = (proposal: Proposal, { answer, reason, setsBy }: ProposalAnswer): Decision | Problem => {
  if (answer === 'decline') return { kind: 'decline', person: proposal.person, proposal: proposal.id, reason };
  if (!proposal.change) return nothingToSign();
  return proposal.raises.some((raise) => raise.needsReason) && reason === ''
    ? reasonMissing()
    : changed(proposal.change, setsBy);
};

/** Signed in another measure: only where sets were proposed. */
const changed = (decision: Decision, setsBy: number | null): Decision =>
  setsBy !== null && decision.kind === 'adjust' && decision.change.kind === 'sets by'
    ? { ...decision, change: { kind: 'sets by', by: setsBy } }
    : decision;

const notOpen = (): Problem => ({
  what: 'This proposal is not open any more.',
  why: 'It was answered, its day has come, or newer evidence has replaced it.',
  whatToDo: 'Look at the Desk again.',
  field: 'proposal',
});

const nothingToSign = (): Problem => ({
  what: 'There is nothing to sign here.',
  why: 'This line asks to be looked at; it proposes no change of its own.',
  whatToDo: 'Decline it with what you found, or change what it points at.',
  field: 'answer',
});

const reasonMissing = (): Problem => ({
  what: 'This raise is larger than one step of your policy.',
  why: 'A larger raise is signed with a reason, which stands in the record.',
  whatToDo: 'Type the reason.',
  field: 'reason',
});
