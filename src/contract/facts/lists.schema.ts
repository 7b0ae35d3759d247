import { z } from 'zod';

/** A list of at most so many entries. */
export const listUpTo = <Entry extends z.ZodType>(most: number, entry: Entry) => {
  const rule = `a list of at most ${most} entries`;
  return z.array(entry, { error: rule }).max(most, { error: rule });
};

export const choice = <const Word extends string>(words: readonly [Word, ...Word[]]) =>
  z.enum(words, { error: oneOf(words) });

/** What is said where a record is of none of these variants, or is no record. */
export const variantOf =
  (words: readonly string[]) =>
  (issue: { readonly code: string }): string =>
    issue.code === 'invalid_union' ? oneOf(words) : 'a record of named fields';

const oneOf = (words: readonly string[]): string => `one of ${words.map((word) => `"${word}"`).join(', ')}`;
