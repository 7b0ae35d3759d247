import type { Estimated } from './estimate.ts';

/** What a check reads of an estimate. A refusal reads as NaN, which holds nowhere. */

export const valueOf = (estimated: Estimated): number => (estimated.kind === 'estimate' ? estimated.value : Number.NaN);
export const sdOf = (estimated: Estimated): number => (estimated.kind === 'estimate' ? estimated.sd : Number.NaN);

/** What was said of a finding: why it was refused, or its cautions. */
export const wordsOf = (
  found: { readonly kind: string } & ({ readonly reason?: string } | { readonly cautions?: readonly string[] }),
): string => ('reason' in found ? (found.reason ?? '') : 'cautions' in found ? (found.cautions ?? []).join(' ') : '');

/** Why the tolerance of a value that a second program computed. */
export const DOUBLES = 'two programs with doubles';
