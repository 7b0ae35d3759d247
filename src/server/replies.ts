import type { Context } from 'hono';
import type { z } from 'zod';
import type { Answer, Refusal } from '#actions/answer.ts';
import { factIssues, problemOf } from '#contract/facts/fact-issue.ts';
import type { Problem, Refused } from '#contract/problem.ts';

type Status = 400 | 401 | 403 | 404 | 409 | 413 | 421 | 422 | 500 | 507;

export const refuse = (context: Context, status: Status, ...problems: readonly Problem[]) =>
  context.json({ refused: problems } satisfies Refused, status);

const STATUS: Readonly<Record<Refusal['because'], Status>> = { request: 422, 'moved on': 409, 'not written': 507 };

/** The result of an action, or its refusal. */
export const reply = <Result>(context: Context, answer: Answer<Result>, show: (answer: Done<Result>) => object) =>
  answer.kind === 'done' ? context.json(show(answer)) : refuse(context, STATUS[answer.because], ...answer.problems);

type Done<Result> = Extract<Answer<Result>, { readonly kind: 'done' }>;

export type BodyReading<Output> =
  | { readonly kind: 'read'; readonly body: Output }
  | { readonly kind: 'refused'; readonly problems: readonly Problem[] };

/** The body of a request by its schema, with every problem at its field. */
export const bodyOf = async <Output>(context: Context, schema: z.ZodType<Output>): Promise<BodyReading<Output>> => {
  const json: unknown = await context.req.json().catch(() => undefined);
  const { success, data, error } = schema.safeParse(json, { reportInput: true });
  return success ? { kind: 'read', body: data } : { kind: 'refused', problems: factIssues(error).map(problemOf) };
};

export const nothingThere = (context: Context, what: string) =>
  refuse(context, 404, {
    what: `There is no such ${what}.`,
    why: 'The address names something that this log does not hold.',
    whatToDo: 'Go back to the Desk and choose from there.',
    field: null,
  });

export const notOpen = (context: Context) =>
  refuse(context, 409, {
    what: 'No data is open yet.',
    why: 'The first page asks what to open.',
    whatToDo: 'Go to the first page.',
    field: null,
  });
