import { formula } from '../formula.ts';
import { uptake } from './inputs.ts';
import { ACSM_HANDBOOK, BUSHMAN_2020 } from './sources.ts';
import { BETWEEN_PEOPLE, RESTING_UPTAKE } from './walking-and-running.ts';
import { oxygenUptake, type OxygenUptake } from '#units/quantity.ts';

/** What stepping up and down costs, gross and in a steady state: the way down a third of the way up. */

const HORIZONTAL_STEP = 0.2;
const VERTICAL_STEP = 1.33 * 1.8;

const gross = { name: 'oxygen uptake, gross', symbol: 'VO2', unit: 'mL/(kg min)' } as const;
const standardError = {
  value: BETWEEN_PEOPLE,
  unit: 'of the uptake',
  of: 'people about the equation, from memory',
} as const;
const rate = { name: 'step rate', symbol: 'f', unit: '1/min' } as const;
const height = {
  name: 'step height',
  symbol: 'H',
  unit: 'm',
  possible: [0.01, 0.8],
  valid: [0.04, 0.4],
} as const;

/** Oxygen uptake of stepping [mL/(kg min)]. */
export const uptakeOfStepping = formula(
  {
    id: 'metabolic/stepping',
    revision: 1,
    title: 'Oxygen uptake of stepping [mL/(kg min)]',
    equation: '3.5 + 0.2 · f + 1.33 · 1.8 · f · H',
    inputs: [{ ...rate, possible: [0, 60], valid: [12, 30] }, height],
    output: gross,
    source: BUSHMAN_2020,
    restsOn: [ACSM_HANDBOOK],
    standardError,
    doesNotKnow: 'The pace of the way down beyond the third that the factor 1.33 stands for; on Earth only.',
  },
  (steps: number, rise: number): OxygenUptake =>
    oxygenUptake(RESTING_UPTAKE + HORIZONTAL_STEP * steps + VERTICAL_STEP * steps * rise),
);

/** Step rate of an oxygen uptake [1/min]. */
export const stepRate = formula(
  {
    id: 'metabolic/step-rate',
    revision: 1,
    title: 'Step rate of an oxygen uptake [1/min]',
    equation: '(VO2 − 3.5) / (0.2 + 1.33 · 1.8 · H)',
    inputs: [uptake('oxygen uptake', 'VO2', [7, 38.2], [RESTING_UPTAKE, 100]), height],
    output: rate,
    source: BUSHMAN_2020,
    doesNotKnow: 'Whether the rate that comes out lies in 12 to 30 a minute, where the equation was validated.',
  },
  (wanted: OxygenUptake, rise: number): number => (wanted - RESTING_UPTAKE) / (HORIZONTAL_STEP + VERTICAL_STEP * rise),
);
