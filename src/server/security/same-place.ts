import type { MiddlewareHandler } from 'hono';
import { refuse } from '../replies.ts';
import type { Refusals } from './refusals.ts';

/** Addresses of this machine under which the program answers. Another name that leads here is a trick. */
const hostsOf = (origin: string): readonly string[] => {
  const { host, port } = new URL(origin);
  return [host, `localhost:${port}`, `127.0.0.1:${port}`];
};

const CHANGES_NOTHING = ['GET', 'HEAD'];

/** Turns away requests for another host and requests that another page sends. */
export const samePlaceOnly =
  (origin: () => string, refusals: Refusals): MiddlewareHandler =>
  async (context, next) => {
    const hosts = hostsOf(origin());
    if (!hosts.includes(context.req.header('host') ?? '')) {
      refusals.count('wrong host');
      return refuse(context, 421, wrongHost());
    }
    const from = context.req.header('origin');
    const isOurs = from !== undefined && hosts.some((host) => from === `http://${host}`);
    const isAllowed = from === undefined ? CHANGES_NOTHING.includes(context.req.method) : isOurs;
    const site = context.req.header('sec-fetch-site') ?? 'same-origin';
    const isFromElsewhere = site === 'cross-site' && context.req.path.startsWith('/api/');
    if (!isAllowed || isFromElsewhere) {
      refusals.count('other origin');
      return refuse(context, 403, otherOrigin());
    }
    return next();
  };

const wrongHost = () => ({
  what: 'This address does not belong to the program.',
  why: 'It answers only under the address that it printed.',
  whatToDo: 'Use the address that was printed at its start.',
  field: null,
});

const otherOrigin = () => ({
  what: 'Another page sent this request.',
  why: 'Only the pages of this program may ask it for anything.',
  whatToDo: 'Close the other page.',
  field: null,
});
