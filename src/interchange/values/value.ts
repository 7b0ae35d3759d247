import type { Said } from '../place.ts';

/** What a cell gave: a value, nothing (or a word for nothing), or something that is no such value. */
export type Value<Kind> =
  | { readonly kind: 'value'; readonly value: Kind }
  | { readonly kind: 'blank' }
  /** A question decides how it is read, and is not answered yet. */
  | { readonly kind: 'open' }
  | { readonly kind: 'wrong'; readonly said: Said };

export const valued = <Kind>(value: Kind): Value<Kind> => ({ kind: 'value', value });
export const BLANK_VALUE: Value<never> = { kind: 'blank' };
export const OPEN_VALUE: Value<never> = { kind: 'open' };
export const wrong = (what: string, why: string, whatToDo: string): Value<never> => ({
  kind: 'wrong',
  said: { what, why, whatToDo },
});

/** What people write into a cell in which nothing was measured. */
const NOTHING = /^(?:[-–—.]+|n\.?\s?\/?\s?a\.?|nil|none|not tested|not done|not taken|dnt|dnp|dns|tbd|no test)$/i;

export const saysNothing = (text: string): boolean => text === '' || NOTHING.test(text);
