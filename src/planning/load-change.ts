import type { Day } from '#units/day.ts';
import { fraction, kilograms, machineLoad } from '#units/quantity.ts';
import { flightBodyMass } from '#assessing/bar-equivalent.ts';
import { workIncrements, type CardLift } from '#domain/card.ts';
import type { Exercise, Machine } from '#domain/catalogue.ts';
import type { Known } from '#domain/known.ts';
import type { Road } from '#domain/road.ts';
import { bodyWeightShare } from '#science/body/work-share.ts';
import { barEquivalent } from '#science/crossing/crossing.ts';
import { machineSteps } from './plan-context.ts';

/** A planned load against the load in use, up or down, in increments of the machine. */
export interface LoadChange {
  readonly from: number;
  readonly to: number;
  /** Relative change of bar-equivalent: 0.05 is 5 % more, −0.05 is 5 % less; null where the bar felt nothing before. */
  readonly atTheBar: number | null;
}

/** What a planned load changes, of a road derived up to its day; null where effort decides, or nothing was in use. */
export const loadChange = (known: Known, road: Road, item: CardLift, on: Day): LoadChange | null => {
  const to = workIncrements(item);
  if (to === null || item.basis === 'effort') return null;
  const { raise } = item;
  if (raise) return raise.from === null ? null : { from: raise.from, to: raise.to, atTheBar: raise.atTheBar };
  const from = inUse(road, item);
  return from === null ? null : { from, to, atTheBar: from === to ? 0 : changeAtTheBar(known, item, on, from, to) };
};

/** Of a lift with sides, the heavier one. */
const inUse = ({ tracks }: Road, { track, machine }: CardLift): number | null => {
  const loads = tracks.flatMap((each) =>
    each.track === track && each.machine === machine && each.inUse !== null ? [each.inUse] : [],
  );
  return loads.length > 0 ? Math.max(...loads) : null;
};

const changeAtTheBar = (known: Known, item: CardLift, on: Day, from: number, to: number): number | null => {
  const [exercise, machine] = [known.house.exercises.get(item.exercise), known.house.machines.get(item.machine)];
  const worth = exercise && machine ? worthAtTheBar(known, exercise, machine, on) : null;
  if (!worth) return null;
  const was = worth(from);
  return was > 0 ? worth(to) / was - 1 : null;
};

/** Bar-equivalent in kilograms of a load in increments; null where body mass in flight is not known. */
const worthAtTheBar = (known: Known, exercise: Exercise, machine: Machine, on: Day) => {
  const { increment } = machineSteps(known, machine, exercise, on);
  if (machine.gravity === '1 g') return (increments: number): number => increments * increment;
  const mass = flightBodyMass(known, on);
  if (!mass) return null;
  const share = fraction(bodyWeightShare(exercise.shareModel, known.sex).work);
  return (increments: number): number =>
    barEquivalent(machineLoad(increments * increment), share, kilograms(mass.kilograms));
};
