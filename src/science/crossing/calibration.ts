import { formula } from '../formula.ts';
import { load } from '../inputs.ts';
import { COMMON_PRACTICE } from '../sources.ts';
import {
  machineLoad,
  requireFinite,
  type Fraction,
  type Kilograms,
  type MachineLoad,
  type Quantity,
} from '#units/quantity.ts';

/** What a machine is set to, and what it then pulls. Machine loads are delivered; increments are commanded. */

/** What the display of a machine is set to [kg]. Never assignable to what the machine pulls. */
export type CommandedLoad = Quantity<'kg commanded'>;

export const commandedLoad = (value: number): CommandedLoad =>
  requireFinite('commanded load [kg]', value) as CommandedLoad;

/** A dated straight line from commanded to delivered load. */
export interface Calibration {
  readonly factor: Fraction;
  readonly offset: Kilograms;
}

/** A machine without a calibration delivers what it is told to: one to one, nothing added. */
export const IDENTITY_CALIBRATION: Calibration = { factor: 1 as Fraction, offset: 0 as Kilograms };

const inputs = (name: string, symbol: string) => [
  load(name, symbol),
  { name: 'delivered per commanded', symbol: 'k', unit: '1', possible: [0.5, 2], valid: [0.8, 1.25] } as const,
  { name: 'offset', symbol: 'b', unit: 'kg', possible: [-100, 100], valid: [-20, 20] } as const,
];

/** Pull that a machine delivers [kg] when set to a load. */
export const deliveredLoad = formula(
  {
    id: 'calibration/delivered',
    revision: 1,
    title: 'Pull that a machine delivers [kg] when set to a load',
    equation: 'k L_set + b',
    inputs: inputs('load set', 'L_set'),
    output: { name: 'load delivered', symbol: 'L', unit: 'kg' },
    source: COMMON_PRACTICE,
    doesNotKnow: 'How the machine pulls between the loads at which it was measured, and while it moves.',
  },
  (set: CommandedLoad, factor: Fraction, offset: Kilograms): MachineLoad => machineLoad(factor * set + offset),
);

/** Load to set on a machine [kg] for a pull that it should deliver. */
export const loadToCommand = formula(
  {
    id: 'calibration/to-command',
    revision: 1,
    title: 'Load to set on a machine [kg] for a pull that it should deliver',
    equation: '(L − b) / k',
    inputs: inputs('load to deliver', 'L'),
    output: { name: 'load to set', symbol: 'L_set', unit: 'kg' },
    source: COMMON_PRACTICE,
    doesNotKnow: 'How the machine pulls between the loads at which it was measured, and while it moves.',
  },
  (delivered: MachineLoad, factor: Fraction, offset: Kilograms): CommandedLoad =>
    commandedLoad((delivered - offset) / factor),
);
