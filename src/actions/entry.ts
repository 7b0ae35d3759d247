import type { FactBody } from '#domain/fact.ts';
import type { FactId } from '#domain/identity.ts';
import type { Problem } from '#contract/problem.ts';

/** What somebody typed: a body that nobody has checked yet. */
export interface Entry {
  readonly body: unknown;
  readonly supersedes: FactId | null;
  readonly reason: string | null;
  /** Whoever typed it says that it is right: unlikely values are taken then, impossible ones are not. */
  readonly sure?: boolean;
}

export interface CheckedEntry extends Entry {
  readonly body: FactBody;
}

/** A problem of one entry names the entry too: `entries.0.day`. */
export const atEntry = (problem: Problem, place: number): Problem => ({
  ...problem,
  field: problem.field === null ? `entries.${place}` : `entries.${place}.${problem.field}`,
});
