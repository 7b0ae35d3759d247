import type { YoungReference } from '../bone/bone-score.ts';
import { figure } from '../bone/figures.ts';
import { impossible, refused, type Refused } from '../bone/impossible.ts';
import type { FormulaInput } from '../formula.ts';
import { nameOfRule, type LimitRule, type RuleBasis, type RuleQuantity } from './rule.ts';

/** What a rule asks, in the unit of its quantity and in words. */

export const PHYSICIAN_DECIDES = 'A physician decides.';

const RANGES: Readonly<Record<RuleQuantity, readonly [number, number]>> = {
  'T score': [-8, 8],
  'maximal oxygen uptake': [5, 100],
  'muscle strength': [1, 2000],
  deadlift: [1, 1000],
  'bench press': [1, 1000],
  'density of hip and spine': [0.05, 3],
  'density of the femoral neck': [0.05, 3],
};

/** What a measured value of a rule may be. */
export const quantityInput = ({ quantity, unit }: LimitRule, name: string = quantity): FormulaInput => ({
  name,
  symbol: 'x',
  unit,
  possible: RANGES[quantity],
  valid: RANGES[quantity],
});

const BODY_MASS: FormulaInput = { name: 'body mass', symbol: 'W', unit: 'kg', possible: [25, 300], valid: [40, 150] };

const AGAINST: Readonly<Record<Exclude<RuleBasis, 'absolute'>, string>> = {
  'of before flight': 'the value before flight',
  'of the mean for age and sex': 'the mean for age and sex',
  'of body weight': 'body mass',
};

export type LimitInUnit =
  { readonly kind: 'limit'; readonly value: number } | { readonly kind: 'none'; readonly reason: string } | Refused;

/** The limit of a rule in the unit of its quantity. */
export const limitInUnit = (rule: LimitRule, against: number | undefined): LimitInUnit => {
  if (rule.basis === 'absolute') return { kind: 'limit', value: rule.limit };
  const missing = AGAINST[rule.basis];
  if (against === undefined)
    return { kind: 'none', reason: `Enter ${missing}: ${nameOfRule(rule)} is counted in fractions of it.` };
  const input = rule.basis === 'of body weight' ? BODY_MASS : quantityInput(rule, missing);
  const reasons = impossible([[input, against]]);
  return reasons.length > 0 ? refused(reasons) : { kind: 'limit', value: rule.limit * against };
};

const DECIMALS: Readonly<Record<RuleQuantity, number>> = {
  'T score': 2,
  'maximal oxygen uptake': 1,
  'muscle strength': 1,
  deadlift: 1,
  'bench press': 1,
  'density of hip and spine': 3,
  'density of the femoral neck': 3,
};

/** A value of a rule's quantity as it stands in a sentence; counted in SD, a score needs no unit. */
export const shownValue = ({ quantity, unit }: LimitRule, value: number): string =>
  quantity === 'T score' ? figure(value, DECIMALS[quantity]) : `${figure(value, DECIMALS[quantity])} ${unit}`;

/** "at least 28.5 mL/(kg min), 75 % of before flight". */
export const shownLimit = (rule: LimitRule, limit: number): string =>
  rule.basis === 'absolute'
    ? `${rule.comparator} ${shownValue(rule, limit)}`
    : `${rule.comparator} ${shownValue(rule, limit)}, ${figure(100 * rule.limit, 0)} % ${rule.basis}`;

const REFERENCE_UNKNOWN =
  'What the T score was counted from is not said; crews are counted against the young of their own sex.';
const REFERENCE_OTHER =
  'The T score was counted against young women; crews are counted against the young of their own sex.';

/** What to say of the reference of a T score. */
export const referenceCaution = ({ quantity }: LimitRule, reference: YoungReference | undefined): readonly string[] => {
  if (quantity !== 'T score' || reference === 'sex-matched') return [];
  return [reference === undefined ? REFERENCE_UNKNOWN : REFERENCE_OTHER];
};

/** A sentence begins with it. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
