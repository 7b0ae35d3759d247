import type { Hono } from 'hono';
import { ROUTES } from '#contract/routes.ts';
import { recordRequest, retractRequest } from '#contract/requests/requests.ts';
import { idOf } from '#domain/identity.ts';
import { recordFacts } from '#actions/record-facts.ts';
import { retractFact } from '#actions/retract-fact.ts';
import { reply } from '../replies.ts';
import type { Serving } from '../serving.ts';
import { withBody, withHouse } from '../with-house.ts';

export const factRoutes = (app: Hono, serving: Serving): void => {
  app.post(
    ROUTES.facts,
    withHouse(serving, (context, { workplace }) =>
      withBody(context, recordRequest, async ({ signer, entries }) =>
        reply(
          context,
          await recordFacts(
            workplace,
            idOf(signer),
            entries.map(({ body, supersedes, reason, sure }) => ({
              body,
              supersedes: supersedes === null ? null : idOf(supersedes),
              reason,
              sure,
            })),
          ),
          ({ facts, result }) => ({ facts, recalled: result.recalled }),
        ),
      ),
    ),
  );
  app.post(
    ROUTES.retract,
    withHouse(serving, (context, { workplace }) =>
      withBody(context, retractRequest, async ({ signer, fact, reason }) =>
        reply(
          context,
          await retractFact(workplace, { signer: idOf(signer), fact: idOf(fact), reason }),
          ({ facts }) => ({
            facts,
          }),
        ),
      ),
    ),
  );
};
