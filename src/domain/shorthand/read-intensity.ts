import type { BoutIntensity, SetIntensity, Span, TypedLoad } from '../prescription.ts';
import { readSpan } from './read-quantity.ts';
import type { TokenReader } from './token-reader.ts';

/** Whatever may follow "@" or stand for itself: it shows later whether it suits sets or bouts. */
export type WrittenIntensity = SetIntensity | BoutIntensity | { readonly kind: 'load'; readonly load: TypedLoad };

const EXAMPLES = 'write a target, such as 80 %, 2 RIR, RPE 8, 100 kg, 130 W or 90 % HRR.';
const HARDEST_RATING = 10;

/** "@ 80 %", "@ 2 RIR", "@ RPE 8", "@8", "@ 130 W", "−10 %"; null where no target is written. */
export const readIntensity = (reader: TokenReader): WrittenIntensity | null => {
  if (reader.take('minus')) return readOffTheTop(reader);
  if (!reader.take('at')) return null;
  if (reader.take('word', 'all-out', 'all out')) return { kind: 'all-out' };
  if (reader.take('word', 'rpe')) return { kind: 'RPE', rating: readSpan(reader, EXAMPLES) };
  const number = reader.peek();
  const span = readSpan(reader, EXAMPLES);
  if (reader.take('percent')) return readPercentOf(reader, hundredths(span));
  if (reader.take('word', 'rir', 'in reserve')) return { kind: 'in reserve', repetitions: span };
  if (reader.take('word', 'w', 'watts')) return { kind: 'watts', watts: span };
  const unit = reader.take('word', 'kg', 'lb')?.text;
  if (unit === 'kg' || unit === 'lb') return { kind: 'load', load: { text: number?.text ?? '', unit } };
  if (span.most <= HARDEST_RATING && reader.peek()?.kind !== 'word') return { kind: 'RPE', rating: span };
  return reader.fail(`say what ${span.most} is: ${EXAMPLES}`);
};

const readOffTheTop = (reader: TokenReader): SetIntensity => {
  const by = reader.number('write how much comes off, such as −10 %.');
  reader.need('percent', 'write how much comes off in percent, such as −10 %.');
  return { kind: 'off the top', by: by / 100 };
};

const readPercentOf = (reader: TokenReader, of: Span): WrittenIntensity => {
  if (reader.take('word', 'hrr')) return { kind: 'of heart-rate reserve', of };
  if (reader.take('word', 'hrmax')) return { kind: 'of greatest heart rate', of };
  if (reader.take('word', 'vo2max', 'vo2 max')) return { kind: 'of greatest uptake', of };
  return { kind: 'of maximum', of };
};

const hundredths = ({ least, most }: Span): Span => ({ least: least / 100, most: most / 100 });
