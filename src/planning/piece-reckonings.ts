import type { AnyFormula } from '#science/formula.ts';
import type { SpelledCell } from '#science/reckoning.ts';
import type { ItemId } from '#domain/identity.ts';
import type { FilledRow, Origin, Working } from '#domain/working.ts';
import * as ofBouts from './bout-reckonings.ts';
import { FORCE_OF_HAND } from './hand-reckoning.ts';

interface Spelling {
  readonly name: string;
  readonly givens: readonly string[];
  readonly formulas: readonly AnyFormula[];
  spell(rows: Float64Array, offset: number): readonly SpelledCell[];
}

/** Every reckoning of bouts and drills. */
export const PIECE_RECKONINGS: readonly Spelling[] = [...Object.values(ofBouts), FORCE_OF_HAND];

const BY_NAME = new Map(PIECE_RECKONINGS.map((reckoning) => [reckoning.name, reckoning] as const));

/** A filled row as it is shown and issued. */
export const spellOut = ({ reckoning: name, of, numbers, origins }: FilledRow, item: ItemId): readonly Working[] => {
  const reckoning = BY_NAME.get(name);
  if (!reckoning) return [];
  return [
    {
      reckoning: of === '' ? name : `${name}, ${of}`,
      item,
      given: reckoning.givens.map((given, place) => ({
        name: given,
        value: numbers[place] as number,
        from: origins[place] as Origin,
      })),
      cells: reckoning.spell(Float64Array.from(numbers), 0),
    },
  ];
};
