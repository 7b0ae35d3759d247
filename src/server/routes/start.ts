import type { Context, Hono } from 'hono';
import { openRequest, type OpenRequest } from '#contract/requests/requests.ts';
import { ROUTES } from '#contract/routes.ts';
import type { StartWindow } from '#contract/windows/house-window.ts';
import { startEmpty } from '#actions/start-log.ts';
import { refuse, reply } from '../replies.ts';
import type { Serving } from '../serving.ts';
import { withBody } from '../with-house.ts';

export const startRoutes = (app: Hono, serving: Serving): void => {
  app.get(ROUTES.start, (context) => context.json(startWindow(serving)));
  app.post(ROUTES.start, (context) => withBody(context, openRequest, (body) => open(context, serving, body)));
};

const startWindow = ({ house, surroundings }: Serving): StartWindow => {
  const open = house();
  const isStarted = open !== null && open.workplace.store.facts().length > 0;
  return {
    state: open === null ? 'choose' : isStarted ? 'open' : 'name the signer',
    about: open?.workplace.store.about.kind ?? null,
    existing: surroundings.existing(),
    trouble: null,
  };
};

const open = async (context: Context, serving: Serving, { which, signerName }: OpenRequest): Promise<Response> => {
  const opened = await serving.openHouse(which);
  if (opened.kind === 'trouble') return refuse(context, 422, opened.problem);
  const { house } = opened;
  if (house.workplace.store.facts().length > 0) return context.json(startWindow(serving));
  return signerName === null
    ? context.json(startWindow(serving))
    : reply(context, await startEmpty(house.workplace, signerName), () => startWindow(serving));
};
