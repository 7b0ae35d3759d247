import { createHash, timingSafeEqual } from 'node:crypto';

/** Who may come in: a token opens once, the session's key as long as the program runs. */
export interface Keys {
  readonly newToken: () => string;
  /** Spends a token. Null where it is none, or was spent. */
  readonly spend: (token: string) => { readonly sessionKey: string } | null;
  readonly isSessionKey: (given: string) => boolean;
}

/** Tokens printed and never used pile up; the oldest are forgotten. */
const MOST_TOKENS = 16;

export const makeKeys = (newSecret: () => string): Keys => {
  const sessionKey = newSecret();
  const tokens: string[] = [];
  return {
    newToken: () => {
      const token = newSecret();
      tokens.push(token);
      if (tokens.length > MOST_TOKENS) tokens.shift();
      return token;
    },
    spend: (given) => {
      const place = tokens.findIndex((token) => isSame(token, given));
      if (place < 0) return null;
      tokens.splice(place, 1);
      return { sessionKey };
    },
    isSessionKey: (given) => isSame(given, sessionKey),
  };
};

/** Compares without telling by its time how much was right. */
export const isSame = (a: string, b: string): boolean => timingSafeEqual(digest(a), digest(b));

const digest = (text: string): Buffer => createHash('sha256').update(text).digest();
