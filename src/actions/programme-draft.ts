import type { ProgrammeId, ProgrammeVersionId } from '#domain/identity.ts';
import type { House } from '#domain/known.ts';
import { takeUp, type ProgrammePhase, type ProgrammeVersion } from '#domain/programme.ts';
import { programmeProblems } from '#domain/programme-check.ts';
import { programmeDifference } from '#domain/programme-difference.ts';
import type { Problem } from '#contract/problem.ts';
import { leastMinutes } from '#planning/least-minutes.ts';

/** A programme as somebody wrote it, before it is taken up. */
export interface ProgrammeDraft {
  readonly programme: ProgrammeId;
  readonly name: string;
  /** The version that it was made from; null: a programme of its own. */
  readonly follows: ProgrammeVersionId | null;
  readonly phases: readonly ProgrammePhase[];
}

/** The version that a draft becomes: its number follows the highest that the programme has. */
export const versionOfDraft = (house: House, draft: ProgrammeDraft): ProgrammeVersion => {
  const numbers = versionsOf(house, draft.programme).map(({ number }) => number);
  const { programme, name, follows, phases } = draft;
  return takeUp({ programme, name: name.trim(), number: Math.max(0, ...numbers) + 1, follows, phases });
};

const versionsOf = (house: House, programme: ProgrammeId): readonly ProgrammeVersion[] =>
  [...house.programmes.values()].filter((version) => version.programme === programme);

/** Everything that stands against taking a draft up, at the places where it was written. */
export const draftProblems = (house: House, draft: ProgrammeDraft): readonly Problem[] => [
  ...standingProblems(house, draft),
  ...nameProblems(house, draft),
  ...programmeProblems(draft, house.exercises),
  ...blockProblems(house, draft),
];

const standingProblems = (house: House, draft: ProgrammeDraft): readonly Problem[] => {
  if (draft.follows === null)
    return versionsOf(house, draft.programme).length > 0 ? [identityTaken(draft.programme)] : [];
  const before = house.programmes.get(draft.follows);
  if (!before || before.programme !== draft.programme) return [noSuchVersion()];
  return programmeDifference(before, draft, house.exercises).length === 0 ? [nothingChanged(before)] : [];
};

const nameProblems = (house: House, { programme, name }: ProgrammeDraft): readonly Problem[] =>
  [...house.programmes.values()].some((other) => other.programme !== programme && isSameName(other.name, name))
    ? [nameTaken(name)]
    : [];

const isSameName = (a: string, b: string): boolean => a.trim().toLowerCase() === b.trim().toLowerCase();

/** A block into which not even its shortest item fits would give a card with nothing on it. */
const blockProblems = ({ exercises, machines }: House, { phases }: ProgrammeDraft): readonly Problem[] =>
  phases.flatMap((phase, place) =>
    phase.sessions.flatMap((session, at) => {
      const needed = session.items.flatMap((item) => {
        const exercise = exercises.get(item.exercise);
        return exercise ? [leastMinutes(item, exercise, machines.values())] : [];
      });
      const least = Math.min(...needed);
      return needed.length > 0 && least > session.blockMinutes
        ? [blockTooShort(session.title, session.blockMinutes, least, `phases.${place}.sessions.${at}.blockMinutes`)]
        : [];
    }),
  );

const blockTooShort = (title: string, block: number, least: number, field: string): Problem => ({
  what: `Nothing fits into the ${block} minutes of ${title}.`,
  why: `Its shortest exercise alone takes ${Math.ceil(least)} minutes, set-up and stowing included.`,
  whatToDo: 'Give it a longer block, or write less.',
  field,
});

const identityTaken = (programme: ProgrammeId): Problem => ({
  what: 'There is a programme like that already.',
  why: `The identity ${programme} belongs to it: two programmes would be taken for one.`,
  whatToDo: 'Give it another name, or edit the newest version of the one that is there.',
  field: 'name',
});

const nameTaken = (name: string): Problem => ({
  what: `Another programme is called ${name.trim()}.`,
  why: 'Cards and lists show a programme by its name.',
  whatToDo: 'Choose another name.',
  field: 'name',
});

const noSuchVersion = (): Problem => ({
  what: 'The version that this draft was made from is not here.',
  why: 'A new version names the one that it follows.',
  whatToDo: 'Open the newest version and write the change there, or keep the draft as a programme of its own.',
  field: 'follows',
});

const nothingChanged = ({ name, number }: ProgrammeVersion): Problem => ({
  what: 'Nothing is changed.',
  why: `The draft says the same as ${name}, version ${number}.`,
  whatToDo: 'Change something first, or leave it.',
  field: 'phases',
});
