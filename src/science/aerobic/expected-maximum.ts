import { formula } from '../formula.ts';
import { bodyMass } from '../inputs.ts';
import { age, sexAsNumber } from './inputs.ts';
import { DE_SOUZA_E_SILVA_2018, MYERS_2017 } from './sources.ts';
import { KILOGRAMS_PER_POUND } from './mile-walk.ts';
import { oxygenUptake, type Kilograms, type Metres, type OxygenUptake } from '#units/quantity.ts';

/** What a person of this age, sex and size has on average. For comparison with a test; never in place of one. */

const METRES_PER_INCH = 0.0254;
const shared = {
  revision: 1,
  output: { name: 'maximal oxygen uptake', symbol: 'VO2_max', unit: 'mL/(kg min)' },
  doesNotKnow:
    'Anything that the person trained: two people of one age and size differ by the standard error and more.',
} as const;

/** Maximal oxygen uptake of age, sex and mass, Myers [mL/(kg min)]. */
export const expectedMaximumMyers = formula(
  {
    ...shared,
    id: 'norm/myers',
    title: 'Maximal oxygen uptake of age, sex and mass, Myers [mL/(kg min)]',
    equation: '79.9 − 0.39 · age − 13.7 · sex − 0.127 · M / 0.45359237',
    inputs: [age([20, 79]), sexAsNumber('sex (man 0, woman 1)', [0, 1]), bodyMass('M')],
    source: MYERS_2017,
    standardError: { value: 7.2, unit: 'mL/(kg min)', of: 'people about the equation, from memory' },
  },
  (years: number, sex: number, body: Kilograms): OxygenUptake =>
    oxygenUptake(79.9 - 0.39 * years - 13.7 * sex - (0.127 * body) / KILOGRAMS_PER_POUND),
);

/** Maximal oxygen uptake of age, sex and size, de Souza e Silva [mL/(kg min)]. */
export const expectedMaximumDeSouza = formula(
  {
    ...shared,
    id: 'norm/de-souza-e-silva',
    title: 'Maximal oxygen uptake of age, sex and size, de Souza e Silva [mL/(kg min)]',
    equation: '45.2 − 0.35 · age − 10.9 · sex − 0.15 · M / 0.45359237 + 0.68 · h / 0.0254 − 0.46 · mode',
    inputs: [
      age([20, 85]),
      sexAsNumber('sex (man 1, woman 2)', [1, 2]),
      bodyMass('M'),
      { name: 'stature', symbol: 'h', unit: 'm', possible: [1.2, 2.3], valid: [1.45, 2.05] },
      { ...sexAsNumber('machine (treadmill 1, cycle 2)', [1, 2]), symbol: 'mode' },
    ],
    source: DE_SOUZA_E_SILVA_2018,
    standardError: { value: 6.6, unit: 'mL/(kg min)', of: '7617 people' },
  },
  (years: number, sex: number, body: Kilograms, stature: Metres, mode: number): OxygenUptake =>
    oxygenUptake(
      45.2 -
        0.35 * years -
        10.9 * sex -
        (0.15 * body) / KILOGRAMS_PER_POUND +
        (0.68 * stature) / METRES_PER_INCH -
        0.46 * mode,
    ),
);
