import { spawnSync } from 'node:child_process';
import { join } from 'node:path';

/** The same computation by NumPy and SciPy, timed by its own script so that the start of the interpreter does not count. */

export interface ReferenceAnswer<Result> {
  /** "NumPy 1.24.2, SciPy 1.10.1, Python 3.11.2". */
  readonly versions: string;
  /** Milliseconds of each run, by the name of the way it was done. */
  readonly times: Readonly<Record<string, readonly number[]>>;
  readonly result: Result;
}

export type Reference<Result> =
  | { readonly kind: 'answer'; readonly answer: ReferenceAnswer<Result> }
  | { readonly kind: 'missing'; readonly why: string };

const MEGABYTE = 2 ** 20;

/** Runs a script of bench/reference, whose first line names its interpreter; started from the folder of the project. */
export const askReference = <Result>(script: string, request: unknown): Reference<Result> => {
  const { error, status, stdout, stderr } = spawnSync(join('bench', 'reference', script), {
    input: JSON.stringify(request),
    encoding: 'utf8',
    maxBuffer: 256 * MEGABYTE,
  });
  if (error)
    return {
      kind: 'missing',
      why: `Python is not to be had here (${error.message}): nothing was compared. Install python3-scipy to compare.`,
    };
  if (status !== 0) return { kind: 'missing', why: stderr.trim() };
  // Written by the script that was asked.
  return { kind: 'answer', answer: JSON.parse(stdout) as ReferenceAnswer<Result> };
};

/** The largest distance between two rows of numbers; infinite where one is longer. */
export const largestDistance = (ours: ArrayLike<number>, theirs: ArrayLike<number>): number => {
  if (ours.length !== theirs.length) return Infinity;
  let largest = 0;
  for (let place = 0; place < ours.length; place += 1)
    largest = Math.max(largest, Math.abs((ours[place] ?? Number.NaN) - (theirs[place] ?? Number.NaN)));
  return largest;
};

/** Says whether both programs compute the same; a bench that compares different things ends with a fault. */
export const sayAgreement = (what: string, distance: number, within: number): void => {
  const agrees = distance <= within;
  console.log(
    `  ${what}: largest difference ${distance.toPrecision(3)}, ${agrees ? 'within' : 'MORE THAN'} ${within.toPrecision(3)}`,
  );
  if (!agrees) process.exitCode = 1;
};
