import { only, type SetGroup, type Span, type TypedLoad } from '../prescription.ts';
import { readIntensity, type WrittenIntensity } from './read-intensity.ts';
import { readDuration, readSpan } from './read-quantity.ts';
import type { TokenReader } from './token-reader.ts';

/** One group as it was written, before it is known whether it is sets or bouts. */
export interface WrittenGroup {
  readonly warmUp: boolean;
  readonly top: boolean;
  readonly sets: Span;
  readonly each: SetGroup['each'];
  readonly perSide: boolean;
  readonly load: TypedLoad | null;
  readonly intensity: Exclude<WrittenIntensity, { readonly kind: 'load' }> | null;
}

/** "w 2 × 5 @ 60 %", "top 6", "3 × 8/side", "225x5@8", "6+", "4 × 4 min @ 90 % HRR". */
export const readGroup = (reader: TokenReader): WrittenGroup => {
  const warmUp = reader.take('word', 'w', ...WARM_UP) !== null;
  const top = reader.take('word', 'top') !== null;
  const leading = top ? null : readLeadingLoad(reader);
  const [sets, counted] = leading ? [only(1), readCount(reader)] : readSetsAndCount(reader, top);
  const each = readEach(reader, counted);
  const perSide = readPerSide(reader);
  const written = readIntensity(reader);
  const group = { warmUp, top, sets, each, perSide };
  if (written?.kind !== 'load') return { ...group, load: leading, intensity: written };
  if (leading) reader.fail('this line already begins with a load: say how hard it should feel, such as @ RPE 8.');
  return { ...group, load: written.load, intensity: null };
};

const WARM_UP = ['warm-up', 'warm up', 'warm-ups', 'warm ups', 'warmup', 'warmups'] as const;

const readCount = (reader: TokenReader): Span => readSpan(reader, 'write how many repetitions, such as 4 × 6.');

const readSetsAndCount = (reader: TokenReader, top: boolean): readonly [sets: Span, counted: Span] => {
  const first = readSpan(reader, 'write sets and repetitions, such as 4 × 6.');
  return !top && reader.take('times') ? [first, readCount(reader)] : [only(1), first];
};

/** A bare number from here on is a load, below it a number of sets: "225x5" and "4x6". */
const LEAST_BARE_LOAD = 21;

const readLeadingLoad = (reader: TokenReader): TypedLoad | null => {
  const number = reader.peek();
  const next = reader.peek(1);
  if (number?.kind !== 'number') return null;
  const unit = next?.kind === 'word' && (next.text === 'kg' || next.text === 'lb') ? next.text : null;
  if (!reader.is('times', undefined, unit ? 2 : 1)) return null;
  if (!unit && Number(number.text) < LEAST_BARE_LOAD && !number.text.includes('.')) return null;
  reader.take('number');
  reader.take('word');
  reader.take('times');
  return { text: number.text, unit };
};

const readEach = (reader: TokenReader, counted: Span): SetGroup['each'] => {
  const least = readDuration(reader, counted.least);
  if (least !== null) {
    const perUnit = counted.least === 0 ? 1 : least / counted.least;
    return { kind: 'hold', seconds: { least, most: counted.most * perUnit } };
  }
  return { kind: 'repetitions', count: counted, orMore: reader.take('plus') !== null };
};

const readPerSide = (reader: TokenReader): boolean => {
  if (!reader.take('slash')) return false;
  if (!reader.take('word', 'side', 'leg', 'arm')) reader.fail('after the stroke write side, such as 3 × 8/side.');
  return true;
};
