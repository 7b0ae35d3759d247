import type { Draft, Fact, FactBody, Sequence } from '#domain/fact.ts';
import type { Instant } from '#domain/identity.ts';
import { endOfLog, enterInLog } from '#domain/log.ts';
import { factNamed, type Moment, type ScriptEntry } from './script/script-entry.ts';

/** Drafts that were written at one moment, all or none. */
export interface Writing {
  readonly at: Instant;
  readonly drafts: readonly Draft[];
}

/** The scenario's log as it grows: what was written, and the facts that it makes in an empty log. */
export interface Chronicle {
  readonly writings: readonly Writing[];
  readonly log: readonly Fact[];
}

/** A log under way: writes at the end, and is read at any time. */
export interface Pen {
  readonly write: (at: Instant, drafts: readonly Draft[]) => readonly Fact[];
  readonly log: () => readonly Fact[];
  readonly seen: () => Sequence;
  readonly finished: () => Chronicle;
}

export const pen = (): Pen => {
  const writings: Writing[] = [];
  const log: Fact[] = [];
  const write = (at: Instant, drafts: readonly Draft[]): readonly Fact[] => {
    if (drafts.length === 0) return [];
    writings.push({ at, drafts });
    const facts = logWith(log, drafts, at).slice(log.length);
    log.push(...facts);
    return facts;
  };
  return { write, log: () => log, seen: () => endOfLog(log), finished: () => ({ writings, log }) };
};

export const draftNamed = (
  name: string,
  recordedBy: Draft['recordedBy'],
  body: FactBody,
  correction: Pick<Draft, 'supersedes' | 'reason'> = { supersedes: null, reason: null },
): Draft => ({ id: factNamed(name), body, recordedBy, ...correction });

const draftOfEntry = (entry: ScriptEntry, seen: Sequence): Draft =>
  draftNamed(entry.name, entry.by, entry.body(seen), {
    supersedes: entry.supersedes === null ? null : factNamed(entry.supersedes),
    reason: entry.reason,
  });

/**
 * Entries of one moment are one writing: what was brought in together stands together. What they entail is worked out on the
 * log as it will stand with them, and stands in the same writing.
 */
export const writeTogether = (
  into: Pen,
  entries: Moment,
  entailed: (log: readonly Fact[]) => readonly Draft[] = () => [],
): readonly Fact[] => {
  const { at } = entries[0];
  const drafts = entries.map((entry) => draftOfEntry(entry, into.seen()));
  return into.write(at, [...drafts, ...entailed(logWith(into.log(), drafts, at))]);
};

const logWith = (log: readonly Fact[], drafts: readonly Draft[], at: Instant): readonly Fact[] => [
  ...log,
  ...drafts.map((draft, place) => enterInLog(draft, (endOfLog(log) + 1 + place) as Sequence, at)),
];
