import type { FactId, ItemId, ProgrammeVersionId } from './identity.ts';

/** Where a given number comes from. */
export type Origin =
  | { readonly kind: 'fact'; readonly fact: FactId; readonly says: string }
  | { readonly kind: 'estimate'; readonly exercise: string; readonly facts: readonly FactId[]; readonly says: string }
  | { readonly kind: 'programme'; readonly programme: ProgrammeVersionId; readonly item: ItemId; readonly says: string }
  | { readonly kind: 'model'; readonly formula: string; readonly says: string }
  | { readonly kind: 'policy'; readonly says: string }
  | { readonly kind: 'decision'; readonly fact: FactId; readonly says: string }
  | { readonly kind: 'rounding'; readonly says: string };

export interface WorkingCell {
  readonly name: string;
  readonly formula: string;
  readonly revision: number;
  readonly title: string;
  readonly equation: string;
  readonly unit: string;
  readonly of: readonly string[];
  readonly value: number;
  readonly outsideRange: readonly string[];
}

/** What a number shows when it is opened: the reckoning that made it, spelled out. */
export interface Working {
  readonly reckoning: string;
  readonly item: ItemId;
  readonly given: readonly { readonly name: string; readonly value: number; readonly from: Origin }[];
  readonly cells: readonly WorkingCell[];
}

/** A reckoning whose numbers are there: it is spelled out only when somebody opens it. */
export interface FilledRow {
  readonly reckoning: string;
  /** Which of several of its kind: "bouts 1 and 6"; empty where there is one. */
  readonly of: string;
  readonly numbers: readonly number[];
  /** Of each given. */
  readonly origins: readonly Origin[];
}

/** A formula as it stood when a card was issued. */
export interface FormulaText {
  readonly id: string;
  readonly revision: number;
  readonly title: string;
  readonly equation: string;
  readonly source: string;
  readonly status: string;
  readonly doesNotKnow: string;
}
