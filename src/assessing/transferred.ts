import type { Day } from '#units/day.ts';
import { capacityMachine, type Exercise, type Machine } from '#domain/catalogue.ts';
import type { Estimate } from '#domain/estimate.ts';
import type { Known } from '#domain/known.ts';
import { machineTransfer, type LiftOnBoth } from '#science/estimation/machine-transfer.ts';
import type { TraceOf } from './capacity.ts';

/**
 * A capacity on a ground unit where the lift was never done on it: that of the free bar, by what this person's other lifts on
 * both have shown. Dumbbells and cables load a lift in another way: nothing is carried over to them.
 */
export const transferredTo = (
  known: Known,
  trace: TraceOf,
  exercise: Exercise,
  machine: Machine,
  on: Day,
): Estimate | null => {
  const bar = machine.groundUnitOf === null || machine.gravity !== '1 g' ? null : freeBar(known);
  const base = bar && trace(exercise, bar)?.at(on);
  if (!bar || !base) return null;
  const { ratio, logSd } = machineTransfer(liftsOnBoth(known, trace, { bar, machine }, on));
  return {
    ...base,
    key: { exercise: exercise.id, gravity: machine.gravity, machine: capacityMachine(machine) },
    median: base.median * ratio,
    logSd: Math.hypot(base.logSd, logSd),
    basis: 'from another machine',
  };
};

const freeBar = ({ house }: Known): Machine | null =>
  [...house.machines.values()].find(({ kind, gravity }) => kind === 'free bar' && gravity === '1 g') ?? null;

const liftsOnBoth = (
  { house }: Known,
  trace: TraceOf,
  { bar, machine }: { readonly bar: Machine; readonly machine: Machine },
  on: Day,
): readonly LiftOnBoth[] =>
  [...house.exercises.values()].flatMap((exercise) => {
    if (exercise.capacity.kind === 'none' || exercise.capacity.kind === 'ratio') return [];
    const [there, here] = [trace(exercise, bar)?.at(on), trace(exercise, machine)?.at(on)];
    return there && here
      ? [{ logRatio: Math.log(here.median / there.median), variance: there.logSd ** 2 + here.logSd ** 2 }]
      : [];
  });
