import { newtons, type Fraction, type Newtons, fraction } from '#units/quantity.ts';
import { formula } from '../formula.ts';
import { curveOf, type Plot } from '../plot.ts';
import { OUR_OWN_DESIGN } from '../sources.ts';
import { force, share } from './inputs.ts';
import { BISHU_1995, ROESCH_1986 } from './sources.ts';

/** Means of bare grip left at the two pressures that were measured. */
export const LEFT_AT_LOW_PRESSURE = 0.65;
export const LEFT_AT_WORKING_PRESSURE = 0.58;
/** 0.5 and 4.3 pounds on a square inch [kPa]. */
export const LOW_PRESSURE = 3.4473785;
export const WORKING_PRESSURE = 29.6474551;

const TWO_MEANS: Plot = {
  says: 'Two published means and the line between them; most of the loss is there before any pressure.',
  x: { name: 'pressure above surroundings', unit: 'kPa' },
  y: { name: 'share of bare grip left', unit: '1' },
  curves: () => [
    curveOf('line between the means', gloveFactorByPressure, [LOW_PRESSURE, WORKING_PRESSURE], (p) => [p]),
    {
      label: 'means of 16 people',
      scattered: true,
      points: [
        [LOW_PRESSURE, LEFT_AT_LOW_PRESSURE],
        [WORKING_PRESSURE, LEFT_AT_WORKING_PRESSURE],
      ],
    },
  ],
};

/** Share of bare grip left in a pressurised glove, by pressure. */
export const gloveFactorByPressure = formula(
  {
    id: 'hand/glove-factor-by-pressure',
    revision: 1,
    title: 'Share of bare grip left in a pressurised glove, by pressure',
    equation: 'g = 0.65 − 0.07 (p − 3.4473785) / 26.2000766',
    inputs: [
      {
        name: 'pressure in the suit above its surroundings',
        symbol: 'p',
        unit: 'kPa',
        // The two measured pressures, to the digits in which they are typed.
        possible: [3.44, 29.65],
        valid: [3.44, 29.65],
      },
    ],
    output: { name: 'share of bare grip left', symbol: 'g', unit: '1' },
    source: ROESCH_1986,
    doesNotKnow:
      'The glove: one design was measured, at two pressures, and others left between 0.1 and 0.7. The straight line between the two means is our own. Outside them the suited maximum has to be measured.',
    plot: TWO_MEANS,
  },
  (kilopascals: number): Fraction => fraction(0.65 - (0.07 * (kilopascals - LOW_PRESSURE)) / 26.2000766),
);

/** Share of bare grip left at working pressure, by the further loss of a hand size. */
export const gloveFactorByHandSize = formula(
  {
    id: 'hand/glove-factor-by-hand-size',
    revision: 1,
    title: 'Share of bare grip left at working pressure, by the further loss of a hand size',
    equation: 'g = 0.65 (1 − l)',
    inputs: [share('loss from low to working pressure', 'l', [0, 1], [0, 0.17])],
    output: { name: 'share of bare grip left', symbol: 'g', unit: '1' },
    source: ROESCH_1986,
    doesNotKnow:
      'Whether the loss at low pressure differs by hand size: one mean of 0.65 is used for all. Four people or fewer stand behind each size.',
  },
  (loss: Fraction): Fraction => fraction(0.65 * (1 - loss)),
);

/** Grip maximum [N] in the suit. */
export const suitedMaximum = formula(
  {
    id: 'hand/suited-maximum',
    revision: 1,
    title: 'Grip maximum [N] in the suit',
    equation: 'F_suited = g · F_bare',
    inputs: [
      force('bare grip maximum', 'F_bare', [20, 2000], [100, 1000]),
      share('share of bare grip left', 'g', [0.05, 1], [0.1, 1]),
    ],
    output: { name: 'suited grip maximum', symbol: 'F_suited', unit: 'N' },
    source: ROESCH_1986,
    doesNotKnow: 'This glove on this hand, unless the share was measured on it.',
  },
  (bare: Newtons, left: Fraction): Newtons => newtons(bare * left),
);

/** Force of a task as a share of the suited maximum. */
export const relativeLoad = formula(
  {
    id: 'hand/relative-load',
    revision: 1,
    title: 'Force of a task as a share of the suited maximum',
    equation: 'I = F_task / F_suited',
    inputs: [
      force('force of the task', 'F_task', [0, 2000], [0, 600]),
      force('suited grip maximum', 'F_suited', [1, 2000], [10, 1000]),
    ],
    conditions: [
      {
        says: 'The force of the task lies above the suited grip maximum: it cannot be done in this suit.',
        holds: (task = 0, maximum = 0) => task <= maximum,
      },
    ],
    output: { name: 'force asked for, of the maximum in the same glove', symbol: 'I', unit: '1' },
    source: BISHU_1995,
    restsOn: [OUR_OWN_DESIGN],
    doesNotKnow:
      'Anybody but six people: in them endurance at a given share of the maximum possible in that glove did not depend on glove or pressure, which is why bare-hand constants are used again in the suit.',
  },
  (task: Newtons, maximum: Newtons): Fraction => fraction(task / maximum),
);
