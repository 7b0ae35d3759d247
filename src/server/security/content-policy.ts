import type { MiddlewareHandler } from 'hono';

/** Nothing but what this program sends, and scripts only with the nonce of their page. */
export const contentPolicy = (nonce: string): string =>
  [
    "default-src 'none'",
    `script-src 'self' 'nonce-${nonce}'`,
    `style-src 'self' 'nonce-${nonce}'`,
    "font-src 'self'",
    "img-src 'self'",
    "connect-src 'self'",
    "manifest-src 'self'",
    "base-uri 'none'",
    "form-action 'none'",
    "frame-ancestors 'none'",
  ].join('; ');

/** On every answer; a page replaces the policy by its own with its nonce. */
export const guardedHeaders: MiddlewareHandler = async (context, next) => {
  await next();
  const { headers } = context.res;
  if (!headers.has('content-security-policy'))
    headers.set('content-security-policy', "default-src 'none'; frame-ancestors 'none'");
  headers.set('x-content-type-options', 'nosniff');
  headers.set('referrer-policy', 'no-referrer');
  headers.set('cross-origin-opener-policy', 'same-origin');
  headers.set('cross-origin-resource-policy', 'same-origin');
  if (!headers.has('cache-control')) headers.set('cache-control', 'no-store');
};
