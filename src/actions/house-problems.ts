import type { Day } from '#units/day.ts';
import type { CatalogueEntry, Fact, FactBody } from '#domain/fact.ts';
import type { House } from '#domain/known.ts';
import type { Problem } from '#contract/problem.ts';
import type { CheckedEntry } from './entry.ts';
import { exerciseProblems } from './exercise-problems.ts';
import { machineEntryProblems } from './machine-entry-problems.ts';
import { policyProblems } from './policy-problems.ts';
import { signerProblems } from './signer-problems.ts';
import { siteProblems } from './site-problems.ts';

/** What stands against an entry about the house: what it is made of, what its policies are, who signs in it. */
export const houseProblems = (
  { body, supersedes }: CheckedEntry,
  house: House,
  current: readonly Fact[],
  today: Day,
): readonly Problem[] => {
  const before = current.find(({ id }) => id === supersedes);
  return [
    ...(before && isAnotherThing(before, body) ? [anotherThing()] : []),
    ...ownProblems(body, house, current, today),
  ];
};

const ownProblems = (body: FactBody, house: House, current: readonly Fact[], today: Day): readonly Problem[] => {
  if (body.kind === 'catalogued') return entryProblems(body.entry, house, current);
  if (body.kind === 'policies set') return policyProblems(body.policies, house.policies);
  if (body.kind === 'signs') return signerProblems(body.signer, house, today);
  return body.kind === 'calibrated' && isNoCalibration(Number(body.factor)) ? [noCalibration()] : [];
};

/**
 * Delivered over set: beyond these a machine is not out of tune but out of service, or the numbers are not of one unit. Our
 * own design.
 */
const [LEAST_DELIVERED, MOST_DELIVERED] = [0.5, 2] as const;

const isNoCalibration = (factor: number): boolean => factor < LEAST_DELIVERED || factor > MOST_DELIVERED;

const noCalibration = (): Problem => ({
  what: `Delivered over set is not between ${LEAST_DELIVERED} and ${MOST_DELIVERED}.`,
  why: 'A machine that is so far out is out of service; more likely the two are in other units, or the wrong way round.',
  whatToDo: 'Look at the two numbers again.',
  field: 'factor',
});

const entryProblems = (entry: CatalogueEntry, house: House, current: readonly Fact[]): readonly Problem[] => {
  switch (entry.kind) {
    case 'exercise':
      return exerciseProblems(entry.exercise, house, current);
    case 'machine':
      return machineEntryProblems(entry.machine, house);
    case 'site':
      return siteProblems(entry.site, house);
    case 'programme':
      return [];
  }
};

/** In the place of one thing another would stand, and the first would be gone from the house. */
const isAnotherThing = (before: FactBody, after: FactBody): boolean => thingOf(before) !== thingOf(after);

const thingOf = (body: FactBody): string | null => {
  if (body.kind === 'signs') return `signer ${body.signer.id}`;
  if (body.kind === 'calibrated') return `machine ${body.machine}`;
  if (body.kind !== 'catalogued') return null;
  const { entry } = body;
  switch (entry.kind) {
    case 'exercise':
      return `exercise ${entry.exercise.id}`;
    case 'machine':
      return `machine ${entry.machine.id}`;
    case 'site':
      return `site ${entry.site.id}`;
    case 'programme':
      return `programme ${entry.version.programme}`;
  }
};

const anotherThing = (): Problem => ({
  what: 'The change is of another thing than the entry that it replaces.',
  why: 'The first would be gone from every list.',
  whatToDo: 'Load the page again, and change the one you mean.',
  field: 'supersedes',
});
