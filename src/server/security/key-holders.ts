import type { MiddlewareHandler } from 'hono';
import { getCookie, setCookie } from 'hono/cookie';
import { refuse } from '../replies.ts';
import type { Keys } from './keys.ts';
import type { Refusals } from './refusals.ts';

export const TOKEN = 'token';

/** Swaps a one-time token in the address for a cookie, by a redirect that drops it from the address. */
export const tokenForCookie =
  (keys: Keys, cookieName: string, refusals: Refusals): MiddlewareHandler =>
  async (context, next) => {
    const token = context.req.query(TOKEN);
    if (token === undefined || context.req.method !== 'GET' || context.req.path.startsWith('/api/')) return next();
    const spent = keys.spend(token);
    if (spent) setCookie(context, cookieName, spent.sessionKey, { httpOnly: true, sameSite: 'Strict', path: '/' });
    else refusals.count('spent token');
    return context.redirect(context.req.path, 303);
  };

/** Lets in who holds the session's key. Assets hold nothing of anybody and need none. */
export const keyHoldersOnly =
  (keys: Keys, cookieName: string, refusals: Refusals): MiddlewareHandler =>
  async (context, next) => {
    if (keys.isSessionKey(getCookie(context, cookieName) ?? '')) return next();
    refusals.count('no key');
    if (context.req.path.startsWith('/api/')) return refuse(context, 401, noKey());
    return context.html(LOCKED_PAGE, 401);
  };

const noKey = () => ({
  what: 'This browser has no key.',
  why: 'The address that was printed lets one browser in, once.',
  whatToDo: 'Start the program again: it opens the one that is running.',
  field: null,
});

const LOCKED_PAGE = `<!doctype html><html lang="en"><meta charset="utf-8"><title>Ballast: no key</title>
<h1>This browser has no key.</h1>
<p>The address that was printed lets one browser in, once. Start the program again: it opens the one that is running.</p>
</html>`;
