import { formula } from '../formula.ts';
import { bodyMass } from '../inputs.ts';
import { flow, minutesInput, uptake } from './inputs.ts';
import { flowOfUptake } from './uptake-units.ts';
import { ACSM_HANDBOOK, BUSHMAN_2020, WEIR_1949 } from './sources.ts';
import { RESTING_UPTAKE } from './walking-and-running.ts';
import { type Kilograms, type Minutes, type OxygenFlow, type OxygenUptake } from '#units/quantity.ts';

/** From oxygen to energy. */

/** Energy of a litre of oxygen, as handbooks take it [kcal/L]. */
export const KILOCALORIES_PER_LITRE = 5;

const mass = bodyMass('M');
const taken = flow('oxygen taken up', 'VO2_L', [0.15, 7]);
const handbook = { source: ACSM_HANDBOOK, restsOn: [BUSHMAN_2020] } as const;

/** Energy of oxygen taken up [kcal/min]. */
export const energyRate = formula(
  {
    id: 'energy/rate',
    revision: 1,
    title: 'Energy of oxygen taken up [kcal/min]',
    equation: '5.0 · VO2_L',
    inputs: [taken],
    output: { name: 'energy', symbol: 'E', unit: 'kcal/min' },
    ...handbook,
    doesNotKnow: 'What is burnt: fat gives about 4.7 and carbohydrate 5.05 kcal from a litre.',
  },
  (used: OxygenFlow): number => KILOCALORIES_PER_LITRE * used,
);

/** Energy of metabolic equivalents [kcal/min]. */
export const energyRateOfEquivalents = formula(
  {
    id: 'energy/rate-of-equivalents',
    revision: 1,
    title: 'Energy of metabolic equivalents [kcal/min]',
    equation: 'MET · 3.5 · M / 200',
    inputs: [{ name: 'metabolic equivalents', symbol: 'MET', unit: 'MET', possible: [0, 29], valid: [1, 25] }, mass],
    output: { name: 'energy', symbol: 'E', unit: 'kcal/min' },
    source: ACSM_HANDBOOK,
    doesNotKnow: 'What is burnt, and the person’s own resting uptake.',
  },
  (equivalents: number, body: Kilograms): number => (equivalents * RESTING_UPTAKE * body) / 200,
);

/** Energy of a bout [kcal]. */
export const energyOfBout = formula(
  {
    id: 'energy/of-bout',
    revision: 1,
    title: 'Energy of a bout [kcal]',
    equation: '5.0 · VO2 · M / 1000 · t',
    inputs: [uptake('oxygen uptake, gross or net', 'VO2'), mass, minutesInput('minutes', 't', [0, 240])],
    output: { name: 'energy', symbol: 'E', unit: 'kcal' },
    ...handbook,
    doesNotKnow: 'Whether the uptake given was gross or net: the energy is what the uptake was.',
  },
  (used: OxygenUptake, body: Kilograms, time: Minutes): number => energyRate(flowOfUptake(used, body)) * time,
);

/** Energy of gas exchange, Weir [kcal/min]. */
export const energyOfGasExchange = formula(
  {
    id: 'energy/weir',
    revision: 1,
    title: 'Energy of gas exchange, Weir [kcal/min]',
    equation: '3.941 · VO2_L + 1.106 · VCO2_L',
    inputs: [taken, flow('carbon dioxide given off', 'VCO2_L', [0.1, 7.5])],
    output: { name: 'energy', symbol: 'E', unit: 'kcal/min' },
    source: WEIR_1949,
    doesNotKnow: 'Protein burnt; and above a hard effort the carbon dioxide is no longer that of the fuel alone.',
  },
  (used: OxygenFlow, given: OxygenFlow): number => 3.941 * used + 1.106 * given,
);
