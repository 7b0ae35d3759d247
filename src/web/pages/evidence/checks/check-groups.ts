import type { Check } from '#science/check.ts';

export interface CheckGroup<Kind extends Check> {
  readonly because: string;
  readonly source: Kind['source'];
  readonly checks: readonly Kind[];
}

/** Checks with one reason for their tolerance and one place where they were printed, in the order in which they come. */
export const checkGroups = <Kind extends Check>(checks: readonly Kind[]): readonly CheckGroup<Kind>[] => {
  const groups = new Map<string, { readonly first: Kind; readonly checks: Kind[] }>();
  for (const check of checks) {
    const key = `${check.because}\n${check.source.text}`;
    const group = groups.get(key);
    if (group) group.checks.push(check);
    else groups.set(key, { first: check, checks: [check] });
  }
  return [...groups.values()].map(({ first: { because, source }, checks: of }) => ({ because, source, checks: of }));
};

/** "Brzycki M. (1993)" of a whole citation, the first clause of anything else: enough to find it among the sources. */
export const shortSource = (text: string): string => {
  const dated = /^.*?\(\d{4}[a-z]?\)/.exec(text)?.[0];
  return dated ?? (text.split(/[,;.:](?= |$)/)[0] || text);
};
