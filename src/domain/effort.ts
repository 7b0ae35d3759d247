/** Effort of a set as it was typed. Missing effort is `null`, never a number. */
export type Effort =
  | { readonly kind: 'RPE'; readonly value: number }
  | { readonly kind: 'repetitions in reserve'; readonly value: number };

export type Side = 'left' | 'right';

/** RPE of an effort: a repetition in reserve is one point under ten (Zourdos 2016). */
export const ratingOf = (effort: Effort): number => (effort.kind === 'RPE' ? effort.value : 10 - effort.value);

/** "RPE 8" or "2 in reserve", as typed. */
export const showEffort = (effort: Effort): string =>
  effort.kind === 'RPE' ? `RPE ${effort.value}` : `${effort.value} in reserve`;
