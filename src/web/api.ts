import type { Problem, Refused } from '#contract/problem.ts';

/** What the program would not do, and why: shown where it was typed. */
export class RefusedError extends Error {
  readonly problems: readonly Problem[];

  constructor(problems: readonly Problem[]) {
    super(problems.map(({ what }) => what).join(' '));
    this.name = 'RefusedError';
    this.problems = problems;
  }
}

const problem = (what: string, why: string, whatToDo: string): Problem => ({ what, why, whatToDo, field: null });

const NO_ANSWER = problem(
  'The program did not answer.',
  'It may have been closed, or this computer was asleep.',
  'Start it again and load this page once more. Nothing that was confirmed is lost.',
);

const NOT_LET_IN = problem(
  'This browser has not been let in.',
  'The program gives each browser a pass when it is opened by the address that it printed.',
  'Start the program again, or open the address that it printed.',
);

const withoutReason = (status: number): Problem =>
  status === 404
    ? problem(
        'There is nothing at this address.',
        'It may have been mistyped, or belongs to another data file.',
        'Go back to the Desk and open the page from there.',
      )
    : problem(
        `The program answered with an error (${status}).`,
        'It did not say why, which is a fault of the program.',
        'Load the page once more; if it stays, keep a backup and report what you did last.',
      );

const isRefused = (body: unknown): body is Refused =>
  typeof body === 'object' && body !== null && 'refused' in body && Array.isArray(body.refused);

const reasonsOf = async (response: Response): Promise<readonly Problem[]> => {
  const body: unknown = await response.json().catch(() => null);
  if (isRefused(body)) return body.refused;
  return [response.status === 401 || response.status === 403 ? NOT_LET_IN : withoutReason(response.status)];
};

const ask = async (path: string, init: RequestInit): Promise<Response> => {
  const response = await fetch(path, { ...init, credentials: 'same-origin' }).catch(() => {
    throw new RefusedError([NO_ANSWER]);
  });
  if (!response.ok) throw new RefusedError(await reasonsOf(response));
  return response;
};

/** Gets a window. Its type is the contract's promise: the program and its pages are built together. */
export const getWindow = async <Window>(path: string): Promise<Window> =>
  (await (await ask(path, { headers: { accept: 'application/json' } })).json()) as Window;

/** Posts a request and gets its answer; refusals are thrown as `RefusedError`. */
export const post = async <Answer>(path: string, request: unknown): Promise<Answer> =>
  (await (
    await ask(path, {
      method: 'POST',
      headers: { accept: 'application/json', 'content-type': 'application/json' },
      body: JSON.stringify(request),
    })
  ).json()) as Answer;

/** Posts the bytes of a file under its name. */
export const postFile = async <Answer>(path: string, file: File): Promise<Answer> =>
  (await (
    await ask(path, {
      method: 'POST',
      headers: {
        accept: 'application/json',
        'content-type': 'application/octet-stream',
        // A header holds ASCII only; names do not.
        'x-file-name': encodeURIComponent(file.name),
      },
      body: file,
    })
  ).json()) as Answer;

/** Whatever went wrong, as problems that can be shown. */
export const problemsOf = (error: unknown): readonly Problem[] => {
  if (error === null || error === undefined) return [];
  if (error instanceof RefusedError) return error.problems;
  return [
    problem(
      'Something went wrong on this page.',
      error instanceof Error ? error.message : 'It did not say why.',
      'Load the page once more.',
    ),
  ];
};
