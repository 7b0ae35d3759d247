import { estimateLogSd } from '../strength/estimate-spread.ts';
import { oneRepMaxWathan } from '../strength/one-rep-max.ts';
import type { Observation } from './observation.ts';
import { day } from '#units/day.ts';
import { barLoad, repetitions } from '#units/quantity.ts';

/** Six invented sets in three weeks: what filters are checked with and drawn from. Loads in kilograms. */
export const EXAMPLE_SETS: readonly (readonly [on: number, load: number, completed: number, reserve: number])[] = [
  [0, 100, 5, 2],
  [3, 102.5, 5, 2],
  [7, 105, 5, 1],
  [10, 110, 3, 1],
  [14, 105, 8, 0],
  [21, 122.5, 1, 0],
];

/** 120 kg, known to 0.15 on the log scale. */
export const EXAMPLE_PRIOR = { day: day(0), level: Math.log(120), variance: 0.15 ** 2 };

export const EXAMPLE_OBSERVATIONS: readonly Observation[] = EXAMPLE_SETS.map(([on, load, completed, reserve]) => {
  const effective = repetitions(completed + reserve);
  return {
    day: day(on),
    y: Math.log(oneRepMaxWathan(barLoad(load), effective)),
    variance: estimateLogSd(effective, repetitions(reserve)) ** 2,
  };
});
