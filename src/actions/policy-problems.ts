import { MOST_RAMP_STEPS, POLICIES_IN_ORDER, POLICY_TERMS } from '#domain/policy-terms.ts';
import type { Policies } from '#domain/policies.ts';
import type { Problem } from '#contract/problem.ts';

/** What stands against policies, each in its bounds, and those that have an order in it. */
export const policyProblems = (set: Partial<Policies>, standing: Policies): readonly Problem[] => {
  const names = Object.keys(set) as (keyof Policies)[];
  if (names.length === 0) return [nothingSet()];
  const beyond = names.flatMap((name) => boundProblems(name, set[name] ?? standing[name]));
  return [...beyond, ...orderProblems(names, { ...standing, ...set })];
};

const boundProblems = (name: keyof Policies, value: number | readonly number[]): readonly Problem[] => {
  const { least, most, isWhole, bounded } = POLICY_TERMS[name];
  const isOutside = (each: number): boolean => each < least || each > most || (isWhole && !Number.isInteger(each));
  const bounds = `${isWhole ? 'a whole number ' : ''}from ${least} to ${most}`;
  if (typeof value === 'number')
    return isOutside(value)
      ? [problemAt(name, `${value} lies outside the bounds.`, `It is ${bounds}. ${bounded}`, 'Choose a value in them.')]
      : [];
  return [
    ...value
      .filter(isOutside)
      .map((each) =>
        problemAt(name, `A step of ${each} lies outside the bounds.`, `A step is ${bounds}. ${bounded}`, 'Correct it.'),
      ),
    ...(value.length > MOST_RAMP_STEPS ? [tooManySteps(name, value.length)] : []),
  ];
};

const orderProblems = (names: readonly (keyof Policies)[], all: Policies): readonly Problem[] =>
  POLICIES_IN_ORDER.flatMap(({ names: inOrder, because }) =>
    inOrder.flatMap((name, place) => {
      const before = inOrder[place - 1];
      if (before === undefined || all[before] <= all[name]) return [];
      const typed = names.includes(name) ? name : before;
      return [
        problemAt(
          typed,
          `They would stand at ${inOrder.map((each) => String(all[each])).join(', ')}.`,
          because,
          'Change the other first, or choose a value that keeps the order.',
        ),
      ];
    }),
  );

const problemAt = (name: keyof Policies, what: string, why: string, whatToDo: string): Problem => ({
  what,
  why,
  whatToDo,
  field: `policies.${name}`,
});

const tooManySteps = (name: keyof Policies, count: number): Problem =>
  problemAt(
    name,
    `A ramp of ${count} steps is too long.`,
    `Each step is earned and signed; ${MOST_RAMP_STEPS} are the most.`,
    'Leave some out.',
  );

const nothingSet = (): Problem => ({
  what: 'No policy is named.',
  why: 'An entry that sets nothing would only fill the log.',
  whatToDo: 'Name the policy and its value.',
  field: 'policies',
});
