import type { BarLoad, Fraction } from '#units/quantity.ts';
import { barOfFraction, fractionOfBar } from '#science/crossing/crossing.ts';
import { reckoning } from '#science/reckoning.ts';

/** What one work set in 1 g is made from. `load` is what was chosen after limits and rounding. */
export type GroundSetGivens = {
  readonly 'programme fraction': Fraction;
  readonly maximum: BarLoad;
  readonly load: BarLoad;
};

/** One work set under a bar in 1 g: nothing of body weight is to be replaced. */
export const GROUND_SET = reckoning<GroundSetGivens>('set on the ground', ['programme fraction', 'maximum', 'load'])
  .cell('bar', barOfFraction, 'programme fraction', 'maximum')
  .cell('true fraction', fractionOfBar, 'load', 'maximum');

export const GROUND_SET_PLACES = {
  bar: GROUND_SET.place('bar'),
  load: GROUND_SET.place('load'),
  trueFraction: GROUND_SET.place('true fraction'),
} as const;
