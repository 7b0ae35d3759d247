import { formula, type FormulaInput, type FormulaRecord } from '../formula.ts';
import { COMMON_PRACTICE } from '../sources.ts';
import { oxygenFlow, watts, type OxygenFlow, type Watts } from '#units/quantity.ts';

/** What a person who exercises gives to the cabin. */

/** Molar mass of carbon dioxide [g/mol] and volume of a mole of gas at 0 °C and 101.325 kPa [L/mol]. */
const MOLAR_MASS = 44.0095;
const MOLAR_VOLUME = 22.414;
/** Heat of one litre of oxygen [J/L], between 19.6 for fat and 21.1 for carbohydrate; from memory. */
const HEAT_OF_A_LITRE = 20_900;
const SECONDS_OF_A_MINUTE = 60;

const oxygen: FormulaInput = { name: 'oxygen uptake', symbol: 'VO2', unit: 'L/min', possible: [0, 8], valid: [0.2, 6] };
const carbonDioxide: FormulaInput = {
  name: 'carbon dioxide given off',
  symbol: 'VCO2',
  unit: 'L/min',
  possible: [0, 12],
  valid: [0, 7],
};

const record = (
  written: Pick<FormulaRecord, 'id' | 'title' | 'equation' | 'inputs' | 'output' | 'doesNotKnow'>,
): FormulaRecord => ({
  revision: 1,
  source: COMMON_PRACTICE,
  ...written,
});

/** Carbon dioxide given off [L/min], dry, at 0 °C and 101.325 kPa. */
export const carbonDioxideFlow = formula(
  record({
    id: 'cabin/carbon-dioxide-flow',
    title: 'Carbon dioxide given off [L/min], dry, at 0 °C and 101.325 kPa',
    equation: 'RER · VO2',
    inputs: [
      { name: 'respiratory exchange ratio', symbol: 'RER', unit: '1', possible: [0.5, 1.6], valid: [0.7, 1.2] },
      oxygen,
    ],
    output: { name: 'carbon dioxide given off', symbol: 'VCO2', unit: 'L/min' },
    doesNotKnow: 'The carbon dioxide that goes on coming in the minutes after hard work.',
  }),
  (exchangeRatio: number, uptake: OxygenFlow): OxygenFlow => oxygenFlow(exchangeRatio * uptake),
);

/** Mass of carbon dioxide given off [g/min]. */
export const carbonDioxideMass = formula(
  record({
    id: 'cabin/carbon-dioxide-mass',
    title: 'Mass of carbon dioxide given off [g/min]',
    equation: 'VCO2 · 44.0095 / 22.414',
    inputs: [carbonDioxide],
    output: { name: 'mass of carbon dioxide', symbol: 'm', unit: 'g/min' },
    doesNotKnow: 'That carbon dioxide is not quite an ideal gas: a litre weighs 0.7 % more.',
  }),
  (flow: OxygenFlow): number => (flow * MOLAR_MASS) / MOLAR_VOLUME,
);

/** Volume that a dry gas flow fills in the cabin [L/min]. */
export const flowInCabin = formula(
  record({
    id: 'cabin/flow-in-cabin',
    title: 'Volume that a dry gas flow fills in the cabin [L/min]',
    equation: 'V · ((273.15 + T) / 273.15) · (101.325 / p)',
    inputs: [
      { ...carbonDioxide, name: 'dry flow at 0 °C and 101.325 kPa', symbol: 'V' },
      { name: 'cabin temperature', symbol: 'T', unit: '°C', possible: [-20, 60], valid: [15, 32] },
      { name: 'cabin pressure', symbol: 'p', unit: 'kPa', possible: [20, 120], valid: [50, 104] },
    ],
    output: { name: 'flow in the cabin', symbol: 'V_cabin', unit: 'L/min' },
    doesNotKnow: 'Water vapour: the flow is taken as dry.',
  }),
  (flow: OxygenFlow, celsius: number, kilopascals: number): OxygenFlow =>
    oxygenFlow(flow * ((273.15 + celsius) / 273.15) * (101.325 / kilopascals)),
);

/** Metabolic heat [W] of exercise. */
export const metabolicHeat = formula(
  record({
    id: 'cabin/metabolic-heat',
    title: 'Metabolic heat [W] of exercise',
    equation: 'VO2 · 20900 / 60',
    inputs: [oxygen],
    output: { name: 'metabolic heat', symbol: 'M', unit: 'W' },
    doesNotKnow:
      'What is burnt: a litre of oxygen gives 19.6 kJ from fat and 21.1 kJ from carbohydrate; handbooks round to 5 kcal, a thousandth more. Work without oxygen is left out.',
  }),
  (uptake: OxygenFlow): Watts => watts((uptake * HEAT_OF_A_LITRE) / SECONDS_OF_A_MINUTE),
);

/** Heat that the cabin must take [W]. */
export const heatToCabin = formula(
  {
    ...record({
      id: 'cabin/heat-to-cabin',
      title: 'Heat that the cabin must take [W]',
      equation: 'M − W',
      inputs: [
        { name: 'metabolic heat', symbol: 'M', unit: 'W', possible: [0, 3000], valid: [60, 2100] },
        { name: 'mechanical power', symbol: 'W', unit: 'W', possible: [0, 600], valid: [0, 450] },
      ],
      output: { name: 'heat to the cabin', symbol: 'H', unit: 'W' },
      doesNotKnow:
        'Where the mechanical power goes: a brake that warms the cabin gives it back. It does not know of a free convection that is missing, so that a fan is part of every session.',
    }),
    conditions: [
      {
        says: 'The mechanical power is not above the metabolic heat.',
        holds: (heat, power) => (power ?? 0) <= (heat ?? 0),
      },
    ],
  },
  (heat: Watts, power: Watts): Watts => watts(heat - power),
);
