import type { Hono } from 'hono';
import { isSame } from '../security/keys.ts';
import type { Surroundings } from '../serving.ts';

export const SECOND_START = '/second-start';
export const SECRET_HEADER = 'x-ballast-start';

/** A second start of the program, which can read the first one's private file, gets a fresh address from it. */
export const secondStart = (app: Hono, { startSecret }: Surroundings, newAddress: () => string): void => {
  app.post(SECOND_START, (context) =>
    isSame(context.req.header(SECRET_HEADER) ?? '', startSecret)
      ? context.json({ address: newAddress() })
      : context.text('That is not the secret.', 403),
  );
};
