/** The readable notation of equations, cut into the pieces that a typesetter must know apart. */

export interface Token {
  readonly kind:
    'number' | 'name' | 'prose' | 'operator' | 'open' | 'close' | 'prime' | 'script' | 'raised' | 'lowered';
  readonly text: string;
  /** Whether a space stands before it: `f(n)` is a call, `f (n)` a product. */
  readonly spaced: boolean;
  /** Where it stands in the equation. */
  readonly from: number;
}

/** Words that join the parts of a sentence, where they stand alone. */
const JOINING =
  /^(and|as|at|between|by|each|else|every|for|from|if|in|is|least|most|not|of|on|or|otherwise|over|per|than|that|the|then|to|unless|until|up|when|where|while|with|within)$/;

/** Functions that are written without brackets too: never part of a run of words. */
const FUNCTION = /^(exp|ln|log|log10|sin|cos|tan|arctan|arcsin|arccos|sqrt)$/;

const PATTERNS: readonly (readonly [Token['kind'], RegExp])[] = [
  ['name', /\d+\p{Script=Latin}{2,}[\p{Script=Latin}0-9]*/uy],
  ['number', /\d+(\.\d+)?/uy],
  ['name', /\p{Script=Greek}/uy],
  ['name', /\p{Script=Latin}[\p{Script=Latin}\p{M}0-9]*(-\p{Script=Latin}[\p{Script=Latin}0-9]*)*/uy],
  ['prime', /['′]+/uy],
  ['script', /[_^]/uy],
  ['raised', /[⁺⁻]?[⁰¹²³⁴⁵⁶⁷⁸⁹]+/uy],
  ['lowered', /[₀₁₂₃₄₅₆₇₈₉]+/uy],
  ['open', /[([{⌊⌈]/uy],
  ['close', /[)\]}⌋⌉]/uy],
  ['operator', /->|<=|>=|!=|./uy],
];

/** Cuts an equation into tokens, runs of words into one token each. */
export const tokensOf = (equation: string): readonly Token[] => withRuns(cut(equation));

const cut = (equation: string): readonly Token[] => {
  const tokens: Token[] = [];
  let at = 0;
  while (at < equation.length) {
    const space = /\s+/uy;
    space.lastIndex = at;
    const blank = space.exec(equation)?.[0] ?? '';
    at += blank.length;
    const found = firstMatch(equation, at);
    if (!found) break;
    tokens.push({ ...found, spaced: blank !== '', from: at });
    at += found.text.length;
  }
  return tokens;
};

const firstMatch = (equation: string, at: number): Pick<Token, 'kind' | 'text'> | null => {
  for (const [kind, pattern] of PATTERNS) {
    pattern.lastIndex = at;
    const [text] = pattern.exec(equation) ?? [];
    if (text) return { kind, text };
  }
  return null;
};

/** "other leg" and "where" are words; `bar`, `VO2_max` and `f(n)` are names of quantities. */
const withRuns = (tokens: readonly Token[]): readonly Token[] => {
  const runs: Token[] = [];
  let at = 0;
  while (at < tokens.length) {
    const run = runFrom(tokens, at);
    const [first] = run;
    if (first && (run.length > 1 || JOINING.test(first.text)))
      runs.push({ ...first, kind: 'prose', text: run.map(({ text }) => text).join(' ') });
    else runs.push(...tokens.slice(at, at + 1));
    at += Math.max(run.length, 1);
  }
  return runs;
};

const runFrom = (tokens: readonly Token[], from: number): readonly Token[] => {
  const run: Token[] = [];
  for (let at = from; isWord(tokens, at) || isArticle(tokens, at, run.length); at += 1) {
    const token = tokens[at];
    if (!token || (run.length > 0 && !token.spaced)) break;
    run.push(token);
  }
  return run;
};

const isWord = (tokens: readonly Token[], at: number): boolean => {
  const [before, token, after] = [tokens[at - 1], tokens[at], tokens[at + 1]];
  if (token?.kind !== 'name' || token.text.length < 2 || FUNCTION.test(token.text)) return false;
  if (before?.kind === 'script') return false;
  return !isScript(after) && !(after?.kind === 'open' && !after.spaced);
};

const isScript = (token: Token | undefined): boolean =>
  token !== undefined && !token.spaced && ['script', 'raised', 'lowered', 'prime'].includes(token.kind);

/** The "a" of "of a run", which is no quantity. */
const isArticle = (tokens: readonly Token[], at: number, before: number): boolean =>
  before > 0 && tokens[at]?.kind === 'name' && tokens[at]?.text === 'a' && isWord(tokens, at + 1);
