import { isOne, only } from '../prescription.ts';
import type { DrillWork, HandTarget } from '../programme.ts';
import { whole, within } from '../shorthand/bounds.ts';
import { Unreadable, type ShorthandProblem } from '../shorthand/problem.ts';
import { readDuration, readSpan, readTimeOrSeconds } from '../shorthand/read-quantity.ts';
import { TokenReader } from '../shorthand/token-reader.ts';
import { mostOfSpan, type WrittenDrill } from './drill-line.ts';

export type DrillReading =
  | { readonly kind: 'drill'; readonly drill: WrittenDrill; readonly perSide: boolean }
  | { readonly kind: 'problems'; readonly problems: readonly ShorthandProblem[] };

/**
 * Reads what shorthand has no word for: pulses of work and rest, and a hand's own force as a target. Five sets of eight
 * pulses are `5 × 8 × 7 s/3 s @ 100 % CF, rest 2:30`; they are written back as `5 × 8 × 7 s on, 3 s off @ 100 % critical
 * force, rest 2:30`.
 */
export const readDrill = (line: string): DrillReading => {
  const reader = new TokenReader(line);
  try {
    const { perSide, ...drill } = readParts(reader);
    const problems = outOfBounds(drill).map((says) => ({ from: 0, to: line.length, says }));
    return problems.length > 0 ? { kind: 'problems', problems } : { kind: 'drill', drill, perSide };
  } catch (caught) {
    if (caught instanceof Unreadable) return { kind: 'problems', problems: [caught.problem] };
    throw caught;
  }
};

const EXAMPLES =
  'write sets and what each is, such as 3 × 10, 3 × 30 s, 5 × 8 × 7 s/3 s or 3 × 6 × 7 s on, 3 s off @ 100 % CF.';

const readParts = (reader: TokenReader): WrittenDrill & { readonly perSide: boolean } => {
  const work: DrillWork[] = [...readGroup(reader)];
  while (reader.is('comma') && reader.is('number', undefined, 1) && reader.take('comma'))
    work.push(...readGroup(reader));
  const perSide = readPerSide(reader);
  const aim = reader.take('at') ? readAim(reader) : { target: null, rpe: null };
  const rest = reader.take('comma') && reader.take('word', 'rest') ? readTimeOrSeconds(reader) : null;
  if (!reader.done) reader.fail('after the sets write a target, such as @ 40 % critical force, or rest 1:00.');
  return { work, rest, perSide, ...aim };
};

const readGroup = (reader: TokenReader): readonly DrillWork[] => {
  const spans = [readSpan(reader, EXAMPLES)];
  while (reader.take('times')) spans.push(readSpan(reader, EXAMPLES));
  const range = mostOfSpan(spans.at(-1) ?? only(0));
  if (spans.slice(0, -1).some((span) => !isOne(span)))
    reader.fail('a drill says one number of sets, such as 3 × 8–12.');
  const numbers = spans.map(({ least }) => least);
  const last = numbers.at(-1) ?? 0;
  const seconds = readDuration(reader, last);
  const pulse = seconds === null ? null : readPulse(reader);
  const isPulsed = pulse !== null;
  const [sets = 1, count = 1] = isPulsed && numbers.length === 2 ? [1, numbers[0]] : numbers;
  const work: DrillWork =
    seconds !== null && pulse !== null
      ? { kind: 'pulses', count, on: seconds, off: pulse.off }
      : seconds === null
        ? { kind: 'repetitions', count: last, ...range }
        : { kind: 'hold', seconds, ...inSeconds(range, last, seconds) };
  if (isPulsed && range.most !== undefined) reader.fail('pulses say one number of seconds, such as 7 s on, 3 s off.');
  if (numbers.length > (isPulsed ? MOST_NUMBERS : MOST_NUMBERS - 1)) reader.fail(EXAMPLES);
  const times = numbers.length === 1 ? 1 : sets;
  if (!(Number.isInteger(times) && times >= 1 && times <= MOST_SETS))
    reader.fail(`the number of sets is a whole number from 1 to ${MOST_SETS}; this is ${times}.`);
  return Array.from({ length: times }, () => work);
};

/** "1–2 min": the most in the same unit as the least. */
const inSeconds = ({ most }: { readonly most?: number }, least: number, seconds: number): { readonly most?: number } =>
  most === undefined ? {} : { most: least === 0 ? most : (most * seconds) / least };

const MOST_NUMBERS = 3;
const MOST_SETS = 20;

/** What follows the time under load: "on, 3 s off", or "/3 s" as climbers write it; null where it is held once. */
const readPulse = (reader: TokenReader): { readonly off: number } | null => {
  if (reader.take('word', 'on')) return { off: readOff(reader) };
  if (!reader.is('slash') || !reader.is('number', undefined, 1)) return null;
  reader.take('slash');
  const says = 'write the rest after the stroke in seconds, such as 7 s/3 s.';
  return { off: readDuration(reader, reader.number(says)) ?? reader.fail(says) };
};

const readOff = (reader: TokenReader): number => {
  const says = 'write how long the rest between is, such as 7 s on, 3 s off.';
  reader.take('comma');
  const seconds = readDuration(reader, reader.number(says)) ?? reader.fail(says);
  if (!reader.take('word', 'off')) reader.fail(says);
  return seconds;
};

const readPerSide = (reader: TokenReader): boolean => {
  if (!reader.take('slash')) return false;
  if (!reader.take('word', 'side', 'leg', 'arm', 'hand'))
    reader.fail('after the stroke write side, such as 3 × 8/side.');
  return true;
};

type Aim = Pick<WrittenDrill, 'target' | 'rpe'>;

const readAim = (reader: TokenReader): Aim => {
  const says = 'write a target such as 40 % critical force, 80 % greatest grip or RPE 6.';
  if (reader.take('word', 'rpe')) {
    const { least, most } = readSpan(reader, says);
    return { target: null, rpe: [least, most] };
  }
  const of = reader.number(says) / 100;
  reader.need('percent', says);
  return { target: { kind: readHand(reader, says), of }, rpe: null };
};

const readHand = (reader: TokenReader, says: string): HandTarget['kind'] => {
  if (reader.take('word', 'cf')) return 'of critical force';
  if (reader.take('word', 'critical') && reader.take('word', 'force')) return 'of critical force';
  reader.take('word', 'greatest');
  return reader.take('word', 'grip') ? 'of greatest grip' : reader.fail(says);
};

const outOfBounds = ({ work, target, rest, rpe }: WrittenDrill): readonly string[] => [
  ...work.flatMap((each) => {
    switch (each.kind) {
      case 'repetitions':
        return whole('repetitions', 'The number of repetitions', [each.count, each.most ?? each.count]);
      case 'hold':
        return within('hold', 'A hold in seconds', [each.seconds, each.most ?? each.seconds]);
      case 'pulses':
        return [
          ...whole('repetitions', 'The number of pulses', [each.count]),
          ...within('hold', 'A pulse in seconds', [each.on]),
          ...within('pause', 'The rest between pulses in seconds', [each.off]),
        ];
    }
  }),
  ...(target ? within('maximum', 'A fraction of the hand’s own force', [target.of]) : []),
  ...(rest === null ? [] : within('rest', 'A rest in seconds', [rest])),
  ...(rpe ? within('rating', 'RPE', rpe) : []),
];
