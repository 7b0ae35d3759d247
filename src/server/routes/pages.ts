import type { Hono, MiddlewareHandler } from 'hono';
import type { Surroundings } from '../serving.ts';
import { contentPolicy } from '../security/content-policy.ts';
import { refuse } from '../replies.ts';

/** Built files carry a digest in their names: they may be kept as long as anybody likes. */
const FOR_EVER = 'public, max-age=31536000, immutable';

/** Scripts, styles and fonts. They hold nothing of anybody and come before the key is asked for. */
export const assets =
  ({ asset }: Surroundings): MiddlewareHandler =>
  async (context, next) => {
    if (context.req.method !== 'GET' || !isFileName(context.req.path)) return next();
    const found = asset(context.req.path);
    if (!found) return context.text('There is no such file.', 404);
    const { path } = context.req;
    return context.body(found.bytes, 200, {
      'content-type': found.type,
      'cache-control': path.startsWith('/assets/') ? FOR_EVER : 'no-cache',
    });
  };

const isFileName = (path: string): boolean => !path.startsWith('/api/') && /\.[a-z0-9]+$/i.test(path);

/** Every other address is a page of the one application, sent with a nonce of its own. */
export const pageRoutes = (app: Hono, { page, newSecret }: Surroundings): void => {
  app.get('*', (context) => {
    if (context.req.path.startsWith('/api/')) return refuse(context, 404, noSuchAddress());
    const text = page();
    if (text === null) return context.text('The pages have not been built.', 404);
    const nonce = newSecret();
    context.header('content-security-policy', contentPolicy(nonce));
    return context.html(text.replaceAll('__NONCE__', nonce));
  });
  app.all('*', (context) => refuse(context, 404, noSuchAddress()));
};

const noSuchAddress = () => ({
  what: 'The program has no such address.',
  why: 'Page and program are perhaps of different versions.',
  whatToDo: 'Load the page again.',
  field: null,
});
