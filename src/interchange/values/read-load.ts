import type { Effort } from '#domain/effort.ts';
import type { MassUnit } from '#units/mass.ts';
import { quoted } from '../place.ts';
import { readDecimal, type DecimalMark } from './read-decimal.ts';
import { readUnit } from './read-words.ts';
import { type Value, BLANK_VALUE, saysNothing, valued, wrong } from './value.ts';

/** What a load cell says: at least a number, and whatever else people write beside it. */
export interface LoadText {
  readonly number: string;
  readonly unit: MassUnit | null;
  readonly repetitions: string | null;
  readonly effort: Effort | null;
}

const NUMBER = String.raw`[+-]?[\d.,]*\d`;
/** "102,5", "225 lb", "100 kg x 5", "225x5 @8". */
const WRITTEN = new RegExp(
  `^(${NUMBER})\\s*(kgs?|kilos?|kilograms?|lbs?|lb\\.|pounds?|#)?(?:\\s*[x×*]\\s*(\\d{1,3})(?:\\s*(?:reps?|repetitions))?)?(?:\\s*@\\s*(?:rpe\\s*)?(${NUMBER}))?$`,
  'i',
);

const effortOf = (text: string | undefined): Effort | null =>
  text === undefined ? null : { kind: 'RPE', value: Number(text.replace(',', '.')) };

/** A load, with unit, repetitions and effort where the cell itself has them. */
export const readLoad = (text: string, mark: DecimalMark): Value<LoadText> => {
  const plain = text.normalize('NFKC').trim();
  if (saysNothing(plain)) return BLANK_VALUE;
  const [, number, unit, repetitions, effort] = WRITTEN.exec(plain) ?? [];
  const read = readDecimal(number ?? plain, mark);
  if (read.kind !== 'value') return read;
  if (repetitions !== undefined && unit === undefined && Number(read.value) <= Number(repetitions))
    return wrong(
      `${quoted(text)} can be read as load times repetitions or the other way round.`,
      'The first number is not the larger one.',
      'Write the unit beside the load, such as 20 kg x 20.',
    );
  return valued({
    number: read.value,
    unit: unit === undefined ? null : readUnit(unit),
    repetitions: repetitions ?? null,
    effort: effortOf(effort),
  });
};
