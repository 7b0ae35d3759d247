import { isOfEnvelope } from '#contract/facts/envelope.schema.ts';
import { parseFact } from '#contract/facts/parse-fact.ts';
import type { Fact } from '#domain/fact.ts';
import { personOf } from '#domain/known.ts';
import { expectedDigest } from '#domain/log.ts';
import type { LogRow } from './log-table.ts';

/** A fact as it stands in the table. */
export const rowOfFact = (fact: Fact): LogRow => ({
  sequence: fact.sequence,
  id: fact.id,
  kind: fact.kind,
  person_id: personOf(fact),
  audience: JSON.stringify(fact.audience),
  supersedes: fact.supersedes,
  reason: fact.reason,
  body: JSON.stringify(Object.fromEntries(Object.entries(fact).filter(([key]) => !isOfEnvelope(key)))),
  recorded_at: fact.recordedAt,
  recorded_by: fact.recordedBy,
  digest: fact.digest,
});

export type RowReading =
  { readonly kind: 'fact'; readonly fact: Fact } | { readonly kind: 'damaged'; readonly says: string };

/** Reads a row; its body must fit the schema, and its digest and every column must belong to it. */
export const factOfRow = (row: LogRow): RowReading => {
  const json = jsonOfRow(row);
  if (json === null) return { kind: 'damaged', says: 'its body is no JSON' };
  const reading = parseFact(json);
  if (reading.kind === 'refused') return { kind: 'damaged', says: reading.issues[0]?.what ?? 'its body does not fit' };
  const { fact } = reading;
  if (expectedDigest(fact) !== fact.digest) return { kind: 'damaged', says: 'its digest belongs to other content' };
  if (row.kind !== fact.kind || row.person_id !== personOf(fact))
    return { kind: 'damaged', says: 'its kind or person is not that of its body' };
  return { kind: 'fact', fact };
};

const jsonOfRow = (row: LogRow): unknown => {
  try {
    const body: unknown = JSON.parse(row.body);
    return {
      ...(body as object),
      id: row.id,
      sequence: row.sequence,
      recordedAt: row.recorded_at,
      recordedBy: row.recorded_by,
      audience: JSON.parse(row.audience) as unknown,
      supersedes: row.supersedes,
      reason: row.reason,
      digest: row.digest,
    };
  } catch {
    return null;
  }
};
