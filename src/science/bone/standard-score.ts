import { formula, type FormulaInput } from '../formula.ts';
import { curveOf, spaced, type Curve } from '../plot.ts';
import { densityInput, precisionInput } from './density-input.ts';
import { LOOKER_1998 } from './sources.ts';
import { YOUNG_ADULT_REFERENCE, type YoungAdults } from './young-adult-reference.table.ts';
import { boneDensity, type BoneDensity } from '#units/quantity.ts';

/** Densities counted in standard deviations of a reference: T of young adults, Z of people of the same age. */

export const referenceMean: FormulaInput = {
  name: 'mean of the reference',
  symbol: 'mean',
  unit: 'g/cm²',
  possible: [0.2, 2.5],
  valid: [0.5, 1.5],
};
export const referenceSd: FormulaInput = {
  name: 'standard deviation of the reference',
  symbol: 'SD',
  unit: 'g/cm²',
  possible: [0.01, 0.5],
  valid: [0.08, 0.2],
};

const WHICH_REFERENCE =
  'Which reference is right: the same density has different scores against men, women, another scanner or another survey. It diagnoses nothing; under 50 years and before the menopause the Z score is the clinical figure.';

/** Score of a density against a reference. */
export const standardScore = formula(
  {
    id: 'bone/standard-score',
    revision: 1,
    title: 'Score of a density against a reference',
    equation: '(BMD − mean) / SD',
    inputs: [densityInput('density', 'BMD'), referenceMean, referenceSd],
    output: { name: 'T or Z score', symbol: 'T', unit: '1' },
    source: LOOKER_1998,
    doesNotKnow: WHICH_REFERENCE,
    plot: {
      says: 'One hip, two scores: a man between the lines lies under the young men of the survey and above its young women.',
      x: { name: 'density of the total hip', unit: 'g/cm²' },
      y: { name: 'T score', unit: '1' },
      curves: (): readonly Curve[] => [
        ...YOUNG_ADULT_REFERENCE.rows.filter(({ region }) => region === 'total hip').map(lineOf),
        level('−1', -1),
        level('−2', -2),
      ],
    },
  },
  (density: BoneDensity, mean: BoneDensity, sd: BoneDensity): number => (density - mean) / sd,
);

const DRAWN = [0.6, 1.2] as const;

const lineOf = ({ sex, mean, sd }: YoungAdults): Curve =>
  curveOf(`against young adults, ${sex}`, standardScore, DRAWN, (density) => [density, mean, sd]);

const level = (label: string, value: number): Curve => ({
  label,
  points: spaced(DRAWN[0], DRAWN[1], 2).map((x) => [x, value] as const),
});

const score: FormulaInput = { name: 'T or Z score', symbol: 'T', unit: '1', possible: [-6, 8], valid: [-4, 4] };

/** Density at a score of a reference [g/cm²]. */
export const densityAtScore = formula(
  {
    id: 'bone/density-at-score',
    revision: 1,
    title: 'Density at a score of a reference [g/cm²]',
    equation: 'mean + T · SD',
    inputs: [score, referenceMean, referenceSd],
    output: { name: 'density', symbol: 'BMD', unit: 'g/cm²' },
    source: LOOKER_1998,
    doesNotKnow: WHICH_REFERENCE,
  },
  (at: number, mean: BoneDensity, sd: BoneDensity): BoneDensity => boneDensity(mean + at * sd),
);

/** Standard deviation of a score, from the precision of the scan. */
export const scoreSd = formula(
  {
    id: 'bone/score-sd',
    revision: 1,
    title: 'Standard deviation of a score, from the precision of the scan',
    equation: 'RMS_SD / SD',
    inputs: [precisionInput, referenceSd],
    output: { name: 'standard deviation of the score', symbol: 'σ_T', unit: '1' },
    source: LOOKER_1998,
    doesNotKnow: 'Errors of the reference itself, and of the scanner against the survey’s.',
  },
  (precision: BoneDensity, sd: BoneDensity): number => precision / sd,
);
