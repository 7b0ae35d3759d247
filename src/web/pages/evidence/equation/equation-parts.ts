import { casesIn } from './equation-cases.ts';
import { tokensOf, type Token } from './equation-tokens.ts';

/** A line holds about so many characters before it is worth breaking. */
const SHORT = 44;
const SHORTEST_PART = 20;

const RELATION = /^[=≤≥<>≈→]$/;
const JOINT = /^[+−±]$/;
const STOP = /^[,;:]$/;
const WORDS_THAT_BREAK = /^(where|else|otherwise|with|and|if|when|in|by|until|then)\b/;

/**
 * A long equation in the pieces between which a line may break: before a relation, a sum or a word that joins, after a
 * comma. Browsers do not break a line inside mathematics. Every letter of the equation is in one of the parts.
 */
export const equationParts = (equation: string): readonly string[] => {
  const tokens = tokensOf(equation);
  if (equation.length <= SHORT || casesIn(tokens)) return [equation];
  const places = breakPlaces(tokens);
  const from = [0, ...places];
  return from.map((start, part) => equation.slice(start, from[part + 1]).trim());
};

const breakPlaces = (tokens: readonly Token[]): readonly number[] => {
  const places: number[] = [];
  let depth = 0;
  for (const [at, token] of tokens.entries()) {
    if (token.kind === 'close') depth -= 1;
    const since = token.from - (places.at(-1) ?? 0);
    if (at > 0 && depth === 0 && mayBreak(tokens[at - 1], token, since)) places.push(token.from);
    if (token.kind === 'open') depth += 1;
  }
  return places;
};

const mayBreak = (before: Token | undefined, token: Token, since: number): boolean => {
  if (STOP.test(before?.text ?? '')) return token.spaced;
  if (token.kind === 'prose') return WORDS_THAT_BREAK.test(token.text);
  if (token.kind !== 'operator' || since <= SHORTEST_PART) return false;
  const isBinary = before?.kind !== 'operator' && before?.kind !== 'script' && before?.kind !== 'prose';
  return RELATION.test(token.text) || (isBinary && JOINT.test(token.text));
};
