import type { Problem } from '#contract/problem.ts';
import { POLICY_TERMS } from '#domain/policy-terms.ts';
import type { Policies } from '#domain/policies.ts';
import { typedNumber, typedWords } from '../record/typed-values.ts';

/** A policy as it is typed: shares in percent, the steps of a ramp with blanks between them. */
export const typedPolicyOf = (name: keyof Policies, policies: Policies): string => {
  const value = policies[name];
  if (typeof value !== 'number') return value.join('  ');
  return POLICY_TERMS[name].unit === '%' ? String(Number((value * 100).toFixed(6))) : String(value);
};

/** The policy that a text comes to, or null with every problem said. */
export const policyOf = (name: keyof Policies, text: string, problems: Problem[]): Partial<Policies> | null => {
  const field = `policies.${name}`;
  const { unit } = POLICY_TERMS[name];
  if (unit === 'steps') {
    const steps = stepsOf(text, field, problems);
    return steps && { [name]: steps };
  }
  const value = typedNumber(text, field, problems);
  if (value === null) return null;
  return { [name]: unit === '%' ? Number((value / 100).toFixed(8)) : value };
};

const stepsOf = (text: string, field: string, problems: Problem[]): readonly number[] | null => {
  if (typedWords(text, field, problems) === null) return null;
  const steps = text
    .trim()
    .split(/[\s;]+/)
    .map((step) => typedNumber(step.replace(/,$/, ''), field, problems));
  return steps.some((step) => step === null) ? null : (steps as readonly number[]);
};
