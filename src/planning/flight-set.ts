import type { BarLoad, Fraction, Kilograms, MachineLoad } from '#units/quantity.ts';
import {
  barEquivalent,
  barPart,
  bodyWeightAdded,
  cappedOff,
  machineTarget,
  trueFraction,
} from '#science/crossing/crossing.ts';
import { shoulderExcess } from '#science/crossing/axial-load.ts';
import { reckoning } from '#science/reckoning.ts';

/** What one work set in flight is made from. `load` is what was chosen after limits and rounding. */
export type FlightSetGivens = {
  readonly 'effort step': Fraction;
  readonly 'programme fraction': Fraction;
  readonly maximum: BarLoad;
  readonly 'share step': Fraction;
  readonly share: Fraction;
  readonly 'work share': Fraction;
  readonly 'body mass': Kilograms;
  readonly load: MachineLoad;
};

const GIVENS = [
  'effort step',
  'programme fraction',
  'maximum',
  'share step',
  'share',
  'work share',
  'body mass',
  'load',
] as const;

/** The crossing of one work set, from bar to machine and back. */
export const FLIGHT_SET = reckoning<FlightSetGivens>('flight set', GIVENS)
  .cell('bar', barPart, 'effort step', 'programme fraction', 'maximum')
  .cell('added', bodyWeightAdded, 'share step', 'share', 'body mass')
  .cell('target', machineTarget, 'bar', 'added')
  .cell('capped off', cappedOff, 'target', 'load')
  .cell('bar-equivalent', barEquivalent, 'load', 'work share', 'body mass')
  .cell('true fraction', trueFraction, 'load', 'work share', 'body mass', 'maximum')
  .cell('shoulder excess', shoulderExcess, 'load', 'bar');

export const FLIGHT_SET_PLACES = {
  bar: FLIGHT_SET.place('bar'),
  added: FLIGHT_SET.place('added'),
  target: FLIGHT_SET.place('target'),
  load: FLIGHT_SET.place('load'),
  cappedOff: FLIGHT_SET.place('capped off'),
  barEquivalent: FLIGHT_SET.place('bar-equivalent'),
  trueFraction: FLIGHT_SET.place('true fraction'),
  shoulderExcess: FLIGHT_SET.place('shoulder excess'),
} as const;
