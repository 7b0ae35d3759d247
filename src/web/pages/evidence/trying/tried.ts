import { evaluate } from '#science/evaluate.ts';
import type { AnyFormula } from '#science/formula.ts';

/** A formula met with what somebody typed. */
export type Tried =
  | { readonly kind: 'value'; readonly value: number; readonly cautions: readonly string[] }
  | { readonly kind: 'refused'; readonly reasons: readonly string[] };

/** Decimal comma, minus sign and spaces as people type them. */
const numberOf = (text: string): number | null => {
  const plain = text.trim().replaceAll('−', '-').replace(',', '.');
  return /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(plain) ? Number(plain) : null;
};

/** The inputs that are no number, by their place. */
export const unreadable = (texts: readonly string[]): readonly number[] =>
  texts.flatMap((text, place) => (numberOf(text) === null ? [place] : []));

/** The value with its cautions, or every reason why there is none. */
export const tried = (formula: AnyFormula, texts: readonly string[]): Tried => {
  const given = texts.map(numberOf);
  const reasons = unreadable(texts).map((place) => notANumber(formula.record.inputs[place]?.name ?? '', texts[place]));
  if (reasons.length > 0) return { kind: 'refused', reasons };
  const met = evaluate(
    formula,
    given.map((value) => value ?? Number.NaN),
  );
  return met.kind === 'value'
    ? { ...met, cautions: met.cautions.map(asSentence) }
    : { ...met, reasons: met.reasons.map(capital) };
};

const notANumber = (name: string, text = ''): string =>
  text.trim() === ''
    ? `${capital(name)} is empty: type a number.`
    : `${capital(name)} is “${text.trim()}”, which is no number: type digits, with a point or a comma for decimals.`;

const asSentence = (caution: string): string => `${capital(caution).replace(/\.$/, '')}: computed, but not relied on.`;

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
