import type { Entered } from '#units/entered.ts';
import { STANDARD_GRAVITY } from '#units/gravity.ts';
import { kilogramsPer } from '#units/mass.ts';
import type { Side } from './effort.ts';
import type { MachineId } from './identity.ts';

/** What was tested beside lifts, each value as it was typed. Stages of one test share their day. */
export type Test =
  | {
      readonly what: 'greatest oxygen uptake';
      readonly value: Entered<'mL/(kg min)'>;
      readonly how: 'measured' | 'estimated';
    }
  | { readonly what: 'greatest heart rate'; readonly value: Entered<'1/min'> }
  | { readonly what: 'resting heart rate'; readonly value: Entered<'1/min'> }
  /** One steady stage on a cycle. */
  | {
      readonly what: 'cycle stage';
      readonly watts: Entered<'W'>;
      readonly heartRate: Entered<'1/min'> | null;
      readonly uptake: Entered<'mL/(kg min)'> | null;
      readonly machine: MachineId | null;
    }
  /** One steady stage of running on a level belt in 1 g. */
  | {
      readonly what: 'running stage';
      readonly speed: Entered<'km/h'>;
      readonly heartRate: Entered<'1/min'> | null;
      readonly uptake: Entered<'mL/(kg min)'> | null;
    }
  | { readonly what: 'greatest grip'; readonly side: Side; readonly value: Entered<HandUnit> }
  /** Mean force at the end of an all-out test. */
  | { readonly what: 'critical force'; readonly side: Side; readonly value: Entered<HandUnit> }
  | { readonly what: 'jump height'; readonly value: Entered<'cm' | 'in'> }
  /** Single-leg heel raises until failure. */
  | { readonly what: 'heel raises'; readonly side: Side; readonly value: Entered<'repetitions'> };

export const HAND_UNITS = ['N', 'kg', 'lb'] as const;
export type HandUnit = (typeof HAND_UNITS)[number];

export const TESTS = [
  'greatest oxygen uptake',
  'greatest heart rate',
  'resting heart rate',
  'cycle stage',
  'running stage',
  'greatest grip',
  'critical force',
  'jump height',
  'heel raises',
] as const satisfies readonly Test['what'][];

/** A force of the hand in newtons: kilograms and pounds on a dynamometer are of force under standard gravity. */
export const newtonsOf = ({ text, unit }: Entered<HandUnit>): number =>
  unit === 'N' ? Number(text) : Number(text) * kilogramsPer(unit) * STANDARD_GRAVITY;
