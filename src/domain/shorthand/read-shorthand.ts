import {
  isOne,
  type BoutIntensity,
  type Prescription,
  type SetGroup,
  type SetIntensity,
  type Tempo,
} from '../prescription.ts';
import { outOfBounds } from './bounds.ts';
import { Unreadable, type ShorthandProblem } from './problem.ts';
import { readGroup, type WrittenGroup } from './read-group.ts';
import { readDuration, readTimeOrSeconds } from './read-quantity.ts';
import { TokenReader } from './token-reader.ts';

export type ShorthandReading =
  | { readonly kind: 'prescription'; readonly prescription: Prescription }
  | { readonly kind: 'problems'; readonly problems: readonly ShorthandProblem[] };

/**
 * Reads one line of the trade's shorthand: `4 × 6 @ 80 %, rest 2:30`, `top 6 then 2 × 8 −10 %`, `225x5@8`,
 * `4 × 4 min @ 90 % HRR, 3 min easy`. Case, spaces and the kind of multiplication sign do not matter.
 */
export const readShorthand = (line: string): ShorthandReading => {
  const reader = new TokenReader(line);
  try {
    const prescription = prescriptionOf(reader, readLine(reader));
    const problems = outOfBounds(prescription).map((says) => ({ from: 0, to: line.length, says }));
    return problems.length > 0 ? { kind: 'problems', problems } : { kind: 'prescription', prescription };
  } catch (caught) {
    if (caught instanceof Unreadable) return { kind: 'problems', problems: [caught.problem] };
    throw caught;
  }
};

interface WrittenLine {
  superset: string | null;
  readonly groups: WrittenGroup[];
  tempo: Tempo | null;
  rest: number | null;
  easy: number | null;
}

const readLine = (reader: TokenReader): WrittenLine => {
  const line: WrittenLine = { superset: readSuperset(reader), groups: [], tempo: null, rest: null, easy: null };
  do readPart(reader, line);
  while (reader.take('comma') ?? reader.take('word', 'then'));
  if (!reader.done) reader.fail('after the sets write a comma, “then”, “rest 2:00” or “tempo 3-1-1”.');
  if (line.groups.length === 0) reader.fail('write the sets first, such as 4 × 6 @ 80 %.');
  return line;
};

const readPart = (reader: TokenReader, line: WrittenLine): void => {
  if (reader.take('word', 'rest')) line.rest = readTimeOrSeconds(reader);
  else if (reader.take('word', 'tempo')) line.tempo = readTempo(reader);
  else if (isTrailing(reader, 'easy')) line.easy = readTrailing(reader);
  else if (isTrailing(reader, 'rest')) line.rest = readTrailing(reader);
  else line.groups.push(readGroup(reader));
};

/** "3 min easy", and not the last of "6, 5, rest 2:00". */
const isTrailing = (reader: TokenReader, word: 'easy' | 'rest'): boolean =>
  reader.is('number') && reader.is('word', undefined, 1) && reader.is('word', word, 2);

/** "A:" or "A1:" before the sets. */
const readSuperset = (reader: TokenReader): string | null => {
  const letter = reader.peek();
  if (letter?.kind !== 'word' || !/^[a-h]\d?$/.test(letter.text) || !reader.is('colon', undefined, 1)) return null;
  reader.take('word');
  reader.take('colon');
  return letter.text.toUpperCase();
};

const readTempo = (reader: TokenReader): Tempo => {
  const says = 'write a tempo as three counts, such as tempo 3-1-1.';
  const down = reader.number(says);
  reader.need('range', says);
  const held = reader.number(says);
  reader.need('range', says);
  return [down, held, reader.number(says)];
};

/** "3 min easy", "90 s rest". */
const readTrailing = (reader: TokenReader): number => {
  const says = 'write how long in min or s, such as 3 min easy or 90 s rest.';
  const seconds = readDuration(reader, reader.number(says)) ?? reader.fail(says);
  reader.take('word', 'easy', 'rest');
  return seconds;
};

const prescriptionOf = (reader: TokenReader, line: WrittenLine): Prescription => {
  const [first] = line.groups;
  if (first && isBout(first, line)) return boutsOf(reader, line, first);
  const groups = line.groups.map((group): SetGroup => ({ ...group, intensity: setIntensityOf(reader, group) }));
  return { kind: 'sets', superset: line.superset, groups, tempo: line.tempo, rest: line.rest };
};

const ENDURANCE = ['of heart-rate reserve', 'of greatest heart rate', 'of greatest uptake', 'watts', 'all-out'];
const LEAST_BOUT = 60;

/** Minutes are a bout; seconds are a hold, unless the target or the easy time says otherwise. */
const isBout = ({ each, intensity }: WrittenGroup, { easy }: WrittenLine): boolean =>
  (intensity !== null && ENDURANCE.includes(intensity.kind)) ||
  (each.kind === 'hold' && (easy !== null || each.seconds.least > LEAST_BOUT));

const boutsOf = (reader: TokenReader, line: WrittenLine, first: WrittenGroup): Prescription => {
  if (line.groups.length > 1) reader.fail('bouts of another length go on a line of their own.');
  if (first.each.kind !== 'hold' || !isOne(first.each.seconds))
    reader.fail('say how long a bout is, such as 4 × 4 min @ 90 % HRR.');
  const { seconds } = first.each;
  if (first.load || first.perSide || first.warmUp || first.top || line.tempo || line.superset)
    reader.fail(
      'a bout has no load, side, warm-up mark, tempo or superset: write it as 4 × 4 min @ 90 % HRR, 3 min easy.',
    );
  return {
    kind: 'bouts',
    repeats: first.sets,
    seconds: seconds.least,
    intensity: boutIntensityOf(reader, first),
    easy: line.easy ?? line.rest,
  };
};

const boutIntensityOf = (reader: TokenReader, { intensity }: WrittenGroup): BoutIntensity | null => {
  if (intensity === null) return null;
  if (intensity.kind === 'of maximum' || intensity.kind === 'in reserve' || intensity.kind === 'off the top')
    return reader.fail('a bout is set by HRR, HRmax, VO2max, watts, RPE or all-out, such as 30 min @ 130 W.');
  return intensity;
};

const setIntensityOf = (reader: TokenReader, { intensity }: WrittenGroup): SetIntensity | null => {
  // The set below lists exactly the kinds of SetIntensity.
  if (intensity === null || SETS_BY.has(intensity.kind)) return intensity as SetIntensity | null;
  return reader.fail('sets are set by %, RIR, RPE or a load, such as 4 × 6 @ 80 %.');
};

const SETS_BY: ReadonlySet<string> = new Set<SetIntensity['kind']>(['of maximum', 'in reserve', 'RPE', 'off the top']);
