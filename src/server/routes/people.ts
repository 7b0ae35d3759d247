import type { Context, Hono } from 'hono';
import { ROUTES } from '#contract/routes.ts';
import type { ReplacementPolicy } from '#domain/decision.ts';
import { policyRequest, writtenRequest } from '#contract/requests/requests.ts';
import { day as dayOf } from '#units/day.ts';
import { idOf } from '#domain/identity.ts';
import type { Serving } from '../serving.ts';
import { capacityWindow } from '../windows/capacity-window.ts';
import { crossingWindow } from '../windows/crossing-window.ts';
import { recordWindow } from '../windows/record-window.ts';
import { roadWindow } from '../windows/road-window.ts';
import { sheetWindow } from '../windows/sheet-window.ts';
import { writtenWindow } from '../windows/written-window.ts';
import { withBody, withPerson } from '../with-house.ts';

const PERSON = ':person';

export const peopleRoutes = (app: Hono, serving: Serving): void => {
  app.get(
    ROUTES.sheet(PERSON),
    withPerson(serving, (context, { snapshot, known, road }) => context.json(sheetWindow(snapshot, known, road))),
  );
  app.get(
    ROUTES.road(PERSON),
    withPerson(serving, (context, { snapshot, known }) => context.json(roadWindow(snapshot, known))),
  );
  app.get(
    ROUTES.capacity(PERSON),
    withPerson(serving, (context, { snapshot, known }) => context.json(capacityWindow(snapshot, known))),
  );
  app.get(
    ROUTES.crossing(PERSON),
    withPerson(serving, (context, { snapshot, known }) =>
      context.json(crossingWindow(snapshot, known, context.req.query('exercise') ?? null, policyLookedAt(context))),
    ),
  );
  app.get(
    ROUTES.record(PERSON),
    withPerson(serving, (context, { snapshot, known }) => context.json(recordWindow(snapshot, known))),
  );
  app.post(
    ROUTES.written(PERSON),
    withPerson(serving, (context, { known, road }) =>
      withBody(context, writtenRequest, ({ track, day, line }) =>
        context.json(writtenWindow(known, road, { track: idOf(track), day: dayOf(day), line })),
      ),
    ),
  );
};

/** `?policy=whole` or `?policy=0.8` looks at a policy that nobody has signed. */
const policyLookedAt = (context: Context): ReplacementPolicy | null => {
  const asked = context.req.query('policy');
  if (asked === undefined) return null;
  const { success, data } = policyRequest.shape.policy.safeParse(/^\d/.test(asked) ? { share: Number(asked) } : asked);
  return success ? data : null;
};
