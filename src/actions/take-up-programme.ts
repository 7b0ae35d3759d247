import type { Day } from '#units/day.ts';
import type { Fact, FactBody } from '#domain/fact.ts';
import type { PersonId, ProgrammeVersionId, SignerId } from '#domain/identity.ts';
import type { Known } from '#domain/known.ts';
import type { Problem } from '#contract/problem.ts';
import { followingFrom, houseWith } from '#planning/compare-programme.ts';
import { answerOf, movedOn, notBuilt, type Answer } from './answer.ts';
import { decided, draftOf } from './drafts.ts';
import { followingProblems } from './follow-programme.ts';
import { hasMovedOn } from './person-at-hand.ts';
import { draftProblems, versionOfDraft, type ProgrammeDraft } from './programme-draft.ts';
import { trainerOn } from './signing.ts';
import { snapshotOf } from './snapshot.ts';
import type { Workplace } from './workplace.ts';

export interface TakingUp {
  readonly signer: SignerId;
  readonly draft: ProgrammeDraft;
  /** Who follows the new version, and from when; everybody else stays where they are. */
  readonly follow: readonly { readonly person: PersonId; readonly from: Day }[];
  /** What the signer saw. */
  readonly basis: number;
}

export interface TakenUp {
  readonly version: ProgrammeVersionId;
  readonly number: number;
  readonly following: number;
}

/**
 * Takes a draft up as an immutable version, and puts on it whom the signer chose: all in one transaction, or nothing with
 * every problem at once. Cards that are issued stand as they were signed.
 */
export const takeUpProgramme = async ({ store, today, newId }: Workplace, asked: TakingUp): Promise<Answer<TakenUp>> =>
  answerOf(
    await store.transact((log) => {
      const snapshot = snapshotOf(log, today());
      const version = versionOfDraft(snapshot.house, asked.draft);
      const house = houseWith(snapshot.house, version);
      const people = asked.follow.map((each) => ({ ...each, known: snapshot.known(each.person) }));
      const writer = trainerOn(snapshot.house, asked.signer, today());
      const problems = [
        ...(writer.kind === 'refused' ? [writer.problem] : []),
        ...(hasMovedOnFor(log, asked) ? [movedOn()] : []),
        ...draftProblems(snapshot.house, asked.draft),
        ...twiceProblems(asked),
        ...people.flatMap(({ known, from }, place) =>
          personProblems(known && { ...known, house }, version.id, from, today()).map((problem) => at(problem, place)),
        ),
      ];
      if (problems.length > 0) return notBuilt(...problems);
      const bodies: readonly FactBody[] = [
        { kind: 'catalogued', entry: { kind: 'programme', version } },
        ...people.flatMap(({ known, from }) =>
          known ? [decided(followingFrom(known, version.id, from), snapshot.upTo)] : [],
        ),
      ];
      return {
        kind: 'drafts',
        drafts: bodies.map((body) => draftOf(newId, asked.signer, body)),
        result: { version: version.id, number: version.number, following: people.length },
      };
    }),
  );

const hasMovedOnFor = (log: readonly Fact[], { follow, basis }: TakingUp): boolean =>
  hasMovedOn(log, null, basis) || follow.some(({ person }) => hasMovedOn(log, person, basis));

const twiceProblems = ({ follow }: TakingUp): readonly Problem[] =>
  follow.flatMap(({ person }, place) =>
    follow.findIndex((each) => each.person === person) < place ? [at(namedTwice(), place)] : [],
  );

const personProblems = (
  known: Known | null,
  programme: ProgrammeVersionId,
  from: Day,
  today: Day,
): readonly Problem[] => {
  if (!known) return [nobody()];
  return [...followingProblems(known, { programme, from }), ...(from < today ? [inThePast(known.name)] : [])];
};

const at = (problem: Problem, place: number): Problem => ({
  ...problem,
  field: `follow.${place}.${problem.field ?? 'person'}`,
});

const nobody = (): Problem => ({
  what: 'Nobody in this log has that identity.',
  why: 'Only people who were introduced can follow a programme.',
  whatToDo: 'Choose somebody of the list.',
  field: 'person',
});

const namedTwice = (): Problem => ({
  what: 'Somebody is named twice.',
  why: 'A person follows a version from one day.',
  whatToDo: 'Leave one of the two lines out.',
  field: 'person',
});

const inThePast = (name: string): Problem => ({
  what: `${name} would follow it from a day that is past.`,
  why: 'What is past stands as it was issued and done.',
  whatToDo: 'Choose today or a later day.',
  field: 'from',
});
