import { formula, type FormulaInput } from '../formula.ts';
import { bodyMass } from '../inputs.ts';
import { minutesInput, sexAsNumber } from './inputs.ts';
import { ACSM_HANDBOOK, COOPER_1968, GEORGE_1993, LEGER_1988, STICKLAND_2003 } from './sources.ts';
import { oxygenUptake, type Kilograms, type Minutes, type OxygenUptake } from '#units/quantity.ts';

/** Field tests that are run to the person's best. */

const output = { name: 'maximal oxygen uptake', symbol: 'VO2_max', unit: 'mL/(kg min)' } as const;
const BEST_EFFORT = 'Whether the person ran to the limit and paced it well; economy of running.';
const time = minutesInput('time of a mile and a half', 'T', [8, 18], [5, 40]);

/** Maximal oxygen uptake of a mile and a half run, handbook [mL/(kg min)]. */
export const mileAndAHalf = formula(
  {
    id: 'field-test/mile-and-a-half',
    revision: 1,
    title: 'Maximal oxygen uptake of a mile and a half run, handbook [mL/(kg min)]',
    equation: '3.5 + 483 / T',
    inputs: [time],
    output,
    source: ACSM_HANDBOOK,
    restsOn: [GEORGE_1993],
    standardError: {
      value: 3.9,
      unit: 'mL/(kg min)',
      of: '47 students, by the same run with mass and sex besides; without them it is no smaller',
    },
    doesNotKnow: BEST_EFFORT,
  },
  (minutes: Minutes): OxygenUptake => oxygenUptake(3.5 + 483 / minutes),
);

/** Maximal oxygen uptake of a mile and a half run, George [mL/(kg min)]. */
export const mileAndAHalfGeorge = formula(
  {
    id: 'field-test/mile-and-a-half-george',
    revision: 1,
    title: 'Maximal oxygen uptake of a mile and a half run, George [mL/(kg min)]',
    equation: '88.02 + 3.716 · sex − 0.1656 · M − 2.767 · T',
    inputs: [bodyMass('M'), sexAsNumber('sex (man 1, woman 0)', [0, 1]), time],
    output,
    source: GEORGE_1993,
    equationFromMemory: true,
    standardError: { value: 3.9, unit: 'mL/(kg min)', of: '47 others; 2.8 in the 49 it was fitted to' },
    doesNotKnow: `${BEST_EFFORT} Made for students of 18 to 29 years: age is not in it.`,
  },
  (body: Kilograms, sex: number, minutes: Minutes): OxygenUptake =>
    oxygenUptake(88.02 + 3.716 * sex - 0.1656 * body - 2.767 * minutes),
);

/** Maximal oxygen uptake of twelve minutes run [mL/(kg min)]. */
export const twelveMinuteRun = formula(
  {
    id: 'field-test/twelve-minutes',
    revision: 1,
    title: 'Maximal oxygen uptake of twelve minutes run [mL/(kg min)]',
    equation: '(d − 504.9) / 44.73',
    inputs: [
      { name: 'distance in twelve minutes', symbol: 'd', unit: 'm', possible: [600, 5000], valid: [1500, 3600] },
    ],
    output,
    source: COOPER_1968,
    standardError: { value: 5, unit: 'mL/(kg min)', of: 'nobody we know of: taken as for the walk, our own setting' },
    doesNotKnow: `${BEST_EFFORT} Made for young men in service.`,
  },
  (distance: number): OxygenUptake => oxygenUptake((distance - 504.9) / 44.73),
);

/** Speed of a stage of the shuttle run [km/h]. */
export const shuttleSpeed = formula(
  {
    id: 'field-test/shuttle-speed',
    revision: 1,
    title: 'Speed of a stage of the shuttle run [km/h]',
    equation: '8.0 + 0.5 · n',
    inputs: [{ name: 'last completed stage', symbol: 'n', unit: 'stages', possible: [1, 25], valid: [1, 21] }],
    output: { name: 'speed', symbol: 'S', unit: 'km/h' },
    source: LEGER_1988,
    doesNotKnow: 'Recordings that begin otherwise: the first stage must be 8.5 km/h.',
  },
  (stage: number): number => 8 + 0.5 * stage,
);

const speed: FormulaInput = {
  name: 'speed of the last completed stage',
  symbol: 'S',
  unit: 'km/h',
  possible: [8, 21],
  valid: [8.5, 18.5],
};
const shuttle = {
  revision: 1,
  output,
  source: LEGER_1988,
  restsOn: [STICKLAND_2003],
  standardError: { value: 4.7, unit: 'mL/(kg min)', of: 'adults, from memory' },
  doesNotKnow: `${BEST_EFFORT} Turning favours the small; in 122 young adults it read low.`,
} as const;

/** Maximal oxygen uptake of the shuttle run [mL/(kg min)]. */
export const shuttleRun = formula(
  {
    ...shuttle,
    id: 'field-test/shuttle',
    title: 'Maximal oxygen uptake of the shuttle run [mL/(kg min)]',
    equation: '31.025 + 3.238 · S − 3.248 · A + 0.1536 · S · A',
    inputs: [
      speed,
      { name: 'age, every adult counting as 18', symbol: 'A', unit: 'years', possible: [6, 18], valid: [8, 18] },
    ],
  },
  (pace: number, years: number): OxygenUptake =>
    oxygenUptake(31.025 + 3.238 * pace - 3.248 * years + 0.1536 * pace * years),
);

/** Maximal oxygen uptake of the shuttle run, adults [mL/(kg min)]. */
export const shuttleRunAdult = formula(
  {
    ...shuttle,
    id: 'field-test/shuttle-adult',
    title: 'Maximal oxygen uptake of the shuttle run, adults [mL/(kg min)]',
    equation: '−27.439 + 6.0028 · S',
    inputs: [speed],
  },
  (pace: number): OxygenUptake => oxygenUptake(-27.439 + 6.0028 * pace),
);
