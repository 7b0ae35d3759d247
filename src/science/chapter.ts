import type { Check } from './check.ts';
import type { AnyFormula } from './formula.ts';
import type { AnyMethod } from './method.ts';
import type { AnyTable } from './sourced-table.ts';

/** What belongs together in the textbook, with every printed value that it must reproduce. */
export interface Chapter {
  readonly heading: string;
  readonly says: string;
  readonly formulas?: readonly AnyFormula[];
  readonly methods?: readonly AnyMethod[];
  readonly tables?: readonly AnyTable[];
  readonly checks: readonly Check[];
}

/** Chapters of one folder, under its heading. */
export interface Part {
  readonly heading: string;
  readonly says: string;
  readonly chapters: readonly Chapter[];
}

/** The formulas of a module in one order, whichever tool lists its exports. */
export const byIdentity = (module: Readonly<Record<string, AnyFormula>>): readonly AnyFormula[] =>
  Object.values(module).toSorted((a, b) => (a.record.id < b.record.id ? -1 : 1));
