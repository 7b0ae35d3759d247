import type { AnyFormula } from '#science/formula.ts';
import type { Columns, Reckoning } from '#science/reckoning.ts';
import type { FilledRow, Origin } from '#domain/working.ts';

/** Each given with where it comes from. */
export type Sourced<Given extends Columns> = { readonly [Name in keyof Given]: readonly [Given[Name], Origin] };

interface Columned {
  readonly name: string;
  readonly columns: readonly string[];
  formulaOf(column: string): AnyFormula | null;
}

/** A reckoning of one number with the origin of each given. */
export interface FilledReckoning {
  readonly kind: 'filled';
  readonly reckoning: Columned;
  readonly numbers: readonly number[];
  readonly origins: readonly Origin[];
}

export type Filling = FilledReckoning | { readonly kind: 'refused'; readonly reasons: readonly string[] };

export const fillReckoning = <Given extends Columns, Known extends Columns>(
  reckoning: Reckoning<Given, Known>,
  sourced: Sourced<Given>,
): Filling => {
  const row = new Float64Array(reckoning.width);
  for (const [place, name] of reckoning.givens.entries()) row[place] = sourced[name][0];
  const reasons = reckoning.fillWithCare(row, 0);
  return reasons.length > 0
    ? { kind: 'refused', reasons }
    : { kind: 'filled', reckoning, numbers: [...row], origins: reckoning.givens.map((name) => sourced[name][1]) };
};

/** A column of a filled row; the names are those of the reckoning that filled it. */
export const valueOf = ({ reckoning, numbers }: FilledReckoning, column: string): number => {
  const place = reckoning.columns.indexOf(column);
  if (place < 0) throw new RangeError(`Reckoning "${reckoning.name}" has no column "${column}".`);
  return numbers[place] as number;
};

/** Why a number came to stand in another reckoning of the same item. */
export const fromReckoning = ({ reckoning }: FilledReckoning, column: string): Origin => ({
  kind: 'model',
  formula: reckoning.formulaOf(column)?.record.id ?? '',
  says: `${column}, from the reckoning "${reckoning.name}"`,
});

export const rowOf = ({ reckoning, numbers, origins }: FilledReckoning, of: string): FilledRow => ({
  reckoning: reckoning.name,
  of,
  numbers,
  origins,
});

/** Reckonings of the parts of an item, alike ones once, each with the parts that it stands for. */
export const rowsOfParts = (
  parts: readonly (readonly FilledReckoning[])[],
  name: (places: readonly number[]) => string,
): readonly FilledRow[] => {
  const alike = new Map<string, { readonly filled: FilledReckoning; readonly places: Set<number> }>();
  for (const [place, reckonings] of parts.entries())
    for (const filled of reckonings) {
      const key = `${filled.reckoning.name} ${filled.numbers.join(' ')}`;
      const kept = alike.get(key) ?? { filled, places: new Set<number>() };
      alike.set(key, kept);
      kept.places.add(place);
    }
  return [...alike.values()].map(({ filled, places }) =>
    rowOf(filled, places.size === parts.length ? '' : name([...places])),
  );
};
