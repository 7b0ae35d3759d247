import type { Place } from './reach.ts';
import { SCREENS } from './screens-of-entries.ts';

/** The table of screens by entry as it stands in the sources of the Evidence page. */

type Exports = Readonly<Record<string, unknown>>;

/** Ids of all records in an exported value: a formula, a list or a dictionary of them, a reckoning. */
export const idsIn = (value: unknown, depth = 0): readonly string[] => {
  if (depth > 3 || (typeof value !== 'object' && typeof value !== 'function') || value === null) return [];
  if ('record' in value) return idOf(value.record);
  if ('formulas' in value) return idsIn(value.formulas, depth + 1);
  const inside: readonly unknown[] =
    value instanceof Map ? [...value.values()] : typeof value === 'object' ? Object.values(value) : [];
  return inside.flatMap((each) => idsIn(each, depth + 1));
};

const idOf = (record: unknown): readonly string[] =>
  typeof record === 'object' && record !== null && 'id' in record && typeof record.id === 'string' ? [record.id] : [];

/** Screens of each entry, entries by id and screens in the order of the house. */
export const screensById = (
  reached: ReadonlyMap<string, readonly Place[]>,
  exportsOf: (path: string) => Exports,
): ReadonlyMap<string, readonly string[]> => {
  const screens = new Map<string, string[]>();
  for (const { name } of SCREENS) {
    const values = (reached.get(name) ?? []).map((place) => exportsOf(place.path)[place.name]);
    for (const id of new Set(values.flatMap((value) => idsIn(value))))
      screens.set(id, [...(screens.get(id) ?? []), name]);
  }
  return new Map([...screens].toSorted(([a], [b]) => (a < b ? -1 : 1)));
};

export const tableText = (screens: ReadonlyMap<string, readonly string[]>): string =>
  `/** Made by \`npx vitest run test/screens-of-entries.test.ts --update\`, which follows the sources: do not edit. */

export type ScreenName = ${SCREENS.map(({ name }) => `'${name}'`).join(' | ')};

/** The screens on which a number rests on an entry; an entry that is not here is on none. */
export const SCREENS_OF_ENTRIES: Readonly<Record<string, readonly ScreenName[]>> = {
${[...screens].map(([id, names]) => `'${id}': [${names.map((name) => `'${name}'`).join(', ')}],`).join('\n')}
};
`;
