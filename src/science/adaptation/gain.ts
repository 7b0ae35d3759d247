import { formula } from '../formula.ts';
import { load } from '../inputs.ts';
import { curveOf, type Curve } from '../plot.ts';
import { OUR_OWN_DESIGN } from '../sources.ts';
import { LATELLA_2020, STEELE_2022 } from './sources.ts';
import { fraction, type Fraction, type Kilograms } from '#units/quantity.ts';

/** How fast people become stronger. */

/** Strength over that at the start, after weeks of one short session a week. */
export const strengthOfMinimalDose = formula(
  {
    id: 'gain/minimal-dose',
    revision: 1,
    title: 'Strength over that at the start, after weeks of one short session a week',
    equation: '1 + 0.10075 ln(1 + t)',
    inputs: [{ name: 'weeks of training', symbol: 't', unit: 'weeks', possible: [0, 520], valid: [4, 352] }],
    output: { name: 'strength over that at the start', symbol: 'S', unit: '1' },
    source: OUR_OWN_DESIGN,
    restsOn: [STEELE_2022],
    doesNotKnow:
      'This person, and any other dose: one set of six exercises to failure once a week. The form is that of the paper; the number was set to 40 % after a year, the middle of what it printed.',
    plot: {
      says: 'Most of it comes in the first half year; each further step takes about twice as long as the one before.',
      x: { name: 'weeks of training', unit: 'weeks' },
      y: { name: 'strength over that at the start', unit: '1' },
      curves: (): readonly Curve[] => [
        curveOf('curve', strengthOfMinimalDose, [0, 350], (weeks) => [weeks]),
        {
          label: 'as printed, lowest to highest',
          scattered: true,
          points: [
            [52, 1.4],
            [312, 1.55],
          ],
          band: [
            [1.3, 1.5],
            [1.5, 1.6],
          ],
        },
      ],
    },
  },
  (weeks: number): Fraction => fraction(1 + 0.10075 * Math.log(1 + weeks)),
);

const DAYS_PER_WEEK = 7;

/** Gain of a week [%] from a gain of a day and what is lifted. */
export const weeklyGain = formula(
  {
    id: 'gain/weekly',
    revision: 1,
    title: 'Gain of a week [%] from a gain of a day and what is lifted',
    equation: '100 · 7 · d / L',
    inputs: [load('gain of a day', 'd', [0, 10], [0, 1]), load('load lifted', 'L', [1, 3000], [20, 1000])],
    output: { name: 'gain of a week', symbol: 'g', unit: '%' },
    source: LATELLA_2020,
    doesNotKnow: 'How long it goes on: stronger people gain more slowly.',
  },
  (daily: Kilograms, lifted: Kilograms): number => (100 * DAYS_PER_WEEK * daily) / lifted,
);
