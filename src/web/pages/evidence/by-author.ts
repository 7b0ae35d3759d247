import type { Source } from '#science/formula.ts';

/** As a library sorts: "de Leva" and "Åstrand" by their letters, not after everybody else. */
const sortKey = ({ text }: Source): string => text.normalize('NFKD').replaceAll(/\p{M}/gu, '').toLowerCase();

export const byAuthor = (sources: readonly Source[]): readonly Source[] =>
  sources
    .map((source) => ({ source, key: sortKey(source) }))
    .toSorted((a, b) => (a.key < b.key ? -1 : 1))
    .map(({ source }) => source);
