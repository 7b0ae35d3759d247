import type { Context, Hono } from 'hono';
import { z } from 'zod';
import { ROUTES } from '#contract/routes.ts';
import { issuePreviewRequest, issueRequest } from '#contract/requests/requests.ts';
import { day as dayOf, type Day } from '#units/day.ts';
import { idOf } from '#domain/identity.ts';
import { issueDays } from '#actions/issue-days.ts';
import { nothingThere, reply } from '../replies.ts';
import type { Serving } from '../serving.ts';
import {
  cardOfDay,
  issuedCardNamed,
  issuePreviewWindow,
  weekTextWindow,
  workingWindow,
} from '../windows/card-window.ts';
import { withBody, withHouse, withPerson } from '../with-house.ts';

const PERSON = ':person';
const DAY = ':day';
const dayInAddress = z.coerce.number().int().min(-100_000).max(100_000);

export const cardRoutes = (app: Hono, serving: Serving): void => {
  app.get(
    ROUTES.plannedCard(PERSON, DAY),
    withPerson(serving, (context, { known, road }) =>
      onDay(context, (day) => {
        const card = cardOfDay(known, road, day);
        return card ? context.json(card) : nothingThere(context, 'card');
      }),
    ),
  );
  app.get(
    ROUTES.weekText(PERSON, DAY),
    withPerson(serving, (context, { road }) => onDay(context, (day) => context.json(weekTextWindow(road, day)))),
  );
  app.get(
    ROUTES.working(PERSON, DAY, ':item'),
    withPerson(serving, (context, { known, road }) =>
      onDay(context, (day) => {
        const working = workingWindow(known, road, day, context.req.param('item') ?? '');
        return working ? context.json(working) : nothingThere(context, 'working');
      }),
    ),
  );
  app.get(
    ROUTES.card(':card'),
    withHouse(serving, (context, { snapshot }) => {
      const card = issuedCardNamed(snapshot(), context.req.param('card') ?? '');
      return card ? context.json(card) : nothingThere(context, 'card');
    }),
  );
  issuingRoutes(app, serving);
};

const issuingRoutes = (app: Hono, serving: Serving): void => {
  app.post(
    ROUTES.issuePreview(PERSON),
    withPerson(serving, (context, { known, road }) =>
      withBody(context, issuePreviewRequest, ({ days }) =>
        context.json(issuePreviewWindow(known, road, days.map(dayOf))),
      ),
    ),
  );
  app.post(
    ROUTES.issue(PERSON),
    withPerson(serving, (context, { house, known }) =>
      withBody(context, issueRequest, async ({ signer, days, basis, reasons }) =>
        reply(
          context,
          await issueDays(house.workplace, {
            person: known.person,
            signer: idOf(signer),
            days: days.map(dayOf),
            basis,
            reasons,
          }),
          ({ result }) => ({ cards: result.cards }),
        ),
      ),
    ),
  );
};

const onDay = (context: Context, show: (day: Day) => Response): Response => {
  const reading = dayInAddress.safeParse(context.req.param('day'));
  return reading.success ? show(dayOf(reading.data)) : nothingThere(context, 'day');
};
