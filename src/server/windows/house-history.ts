import { canonicalJson } from '#domain/digest.ts';
import type { Fact } from '#domain/fact.ts';
import type { FactId } from '#domain/identity.ts';
import { factsOfKind } from '#domain/log.ts';
import type { HouseChange, HouseHistory } from '#contract/windows/settings-window.ts';
import type { Snapshot } from '#actions/snapshot.ts';

/** Every entry of every thing of the house, by what it is of. */
export interface HouseHistories {
  readonly of: (kind: 'exercise' | 'machine' | 'site' | 'signer', id: string) => HouseHistory;
  readonly signerOf: (fact: Pick<Fact, 'recordedBy'>) => string;
}

interface Version {
  readonly fact: Fact;
  readonly thing: object;
}

export const houseHistories = ({ log, house }: Snapshot): HouseHistories => {
  const versions = new Map<string, Version[]>();
  const add = (key: string, version: Version): void => {
    const before = versions.get(key);
    if (before) before.push(version);
    else versions.set(key, [version]);
  };
  for (const fact of factsOfKind(log, 'catalogued')) {
    const { entry } = fact;
    if (entry.kind === 'exercise') add(`exercise ${entry.exercise.id}`, { fact, thing: entry.exercise });
    if (entry.kind === 'machine') add(`machine ${entry.machine.id}`, { fact, thing: entry.machine });
    if (entry.kind === 'site') add(`site ${entry.site.id}`, { fact, thing: entry.site });
  }
  for (const fact of factsOfKind(log, 'signs')) add(`signer ${fact.signer.id}`, { fact, thing: fact.signer });
  const signerOf = ({ recordedBy }: Pick<Fact, 'recordedBy'>): string =>
    house.signers.get(recordedBy)?.name ?? 'unknown';
  const superseded = new Set<FactId>(log.flatMap(({ supersedes }) => supersedes ?? []));
  return { of: (kind, id) => historyOf(versions.get(`${kind} ${id}`) ?? [], superseded, signerOf), signerOf };
};

/** What stands comes first, whatever was entered after it and taken back. */
const historyOf = (
  versions: readonly Version[],
  superseded: ReadonlySet<FactId>,
  signerOf: HouseHistories['signerOf'],
): HouseHistory =>
  versions
    .map(({ fact, thing }, place): HouseChange => {
      const { id, recordedAt, reason } = fact;
      const before = versions[place - 1];
      const changed = before ? fieldsThatDiffer(before.thing, thing) : [];
      return { fact: id, on: recordedAt.slice(0, 10), by: signerOf(fact), reason, changed };
    })
    .toReversed()
    .toSorted((a, b) => Number(superseded.has(a.fact)) - Number(superseded.has(b.fact)));

/** Compared as canonical JSON: the order in which fields were written makes no difference. */
const fieldsThatDiffer = (before: object, after: object): readonly string[] => {
  const [was, is] = [before, after] as readonly Readonly<Record<string, unknown>>[];
  return Object.keys(after).filter((key) => canonicalJson({ of: was?.[key] }) !== canonicalJson({ of: is?.[key] }));
};
