import { formula } from '../formula.ts';
import { method } from '../method.ts';
import { normalCdf } from '../numeric/normal.ts';
import { OUR_OWN_DESIGN } from '../sources.ts';
import { nameOfRule, type LimitRule } from '../standards/rule.ts';
import type { Refused } from './adherence.ts';
import { mixtureBelow, type Component } from './mixture.ts';

/** Probability under a line: somebody's own, or a rule that was compared with its document; never an unverified rule. */

/** Probability that a value lies under a line. */
export const chanceUnder = formula(
  {
    id: 'projection/chance-under',
    revision: 1,
    title: 'Probability that a value lies under a line',
    equation: 'P = Φ((ln(c) − μ) / SD)',
    inputs: [
      { name: 'line', symbol: 'c', unit: 'as measured', possible: [1e-9, 1e6], valid: [0.1, 1e5] },
      { name: 'expected logarithm', symbol: 'μ', unit: 'ln', possible: [-21, 14], valid: [-7, 12] },
      { name: 'its standard deviation', symbol: 'SD', unit: 'ln', possible: [1e-9, 20], valid: [0.001, 0.5] },
    ],
    output: { name: 'probability', symbol: 'P', unit: '1' },
    source: OUR_OWN_DESIGN,
    doesNotKnow: 'Far under the middle the logarithm need not be normal: a small probability is only "small".',
  },
  (line: number, mean: number, sd: number): number => {
    const z = (Math.log(line) - mean) / sd;
    return normalCdf(Math.max(-LAST, Math.min(LAST, z)));
  },
);
/** Standard deviations beyond which double precision has nothing left. */
const LAST = 38;

declare const made: unique symbol;

/** Made by the two functions below only: nobody calls a line verified by saying so. */
export interface Line {
  readonly [made]: true;
  readonly name: string;
  /** On the scale of what is forecast: a value, a ratio, or percent. */
  readonly at: number;
  /** Is it somebody's own line, or a rule that somebody has compared with its document? */
  readonly mayHaveChance: boolean;
}

/** A rule of a standard, at a limit brought to the scale of what is forecast. */
export const lineOfRule = (rule: LimitRule, at: number): Line =>
  ({ name: nameOfRule(rule), at, mayHaveChance: rule.status === 'verified' }) as Line;

/** A line that the specialist drew, and that is no rule: "what she wants to come back with". */
export const ownLine = (name: string, at: number): Line => ({ name, at, mayHaveChance: true }) as Line;

export type Chance = { readonly kind: 'estimate'; readonly value: number; readonly line: Line } | Refused;

/** Why no probability is given against a line, or nothing. */
export const faultOfLine = ({ name, at, mayHaveChance }: Line): Refused | null => {
  if (!mayHaveChance)
    return {
      kind: 'refused',
      reason: `"${name}" has not been compared with the rule as printed, and no probability is given against it. Look at the band beside the line, or have the rule verified.`,
    };
  return Number.isFinite(at) ? null : { kind: 'refused', reason: `"${name}" must be a finite number; it is ${at}.` };
};

/** Probability of lying under an own line or a verified rule. */
export const chanceUnderLine = method(
  {
    id: 'projection/chance-under-line',
    revision: 1,
    title: 'Probability of lying under an own line or a verified rule',
    equations: ['P = sum_i w_i · Φ((c − μ_i) / SD_i)', 'c is the logarithm of the line where the scale is logarithmic'],
    inputs: [
      { name: 'weight of a component', symbol: 'w_i', unit: '1', possible: [0, 1], valid: [0, 1] },
      { name: 'its mean', symbol: 'μ_i', unit: 'ln or %', possible: [-100, 100], valid: [-30, 12] },
      { name: 'its standard deviation', symbol: 'SD_i', unit: 'ln or %', possible: [0, 100], valid: [0, 20] },
      { name: 'line', symbol: 'c', unit: 'as measured', possible: [-1e6, 1e6], valid: [-100, 1e5] },
    ],
    outputs: [{ name: 'probability', symbol: 'P', unit: '1' }],
    refuses: [
      'A rule that has not been compared with its document.',
      'A line of zero or less where the scale is logarithmic.',
    ],
    source: OUR_OWN_DESIGN,
    doesNotKnow: 'What lying under the line means for this person: that is for a physician.',
  },
  (components: readonly Component[], scale: 'log' | 'percent', line: Line): Chance => {
    const fault = faultOfLine(line);
    if (fault) return fault;
    if (scale === 'log' && !(line.at > 0))
      return { kind: 'refused', reason: `"${line.name}" must lie above zero; it is ${line.at}.` };
    const at = scale === 'log' ? Math.log(line.at) : line.at;
    return { kind: 'estimate', value: mixtureBelow(components, at), line };
  },
);
