import type { Problem } from '#contract/problem.ts';
import type { z } from 'zod';

/** What is wrong at one place of a fact, why, and what to do. */
export interface FactIssue {
  readonly path: readonly (string | number)[];
  readonly what: string;
  readonly why: string;
  readonly whatToDo: string;
}

/** Every issue that a schema raised, each at its place. */
export const factIssues = (error: z.ZodError): readonly FactIssue[] => error.issues.flatMap(issuesOf);

/** An issue as a refusal shows it. */
export const problemOf = ({ path, what, why, whatToDo }: FactIssue): Problem => ({
  what,
  why,
  whatToDo,
  field: path.length > 0 ? path.join('.') : null,
});

const issuesOf = (issue: z.core.$ZodIssue): readonly FactIssue[] => {
  const path = issue.path.map((part) => (typeof part === 'symbol' ? String(part) : part));
  if (issue.code === 'unrecognized_keys') return issue.keys.map((key) => unknownField([...path, key]));
  const given = givenTo(issue);
  const missing = given === undefined;
  return [
    {
      path,
      what: missing ? `${showPath(path)} is missing.` : `${showPath(path)} is ${showGiven(given)}.`,
      why: `It must be ${issue.message}.`,
      whatToDo: missing ? 'Add it.' : 'Correct it.',
    },
  ];
};

/** Where a variant is unknown, what was given is the word that names it. */
const givenTo = (issue: z.core.$ZodIssue): unknown =>
  issue.code === 'invalid_union' && issue.discriminator !== undefined
    ? (issue.input as Readonly<Record<string, unknown>>)[issue.discriminator]
    : issue.input;

const unknownField = (path: readonly (string | number)[]): FactIssue => ({
  path,
  what: `${showPath(path)} is no field of this fact.`,
  why: 'What is not understood is not kept.',
  whatToDo: 'Leave it out, or correct its name.',
});

/** "sets 3, load, text": list places are counted from one, as people count. */
const showPath = (path: readonly (string | number)[]): string =>
  path.length === 0
    ? 'The fact'
    : path
        .map((part) => (typeof part === 'number' ? ` ${part + 1}` : `, ${part}`))
        .join('')
        .replace(/^,? /, '');

const LONGEST_SHOWN = 60;

const showGiven = (given: unknown): string => {
  if (Array.isArray(given)) return `a list of ${given.length}`;
  if (typeof given === 'object' && given !== null) return 'a record of other fields';
  const shown = typeof given === 'string' ? JSON.stringify(given) : String(given);
  return shown.length > LONGEST_SHOWN ? `${shown.slice(0, LONGEST_SHOWN)}… (${shown.length} characters)` : shown;
};
