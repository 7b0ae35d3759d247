import { only, type Span } from '../prescription.ts';
import type { TokenReader } from './token-reader.ts';

const SECONDS_PER_MINUTE = 60;

/** "6" or "6–8". */
export const readSpan = (reader: TokenReader, says: string): Span => {
  const least = reader.number(says);
  if (!reader.take('range')) return only(least);
  const most = reader.number(says);
  return most >= least ? { least, most } : reader.fail(`write the smaller number first, such as ${most}–${least}.`);
};

/** Seconds of "4 min", "30 s" or "1:30" after its first number has been read; null where no unit follows. */
export const readDuration = (reader: TokenReader, first: number): number | null => {
  if (reader.take('word', 'min', 'minutes', 'minute')) return first * SECONDS_PER_MINUTE;
  if (reader.take('word', 's', 'sec', 'seconds', 'second')) return first;
  return null;
};

/** A rest: "2:30", "90 s", "2 min", and "90", which means seconds. */
export const readTimeOrSeconds = (reader: TokenReader): number => {
  const says = 'write a time, such as 2:30, 90 s or 2 min.';
  const first = reader.number(says);
  if (!reader.take('colon')) return readDuration(reader, first) ?? first;
  const seconds = reader.need('number', says);
  if (!/^[0-5]\d$/.test(seconds.text)) reader.fail('write seconds as two digits after the colon, such as 2:30.');
  return first * SECONDS_PER_MINUTE + Number(seconds.text);
};
