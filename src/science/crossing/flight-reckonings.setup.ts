import { reckoning } from '../reckoning.ts';
import { shoulderExcess } from './axial-load.ts';
import { barEquivalent, barPart, bodyWeightAdded, cappedOff, machineTarget, trueFraction } from './crossing.ts';
import type { BarLoad, Fraction, Kilograms, MachineLoad } from '#units/quantity.ts';

/** For tests of the crossing: its formulas chained as a set in flight chains them. The planner's own working is in planning. */

/** Numbers behind the target of a flight set. */
export type FlightTargetGivens = {
  readonly maximum: BarLoad;
  readonly programmeFraction: Fraction;
  readonly effortStep: Fraction;
  readonly shareStep: Fraction;
  /** Of the signed policy. */
  readonly share: Fraction;
  readonly bodyMass: Kilograms;
};

export const flightTarget = reckoning<FlightTargetGivens>('target of a flight set', [
  'maximum',
  'programmeFraction',
  'effortStep',
  'shareStep',
  'share',
  'bodyMass',
])
  .cell('bar', barPart, 'effortStep', 'programmeFraction', 'maximum')
  .cell('added', bodyWeightAdded, 'shareStep', 'share', 'bodyMass')
  .cell('target', machineTarget, 'bar', 'added');

/** What a chosen flight load is judged by. */
export type FlightLoadGivens = {
  /** Delivered, in whole steps of the machine. */
  readonly load: MachineLoad;
  readonly target: MachineLoad;
  /** What the programme asks for at the bar; not 0. */
  readonly bar: BarLoad;
  /** Work-matched, whatever policy or ramp made the load. */
  readonly workShare: Fraction;
  readonly bodyMass: Kilograms;
  readonly maximum: BarLoad;
};

export const flightLoad = reckoning<FlightLoadGivens>('load of a flight set', [
  'load',
  'target',
  'bar',
  'workShare',
  'bodyMass',
  'maximum',
])
  .cell('cappedOff', cappedOff, 'target', 'load')
  .cell('barEquivalent', barEquivalent, 'load', 'workShare', 'bodyMass')
  .cell('trueFraction', trueFraction, 'load', 'workShare', 'bodyMass', 'maximum')
  .cell('shoulderExcess', shoulderExcess, 'load', 'bar');
