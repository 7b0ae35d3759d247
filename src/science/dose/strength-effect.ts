import { formula, type FormulaInput, type FormulaRecord } from '../formula.ts';
import { curveOf, type Curve } from '../plot.ts';
import { OUR_OWN_DESIGN } from '../sources.ts';
import { HIGH_VOLUME, HIGH_VOLUME_SETS, LOW_VOLUME, LOW_VOLUME_SETS, type DoseFinding } from './dose-response.table.ts';
import { PELLAND_2024, RALSTON_2017 } from './sources.ts';
import { fraction, type Fraction } from '#units/quantity.ts';

/** Strength by weekly sets: the shape of diminishing returns, through two published means. */

/** Effect that endless sets would have, and the sets after which two thirds of it are reached. */
const TOP = 1.0112947;
const SCALE = 1.8016164;

export const weeklySetsInput: FormulaInput = {
  name: 'weekly sets of an exercise',
  symbol: 'n',
  unit: 'sets/week',
  possible: [0, 60],
  valid: [1, 20],
};

const TWO_POINTS =
  'More than its shape: two means fix two numbers, the sets at which they stand were chosen by us, and both means have wide bands. It is no forecast of a gain.';

const record = (
  written: Pick<FormulaRecord, 'id' | 'title' | 'equation' | 'output'> & Partial<FormulaRecord>,
): FormulaRecord => ({
  revision: 1,
  inputs: [weeklySetsInput],
  source: OUR_OWN_DESIGN,
  restsOn: [RALSTON_2017, PELLAND_2024],
  doesNotKnow: TWO_POINTS,
  ...written,
});

const studyPoint = (label: string, sets: number, { found, low, high }: DoseFinding): Curve => ({
  label,
  scattered: true,
  points: [[sets, found ?? 0]],
  band: [[low ?? 0, high ?? 0]],
});

/** Effect on strength of weekly sets. */
export const strengthEffect = formula(
  record({
    id: 'dose/strength-effect',
    title: 'Effect on strength of weekly sets',
    equation: '1.0112947 · (1 − exp(−n / 1.8016164))',
    output: { name: 'effect on strength', symbol: 'E', unit: 'effect size' },
    plot: {
      says: 'Five hard sets a week give most of what more sets give. Both published means have bands wider than the whole difference.',
      x: { name: 'weekly sets of an exercise', unit: 'sets/week' },
      y: { name: 'effect on strength', unit: 'effect size' },
      curves: (): readonly Curve[] => [
        curveOf('curve through two means', strengthEffect, [0, 20], (sets) => [sets]),
        studyPoint('up to 5 sets, with its 95 % band', LOW_VOLUME_SETS, LOW_VOLUME),
        studyPoint('10 sets and more, with its 95 % band', HIGH_VOLUME_SETS, HIGH_VOLUME),
      ],
    },
  }),
  (sets: number): number => TOP * shareOfStrengthEffect(sets),
);

/** Effect on strength of one weekly set more. */
export const strengthEffectOfNextSet = formula(
  record({
    id: 'dose/strength-effect-slope',
    title: 'Effect on strength of one weekly set more',
    equation: '(1.0112947 / 1.8016164) · exp(−n / 1.8016164)',
    output: { name: 'effect of one set more', symbol: "E'", unit: 'effect size' },
  }),
  (sets: number): number => (TOP / SCALE) * (1 - shareOfStrengthEffect(sets)),
);

/** Share of the modelled effect on strength that weekly sets give. */
export const shareOfStrengthEffect = formula(
  record({
    id: 'dose/strength-share',
    title: 'Share of the modelled effect on strength that weekly sets give',
    equation: '1 − exp(−n / 1.8016164)',
    output: { name: 'share', symbol: 's', unit: '1' },
  }),
  (sets: number): Fraction => fraction(1 - Math.exp((0 - sets) / SCALE)),
);

/** Weekly sets that give a share of the modelled effect on strength. */
export const setsForShare = formula(
  record({
    id: 'dose/sets-for-share',
    title: 'Weekly sets that give a share of the modelled effect on strength',
    equation: '−1.8016164 · ln(1 − s)',
    inputs: [{ name: 'share', symbol: 's', unit: '1', possible: [0, 0.999999], valid: [0.43, 0.9999] }],
    output: { name: 'weekly sets', symbol: 'n', unit: 'sets/week' },
  }),
  (share: Fraction): number => (0 - SCALE) * Math.log(1 - share),
);
