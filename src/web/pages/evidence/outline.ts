import type { Part } from '#science/chapter.ts';
import type { Check, FormulaCheck, MethodCheck, SeriesCheck } from '#science/check.ts';
import type { AnyFormula, EntryRecord } from '#science/formula.ts';
import type { AnyMethod } from '#science/method.ts';
import type { AnyTable } from '#science/sourced-table.ts';

/** The textbook with its numbers: what the contents, the text, the search and the paper share. */

export type Entry =
  | { readonly kind: 'formula'; readonly formula: AnyFormula; readonly checks: readonly FormulaCheck[] }
  | { readonly kind: 'method'; readonly method: AnyMethod; readonly checks: readonly MethodCheck[] }
  | { readonly kind: 'table'; readonly table: AnyTable };

export interface OutlineChapter {
  /** "2.3". */
  readonly number: string;
  readonly anchor: string;
  readonly heading: string;
  readonly says: string;
  readonly entries: readonly Entry[];
  /** Checks of more than one entry. */
  readonly further: readonly SeriesCheck[];
}

export interface OutlinePart {
  readonly number: string;
  readonly anchor: string;
  readonly heading: string;
  readonly says: string;
  readonly chapters: readonly OutlineChapter[];
}

export const recordOf = (entry: Entry): EntryRecord => {
  switch (entry.kind) {
    case 'formula':
      return entry.formula.record;
    case 'method':
      return entry.method.record;
    case 'table':
      return entry.table.record;
  }
};

export const checksOf = (entry: Entry): readonly Check[] => (entry.kind === 'table' ? [] : entry.checks);

export const outlineOf = (parts: readonly Part[]): readonly OutlinePart[] => {
  const owned = ownedChecks(parts.flatMap(({ chapters }) => chapters.flatMap(({ checks }) => checks)));
  return parts.map(({ heading, says, chapters }, part) => ({
    number: String(part + 1),
    anchor: `part-${part + 1}`,
    heading,
    says,
    chapters: chapters.map((chapter, place) => ({
      number: `${part + 1}.${place + 1}`,
      anchor: `chapter-${part + 1}-${place + 1}`,
      heading: chapter.heading,
      says: chapter.says,
      entries: [
        ...(chapter.formulas ?? []).map((formula) => ({
          kind: 'formula' as const,
          formula,
          checks: owned.ofFormula.get(formula) ?? [],
        })),
        ...(chapter.methods ?? []).map((method) => ({
          kind: 'method' as const,
          method,
          checks: owned.ofMethod.get(method) ?? [],
        })),
        ...(chapter.tables ?? []).map((table) => ({ kind: 'table' as const, table })),
      ],
      further: chapter.checks.filter((check) => check.kind === 'series'),
    })),
  }));
};

/** A check stands with what it checks, whichever chapter lists it. */
const ownedChecks = (checks: readonly Check[]) => {
  const ofFormula = new Map<AnyFormula, FormulaCheck[]>();
  const ofMethod = new Map<AnyMethod, MethodCheck[]>();
  for (const check of checks) {
    if (check.kind === 'formula') addTo(ofFormula, check.formula, check);
    if (check.kind === 'method') addTo(ofMethod, check.method, check);
  }
  return { ofFormula, ofMethod };
};

const addTo = <Owner, Owned>(lists: Map<Owner, Owned[]>, owner: Owner, owned: Owned): void => {
  const list = lists.get(owner);
  if (list) list.push(owned);
  else lists.set(owner, [owned]);
};
