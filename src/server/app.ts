import { Hono } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import { ROUTES } from '#contract/routes.ts';
import { LIMITS } from '#interchange/reading/limits.ts';
import { refuse } from './replies.ts';
import { bringInRoutes } from './routes/bring-in.ts';
import { cardRoutes } from './routes/cards.ts';
import { cellRoutes } from './routes/cells.ts';
import { reMakingRoutes } from './routes/re-making.ts';
import { decisionRoutes } from './routes/decisions.ts';
import { factRoutes } from './routes/facts.ts';
import { houseRoutes } from './routes/house.ts';
import { keepingRoutes } from './routes/keeping.ts';
import { assets, pageRoutes } from './routes/pages.ts';
import { peopleRoutes } from './routes/people.ts';
import { programmeRoutes } from './routes/programmes.ts';
import { secondStart } from './routes/second-start.ts';
import { startRoutes } from './routes/start.ts';
import { guardedHeaders } from './security/content-policy.ts';
import { keyHoldersOnly, TOKEN, tokenForCookie } from './security/key-holders.ts';
import { makeKeys } from './security/keys.ts';
import { countRefusals, type Refusals } from './security/refusals.ts';
import { samePlaceOnly } from './security/same-place.ts';
import type { Serving, Surroundings } from './serving.ts';
import { oneHouse } from './one-house.ts';

export interface App {
  readonly fetch: Hono['fetch'];
  readonly request: Hono['request'];
  /** The address that lets one browser in, once. */
  readonly newAddress: () => string;
  readonly openHouse: Serving['openHouse'];
  readonly house: Serving['house'];
  readonly refusals: Refusals['counts'];
}

const MEGABYTE = 1024 * 1024;
const LARGEST_REQUEST = MEGABYTE;

/** The program's answers to a browser on the same machine. */
export const makeApp = (surroundings: Surroundings): App => {
  const app = new Hono();
  const refusals = countRefusals();
  const keys = makeKeys(surroundings.newSecret);
  const serving: Serving = { surroundings, ...oneHouse(surroundings.open) };
  app.onError((error, context) => {
    surroundings.complain(faultOf(error, context.req.method, context.req.routePath));
    return refuse(context, 500, ourFault());
  });
  app.use(guardedHeaders, samePlaceOnly(surroundings.origin, refusals));
  app.use(assets(surroundings), tokenForCookie(keys, surroundings.cookieName, refusals));
  secondStart(app, surroundings, () => `${surroundings.origin()}/?${TOKEN}=${keys.newToken()}`);
  app.use(keyHoldersOnly(keys, surroundings.cookieName, refusals));
  app.use('/api/*', sizeLimit(refusals));
  for (const routes of ROUTE_FILES) routes(app, serving);
  pageRoutes(app, surroundings);
  return {
    fetch: app.fetch,
    request: app.request,
    newAddress: () => `${surroundings.origin()}/?${TOKEN}=${keys.newToken()}`,
    openHouse: serving.openHouse,
    house: serving.house,
    refusals: refusals.counts,
  };
};

const ROUTE_FILES = [
  startRoutes,
  houseRoutes,
  peopleRoutes,
  cardRoutes,
  decisionRoutes,
  cellRoutes,
  reMakingRoutes,
  programmeRoutes,
  factRoutes,
  bringInRoutes,
  keepingRoutes,
] as const;

const sizeLimit = (refusals: Refusals) => {
  const limitTo = (maxSize: number) =>
    bodyLimit({
      maxSize,
      onError: (context) => {
        refusals.count('too large');
        return refuse(context, 413, tooLarge(maxSize));
      },
    });
  const [file, other] = [limitTo(LIMITS.bytes), limitTo(LARGEST_REQUEST)];
  return (...[context, next]: Parameters<typeof file>) =>
    (context.req.path === ROUTES.bringInRead ? file : other)(context, next);
};

/** Name and place of a fault, never its message: a message may quote what somebody typed. */
const faultOf = (error: Error, method: string, route: string): string => {
  const frames = (error.stack ?? '').split('\n').filter((line) => /^\s+at /.test(line));
  return [`${error.name} at ${method} ${route}`, ...frames].join('\n');
};

const ourFault = () => ({
  what: 'The program made a mistake.',
  why: 'This should not happen; nothing was written.',
  whatToDo:
    'Load the page again. If it happens again, send what the terminal shows to whoever looks after the program.',
  field: null,
});

const tooLarge = (most: number) => ({
  what: `That is more than ${Math.round(most / MEGABYTE)} MB.`,
  why: 'Nothing that belongs here is so large.',
  whatToDo: 'Send less at once.',
  field: null,
});
