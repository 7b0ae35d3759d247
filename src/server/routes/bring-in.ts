import type { Context, Hono } from 'hono';
import { z } from 'zod';
import { bringInAnswers, matchingByHand, type TableReading } from '#contract/bring-in.ts';
import { ROUTES } from '#contract/routes.ts';
import { idOf } from '#domain/identity.ts';
import { bringIn, lookThrough } from '#actions/bring-in.ts';
import { windowOf } from '#interchange/plan-bring-in.ts';
import { headOfTable } from '#interchange/reading/head-of-table.ts';
import { readTable } from '#interchange/reading/read-table.ts';
import { refuse, reply } from '../replies.ts';
import type { Serving } from '../serving.ts';
import { withBody, withHouse } from '../with-house.ts';

const planRequest = z.strictObject({
  ticket: z.string().min(1).max(100),
  matching: matchingByHand.nullable(),
  answers: bringInAnswers,
});
const takeRequest = planRequest.extend({ signer: z.string().min(1).max(80) });

/** Files that were read wait here until they are taken; they never touch the disk. */
const MOST_WAITING = 8;
/** A screen shows the head of a file of thousands of rows. */
const ROWS_SHOWN = 60;

export const bringInRoutes = (app: Hono, serving: Serving): void => {
  const waiting = new Map<string, TableReading>();
  app.post(
    ROUTES.bringInRead,
    withHouse(serving, async (context) => {
      const bytes = new Uint8Array(await context.req.arrayBuffer());
      const reading = await readTable(bytes, fileNameOf(context));
      const ticket = serving.surroundings.newSecret();
      waiting.set(ticket, reading);
      for (const oldest of waiting.keys()) if (waiting.size > MOST_WAITING) waiting.delete(oldest);
      return context.json({ reading: headOfTable(reading, ROWS_SHOWN), ticket });
    }),
  );
  app.post(
    ROUTES.bringInPlan,
    withHouse(serving, (context, { workplace }) =>
      withBody(context, planRequest, ({ ticket, ...asked }) => {
        const table = waiting.get(ticket);
        return table
          ? context.json(windowOf(lookThrough(workplace.store.facts(), workplace.today(), { table, ...asked })))
          : refuse(context, 422, notWaiting());
      }),
    ),
  );
  app.post(
    ROUTES.bringInTake,
    withHouse(serving, (context, { workplace }) =>
      withBody(context, takeRequest, async ({ ticket, signer, ...asked }) => {
        const table = waiting.get(ticket);
        if (!table) return refuse(context, 422, notWaiting());
        const answer = await bringIn(workplace, idOf(signer), { table, ...asked });
        if (answer.kind === 'done') waiting.delete(ticket);
        return reply(context, answer, ({ result }) => result);
      }),
    ),
  );
};

const LONGEST_NAME = 200;

/** The name comes percent-encoded: headers carry no other letters. */
const fileNameOf = (context: Context): string => {
  const given = context.req.header('x-file-name') ?? '';
  try {
    return decodeURIComponent(given).slice(0, LONGEST_NAME);
  } catch {
    return given.slice(0, LONGEST_NAME);
  }
};

const notWaiting = () => ({
  what: 'The file is not waiting any more.',
  why: 'It was brought in already, or the program was started anew.',
  whatToDo: 'Choose the file again.',
  field: 'ticket',
});
