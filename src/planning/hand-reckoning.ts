import type { Fraction, Newtons } from '#units/quantity.ts';
import { partOfForce } from '#science/hand/part-of-force.ts';
import { reckoning } from '#science/reckoning.ts';

export const FORCE_OF_HAND = reckoning<{ readonly target: Fraction; readonly 'tested force': Newtons }>(
  'force of the hand',
  ['target', 'tested force'],
).cell('force', partOfForce, 'target', 'tested force');
