import { method } from '../method.ts';
import { COMMON_PRACTICE } from '../sources.ts';
import { spaceWalkRules, type SpaceWalkRule } from './spacewalk-rules.table.ts';

export interface RuleInForce {
  readonly rule: SpaceWalkRule;
  readonly strength: 'must' | 'better';
}

export type RulesBefore =
  | { readonly kind: 'estimate'; readonly value: readonly RuleInForce[]; readonly cautions: readonly string[] }
  | { readonly kind: 'refused'; readonly reason: string };

/** Hours of a year. */
const LONGEST_AHEAD = 8760;

/** The rules that hold a number of hours before a space walk. */
export const spaceWalkRulesBefore = method(
  {
    id: 'space-walk/rules-before',
    revision: 1,
    title: 'Rules that hold so many hours before a space walk',
    equations: ['must if h ≤ hours from which it must hold', 'better if h ≤ hours from which it had better'],
    inputs: [
      {
        name: 'hours to the start of the space walk',
        symbol: 'h',
        unit: 'h',
        possible: [0, LONGEST_AHEAD],
        valid: [0, LONGEST_AHEAD],
      },
    ],
    outputs: [{ name: 'rules', symbol: 'n', unit: '1' }],
    refuses: ['Hours below 0: after a walk, hands and shoulders are looked at first.', 'More than a year ahead.'],
    source: COMMON_PRACTICE,
    doesNotKnow: spaceWalkRules.record.doesNotKnow,
  },
  (hours: number): RulesBefore => {
    if (!(hours >= 0)) return { kind: 'refused', reason: `The walk must lie ahead; it is ${hours} hours away.` };
    if (hours > LONGEST_AHEAD)
      return { kind: 'refused', reason: `A walk is planned at most a year ahead; it is ${hours} hours away.` };
    const value = spaceWalkRules.rows.flatMap((rule): readonly RuleInForce[] => {
      if (!rule.hours || hours > rule.hours.better) return [];
      return [{ rule, strength: hours <= rule.hours.must ? 'must' : 'better' }];
    });
    return { kind: 'estimate', value, cautions: [] };
  },
);
