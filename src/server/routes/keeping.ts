import type { Hono } from 'hono';
import { z } from 'zod';
import { ROUTES } from '#contract/routes.ts';
import { AUDIENCES } from '#domain/fact.ts';
import { idOf } from '#domain/identity.ts';
import { exportFacts, exportReveals } from '#actions/export-facts.ts';
import { writerOn } from '#actions/signing.ts';
import { refuse } from '../replies.ts';
import type { Serving } from '../serving.ts';
import { withBody, withHouse } from '../with-house.ts';

const audience = z.enum(AUDIENCES);
const backupRequest = z.strictObject({ signer: z.string().min(1).max(80) });

/** Copies that leave: for an audience, said beforehand; and the whole log for its owner. */
export const keepingRoutes = (app: Hono, serving: Serving): void => {
  app.get(
    ROUTES.exportReveals,
    withHouse(serving, (context, { workplace }) => {
      const asked = audience.safeParse(context.req.query('audience'));
      return asked.success
        ? context.json(exportReveals(workplace.store.facts(), asked.data))
        : refuse(context, 422, noAudience());
    }),
  );
  app.get(
    ROUTES.exportAll,
    withHouse(serving, (context, { workplace: { store } }) => {
      const asked = audience.safeParse(context.req.query('audience'));
      if (!asked.success) return refuse(context, 422, noAudience());
      const madeAt = serving.surroundings.clock();
      context.header(
        'content-disposition',
        `attachment; filename="ballast-export-${asked.data.replaceAll(' ', '-')}-${madeAt.slice(0, 10)}.json"`,
      );
      const from = { database: store.databaseId, about: store.about.kind, madeAt };
      return context.json(exportFacts(store.facts(), asked.data, from));
    }),
  );
  app.post(
    ROUTES.backup,
    withHouse(serving, (context, { snapshot, backUp }) =>
      withBody(context, backupRequest, async ({ signer }) => {
        const { house, today } = snapshot();
        const writer = writerOn(house, idOf(signer), today);
        if (writer.kind === 'refused') return refuse(context, 422, writer.problem);
        const report = await backUp();
        return report.kind === 'written' ? context.json(report) : refuse(context, 507, report.problem);
      }),
    ),
  );
};

const noAudience = () => ({
  what: 'No such audience.',
  why: `Everything that leaves is made for somebody: ${AUDIENCES.join(', ')}.`,
  whatToDo: 'Choose one of them.',
  field: 'audience',
});
