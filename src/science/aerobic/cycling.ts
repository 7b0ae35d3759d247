import { curveOf, type Curve } from '../plot.ts';
import { formula } from '../formula.ts';
import { bodyMass } from '../inputs.ts';
import { power, uptake, workRate } from './inputs.ts';
import { ACSM_HANDBOOK, BUSHMAN_2020, KOKKINOS_2018 } from './sources.ts';
import { BETWEEN_PEOPLE, RESTING_UPTAKE } from './walking-and-running.ts';
import { oxygenUptake, watts, type Kilograms, type OxygenUptake, type Watts } from '#units/quantity.ts';

/**
 * What a cycle and an arm crank cost, gross and in a steady state. The handbook takes 1 W as 6 kg m/min; exactly
 * it is 6.118, which costs about 1.5 % more. Loads are made with the handbook's, so that they compare with its tables.
 */

/** Kilogram-metres per minute in a watt: what handbooks take, and what it is (60 s over standard gravity). */
export const WORK_PER_WATT_HANDBOOK = 6;
export const WORK_PER_WATT = 60 / 9.80665;
/** Powers at which the equations are validated [W]. */
export const LEG_POWERS = [50, 200] as const;
export const ARM_POWERS = [25, 125] as const;

const mass = bodyMass('M');
const gross = { name: 'oxygen uptake, gross', symbol: 'VO2', unit: 'mL/(kg min)' } as const;
const standardError = {
  value: BETWEEN_PEOPLE,
  unit: 'of the uptake',
  of: 'people about the equation, from memory',
} as const;
const seated = {
  source: BUSHMAN_2020,
  restsOn: [ACSM_HANDBOOK],
  standardError,
  doesNotKnow:
    'Cadence, and how the person is held to the machine. External work is the same weightless; no published correction was found, so none is made (common practice).',
} as const;

/** Work rate of a power [kg m/min]. */
export const workRateOfPower = formula(
  {
    id: 'metabolic/work-rate',
    revision: 1,
    title: 'Work rate of a power [kg m/min]',
    equation: '60 / 9.80665 · P',
    inputs: [power('power', 'P')],
    output: { name: 'work rate', symbol: 'k', unit: 'kg m/min' },
    source: ACSM_HANDBOOK,
    doesNotKnow: 'That handbooks round the factor to 6.',
  },
  (load: Watts): number => WORK_PER_WATT * load,
);

/** Oxygen uptake of leg cycling by work rate [mL/(kg min)]. */
export const uptakeOfLegWork = formula(
  {
    id: 'metabolic/leg-cycling-by-work',
    revision: 1,
    title: 'Oxygen uptake of leg cycling by work rate [mL/(kg min)]',
    equation: '7.0 + 1.8 · k / M',
    inputs: [workRate('work rate', 'k', [300, 1200]), mass],
    output: gross,
    ...seated,
  },
  (work: number, body: Kilograms): OxygenUptake => oxygenUptake(2 * RESTING_UPTAKE + (1.8 * work) / body),
);

/** Oxygen uptake of leg cycling [mL/(kg min)]. */
export const uptakeOfLegCycling = formula(
  {
    id: 'metabolic/leg-cycling',
    revision: 1,
    title: 'Oxygen uptake of leg cycling [mL/(kg min)]',
    equation: '7.0 + 10.8 · P / M',
    inputs: [power('power', 'P', LEG_POWERS), mass],
    output: gross,
    ...seated,
    plot: {
      says: 'The same power is a larger uptake for a lighter person.',
      x: { name: 'power', unit: 'W' },
      y: { name: 'oxygen uptake', unit: 'mL/(kg min)' },
      curves: (): readonly Curve[] =>
        [60, 80, 100].map((body) =>
          curveOf(`body mass ${body} kg`, uptakeOfLegCycling, LEG_POWERS, (load) => [load, body]),
        ),
    },
  },
  (load: Watts, body: Kilograms): OxygenUptake =>
    oxygenUptake(2 * RESTING_UPTAKE + (1.8 * WORK_PER_WATT_HANDBOOK * load) / body),
);

