import { formula } from '../formula.ts';
import { bodyMass } from '../inputs.ts';
import { age, heartRateInput, minutesInput, sexAsNumber } from './inputs.ts';
import { KLINE_1987 } from './sources.ts';
import {
  oxygenFlow,
  oxygenUptake,
  type HeartRate,
  type Kilograms,
  type Minutes,
  type OxygenFlow,
  type OxygenUptake,
} from '#units/quantity.ts';

/** One mile walked as fast as the person can, with the heart rate of its last quarter. */

/** The equations were printed with body mass in pounds. */
export const KILOGRAMS_PER_POUND = 0.45359237;

const inputs = [
  bodyMass('M'),
  age([30, 69]),
  sexAsNumber('sex (man 1, woman 0)', [0, 1]),
  minutesInput('time of the mile', 'T', [10, 21], [5, 40]),
  heartRateInput('heart rate of the last quarter', 'HR', [80, 180], [60, 220]),
] as const;
const doesNotKnow = 'Whether the walk was as fast as possible; runners and very fit people walk too easily for it.';

/** Maximal oxygen uptake of a mile walked [mL/(kg min)]. */
export const mileWalk = formula(
  {
    id: 'field-test/mile-walk',
    revision: 1,
    title: 'Maximal oxygen uptake of a mile walked [mL/(kg min)]',
    equation: '132.853 − 0.0769 · M / 0.45359237 − 0.3877 · age + 6.315 · sex − 3.2649 · T − 0.1565 · HR',
    inputs,
    output: { name: 'maximal oxygen uptake', symbol: 'VO2_max', unit: 'mL/(kg min)' },
    source: KLINE_1987,
    standardError: { value: 5, unit: 'mL/(kg min)', of: 'adults of 30 to 69 years, by a secondary page' },
    doesNotKnow,
  },
  (body: Kilograms, years: number, sex: number, time: Minutes, rate: HeartRate): OxygenUptake =>
    oxygenUptake(
      132.853 - (0.0769 * body) / KILOGRAMS_PER_POUND - 0.3877 * years + 6.315 * sex - 3.2649 * time - 0.1565 * rate,
    ),
);

/** Maximal oxygen taken up of a mile walked [L/min]. */
export const mileWalkFlow = formula(
  {
    id: 'field-test/mile-walk-flow',
    revision: 1,
    title: 'Maximal oxygen taken up of a mile walked [L/min]',
    equation: '6.9652 + 0.0091 · M / 0.45359237 − 0.0257 · age + 0.5955 · sex − 0.2240 · T − 0.0115 · HR',
    inputs,
    output: { name: 'maximal oxygen taken up', symbol: 'VO2_max,L', unit: 'L/min' },
    source: KLINE_1987,
    standardError: { value: 0.325, unit: 'L/min', of: '174 adults of 30 to 69 years; 0.355 in 169 others' },
    doesNotKnow,
  },
  (body: Kilograms, years: number, sex: number, time: Minutes, rate: HeartRate): OxygenFlow =>
    oxygenFlow(
      6.9652 + (0.0091 * body) / KILOGRAMS_PER_POUND - 0.0257 * years + 0.5955 * sex - 0.224 * time - 0.0115 * rate,
    ),
);
