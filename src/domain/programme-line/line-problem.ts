/** What is wrong with a cell, at its place in what was typed, and what to write instead. */
export interface LineProblem {
  readonly from: number;
  readonly to: number;
  readonly says: string;
}

/** A part of an item as a line tells it, or every reason why it cannot be planned so. */
export type Told<Part> =
  { readonly kind: 'told'; readonly part: Part } | { readonly kind: 'refused'; readonly says: readonly string[] };

export const told = <Part>(part: Part, says: readonly string[]): Told<Part> =>
  says.length > 0 ? { kind: 'refused', says } : { kind: 'told', part };
