import type { Hono } from 'hono';
import { ROUTES } from '#contract/routes.ts';
import { reMakeRequest, signedReMakeRequest, type ReMakeRequest } from '#contract/requests/re-making.ts';
import { cardCode } from '#domain/card-code.ts';
import { idOf } from '#domain/identity.ts';
import { day } from '#units/day.ts';
import { reMakeSession, type ReMaking } from '#actions/re-make-session.ts';
import { shortText } from '#interchange/plain-text/short-text.ts';
import { reply } from '../replies.ts';
import type { Serving } from '../serving.ts';
import { withBody, withPerson } from '../with-house.ts';
import { reMadeWindow, reMakeWindow } from '../windows/re-make-window.ts';

const PERSON = ':person';

/** A session made anew for what is there: looked at, then signed and sent in one. */
export const reMakingRoutes = (app: Hono, serving: Serving): void => {
  app.get(
    ROUTES.reMake(PERSON, ':day'),
    withPerson(serving, (context, { snapshot, known, road }) =>
      context.json(reMakeWindow(snapshot, known, road, day(Number(context.req.param('day'))))),
    ),
  );
  app.post(
    ROUTES.reMade(PERSON),
    withPerson(serving, (context, { snapshot, known }) =>
      withBody(context, reMakeRequest, (body) => context.json(reMadeWindow(snapshot, known, reMaking(body)))),
    ),
  );
  app.post(
    ROUTES.reMakeSigned(PERSON),
    withPerson(serving, (context, { house, known: { person } }) =>
      withBody(context, signedReMakeRequest, async ({ signer, reason, basis, ...asked }) =>
        reply(
          context,
          await reMakeSession(house.workplace, { ...reMaking(asked), person, signer: idOf(signer), reason, basis }),
          ({ result: { document } }) => {
            const code = cardCode(document.digest);
            return { card: document.id, code, ...shortText(document.card, code) };
          },
        ),
      ),
    ),
  );
};

const reMaking = ({ day: on, session, ...asked }: ReMakeRequest): ReMaking => ({
  ...asked,
  day: day(on),
  session: idOf(session),
});
