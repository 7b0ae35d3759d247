import type { Entered } from '#units/entered.ts';
import { quoted } from '../place.ts';
import { hundredfold, readDecimal, type DecimalMark } from './read-decimal.ts';
import { type Value, BLANK_VALUE, saysNothing, valued, wrong } from './value.ts';

export type StatureUnit = 'cm' | 'm' | 'in';

/** Statures from 120 to 230 cm: 1.2 to 2.3 m, 47.2 to 90.6 in. The three never meet, so the number tells its unit. */
const RANGES: readonly {
  readonly unit: StatureUnit;
  readonly least: number;
  readonly most: number;
  readonly says: string;
}[] = [
  { unit: 'cm', least: 120, most: 230, says: '120 to 230 cm' },
  { unit: 'm', least: 1.2, most: 2.3, says: '1.20 to 2.30 m' },
  { unit: 'in', least: 47.2, most: 90.6, says: '47 to 90 in' },
];
const INCHES_PER_FOOT = 12;

const FEET = /^(\d)\s*(?:'|’|′|ft|feet|foot)\s*(\d{1,2}(?:[.,]\d{1,2})?)?\s*(?:"|”|″|′′|''|’’|in|inch|inches)?$/i;
const WITH_UNIT = /^(.*\d)\s*(cm|m|in|inch|inches|"|”)$/i;

const unitOfWord = (word: string): StatureUnit => {
  const lower = word.toLowerCase();
  return lower === 'cm' || lower === 'm' ? lower : 'in';
};

const inUnit = (text: string, number: string, unit: StatureUnit | null): Value<Entered<'cm' | 'in'>> => {
  const value = Number(number);
  const fits = RANGES.find(
    (range) => value >= range.least && value <= range.most && (unit === null || range.unit === unit),
  );
  const expected = RANGES.find((range) => range.unit === unit)?.says ?? '120 to 230 cm, 1.20 to 2.30 m or 47 to 90 in';
  if (!fits)
    return wrong(
      `${quoted(text)} is no stature.`,
      `Statures of ${expected} are taken.`,
      'Look at the number and at its unit.',
    );
  return valued(fits.unit === 'm' ? { text: hundredfold(number), unit: 'cm' } : { text: number, unit: fits.unit });
};

/** A stature in centimetres or inches; metres and feet are brought to them exactly. */
export const readStature = (text: string, unit: StatureUnit | null, mark: DecimalMark): Value<Entered<'cm' | 'in'>> => {
  const plain = text.normalize('NFKC').trim();
  if (saysNothing(plain)) return BLANK_VALUE;
  const [, feet, inches = '0'] = FEET.exec(plain) ?? [];
  if (feet !== undefined) {
    const whole = Number(feet) * INCHES_PER_FOOT + Math.trunc(Number(inches.replace(',', '.')));
    const [, decimals] = inches.split(/[.,]/);
    return inUnit(text, decimals === undefined ? String(whole) : `${whole}.${decimals}`, 'in');
  }
  const [, bare, word] = WITH_UNIT.exec(plain) ?? [];
  const read = readDecimal(bare ?? plain, mark);
  return read.kind === 'value' ? inUnit(text, read.value, word === undefined ? unit : unitOfWord(word)) : read;
};
