import type { Problem } from '#contract/problem.ts';
import type { Draft, Fact } from '#domain/fact.ts';

/** What a transaction wants to write after it has seen the log, or why it writes nothing. */
export type Built<Result> =
  | { readonly kind: 'drafts'; readonly drafts: readonly Draft[]; readonly result: Result }
  | { readonly kind: 'refused'; readonly problems: readonly Problem[] };

export type Transacted<Result> =
  /** All of them stand in the log, on the disk. */
  | { readonly kind: 'committed'; readonly facts: readonly Fact[]; readonly result: Result }
  /** The transaction refused, a draft does not fit, or it corrects what was corrected already. Nothing was written. */
  | { readonly kind: 'refused'; readonly problems: readonly Problem[] }
  /** The disk did not take it. Nothing was written. */
  | { readonly kind: 'not written'; readonly problem: Problem };
