import type { BoneReference, YoungReference } from '../bone/bone-score.ts';
import { impossible, refused, type Refused } from '../bone/impossible.ts';
import { densityAtScore, referenceMean, referenceSd } from '../bone/standard-score.ts';
import type { FormulaInput } from '../formula.ts';
import { method } from '../method.ts';
import { OUR_OWN_DESIGN } from '../sources.ts';
import { chanceAtLeast, chanceAtLeastOfLog } from './chance.ts';
import {
  capital,
  limitInUnit,
  PHYSICIAN_DECIDES,
  quantityInput,
  referenceCaution,
  shownLimit,
  type LimitInUnit,
} from './rule-limit.ts';
import { nameOfRule, type LimitRule, type StandardRule } from './rule.ts';
import { STANDARD_3001_BASELINE } from './sources.ts';

/** The probability of meeting a rule: only where somebody has held the rule against its document. */

/** What is believed of the true value: a mean and a standard deviation, of the quantity or of its logarithm. */
export type Belief =
  | {
      readonly scale: 'normal' | 'log';
      readonly mean: number;
      readonly sd: number;
      /** What a relative limit is counted in. */
      readonly against?: number;
      /** Of a T score: what it was counted from. */
      readonly reference?: YoungReference;
    }
  /** Of the density behind a T score, on the log scale. */
  | { readonly scale: 'log density'; readonly mean: number; readonly sd: number; readonly reference: BoneReference };

export type ChanceOfMeeting =
  | {
      readonly kind: 'estimate';
      readonly value: number;
      readonly rule: string;
      /** In what the belief is of: a limit on a T score becomes a density where the density is believed of. */
      readonly limit: number;
      readonly says: string;
      readonly cautions: readonly string[];
    }
  | { readonly kind: 'none'; readonly reason: string }
  | Refused;

const sdInput: FormulaInput = {
  name: 'standard deviation',
  symbol: 'σ',
  unit: 'of the rule',
  possible: [1e-9, 2000],
  valid: [1e-9, 2000],
};

/** Probability that the true value meets a verified rule. */
export const chanceOfMeeting = method(
  {
    id: 'standards/chance-of-meeting',
    revision: 1,
    title: 'Probability that the true value meets a verified rule',
    equations: [
      'P = Φ((μ − limit) / σ), or Φ((μ − ln limit) / σ) on the log scale, where at least is asked; 1 − P where at most',
      'limit of a density = mean + T · SD of the reference of the T score',
    ],
    inputs: [{ name: 'mean', symbol: 'μ', unit: 'of the rule', possible: [-8, 2000], valid: [-8, 2000] }, sdInput],
    outputs: [{ name: 'probability', symbol: 'P', unit: '1' }],
    refuses: [
      'An unverified rule, or one in words: no probability.',
      'A relative limit without what it is counted in; the logarithm of a T score: no probability.',
      'A mean or a standard deviation that cannot be.',
    ],
    source: OUR_OWN_DESIGN,
    restsOn: [STANDARD_3001_BASELINE],
    doesNotKnow:
      'Whether mean and standard deviation are right; what was not measured; the error of what a relative limit is counted in. It speaks of a rule, not of a person; a physician decides.',
  },
  (rule: StandardRule, belief: Belief): ChanceOfMeeting => {
    const name = capital(nameOfRule(rule));
    if (rule.status !== 'verified') return none(`${name} is unverified: no probability is given against it.`);
    if (rule.kind === 'words') return none(`${name} is in words: ${rule.says} ${PHYSICIAN_DECIDES}`);
    const unfitting = whyNotScale(rule, belief);
    if (unfitting !== undefined) return none(unfitting);
    const reasons = impossible(beliefInputs(rule, belief));
    if (reasons.length > 0) return refused(reasons);
    const limit = limitOf(rule, belief);
    if (limit.kind !== 'limit') return limit;
    return belief.scale !== 'normal' && limit.value <= 0
      ? none(`${name} lies at or under nought, where no logarithm is: give the mean and standard deviation themselves.`)
      : chanceFrom(rule, belief, limit.value);
  },
);

const none = (reason: string): ChanceOfMeeting => ({ kind: 'none', reason });

const whyNotScale = ({ quantity }: LimitRule, belief: Belief): string | undefined => {
  const { scale } = belief;
  if (quantity === 'T score' && scale === 'log')
    return 'A T score may be negative and has no logarithm: give its mean and standard deviation, or those of the logarithm of the density.';
  if (quantity !== 'T score' && scale === 'log density')
    return `The density of a bone says nothing about ${quantity}: give the mean and standard deviation of that.`;
  return scale === 'log density' && belief.reference.kind === 'age-matched'
    ? 'A T score is counted from young adults; this reference is of people of the same age.'
    : undefined;
};

const beliefInputs = (rule: LimitRule, belief: Belief): readonly (readonly [FormulaInput, number])[] => {
  const spread = [sdInput, belief.sd] as const;
  if (belief.scale === 'normal') return [[quantityInput(rule, `mean of ${rule.quantity}`), belief.mean], spread];
  const name = belief.scale === 'log' ? rule.quantity : 'density';
  return [
    [{ ...sdInput, name: `mean of the logarithm of ${name}`, unit: 'ln', possible: [-5, 10] }, belief.mean],
    spread,
    ...(belief.scale === 'log density'
      ? [[referenceMean, belief.reference.mean] as const, [referenceSd, belief.reference.sd] as const]
      : []),
  ];
};

const limitOf = (rule: LimitRule, belief: Belief): LimitInUnit =>
  belief.scale === 'log density'
    ? { kind: 'limit', value: densityAtScore(rule.limit, belief.reference.mean, belief.reference.sd) }
    : limitInUnit(rule, belief.against);

const chanceFrom = (rule: LimitRule, belief: Belief, limit: number): ChanceOfMeeting => {
  const atLeast = (belief.scale === 'normal' ? chanceAtLeast : chanceAtLeastOfLog)(limit, belief.mean, belief.sd);
  const value = rule.comparator === 'at least' ? atLeast : 1 - atLeast;
  const ofRule = belief.scale === 'log density' ? rule.limit : limit;
  return {
    kind: 'estimate',
    value,
    rule: rule.id,
    limit,
    says: `By the mean and standard deviation given, the true ${rule.quantity} meets ${nameOfRule(rule)} with a probability of ${shownChance(value)}: ${shownLimit(rule, ofRule)}. ${PHYSICIAN_DECIDES}`,
    cautions: [...relativeCaution(rule), ...referenceCaution(rule, youngReferenceOf(belief))],
  };
};

const youngReferenceOf = ({ reference }: Belief): YoungReference | undefined => {
  if (typeof reference !== 'object') return reference;
  return reference.kind === 'young female' ? 'young female' : 'sex-matched';
};

const relativeCaution = ({ basis }: LimitRule): readonly string[] =>
  basis === 'absolute' ? [] : [`What the limit is counted in (${basis.replace(/^of /, '')}) is taken as exact.`];

/** Whole percent; nothing is sure. */
const shownChance = (value: number): string => {
  const percent = Math.round(100 * value);
  if (percent < 1) return 'under 1 %';
  return percent > 99 ? 'over 99 %' : `${percent} %`;
};
