import type { Estimated } from './estimate.ts';

/** What a check reads of an estimate. A refusal reads as NaN, which holds nowhere. */

export const valueOf = (estimated: Estimated): number => (estimated.kind === 'estimate' ? estimated.value : Number.NaN);
export const sdOf = (estimated: Estimated): number => (estimated.kind === 'estimate' ? estimated.sd : Number.NaN);

/** Why the tolerance of a value that a second program computed. */
export const DOUBLES = 'two programs with doubles';
