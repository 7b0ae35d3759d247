import { bodySeenBy } from '#domain/audience.ts';
import { personOf } from '#domain/known.ts';
import type { Audience, Fact, FactBody, FactKind } from '#domain/fact.ts';
import type { Instant } from '#domain/identity.ts';

/** Everything that an audience may see, as one document that says for whom it was made. */
export interface FactExport {
  readonly document: 'ballast export';
  readonly version: 1;
  readonly madeFor: Audience;
  readonly madeAt: Instant;
  readonly database: string;
  readonly about: 'scenario' | 'own';
  readonly facts: readonly ExportedFact[];
}

type ExportedFact = FactBody &
  Pick<Fact, 'id' | 'sequence' | 'recordedAt' | 'recordedBy' | 'supersedes' | 'reason' | 'audience'> & {
    /** Digest of the fact as it stands in the log; where something was cut out, it is not that of what is here. */
    readonly digest: Fact['digest'];
    readonly cut: boolean;
  };

export const exportFacts = (
  log: readonly Fact[],
  madeFor: Audience,
  from: { readonly database: string; readonly about: 'scenario' | 'own'; readonly madeAt: Instant },
): FactExport => ({
  document: 'ballast export',
  version: 1,
  madeFor,
  madeAt: from.madeAt,
  database: from.database,
  about: from.about,
  facts: log.flatMap((fact) => {
    const seen = bodySeenBy(fact, madeFor);
    return seen ? [{ ...fact, ...seen, cut: seen !== fact }] : [];
  }),
});

export interface Reveals {
  readonly audience: Audience;
  readonly facts: number;
  readonly people: number;
  readonly kinds: readonly { readonly kind: FactKind; readonly count: number }[];
  /** How many restrictions go out without their medical reason. */
  readonly reasonsCutOut: number;
}

/** What an export reveals, said before it is made. */
export const exportReveals = (log: readonly Fact[], audience: Audience): Reveals => {
  const seen = log.filter((fact) => bodySeenBy(fact, audience) !== null);
  const counts = new Map<FactKind, number>();
  for (const { kind } of seen) counts.set(kind, (counts.get(kind) ?? 0) + 1);
  return {
    audience,
    facts: seen.length,
    people: new Set(seen.flatMap((fact) => personOf(fact) ?? [])).size,
    kinds: [...counts].map(([kind, count]) => ({ kind, count })),
    reasonsCutOut:
      audience === 'physician'
        ? 0
        : seen.filter((fact) => fact.kind === 'restricted' && fact.medicalReason !== null).length,
  };
};
