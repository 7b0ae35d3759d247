import type { ColumnMeaning, Counting } from '#contract/bring-in.ts';
import type { Side } from '#domain/effort.ts';
import type { MassUnit } from '#units/mass.ts';
import type { StatureUnit } from '../values/read-stature.ts';
import type { ExerciseFinder } from './exercise-names.ts';
import { BODY_MASS_WORDS, HEADER_WORDS, LOAD_WORDS, RELATIVE, STATURE_WORDS, WORKED_OUT } from './header-words.ts';
import { spelling } from './spelling.ts';

/** What stands beside the name in a header, taken off piece by piece. */
interface Pieces {
  readonly rest: string;
  readonly mass: MassUnit | null;
  readonly length: StatureUnit | null;
  readonly repetitions: number | null;
  readonly counted: Counting | null;
  readonly side: Side | null;
}

/** Takes a pattern off a text: what it said, and what is left. */
const take = (text: string, pattern: RegExp): { readonly said: string | null; readonly left: string } => {
  const found = pattern.exec(text);
  if (!found) return { said: null, left: text };
  const end = found.index + found[0].length;
  return { said: found[1] ?? found[0], left: `${text.slice(0, found.index)} ${text.slice(end)}` };
};

const START = String.raw`(?<![\p{L}\p{N}])`;
const END = String.raw`(?![\p{L}\p{N}])`;
const word = (pattern: string): RegExp => new RegExp(`${START}(?:${pattern})${END}`, 'iu');

const KILOGRAMS = word('kgs?|kilos?|kilograms?|kilogrammes?');
const POUNDS = word('lbs?|pounds?');
const CENTIMETRES = word('cm|centimet(?:re|er)s?');
const METRES = word('m|met(?:re|er)s?');
const INCHES = word('in|inch|inches|ft|feet|ft in');
const OR = word('or');
const REPETITION_MAXIMUM = new RegExp(
  `${START}(\\d{1,2})\\s*-?\\s*(?:rm|rep(?:etition)?s?[\\s-]*max(?:imum|ima)?)${END}`,
  'iu',
);
const REPETITIONS = new RegExp(`${START}(?:[x×]\\s*(\\d{1,2})|(\\d{1,2})\\s*(?:reps?|repetitions?))${END}`, 'iu');
const PER_HAND = word('(?:per|each|every|/|in each|single|one) ?hand|ea(?:ch)? hand|(?:per|each|/) ?(?:db|dumbbell)');
const PER_SIDE = word('(?:per|each|every|/) ?(?:side|leg|arm|limb)|ea(?:ch)? side|unilateral');
const TOTAL = word('total|both hands|all in|combined|sum');
const LEFT = word('left|l(?!\\s*-?\\s*\\d)');
const RIGHT = word('right|r(?!\\s*-?\\s*\\d)');

const PER_SLASH = /\/\s*(hand|side|leg|arm|limb)\b/i;

const countingIn = (text: string): { readonly counted: Counting | null; readonly left: string } => {
  const slash = take(text, PER_SLASH);
  if (slash.said !== null)
    return { counted: slash.said.toLowerCase() === 'hand' ? 'per hand' : 'per side', left: slash.left };
  const hand = take(text, PER_HAND);
  if (hand.said !== null) return { counted: 'per hand', left: hand.left };
  const side = take(text, PER_SIDE);
  if (side.said !== null) return { counted: 'per side', left: side.left };
  const total = take(text, TOTAL);
  return { counted: total.said === null ? null : 'total', left: total.left };
};

const repetitionsIn = (text: string): { readonly repetitions: number | null; readonly left: string } => {
  const maximum = take(text, REPETITION_MAXIMUM);
  const { said, left } = maximum.said === null ? take(text, REPETITIONS) : maximum;
  const [digits] = /\d+/.exec(said ?? '') ?? [];
  return { repetitions: digits === undefined ? null : Number(digits), left };
};

const piecesOf = (header: string): Pieces => {
  const counting = countingIn(header);
  const repeated = repetitionsIn(counting.left);
  const kilograms = take(repeated.left, KILOGRAMS);
  const pounds = take(kilograms.left, POUNDS);
  const centimetres = take(pounds.left, CENTIMETRES);
  const inches = take(centimetres.left, INCHES);
  const metres = take(inches.left, METRES);
  const both = kilograms.said !== null && pounds.said !== null;
  const lengths: readonly (readonly [StatureUnit, string | null])[] = [
    ['cm', centimetres.said],
    ['in', inches.said],
    ['m', metres.said],
  ];
  return {
    rest: spelling(pounds.left),
    mass: both ? null : kilograms.said !== null ? 'kg' : pounds.said !== null ? 'lb' : null,
    length: lengths.find(([, said]) => said !== null)?.[0] ?? null,
    repetitions: repeated.repetitions,
    counted: counting.counted,
    side: null,
  };
};

const withSide = (pieces: Pieces): Pieces => {
  const left = take(pieces.rest, LEFT);
  const right = take(pieces.rest, RIGHT);
  if (left.said !== null && right.said === null) return { ...pieces, rest: spelling(left.left), side: 'left' };
  return right.said !== null && left.said === null ? { ...pieces, rest: spelling(right.left), side: 'right' } : pieces;
};

/** Without the unit of a length and the words that join units: "height in cm", "load, kg or lb". */
const withoutLength = (rest: string): string =>
  spelling([CENTIMETRES, METRES, INCHES, OR].reduce((text, pattern) => text.replace(pattern, ' '), rest));

const LEFT_OUT: ColumnMeaning = { is: 'left out' };

const plainMeaning = (rest: string): ColumnMeaning | null => {
  const found = HEADER_WORDS.find(([, words]) => words.includes(rest));
  return found ? { is: found[0] } : null;
};

const quantity = ({ rest: whole, mass, length, counted }: Pieces): ColumnMeaning | null => {
  const rest = withoutLength(whole);
  if (BODY_MASS_WORDS.has(rest)) return { is: 'body mass', unit: mass };
  if (STATURE_WORDS.has(rest)) return { is: 'stature', unit: length };
  if (LOAD_WORDS.has(rest) || (rest === '' && mass !== null)) return { is: 'load', unit: mass, counted };
  return null;
};

const liftMeaning = (pieces: Pieces, find: ExerciseFinder): ColumnMeaning | null => {
  const sided = withSide(pieces);
  const whole = find(pieces.rest);
  const exercise = whole ?? find(sided.rest);
  if (!exercise) return null;
  const { repetitions, mass, counted } = pieces;
  const possible = repetitions !== null && repetitions >= 1 && repetitions <= 30;
  return {
    is: 'lift',
    exercise,
    repetitions: possible ? repetitions : null,
    unit: mass,
    counted,
    side: whole ? null : sided.side,
  };
};

/** What a header says that its column means. A header that nobody knows is left out, never guessed at. */
export const meaningOfHeader = (header: string, find: ExerciseFinder): ColumnMeaning => {
  if (WORKED_OUT.test(spelling(header)) || RELATIVE.test(header)) return LEFT_OUT;
  const whole = plainMeaning(spelling(header));
  if (whole) return whole;
  const pieces = piecesOf(header);
  return quantity(pieces) ?? liftMeaning(pieces, find) ?? plainMeaning(withoutLength(pieces.rest)) ?? LEFT_OUT;
};

/** Whether a header names values that somebody worked out of tests, or ratios. */
export const isWorkedOut = (header: string): boolean => WORKED_OUT.test(spelling(header)) || RELATIVE.test(header);
