import type { Machine } from '#domain/catalogue.ts';
import type { Fact, FactBody } from '#domain/fact.ts';
import type { Problem } from '#contract/problem.ts';

/**
 * Loads are kept as whole increments of a machine: one that counts otherwise is another machine. Everything else of it
 * may change.
 */
export const machineProblems = (body: FactBody, current: readonly Fact[]): readonly Problem[] => {
  if (body.kind !== 'catalogued' || body.entry.kind !== 'machine') return [];
  const { machine } = body.entry;
  const before = current.flatMap((fact) =>
    fact.kind === 'catalogued' && fact.entry.kind === 'machine' && fact.entry.machine.id === machine.id
      ? [fact.entry.machine]
      : [],
  );
  return before.some((each) => countsOtherwise(each, machine)) ? [anotherMachine(machine)] : [];
};

const countsOtherwise = (before: Machine, after: Machine): boolean =>
  before.unit !== after.unit || before.increment !== after.increment || before.gravity !== after.gravity;

const anotherMachine = ({ name }: Machine): Problem => ({
  what: `${name} would count its loads in another unit or step.`,
  why: 'Loads on cards and in the log are whole steps of the machine: they would all change their meaning.',
  whatToDo: 'Enter it as a machine of its own, under a new identity.',
  field: 'entry.machine.increment',
});
