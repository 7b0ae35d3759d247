import { callWith, type AnyFormula, type FormulaRecord } from './formula.ts';

/** A formula met with care: computed and flagged, or refused in a sentence; never a NaN. */

export type Evaluated =
  | { readonly kind: 'value'; readonly value: number; readonly cautions: readonly string[] }
  | { readonly kind: 'refused'; readonly reasons: readonly string[] };

/** What ranges are read from: the record of a formula or of a method. */
type Ranges = Pick<FormulaRecord, 'inputs'>;

/** The value of a formula with what lies outside its valid range, or every reason why there is none. */
export const evaluate = (formula: AnyFormula, given: readonly number[]): Evaluated => {
  const reasons = impossibilities(formula.record, given);
  if (reasons.length > 0) return { kind: 'refused', reasons };
  const value = callWith(formula, given);
  return Number.isFinite(value)
    ? { kind: 'value', value, cautions: outsideValidRange(formula.record, given) }
    : { kind: 'refused', reasons: [`${formula.record.title} has no finite value here.`] };
};

/** The inputs of a call that lie outside their valid range, as sentences. */
export const outsideValidRange = (record: Ranges, given: readonly number[]): readonly string[] =>
  record.inputs.flatMap((input, place) => {
    const value = given[place];
    if (value === undefined) return [`${input.name} is missing`];
    const [low, high] = input.valid;
    return value >= low && value <= high
      ? []
      : [`${input.name} ${round(value)} ${input.unit} is outside ${low} to ${high}`];
  });

/** Why a call cannot be: inputs outside what is possible, or that cannot stand together. */
export const impossibilities = (
  record: Ranges & Pick<FormulaRecord, 'conditions'>,
  given: readonly number[],
): readonly string[] => {
  const alone = record.inputs.flatMap((input, place) => {
    const value = given[place];
    const [low, high] = input.possible;
    return value !== undefined && value >= low && value <= high
      ? []
      : [`${input.name} must lie in ${low} to ${high} ${input.unit}; it is ${value}.`];
  });
  return alone.length > 0
    ? alone
    : (record.conditions ?? []).flatMap(({ says, holds }) => (holds(...given) ? [] : [says]));
};

/** Throws a sentence where an input cannot be. For entry points, not for loops. */
export const requirePossible = (record: FormulaRecord, given: readonly number[]): void => {
  const [first] = impossibilities(record, given);
  if (first) throw new RangeError(`${record.title}: ${first}`);
};

const round = (value: number): string => String(Number(value.toPrecision(6)));
