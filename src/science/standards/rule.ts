import type { Source } from '../formula.ts';

/** Rules that somebody else set, as data: a profile is entered and confirmed by a person who has the document. */

export type RuleQuantity =
  | 'T score'
  | 'maximal oxygen uptake'
  | 'muscle strength'
  | 'deadlift'
  | 'bench press'
  | 'density of hip and spine'
  | 'density of the femoral neck';

export type RulePhase = 'before flight' | 'in flight' | 'after flight';

export type Comparator = 'at least' | 'at most';

/** What a limit is counted in: its unit, or a fraction of something of the same person or of the same age and sex. */
export type RuleBasis = 'absolute' | 'of before flight' | 'of the mean for age and sex' | 'of body weight';

/** Verified: somebody held it against the document. */
export type RuleStatus = 'verified' | 'unverified';

interface RuleHead {
  readonly id: string;
  /** Section of the document, where it is known. */
  readonly number: string | null;
  readonly quantity: RuleQuantity;
  readonly phase: RulePhase;
  readonly status: RuleStatus;
  /** What was seen and what was not. */
  readonly note: string;
}

export interface LimitRule extends RuleHead {
  readonly kind: 'limit';
  readonly comparator: Comparator;
  readonly limit: number;
  readonly basis: RuleBasis;
  /** Of the quantity, and of the limit where it is absolute. */
  readonly unit: string;
}

/** A rule that holds no number: it is shown, and never judged here. */
export interface WordedRule extends RuleHead {
  readonly kind: 'words';
  readonly says: string;
}

export type StandardRule = LimitRule | WordedRule;

export interface StandardProfile {
  readonly id: string;
  readonly revision: string;
  readonly source: Source;
  readonly rules: readonly StandardRule[];
}

/** "rule 4.2.9 (T score, before flight)": how a rule is named in every sentence. */
export const nameOfRule = ({ id, number, quantity, phase }: StandardRule): string =>
  `rule ${number ?? id} (${quantity}, ${phase})`;
