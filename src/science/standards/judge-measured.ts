import type { YoungReference } from '../bone/bone-score.ts';
import { impossible, refused, type Refused } from '../bone/impossible.ts';
import { method } from '../method.ts';
import { nameOfRule, type LimitRule, type StandardRule } from './rule.ts';
import {
  capital,
  limitInUnit,
  PHYSICIAN_DECIDES,
  quantityInput,
  referenceCaution,
  shownLimit,
  shownValue,
} from './rule-limit.ts';
import { STANDARD_3001_BASELINE } from './sources.ts';

/** A measured value beside a rule: it meets it or does not. What follows from that is never said here. */

export interface Measured {
  readonly value: number;
  /** What a relative limit is counted in: the value before flight, the mean for age and sex, or body mass. */
  readonly against?: number;
  /** Of a T score: what it was counted from. */
  readonly reference?: YoungReference;
}

export type RuleVerdict =
  | {
      readonly kind: 'meets' | 'does not meet';
      readonly rule: string;
      /** In the unit of the quantity. */
      readonly limit: number;
      /** Over the limit where at least is asked, under it where at most: negative where the rule is not met. */
      readonly margin: number;
      readonly says: string;
      readonly cautions: readonly string[];
    }
  | { readonly kind: 'none'; readonly reason: string }
  | Refused;

/** Smaller differences are binary fractions. */
const ROUNDING = 1e-9;

/** Whether a measured value meets a rule. */
export const judgeMeasured = method(
  {
    id: 'standards/judge-measured',
    revision: 1,
    title: 'Whether a measured value meets a rule',
    equations: [
      'limit = limit of the rule, times what it is counted in where it is relative',
      'margin = value − limit where at least is asked, limit − value where at most',
      'meets where margin ≥ 0',
    ],
    inputs: [
      { name: 'measured value', symbol: 'x', unit: 'of the rule', possible: [-8, 2000], valid: [-8, 2000] },
      {
        name: 'what the limit is counted in',
        symbol: 'b',
        unit: 'of the rule',
        possible: [0.05, 2000],
        valid: [0.05, 2000],
      },
    ],
    outputs: [{ name: 'margin', symbol: 'd', unit: 'of the rule' }],
    refuses: [
      'A value that cannot be.',
      'A rule in words, or a relative limit without what it is counted in: no verdict.',
    ],
    source: STANDARD_3001_BASELINE,
    doesNotKnow:
      'The error of the measurement, and everything that a rule leaves out. It says of a value that it meets a rule or does not; a physician decides what follows.',
  },
  (rule: StandardRule, measured: Measured): RuleVerdict => {
    if (rule.kind === 'words')
      return { kind: 'none', reason: `${capital(nameOfRule(rule))} is in words: ${rule.says} ${PHYSICIAN_DECIDES}` };
    const reasons = impossible([[quantityInput(rule), measured.value]]);
    if (reasons.length > 0) return refused(reasons);
    const limit = limitInUnit(rule, measured.against);
    return limit.kind === 'limit' ? verdictOf(rule, measured, limit.value) : limit;
  },
);

const verdictOf = (rule: LimitRule, measured: Measured, limit: number): RuleVerdict => {
  const margin = rule.comparator === 'at least' ? measured.value - limit : limit - measured.value;
  const kind = margin >= -ROUNDING ? 'meets' : 'does not meet';
  return {
    kind,
    rule: rule.id,
    limit,
    margin,
    says: `${capital(rule.quantity)} ${shownValue(rule, measured.value)} ${kind} ${nameOfRule(rule)}: ${shownLimit(rule, limit)}. ${PHYSICIAN_DECIDES}`,
    cautions: [...unverifiedCaution(rule), ...referenceCaution(rule, measured.reference)],
  };
};

const unverifiedCaution = (rule: LimitRule): readonly string[] =>
  rule.status === 'verified'
    ? []
    : [`${capital(nameOfRule(rule))} is unverified: hold it against the document before anything rests on it.`];
