import { addDays, type Day } from '#units/day.ts';
import type { LooseKind, MachineKind } from '#domain/catalogue.ts';
import type { Hurting } from '#domain/decision.ts';
import type { Draft, FactBody } from '#domain/fact.ts';
import type { PersonId, SessionId, SignerId } from '#domain/identity.ts';
import type { IssuedCard } from '#domain/issued-card.ts';
import type { Known } from '#domain/known.ts';
import { issueDocuments } from '#planning/issue.ts';
import { planContext } from '#planning/plan-context.ts';
import { placeOnRoad } from '#planning/time/place-on-road.ts';
import type { Problem } from '#contract/problem.ts';
import { answerOf, notBuilt, type Answer } from './answer.ts';
import { decided, draftOf, logWith } from './drafts.ts';
import { personAtHand } from './person-at-hand.ts';
import type { Workplace } from './workplace.ts';

/** A session for what is there: which gear, how many minutes, what hurts. */
export interface ReMaking {
  readonly day: Day;
  readonly session: SessionId;
  readonly here: readonly (MachineKind | LooseKind)[];
  readonly minutes: number;
  readonly hurts: readonly Hurting[];
}

export interface SignedReMaking extends ReMaking {
  readonly person: PersonId;
  readonly signer: SignerId;
  readonly reason: string;
  readonly basis: number;
}

/** Makes a session anew and issues it at once: what hurts, the decision and the card are written together or not at all. */
export const reMakeSession = async (
  { store, today, newId, program }: Workplace,
  asked: SignedReMaking,
): Promise<Answer<{ readonly document: IssuedCard }>> =>
  answerOf(
    await store.transact((log, now) => {
      const at = personAtHand(log, today(), asked);
      const problems = [
        ...(at.kind === 'refused' ? at.problems : []),
        ...(at.kind === 'refused' ? [] : reMakingProblems(at.known, asked, today())),
      ];
      if (at.kind === 'refused' || problems.length > 0) return notBuilt(...problems);
      const drafts: readonly Draft[] = reMakingFacts(asked.person, asked, {
        today: today(),
        reason: asked.reason,
        basis: at.road.upTo,
      }).map((body) => draftOf(newId, asked.signer, body));
      const then = personAtHand(logWith(log, drafts, now), today(), { ...asked, basis: null });
      if (then.kind === 'refused') return notBuilt(...then.problems);
      const issued = issueDocuments(then.known, then.road, [asked.day], {
        signer: at.signer,
        signsFor: at.signsFor,
        issuedAt: now,
        newId,
        program,
        reasons: {},
      });
      if (issued.kind === 'refused') return notBuilt(...issued.refusals.map(cannotIssue));
      const [document] = issued.documents;
      if (!document) return notBuilt(cannotIssue('There is no session on that day.'));
      const issue = decided(
        { kind: 'issue', person: asked.person, card: document, raises: document.raises },
        then.road.upTo,
      );
      return { kind: 'drafts', drafts: [...drafts, draftOf(newId, asked.signer, issue)], result: { document } };
    }),
  );

/** When and why it is told. */
interface Told {
  readonly today: Day;
  readonly reason: string;
  readonly basis: Known['house']['upTo'];
}

/** What a session made anew is recorded as. Discomfort that was told counts like any other, from the day it is told. */
export const reMakingFacts = (
  person: PersonId,
  { day, session, here, minutes, hurts }: ReMaking,
  { today, reason, basis }: Told,
): readonly FactBody[] => [
  ...hurts.map(({ site, side, score }): FactBody => ({
    kind: 'hurt',
    person,
    day: today,
    card: null,
    item: null,
    site,
    side,
    score,
    when: 'during',
  })),
  decided({ kind: 're-make', person, day, session, here, minutes, hurts, reason }, basis),
];

const MOST_MINUTES = 300;

/** Everything that is wrong with what was asked, at its field. */
export const reMakingProblems = (known: Known, asked: ReMaking, today: Day): readonly Problem[] => [
  ...(asked.day < today || asked.day >= addDays(today, known.house.policies.horizonDays) ? [notThatDay()] : []),
  ...(hasSession(known, asked) ? [] : [noSuchSession()]),
  ...(asked.minutes >= 1 && asked.minutes <= MOST_MINUTES ? [] : [notThoseMinutes()]),
  ...(asked.hurts.every(({ score }) => score >= 0 && score <= 10) ? [] : [notThatScore()]),
];

const hasSession = (known: Known, { day, session }: ReMaking): boolean =>
  placeOnRoad(planContext(known), day)?.phase.sessions.some(({ id }) => id === session) ?? false;

const notThatDay = (): Problem => ({
  what: 'That day cannot be made anew.',
  why: 'What is past stands as it was, and what lies beyond the horizon is only expected.',
  whatToDo: 'Choose today or one of the next days.',
  field: 'day',
});

const noSuchSession = (): Problem => ({
  what: 'The phase of that day has no such session.',
  why: 'A session is made anew from one that the programme holds for that time of the road: others mean other loads.',
  whatToDo: 'Choose one of its sessions.',
  field: 'session',
});

const notThoseMinutes = (): Problem => ({
  what: `There are no sessions of less than 1 or more than ${MOST_MINUTES} minutes.`,
  why: 'Set-up and stowing are inside them.',
  whatToDo: 'Type the minutes that are there.',
  field: 'minutes',
});

const notThatScore = (): Problem => ({
  what: 'Discomfort is told from 0 to 10.',
  why: 'The same scale stands on every card.',
  whatToDo: 'Type a whole number from 0 to 10.',
  field: 'hurts',
});

const cannotIssue = (says: string): Problem => ({
  what: says,
  why: 'A card can be trained from as soon as it is issued: it goes out whole and right, or not at all.',
  whatToDo: 'Put that right, or choose other gear or another session.',
  field: null,
});
