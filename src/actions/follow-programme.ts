import type { Day } from '#units/day.ts';
import type { FactId, PersonId, ProgrammeVersionId, SignerId } from '#domain/identity.ts';
import type { Known } from '#domain/known.ts';
import { isOverBy } from '#planning/compare-programme.ts';
import type { Problem } from '#contract/problem.ts';
import { answerOf, notBuilt, type Answer } from './answer.ts';
import { decided, draftOf } from './drafts.ts';
import { personAtHand } from './person-at-hand.ts';
import type { Workplace } from './workplace.ts';

export interface Following {
  readonly person: PersonId;
  readonly signer: SignerId;
  readonly programme: ProgrammeVersionId;
  readonly from: Day;
}

/** Puts a person on a version of a programme. The day moves with the launch if the launch moves. */
export const followProgramme = async (
  { store, today, newId }: Workplace,
  asked: Following,
): Promise<Answer<{ readonly decision: FactId }>> =>
  answerOf(
    await store.transact((log) => {
      const at = personAtHand(log, today(), { ...asked, basis: null });
      if (at.kind === 'refused') return notBuilt(...at.problems);
      const { mission } = at.known;
      const problems = followingProblems(at.known, asked);
      if (!mission || problems.length > 0) return notBuilt(...problems);
      const draft = draftOf(
        newId,
        asked.signer,
        decided(
          {
            kind: 'follow',
            person: asked.person,
            programme: asked.programme,
            from: { from: 'launch', days: asked.from - mission.launch },
          },
          at.road.upTo,
        ),
      );
      return { kind: 'drafts', drafts: [draft], result: { decision: draft.id } };
    }),
  );

export const followingProblems = (
  known: Known,
  { programme, from }: Pick<Following, 'programme' | 'from'>,
): readonly Problem[] => [
  ...(known.house.programmes.has(programme) ? [] : [noSuchProgramme()]),
  ...(known.mission ? [] : [noMission(known.name)]),
  ...(known.assignment?.team === 'another team' ? [anotherTeam(known.name)] : []),
  ...(isOver(known, programme, from) ? [over()] : []),
];

const noSuchProgramme = (): Problem => ({
  what: 'There is no such version of a programme here.',
  why: 'A person follows a version that was taken up.',
  whatToDo: 'Choose one from the list of programmes.',
  field: 'programme',
});

const noMission = (name: string): Problem => ({
  what: `${name} has no mission yet.`,
  why: 'A flight programme counts its days from launch.',
  whatToDo: 'Assign a mission first.',
  field: 'person',
});

const anotherTeam = (name: string): Problem => ({
  what: `${name} belongs to another team.`,
  why: 'Other teams share machines and minutes with yours; their training is theirs to sign.',
  whatToDo: 'Choose one of your own people.',
  field: 'person',
});

const isOver = (known: Known, programme: ProgrammeVersionId, from: Day): boolean => {
  const version = known.house.programmes.get(programme);
  return version !== undefined && isOverBy(known, version, from);
};

const over = (): Problem => ({
  what: 'Nothing is left of it by that day.',
  why: 'Every phase of this programme ends before.',
  whatToDo: 'Choose an earlier day, or another programme.',
  field: 'from',
});
