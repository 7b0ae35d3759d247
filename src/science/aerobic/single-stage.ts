import { formula, type FormulaInput } from '../formula.ts';
import { flow, heartRateInput, workRate } from './inputs.ts';
import { ASTRAND_RYHMING_1954, CINK_THOMAS_1981 } from './sources.ts';
import { oxygenFlow, type HeartRate, type OxygenFlow } from '#units/quantity.ts';

/** The chart of a single stage of six minutes, in its usual algebra: half the heart's range is half the uptake. */

const ERROR = { value: 0.42, unit: 'L/min', of: '40 men, with the age factor (Cink and Thomas 1981)' } as const;
const submaximal = flow('oxygen taken up in the stage', 'VO2_sub', [0.9, 2.8]);
const steady: FormulaInput = heartRateInput('heart rate of the stage', 'HR', [125, 170], [100, 220]);
const chart = {
  revision: 1,
  inputs: [submaximal, steady],
  output: { name: 'maximal oxygen taken up, before a factor', symbol: 'VO2_max,L', unit: 'L/min' },
  source: ASTRAND_RYHMING_1954,
  restsOn: [CINK_THOMAS_1981],
  standardError: ERROR,
  doesNotKnow: 'The person’s maximal heart rate, which falls with age: a factor for one of the two follows.',
} as const;

/** Oxygen taken up at a work rate on the cycle, by the chart [L/min]. */
export const chartUptake = formula(
  {
    id: 'submaximal/single-stage-uptake',
    revision: 1,
    title: 'Oxygen taken up at a work rate on the cycle, by the chart [L/min]',
    equation: '0.002 · k + 0.3',
    inputs: [workRate('work rate', 'k', [300, 1050])],
    output: { name: 'oxygen taken up', symbol: 'VO2_sub', unit: 'L/min' },
    source: ASTRAND_RYHMING_1954,
    doesNotKnow: 'Cadence and body mass. At 1200 kg m/min the chart itself reads 2.8, a little more than the line.',
  },
  (work: number): OxygenFlow => oxygenFlow(0.002 * work + 0.3),
);

/** Maximal oxygen taken up from a single stage, man, before a factor [L/min]. */
export const singleStageMan = formula(
  {
    ...chart,
    id: 'submaximal/single-stage-man',
    title: 'Maximal oxygen taken up from a single stage, man, before a factor [L/min]',
    equation: 'VO2_sub · (195 − 61) / (HR − 61)',
  },
  (used: OxygenFlow, rate: HeartRate): OxygenFlow => oxygenFlow((used * (195 - 61)) / (rate - 61)),
);

/** Maximal oxygen taken up from a single stage, woman, before a factor [L/min]. */
export const singleStageWoman = formula(
  {
    ...chart,
    id: 'submaximal/single-stage-woman',
    title: 'Maximal oxygen taken up from a single stage, woman, before a factor [L/min]',
    equation: 'VO2_sub · (198 − 72) / (HR − 72)',
  },
  (used: OxygenFlow, rate: HeartRate): OxygenFlow => oxygenFlow((used * (198 - 72)) / (rate - 72)),
);
