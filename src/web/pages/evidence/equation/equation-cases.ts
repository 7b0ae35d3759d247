import type { Token } from './equation-tokens.ts';

/** "y = a where n ≤ 1, b where n ≤ 2, else c": a choice, with what stands before it. */
export interface Cases {
  /** Up to the sign of equality, with it. */
  readonly left: readonly Token[];
  readonly lines: readonly Line[];
}

interface Line {
  readonly value: readonly Token[];
  readonly when: readonly Token[];
}

const CONDITION = /^(where|if|when|for)\b/;
const OTHERWISE = /^(else|otherwise)\b/;

/** A line behind a brace cannot be broken: a longer choice is told in a row. */
const LONGEST_LINE = 60;

const isProse = (token: Token | undefined, words: RegExp): boolean => token?.kind === 'prose' && words.test(token.text);

/** The choice that an equation is; null where it is none, or says more than that. */
export const casesIn = (tokens: readonly Token[]): Cases | null => {
  const equals = tokens.findIndex(({ text }) => text === '=');
  if (equals < 0 || !tokens.some((token) => isProse(token, OTHERWISE))) return null;
  const pieces = piecesOf(tokens.slice(equals + 1));
  const [last = [], ...others] = pieces.toReversed();
  const isChoice = others.length > 0 && others.every(isConditional) && isOtherwise(last) && !isConditional(last);
  if (pieces.some((piece) => lengthOf(piece) > LONGEST_LINE)) return null;
  const lines = pieces.map(lineOf);
  return isChoice && lines.every(({ value }) => value.length > 0) ? { left: tokens.slice(0, equals + 1), lines } : null;
};

const lengthOf = (piece: readonly Token[]): number => piece.map(({ text }) => text).join(' ').length;

const isOtherwise = ([first]: readonly Token[]): boolean => isProse(first, OTHERWISE);

const isConditional = (piece: readonly Token[]): boolean => piece.some((token) => isProse(token, CONDITION));

/** Parts between commas outside brackets, and before each "else". */
const piecesOf = (tokens: readonly Token[]): readonly (readonly Token[])[] => {
  const pieces: Token[][] = [[]];
  let depth = 0;
  for (const token of tokens) {
    if (token.kind === 'open') depth += 1;
    if (token.kind === 'close') depth -= 1;
    if (depth === 0 && /^[,;]$/.test(token.text)) pieces.push([]);
    else if (depth === 0 && isProse(token, OTHERWISE) && (pieces.at(-1)?.length ?? 0) > 0) pieces.push([token]);
    else pieces.at(-1)?.push(token);
  }
  return pieces;
};

/** "else b where n ≤ 2" has its own condition; "else c" has none but that. */
const lineOf = (piece: readonly Token[]): Line => {
  const [first] = piece;
  const isLast = isProse(first, OTHERWISE);
  const rest = isLast ? withoutElse(piece) : piece;
  const at = rest.findIndex((token) => isProse(token, CONDITION));
  if (at >= 0) return { value: rest.slice(0, at), when: rest.slice(at) };
  return { value: rest, when: first && isLast ? [{ ...first, text: 'else' }] : [] };
};

/** "else the load" keeps "the load". */
const withoutElse = ([first, ...others]: readonly Token[]): readonly Token[] => {
  const text = first?.text.replace(OTHERWISE, '').trim() ?? '';
  return first && text !== '' ? [{ ...first, text }, ...others] : others;
};
