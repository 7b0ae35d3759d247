import type { Draft, Fact, FactBody } from '#domain/fact.ts';
import { idOf, instant, type Instant } from '#domain/identity.ts';
import { day, isoDay } from '#units/day.ts';
import { entered } from '#units/entered.ts';
import type { LogStore } from './log-store.ts';
import type { OpenResult } from './open-log.ts';
import type { Transacted } from './transaction.ts';

export const NOW = '2027-03-01T10:00:00.000Z';
export const testClock = (): Instant => instant(NOW);

export const SPECIALIST = idOf<'signer'>('ingrid');

export const signing: FactBody = {
  kind: 'signs',
  signer: { id: SPECIALIST, name: 'Ingrid Solberg', role: 'specialist', signsFor: null, from: null, until: null },
};

export const weighing = (kilograms: number): FactBody => ({
  kind: 'measured',
  person: idOf<'person'>('marit-lund'),
  day: isoDay('2027-02-20'),
  what: 'body mass',
  value: entered(String(kilograms), 'kg'),
});

export const noting = (text: string): FactBody => ({
  kind: 'noted',
  person: idOf<'person'>('marit-lund'),
  day: day(20_000),
  card: null,
  item: null,
  text,
});

export const draft = (id: string, body: FactBody, more: Partial<Draft> = {}): Draft => ({
  id: idOf<'fact'>(id),
  body,
  recordedBy: SPECIALIST,
  supersedes: null,
  reason: null,
  ...more,
});

export const correcting = (id: string, corrected: string, body: FactBody, reason: string | null = 'mistyped'): Draft =>
  draft(id, body, { supersedes: idOf<'fact'>(corrected), reason });

export const mustOpen = async (opening: Promise<OpenResult>): Promise<LogStore> => {
  const result = await opening;
  if (result.kind !== 'opened') throw new Error(`not opened: ${JSON.stringify(result)}`);
  return result.store;
};

/** Writes drafts in one transaction. */
export const enter = (store: LogStore, ...drafts: readonly Draft[]): Promise<Transacted<null>> =>
  store.transact(() => ({ kind: 'drafts', drafts, result: null }));

export const mustEnter = async (store: LogStore, ...drafts: readonly Draft[]): Promise<readonly Fact[]> => {
  const result = await enter(store, ...drafts);
  if (result.kind !== 'committed') throw new Error(`not written: ${JSON.stringify(result)}`);
  return result.facts;
};
