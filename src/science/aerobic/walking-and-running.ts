import { curveOf, type Curve } from '../plot.ts';
import { formula, type AnyFormula } from '../formula.ts';
import { beltSpeed, grade, uptake } from './inputs.ts';
import { ACSM_HANDBOOK, BUSHMAN_2020 } from './sources.ts';
import {
  metresPerMinute,
  oxygenUptake,
  type Fraction,
  type MetresPerMinute,
  type OxygenUptake,
} from '#units/quantity.ts';

/**
 * What a belt costs in 1 g, gross and in a steady state. Horizontal work is 0.1 mL/kg for each metre walked and 0.2 for
 * each metre run; climbing 1.8 mL/kg for each metre, of which a runner's bounce already pays half.
 */

/** Uptake at rest by convention [mL/(kg min)]. */
export const RESTING_UPTAKE = 3.5;
/** Standard deviation between people, as a fraction of the uptake; from memory. */
export const BETWEEN_PEOPLE = 0.07;
/** Where walking is validated [m/min]. */
export const WALKING_SPEEDS = [50, 100] as const;
/** Above this running is validated; down to the second only where the gait truly is a jog [m/min]. */
export const RUNNING_FROM = 134;
export const JOGGING_FROM = 80;

const BETWEEN = {
  value: BETWEEN_PEOPLE,
  unit: 'of the uptake',
  of: 'people about the equation, from memory',
} as const;
const cost = {
  source: BUSHMAN_2020,
  restsOn: [ACSM_HANDBOOK],
  standardError: BETWEEN,
  doesNotKnow:
    'A person’s economy, holding on to rails, unsteady minutes, and any load but the whole body’s own weight: not for a harness.',
} as const;
const walked = beltSpeed('belt speed, walking', 'S', WALKING_SPEEDS);
const ran = beltSpeed('belt speed, running', 'S', [RUNNING_FROM, 400]);
const gross = { name: 'oxygen uptake, gross', symbol: 'VO2', unit: 'mL/(kg min)' } as const;

const lines = (equation: AnyFormula, speeds: readonly [number, number]): readonly Curve[] =>
  [0, 0.05, 0.1].map((slope) => curveOf(`grade ${slope * 100} %`, equation, speeds, (speed) => [speed, slope]));
const axes = {
  x: { name: 'belt speed', unit: 'm/min' },
  y: { name: 'oxygen uptake', unit: 'mL/(kg min)' },
} as const;

/** Oxygen uptake of walking [mL/(kg min)]. */
export const uptakeOfWalking = formula(
  {
    id: 'metabolic/walking',
    revision: 1,
    title: 'Oxygen uptake of walking [mL/(kg min)]',
    equation: '3.5 + 0.1 · S + 1.8 · S · G',
    inputs: [walked, grade],
    output: gross,
    ...cost,
    plot: {
      says: 'Walking costs half of what running costs for each metre on the level, and climbing costs it twice as much.',
      ...axes,
      curves: (): readonly Curve[] => lines(uptakeOfWalking, WALKING_SPEEDS),
    },
  },
  (speed: MetresPerMinute, slope: Fraction): OxygenUptake =>
    oxygenUptake(RESTING_UPTAKE + 0.1 * speed + 1.8 * speed * slope),
);

/** Oxygen uptake of running [mL/(kg min)]. */
export const uptakeOfRunning = formula(
  {
    id: 'metabolic/running',
    revision: 1,
    title: 'Oxygen uptake of running [mL/(kg min)]',
    equation: '3.5 + 0.2 · S + 0.9 · S · G',
    inputs: [ran, grade],
    output: gross,
    ...cost,
    plot: {
      says: 'A straight line in speed; between 100 and 134 m/min neither gait is validated.',
      ...axes,
      curves: (): readonly Curve[] => [
        ...lines(uptakeOfRunning, [RUNNING_FROM, 260]),
        curveOf('walking, grade 0 %', uptakeOfWalking, WALKING_SPEEDS, (speed) => [speed, 0]),
      ],
    },
  },
  (speed: MetresPerMinute, slope: Fraction): OxygenUptake =>
    oxygenUptake(RESTING_UPTAKE + 0.2 * speed + 0.9 * speed * slope),
);

const backwards = {
  output: { name: 'belt speed', symbol: 'S', unit: 'm/min' },
  source: BUSHMAN_2020,
  restsOn: [ACSM_HANDBOOK],
  doesNotKnow: 'Whether the speed that comes out is one at which the equation was validated: look at it.',
} as const;

/** Walking speed of an oxygen uptake [m/min]. */
export const walkingSpeed = formula(
  {
    id: 'metabolic/walking-speed',
    revision: 1,
    title: 'Walking speed of an oxygen uptake [m/min]',
    equation: '(VO2 − 3.5) / (0.1 + 1.8 · G)',
    inputs: [uptake('oxygen uptake', 'VO2', [8.5, 58.5], [RESTING_UPTAKE, 100]), grade],
    ...backwards,
  },
  (wanted: OxygenUptake, slope: Fraction): MetresPerMinute =>
    metresPerMinute((wanted - RESTING_UPTAKE) / (0.1 + 1.8 * slope)),
);

/** Running speed of an oxygen uptake [m/min]. */
export const runningSpeed = formula(
  {
    id: 'metabolic/running-speed',
    revision: 1,
    title: 'Running speed of an oxygen uptake [m/min]',
    equation: '(VO2 − 3.5) / (0.2 + 0.9 · G)',
    inputs: [uptake('oxygen uptake', 'VO2', [30.3, 90], [RESTING_UPTAKE, 100]), grade],
    ...backwards,
  },
  (wanted: OxygenUptake, slope: Fraction): MetresPerMinute =>
    metresPerMinute((wanted - RESTING_UPTAKE) / (0.2 + 0.9 * slope)),
);
