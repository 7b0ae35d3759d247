/** A line of shorthand in pieces, each with its place, so that a problem can be shown where it was typed. */

export type TokenKind =
  'number' | 'word' | 'times' | 'range' | 'minus' | 'plus' | 'at' | 'percent' | 'comma' | 'slash' | 'colon' | 'strange';

export interface Token {
  readonly kind: TokenKind;
  readonly text: string;
  readonly from: number;
  readonly to: number;
}

/**
 * A dash is a range, unless it is a minus sign, or has space before it and none after: "6-8" and "6 – 8" are ranges,
 * "8 −10 %" and "8 -10 %" take ten percent off.
 */
const PATTERNS: readonly (readonly [kind: TokenKind, pattern: RegExp])[] = [
  ['number', /\d+(?:\.\d+)?/y],
  ['times', /[×*]|x(?![a-wyz])/iy],
  ['word', /rir\b|in reserve\b|vo2\s?max\b|all[\s-]out\b|warm[\s-]ups?\b|[a-zµ]+\d*/iy],
  ['minus', /−|(?<=\s)-(?=\d)/y],
  ['range', /[-–—]/y],
  ['plus', /\+/y],
  ['at', /@/y],
  ['percent', /%/y],
  ['comma', /[,;]/y],
  ['slash', /\//y],
  ['colon', /:/y],
];

export const tokensOf = (line: string): readonly Token[] => {
  const tokens: Token[] = [];
  let at = 0;
  while (at < line.length) {
    if (/\s/.test(line.charAt(at))) at += 1;
    else {
      const token = tokenAt(line, at);
      tokens.push(token);
      at = token.to;
    }
  }
  return tokens;
};

const tokenAt = (line: string, from: number): Token => {
  for (const [kind, pattern] of PATTERNS) {
    pattern.lastIndex = from;
    const text = pattern.exec(line)?.[0];
    if (text) return { kind, text: text.toLowerCase(), from, to: from + text.length };
  }
  return { kind: 'strange', text: line.charAt(from), from, to: from + 1 };
};
