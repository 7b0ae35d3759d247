import type { Decision } from '#domain/decision.ts';
import type { FactBody, Sequence } from '#domain/fact.ts';
import { idOf, type FactId, type Instant, type SignerId } from '#domain/identity.ts';
import { drawnIdentity, randomStream } from '../random.ts';

/** One fact of the scenario that waits for its moment. */
export interface ScriptEntry {
  /** Unique; the fact's identity is drawn from it. */
  readonly name: string;
  readonly at: Instant;
  readonly by: SignerId;
  /** The name of the entry that this one corrects. */
  readonly supersedes: string | null;
  readonly reason: string | null;
  /** A decision says what its signer saw; other facts do not look. */
  readonly body: (seen: Sequence) => FactBody;
}

/** Entries of one moment. */
export type Moment = readonly [ScriptEntry, ...ScriptEntry[]];

const CORRECTS_NOTHING = { supersedes: null, reason: null };

export const entry = (name: string, at: Instant, by: SignerId, body: FactBody): ScriptEntry => ({
  name,
  at,
  by,
  ...CORRECTS_NOTHING,
  body: () => body,
});

export const decision = (name: string, at: Instant, by: SignerId, decided: Decision): ScriptEntry => ({
  name,
  at,
  by,
  ...CORRECTS_NOTHING,
  body: (seen) => ({ kind: 'decided', decision: decided, answers: null, basis: seen }),
});

/** The same entry as a correction of an earlier one. */
export const correcting = (supersedes: string, reason: string, correction: ScriptEntry): ScriptEntry => ({
  ...correction,
  supersedes,
  reason,
});

/** The identity of the fact that an entry of this name becomes. */
export const factNamed = (name: string): FactId => idOf(drawnIdentity(randomStream(0, `fact ${name}`)));