/** Power of an oxygen uptake of leg cycling [W]. */
export const legPower = formula(
  {
    id: 'metabolic/leg-power',
    revision: 1,
    title: 'Power of an oxygen uptake of leg cycling [W]',
    equation: '(VO2 − 7.0) · M / 10.8',
    inputs: [uptake('oxygen uptake', 'VO2', [10.6, 61], [2 * RESTING_UPTAKE, 100]), mass],
    output: { name: 'power', symbol: 'P', unit: 'W' },
    source: BUSHMAN_2020,
    doesNotKnow: 'Whether the power that comes out lies in 50 to 200 W, where the equation was validated: look at it.',
  },
  (wanted: OxygenUptake, body: Kilograms): Watts =>
    watts(((wanted - 2 * RESTING_UPTAKE) * body) / (1.8 * WORK_PER_WATT_HANDBOOK)),
);

/** Oxygen uptake of arm cycling by work rate [mL/(kg min)]. */
export const uptakeOfArmWork = formula(
  {
    id: 'metabolic/arm-cycling-by-work',
    revision: 1,
    title: 'Oxygen uptake of arm cycling by work rate [mL/(kg min)]',
    equation: '3.5 + 3.0 · k / M',
    inputs: [workRate('work rate', 'k', [150, 750]), mass],
    output: gross,
    ...seated,
    source: ACSM_HANDBOOK,
    restsOn: [],
  },
  (work: number, body: Kilograms): OxygenUptake => oxygenUptake(RESTING_UPTAKE + (3 * work) / body),
);

/** Oxygen uptake of arm cycling [mL/(kg min)]. */
export const uptakeOfArmCycling = formula(
  {
    id: 'metabolic/arm-cycling',
    revision: 1,
    title: 'Oxygen uptake of arm cycling [mL/(kg min)]',
    equation: '3.5 + 18 · P / M',
    inputs: [power('power', 'P', ARM_POWERS), mass],
    output: gross,
    ...seated,
    source: ACSM_HANDBOOK,
    restsOn: [],
  },
  (load: Watts, body: Kilograms): OxygenUptake =>
    oxygenUptake(RESTING_UPTAKE + (3 * WORK_PER_WATT_HANDBOOK * load) / body),
);

/** Power of an oxygen uptake of arm cycling [W]. */
export const armPower = formula(
  {
    id: 'metabolic/arm-power',
    revision: 1,
    title: 'Power of an oxygen uptake of arm cycling [W]',
    equation: '(VO2 − 3.5) · M / 18',
    inputs: [uptake('oxygen uptake', 'VO2', [6.5, 60], [RESTING_UPTAKE, 100]), mass],
    output: { name: 'power', symbol: 'P', unit: 'W' },
    source: ACSM_HANDBOOK,
    doesNotKnow: 'Whether the power that comes out lies in 25 to 125 W, where the equation was validated: look at it.',
  },
  (wanted: OxygenUptake, body: Kilograms): Watts =>
    watts(((wanted - RESTING_UPTAKE) * body) / (3 * WORK_PER_WATT_HANDBOOK)),
);

/** Peak oxygen uptake of a peak power on the cycle [mL/(kg min)]. */
export const peakUptakeOfPeakPower = formula(
  {
    id: 'metabolic/peak-of-ramp',
    revision: 1,
    title: 'Peak oxygen uptake of a peak power on the cycle [mL/(kg min)]',
    equation: '1.74 · 6.12 · P_peak / M + 3.5',
    inputs: [power('peak power of a maximal test', 'P_peak', [50, 450]), mass],
    output: { name: 'peak oxygen uptake', symbol: 'VO2_max', unit: 'mL/(kg min)' },
    source: KOKKINOS_2018,
    doesNotKnow:
      'How long the last stage was. At the end of a ramp the steady-state equation read 15 % too high in the same people; this one half a percent.',
  },
  (peak: Watts, body: Kilograms): OxygenUptake => oxygenUptake((1.74 * 6.12 * peak) / body + RESTING_UPTAKE),
);
