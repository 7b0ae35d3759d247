import { expect, test } from 'vitest';
import type { SettingsWindow } from '#contract/windows/settings-window.ts';
import type { Problem } from '#contract/problem.ts';
import { DEFAULT_POLICIES, type Policies } from '#domain/policies.ts';
import { POLICY_TERMS } from '#domain/policy-terms.ts';
import { policyFact, standingFor } from './policy-fact.ts';
import { POLICY_WORDS } from './policy-words.ts';
import { policyOf, typedPolicyOf } from './typed-policy.ts';

const NAMES = Object.keys(DEFAULT_POLICIES) as (keyof Policies)[];

test('every policy has words and terms, and its default comes out of the field as it went in, inside its bounds', () => {
  expect(Object.keys(POLICY_WORDS).toSorted()).toEqual(NAMES.toSorted());
  for (const name of NAMES) {
    const problems: Problem[] = [];
    expect(policyOf(name, typedPolicyOf(name, DEFAULT_POLICIES), problems)).toEqual({ [name]: DEFAULT_POLICIES[name] });
    const { least, most, isWhole, restsOn } = POLICY_TERMS[name];
    for (const value of [DEFAULT_POLICIES[name]].flat()) {
      expect({ name, inside: value >= least && value <= most }).toEqual({ name, inside: true });
      expect({ name, whole: !isWhole || Number.isInteger(value) }).toEqual({ name, whole: true });
    }
    expect(restsOn).not.toBe('');
    expect(problems).toEqual([]);
  }
});

test.each([
  { text: '0,8  0.9 1', steps: [0.8, 0.9, 1] },
  { text: '0.8, 0.9, 1', steps: [0.8, 0.9, 1] },
  { text: '0.8;1', steps: [0.8, 1] },
])('a ramp is typed as $text', ({ text, steps }) => {
  expect(policyOf('effortSteps', text, [])).toEqual({ effortSteps: steps });
});

test.each([
  { name: 'effortSteps' as const, text: '' },
  { name: 'effortSteps' as const, text: '0.8 low' },
  { name: 'backOff' as const, text: 'a tenth' },
])('$name typed as “$text” is told at its field', ({ name, text }) => {
  const problems: Problem[] = [];
  expect(policyOf(name, text, problems)).toBeNull();
  expect(problems.map(({ field }) => field)).toEqual([`policies.${name}`]);
});

test('what takes the place of an entry goes on with whatever else that set, as it counts now', () => {
  const set = (policies: Partial<Policies>) => ({ fact: { policies }, by: 'Hanne Visser' });
  const policiesSet = [set({ backOff: 0.2 }), set({ backOff: 0.15, horizonDays: 10 })];
  const policies = { ...DEFAULT_POLICIES, backOff: 0.2, horizonDays: 10 };
  const settings = { policiesSet, policies } as unknown as SettingsWindow;
  expect(standingFor('backOff', settings)).toBe(policiesSet[0]);
  expect(standingFor('cardValidDays', settings)).toBeNull();
  const standing = standingFor('horizonDays', settings);
  expect(policyFact({ horizonDays: 12 }, standing, policies).policies).toEqual({ backOff: 0.2, horizonDays: 12 });
});
