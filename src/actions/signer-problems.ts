import type { Signer } from '#domain/fact.ts';
import type { House } from '#domain/known.ts';
import type { Day } from '#units/day.ts';
import type { Problem } from '#contract/problem.ts';

/** What stands against somebody who signs, or signs otherwise than before. */
export const signerProblems = (signer: Signer, house: House, today: Day): readonly Problem[] => {
  const others = [...house.signers.values()].filter(({ id }) => id !== signer.id);
  const before = house.signers.get(signer.id);
  return [
    ...(others.some(({ name }) => sameName(name, signer.name)) ? [nameTaken(signer.name)] : []),
    ...(before && before.role !== signer.role ? [roleStays(before)] : []),
    ...(signer.role === 'deputy' ? deputyProblems(signer, others) : ownProblems(signer)),
    ...(nobodyLeft(signer, others, today) ? [lastOne()] : []),
  ];
};

const sameName = (one: string, other: string): boolean => one.trim().toLowerCase() === other.trim().toLowerCase();

const deputyProblems = ({ signsFor, from, until }: Signer, others: readonly Signer[]): readonly Problem[] => [
  ...(others.some(({ id, role }) => id === signsFor && role === 'specialist') ? [] : [signsForWhom()]),
  ...(from === null ? [dayMissing('signer.from')] : []),
  ...(until === null ? [dayMissing('signer.until')] : []),
  ...(from !== null && until !== null && until < from ? [endsBefore()] : []),
];

const ownProblems = ({ signsFor, role }: Signer): readonly Problem[] =>
  signsFor === null
    ? []
    : [
        {
          what: `A ${role} signs for nobody else.`,
          why: 'Only a deputy signs for somebody.',
          whatToDo: 'Leave it out, or enter a deputy.',
          field: 'signer.signsFor',
        },
      ];

const mayTrainOn = ({ role, until }: Signer, on: Day): boolean =>
  role !== 'physician' && (until === null || until >= on);

/** Somebody must be left who can sign, or the log can never be written again. */
const nobodyLeft = (signer: Signer, others: readonly Signer[], today: Day): boolean =>
  signer.role === 'specialist' &&
  !mayTrainOn(signer, today) &&
  !others.some((each) => each.role === 'specialist' && mayTrainOn(each, today));

const nameTaken = (name: string): Problem => ({
  what: `${name} signs here already.`,
  why: 'Under a card stands a name: two people of one name could not be told apart.',
  whatToDo: 'Change the one who is there, or add what tells the two apart.',
  field: 'signer.name',
});

const roleStays = ({ name, role }: Signer): Problem => ({
  what: `${name} has signed as ${role}.`,
  why: 'What was signed stands under that role.',
  whatToDo: 'Enter the new role as a signer of its own.',
  field: 'signer.role',
});

const signsForWhom = (): Problem => ({
  what: 'A deputy signs for a specialist.',
  why: 'The card says for whom.',
  whatToDo: 'Choose a specialist from the list.',
  field: 'signer.signsFor',
});

const dayMissing = (field: string): Problem => ({
  what: 'No day is given.',
  why: 'A deputy signs from one day to another.',
  whatToDo: 'Give the day.',
  field,
});

const endsBefore = (): Problem => ({
  what: 'The last day is before the first.',
  why: 'A deputy signs from one day to another.',
  whatToDo: 'Correct one of them.',
  field: 'signer.until',
});

const lastOne = (): Problem => ({
  what: 'Nobody would be left who signs for training.',
  why: 'Nothing could be recorded or issued any more, not even a new signer.',
  whatToDo: 'Add another specialist first.',
  field: 'signer.until',
});
