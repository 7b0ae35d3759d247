import { addDays, type Day } from '#units/day.ts';
import type { Change } from '#domain/decision.ts';
import type { FactId, PersonId, SignerId, TrackId } from '#domain/identity.ts';
import type { Policies } from '#domain/policies.ts';
import type { Road } from '#domain/road.ts';
import { problemsOfLine } from '#domain/programme-line/written-line.ts';
import type { Problem } from '#contract/problem.ts';
import { answerOf, notBuilt, type Answer } from './answer.ts';
import { decided, draftOf } from './drafts.ts';
import { personAtHand } from './person-at-hand.ts';
import type { Workplace } from './workplace.ts';

export interface Adjustment {
  readonly person: PersonId;
  readonly signer: SignerId;
  readonly change:
    | { readonly kind: 'hold' | 'back off' | 'leave out' | 'keep' }
    /** Sets and target of these days, in shorthand. */
    | { readonly kind: 'as written'; readonly line: string };
  readonly track: TrackId;
  readonly from: Day;
  readonly until: Day | null;
  readonly reason: string;
}

/**
 * One person's departure from the programme on a track, from a day on. None lets anything go up: what a written line asks
 * for above the load in use stands as a raise on the card, and is signed with it.
 */
export const adjustTrack = async (
  { store, today, newId }: Workplace,
  asked: Adjustment,
): Promise<Answer<{ readonly adjustment: FactId }>> =>
  answerOf(
    await store.transact((log) => {
      const at = personAtHand(log, today(), { ...asked, basis: null });
      const problems = [
        ...(at.kind === 'refused' ? at.problems : []),
        ...dayProblems(asked, today()),
        ...lineProblems(asked.change),
      ];
      if (at.kind === 'refused' || problems.length > 0) return notBuilt(...problems);
      if (!tracksOf(at.road).has(asked.track)) return notBuilt(noSuchTrack());
      const { person, track, from, until, reason } = asked;
      const change = changeOf(asked.change, at.known.house.policies);
      const draft = draftOf(
        newId,
        asked.signer,
        decided({ kind: 'adjust', person, track, change, from, until, reason }, at.road.upTo),
      );
      return { kind: 'drafts', drafts: [draft], result: { adjustment: draft.id } };
    }),
  );

/** Tracks that somebody trains already, and those of the sessions ahead. */
const tracksOf = ({ tracks, cards }: Road): ReadonlySet<TrackId> =>
  new Set([
    ...tracks.map(({ track }) => track),
    ...cards.flatMap((card) => (card.state === 'issued' ? [] : card.card.items.map(({ track }) => track))),
  ]);

const changeOf = (change: Adjustment['change'], { backOff }: Policies): Change => {
  if (change.kind === 'as written') return change;
  return change.kind === 'back off' ? { kind: 'back off', by: backOff } : { kind: change.kind };
};

const lineProblems = (change: Adjustment['change']): readonly Problem[] =>
  change.kind === 'as written' ? problemsOfLine(change.line).map(({ says }) => unreadable(says)) : [];

const unreadable = (why: string): Problem => ({
  what: 'The line cannot be read.',
  why,
  whatToDo: 'Write it as in 4 × 6 @ 80 %, rest 2:30.',
  field: 'line',
});

const YEAR = 366;

const dayProblems = ({ from, until }: Adjustment, today: Day): readonly Problem[] => [
  ...(from < today || from > addDays(today, YEAR) ? [absurdStart()] : []),
  ...(until !== null && until < from ? [endsBeforeItStarts()] : []),
];

const absurdStart = (): Problem => ({
  what: 'The change would not start between today and a year from now.',
  why: 'What is past stands as it was issued and done.',
  whatToDo: 'Choose today or a later day.',
  field: 'from',
});

const endsBeforeItStarts = (): Problem => ({
  what: 'The change would end before it starts.',
  why: 'It holds from its first to its last day.',
  whatToDo: 'Choose a later last day, or leave it open.',
  field: 'until',
});

const noSuchTrack = (): Problem => ({
  what: 'This person has no such track.',
  why: 'Tracks are the named lines of the programme that somebody follows.',
  whatToDo: 'Choose a lift of their own sheet.',
  field: 'track',
});
