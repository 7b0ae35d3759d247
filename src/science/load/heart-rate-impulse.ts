import { formula, type Condition, type FormulaRecord } from '../formula.ts';
import { beats, minutes } from './inputs.ts';
import { curveOf, type Curve } from '../plot.ts';
import { EDWARDS_1993, LUCIA_2003, MORTON_1990 } from './sources.ts';

/** Three authors’ scores of a session from heart rate: each weighs hard minutes more than easy ones, none alike. */

const output = { name: 'training impulse', symbol: 'I', unit: 'arbitrary units' } as const;

const SHIFT =
  'What weightlessness does to heart rate: resting and submaximal rates shift, and must be measured anew in flight. Short efforts, lifting and heat hardly show in it as they should.';

const ORDERED: Condition = {
  says: 'The maximal heart rate lies above the resting one.',
  holds: (_time, _heart, resting = 0, maximal = 0) => maximal > resting,
};

const record = (sex: 'man' | 'woman', equation: string): FormulaRecord => ({
  id: `load/impulse-${sex}`,
  revision: 1,
  title: `Training impulse of a ${sex} by heart rate, Banister (arbitrary units)`,
  equation,
  inputs: [
    minutes('length', 'T', [0, 600]),
    beats('mean heart rate of the session', 'HR'),
    beats('resting heart rate', 'HR_rest', [25, 120]),
    beats('maximal heart rate', 'HR_max', [100, 240]),
  ],
  output,
  conditions: [ORDERED],
  source: MORTON_1990,
  doesNotKnow: `${SHIFT} The weights come from blood lactate of few trained people; a mean heart rate hides intervals.`,
});

/** Part of the heart-rate reserve, held to 0 to 1. */
const reservePart = (heart: number, resting: number, maximal: number): number =>
  Math.min(1, Math.max(0, (heart - resting) / (maximal - resting)));

const weighed = (time: number, part: number, a: number, b: number): number => time * part * a * Math.exp(b * part);

const EQUATION_END = ', x = (HR − HR_rest) / (HR_max − HR_rest), held to 0 to 1';

/** Training impulse of a man by heart rate, Banister (arbitrary units). */
export const impulseOfMan = formula(
  {
    ...record('man', `T · x · 0.64 · exp(1.92 · x)${EQUATION_END}`),
    plot: {
      says: 'An hour near the maximum counts some ten times as much as an hour at a third of the reserve.',
      x: { name: 'heart rate, of 55 resting and 185 maximal', unit: '1/min' },
      y: { name: 'impulse of an hour', unit: 'arbitrary units' },
      curves: (): readonly Curve[] => [
        curveOf('man', impulseOfMan, [55, 185], (heart) => [60, heart, 55, 185]),
        curveOf('woman', impulseOfWoman, [55, 185], (heart) => [60, heart, 55, 185]),
      ],
    },
  },
  (time: number, heart: number, resting: number, maximal: number): number =>
    weighed(time, reservePart(heart, resting, maximal), 0.64, 1.92),
);

/** Training impulse of a woman by heart rate, Banister (arbitrary units). */
export const impulseOfWoman = formula(
  record('woman', `T · x · 0.86 · exp(1.67 · x)${EQUATION_END}`),
  (time: number, heart: number, resting: number, maximal: number): number =>
    weighed(time, reservePart(heart, resting, maximal), 0.86, 1.67),
);

const zone = (number: number, percent: string) => minutes(`minutes at ${percent} of maximal heart rate`, `t_${number}`);

/** Training impulse of five heart-rate zones, Edwards (arbitrary units). */
export const zoneImpulse = formula(
  {
    id: 'load/impulse-zones',
    revision: 1,
    title: 'Training impulse of five heart-rate zones, Edwards (arbitrary units)',
    equation: 't_1 + 2 · t_2 + 3 · t_3 + 4 · t_4 + 5 · t_5',
    inputs: [
      zone(1, '50 to under 60 %'),
      zone(2, '60 to under 70 %'),
      zone(3, '70 to under 80 %'),
      zone(4, '80 to under 90 %'),
      zone(5, '90 to 100 %'),
    ],
    output,
    source: EDWARDS_1993,
    doesNotKnow: `${SHIFT} The weights 1 to 5 rest on no measurement, and one beat across a border counts a minute double.`,
  },
  (one: number, two: number, three: number, four: number, five: number): number =>
    one + 2 * two + 3 * three + 4 * four + 5 * five,
);

/** Training impulse of three phases between ventilatory thresholds, Lucia (arbitrary units). */
export const thresholdImpulse = formula(
  {
    id: 'load/impulse-thresholds',
    revision: 1,
    title: 'Training impulse of three phases between ventilatory thresholds, Lucia (arbitrary units)',
    equation: 't_1 + 2 · t_2 + 3 · t_3',
    inputs: [
      minutes('minutes below the first threshold', 't_1'),
      minutes('minutes between the thresholds', 't_2'),
      minutes('minutes above the second threshold', 't_3'),
    ],
    output,
    source: LUCIA_2003,
    equationFromMemory: true,
    doesNotKnow: `${SHIFT} Thresholds drift with training and with time weightless; the weights 1 to 3 are a choice.`,
  },
  (below: number, between: number, above: number): number => below + 2 * between + 3 * above,
);
