import { bodySeenBy } from '#domain/audience.ts';
import { canonicalJson } from '#domain/digest.ts';
import type { Audience, Envelope, Fact, FactBody, FactKind } from '#domain/fact.ts';
import type { FactId, Instant, PersonId } from '#domain/identity.ts';
import { personOf } from '#domain/known.ts';
import { isOfEnvelope } from './facts/envelope.schema.ts';

/** A fact as an audience may read it. */
export interface ExportedFact extends Envelope {
  readonly body: FactBody;
  /** Something was cut out for this audience: the digest belongs to the whole fact. */
  readonly cut: boolean;
  /** False where a later fact corrects it or takes it back, even one that this audience may not see. */
  readonly stands: boolean;
}

/** Everything in a log that one audience may see. */
export interface LogExport {
  readonly document: 'ballast export';
  readonly version: 1;
  readonly audience: Audience;
  readonly madeAt: Instant;
  readonly database: { readonly id: string; readonly kind: 'scenario' | 'own' };
  readonly reveals: Reveals;
  readonly facts: readonly ExportedFact[];
}

/** What an export gives away, listed before it is made. */
export interface Reveals {
  readonly audience: Audience;
  /** How many facts of each kind, the most frequent first. */
  readonly counts: readonly { readonly kind: FactKind; readonly facts: number }[];
  /** Facts that this audience may not see at all. */
  readonly withheld: number;
  /** Facts from which something is cut out. */
  readonly cut: number;
  readonly people: number;
}

export interface Exporting {
  readonly audience: Audience;
  readonly madeAt: Instant;
  readonly database: { readonly id: string; readonly kind: 'scenario' | 'own' };
}

export const exportFor = (log: readonly Fact[], { audience, madeAt, database }: Exporting): LogExport => ({
  document: 'ballast export',
  version: 1,
  audience,
  madeAt,
  database,
  reveals: exportReveals(log, audience),
  facts: exportedFacts(log, audience),
});

export const exportReveals = (log: readonly Fact[], audience: Audience): Reveals => {
  const exported = exportedFacts(log, audience);
  const shown = new Set(exported.map(({ id }) => id));
  const counts = new Map<FactKind, number>();
  for (const { body } of exported) counts.set(body.kind, (counts.get(body.kind) ?? 0) + 1);
  return {
    audience,
    counts: [...counts].map(([kind, facts]) => ({ kind, facts })).sort((a, b) => b.facts - a.facts),
    withheld: log.length - exported.length,
    cut: exported.filter(({ cut }) => cut).length,
    people: new Set<PersonId>(log.flatMap((fact) => (shown.has(fact.id) ? (personOf(fact) ?? []) : []))).size,
  };
};

const exportedFacts = (log: readonly Fact[], audience: Audience): readonly ExportedFact[] => {
  const superseded = new Set<FactId>(log.flatMap((fact) => fact.supersedes ?? []));
  return log.flatMap((fact) => {
    const seen = bodySeenBy(fact, audience);
    return seen ? [exportedFact(fact, seen, !superseded.has(fact.id) && fact.kind !== 'retracted')] : [];
  });
};

const exportedFact = (fact: Fact, seen: FactBody, stands: boolean): ExportedFact => ({
  id: fact.id,
  sequence: fact.sequence,
  recordedAt: fact.recordedAt,
  recordedBy: fact.recordedBy,
  audience: fact.audience,
  supersedes: fact.supersedes,
  reason: fact.reason,
  digest: fact.digest,
  body: bodyAlone(seen),
  cut: seen !== fact && canonicalJson(seen) !== canonicalJson(fact),
  stands,
});

/** The domain's fact carries envelope and body side by side; a reader of a file is told them apart. */
const bodyAlone = (seen: FactBody): FactBody =>
  Object.fromEntries(Object.entries(seen).filter(([key]) => !isOfEnvelope(key))) as unknown as FactBody;
