import { reckoning } from '../reckoning.ts';
import { shoulderExcess } from './axial-load.ts';
import {
  barEquivalent,
  barOfFraction,
  barPart,
  bodyWeightAdded,
  cappedOff,
  fractionOfBar,
  machineTarget,
  trueFraction,
} from './crossing.ts';
import type { BarLoad, Fraction, Kilograms, MachineLoad } from '#units/quantity.ts';

/** The working of one set: first what it should be, then, once limits and steps have spoken, what the load is worth. */

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

/** A flight load that no maximum stands behind: from last, by effort, fixed. */
export type FlightWorthGivens = {
  readonly load: MachineLoad;
  readonly workShare: Fraction;
  readonly bodyMass: Kilograms;
};

export const flightWorth = reckoning<FlightWorthGivens>('worth of a flight load', [
  'load',
  'workShare',
  'bodyMass',
]).cell('barEquivalent', barEquivalent, 'load', 'workShare', 'bodyMass');

/** The same where a maximum is known. */
export type FlightWorthOfMaximumGivens = FlightWorthGivens & { readonly maximum: BarLoad };

export const flightWorthOfMaximum = reckoning<FlightWorthOfMaximumGivens>('worth of a flight load, of the maximum', [
  'load',
  'workShare',
  'bodyMass',
  'maximum',
])
  .cell('barEquivalent', barEquivalent, 'load', 'workShare', 'bodyMass')
  .cell('trueFraction', trueFraction, 'load', 'workShare', 'bodyMass', 'maximum');

/** Numbers behind a set in 1 g. */
export type GroundTargetGivens = { readonly maximum: BarLoad; readonly programmeFraction: Fraction };

export const groundTarget = reckoning<GroundTargetGivens>('target of a set in 1 g', [
  'maximum',
  'programmeFraction',
]).cell('bar', barOfFraction, 'programmeFraction', 'maximum');

export type GroundLoadGivens = { readonly load: BarLoad; readonly maximum: BarLoad };

export const groundLoad = reckoning<GroundLoadGivens>('load of a set in 1 g', ['load', 'maximum']).cell(
  'fractionOfMaximum',
  fractionOfBar,
  'load',
  'maximum',
);
