import { parseFact } from '#contract/facts/parse-fact.ts';
import { canonicalJson } from '#domain/digest.ts';
import type { Fact } from '#domain/fact.ts';
import { personOf } from '#domain/known.ts';
import { createHash } from 'node:crypto';
import type { LogRow } from './log-table.ts';

/** A fact as it stands in the table. */
export const rowOfFact = (fact: Fact): LogRow => {
  const { digest, ...content } = fact;
  return { ...columnsOf(fact), content: canonicalJson(content), digest };
};

const columnsOf = (fact: Fact): Omit<LogRow, 'content' | 'digest'> => ({
  sequence: fact.sequence,
  id: fact.id,
  kind: fact.kind,
  person_id: personOf(fact),
  audience: JSON.stringify(fact.audience),
  supersedes: fact.supersedes,
  reason: fact.reason,
  recorded_at: fact.recordedAt,
  recorded_by: fact.recordedBy,
});

export type RowReading =
  { readonly kind: 'fact'; readonly fact: Fact } | { readonly kind: 'damaged'; readonly says: string };

const damaged = (says: string): RowReading => ({ kind: 'damaged', says });

/**
 * Reads a row: the digest must belong to its content, the content must fit the schema, and every column must say what
 * the content says. The digest is taken of the text as it stands, without making it canonical anew: only the text that
 * was digested has this digest.
 */
export const factOfRow = (row: LogRow): RowReading => {
  if (createHash('sha256').update(row.content, 'utf8').digest('hex') !== row.digest)
    return damaged('its digest belongs to other content');
  const json = recordOf(row.content);
  if (json === null) return damaged('its content is no record');
  const reading = parseFact({ ...json, digest: row.digest });
  if (reading.kind === 'refused') return damaged(reading.issues[0]?.what ?? 'its content does not fit');
  const differing = Object.entries(columnsOf(reading.fact)).find(
    ([column, value]) => row[column as keyof LogRow] !== value,
  );
  return differing ? damaged(`its column ${differing[0]} does not say what its content says`) : reading;
};

const recordOf = (text: string): object | null => {
  try {
    const json: unknown = JSON.parse(text);
    return typeof json === 'object' ? json : null;
  } catch {
    return null;
  }
};
