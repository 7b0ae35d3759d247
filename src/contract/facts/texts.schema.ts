import { instant, type Digest, type Instant } from '#domain/identity.ts';
import { z } from 'zod';

/** U+0000 ends a text for the database, a lone surrogate has no UTF-8 and no canonical JSON. */
// eslint-disable-next-line no-control-regex -- U+0000 is what is looked for
const NOT_STORABLE = /[\u0000\uD800-\uDFFF]/u;

const text = (rule: string, holds: (text: string) => boolean) =>
  z
    .string({ error: rule })
    .refine((given) => !NOT_STORABLE.test(given), {
      error: 'text without the character U+0000 and without half characters (lone surrogates)',
      abort: true,
    })
    .refine(holds, { error: rule });

/** A text that may be empty. */
export const textUpTo = (most: number) => text(`text of at most ${most} characters`, (given) => given.length <= most);

/** A text that says something. */
export const wordsUpTo = (most: number) =>
  text(`text of 1 to ${most} characters`, (given) => given.trim() !== '' && given.length <= most);

const LONGEST_IDENTITY = 200;

/** The one place where a text takes on a brand of the domain. */
const branded = <Brand extends string>(schema: z.ZodType<string>): z.ZodType<Brand> =>
  schema as unknown as z.ZodType<Brand>;

/** An identity of whatever kind the domain asks for. */
export const identity = <Id extends string>(): z.ZodType<Id> =>
  branded<Id>(
    text(
      `an identity of 1 to ${LONGEST_IDENTITY} characters`,
      (given) => given !== '' && given.length <= LONGEST_IDENTITY,
    ),
  );

export const digest = branded<Digest>(
  text('a SHA-256 digest of 64 hexadecimal characters', (given) => /^[0-9a-f]{64}$/.test(given)),
);

const isInstant = (given: string): boolean => {
  try {
    return !Number.isNaN(Date.parse(instant(given)));
  } catch {
    return false;
  }
};

export const moment = branded<Instant>(text('a moment in UTC such as 2026-11-25T10:18:19.123Z', isInstant));

/** A name as it is shown. */
export const name = wordsUpTo(200);
/** A sentence or a reason. */
export const sentence = wordsUpTo(4000);
/** A sentence that may be missing. */
export const sentenceOrNone = textUpTo(4000);
/** What was written beside a session, verbatim. */
export const note = wordsUpTo(10_000);
