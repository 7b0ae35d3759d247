import { AUDIENCES, type Envelope } from '#domain/fact.ts';
import type { FactId, SignerId } from '#domain/identity.ts';
import type { z } from 'zod';
import { record } from './record.schema.ts';
import { choice, listUpTo } from './lists.schema.ts';
import { placeInLog } from './numbers.schema.ts';
import { digest, identity, moment, sentence } from './texts.schema.ts';

/** What whoever writes a fact says beside its body. */
const written = {
  id: identity<FactId>(),
  recordedBy: identity<SignerId>(),
  supersedes: identity<FactId>().nullable(),
  reason: sentence.nullable(),
};

export const draftEnvelopeSchema = record(written);

/** What the log keeps beside a fact's body. */
export const envelopeSchema = record({
  ...written,
  sequence: placeInLog,
  recordedAt: moment,
  audience: listUpTo(AUDIENCES.length, choice(AUDIENCES)),
  digest,
}) satisfies z.ZodType<Envelope>;

const NAMES: Readonly<Record<keyof Envelope, true>> = {
  id: true,
  sequence: true,
  recordedAt: true,
  recordedBy: true,
  audience: true,
  supersedes: true,
  reason: true,
  digest: true,
};

/** Is this the name of a field of the envelope, not of the body? */
export const isOfEnvelope = (key: string): boolean => Object.hasOwn(NAMES, key);
