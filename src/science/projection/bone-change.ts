import { formula, type FormulaInput } from '../formula.ts';
import { OUR_OWN_DESIGN } from '../sources.ts';

/** From a rate of bone loss to a change, to a density, and to what a scanner would show of it. */

const rate: FormulaInput = { name: 'rate', symbol: 'b', unit: '%/month', possible: [-10, 10], valid: [-3, 1] };
const months: FormulaInput = {
  name: 'months of loss',
  symbol: 'g',
  unit: 'months',
  possible: [0, 120],
  valid: [0, 15],
};
const change: FormulaInput = { name: 'change', symbol: 'x', unit: '%', possible: [-99, 1200], valid: [-30, 10] };
const precision: FormulaInput = {
  name: 'precision of one scan',
  symbol: 'SD_scan',
  unit: '%',
  possible: [0, 20],
  valid: [0.5, 3],
};

/** Expected change of bone mineral [%]. */
export const boneChange = formula(
  {
    id: 'projection/bone-change',
    revision: 1,
    title: 'Expected change of bone mineral [%]',
    equation: 'x = b · g',
    inputs: [rate, months],
    output: { name: 'change', symbol: 'x', unit: '%' },
    source: OUR_OWN_DESIGN,
    doesNotKnow: 'Whether the rate holds: beyond about seven months take the months of the saturating course.',
  },
  (perMonth: number, lost: number): number => perMonth * lost,
);

/** Spread of the change of bone mineral of one person [%]. */
export const boneChangeSd = formula(
  {
    id: 'projection/bone-change-sd',
    revision: 1,
    title: 'Spread of the change of bone mineral of one person [%]',
    equation: 'SD = √(g^2 · SD_b^2 + q · g)',
    inputs: [
      months,
      { name: 'spread of the rate', symbol: 'SD_b', unit: '%/month', possible: [0, 10], valid: [0, 2] },
      { name: 'drift, variance per month', symbol: 'q', unit: '%²/month', possible: [0, 10], valid: [0, 1] },
    ],
    output: { name: 'standard deviation', symbol: 'SD', unit: '%' },
    source: OUR_OWN_DESIGN,
    doesNotKnow: 'The drift is our own figure.',
  },
  (lost: number, rateSd: number, driftPerMonth: number): number =>
    Math.sqrt(lost * lost * rateSd * rateSd + driftPerMonth * lost),
);

/** Spread of a change as two scans measure it [%]. */
export const measuredChangeSd = formula(
  {
    id: 'projection/measured-change-sd',
    revision: 1,
    title: 'Spread of a change as two scans measure it [%]',
    equation: 'SD_measured = √(SD^2 + 2 · SD_scan^2)',
    inputs: [
      { name: 'spread of the true change', symbol: 'SD', unit: '%', possible: [0, 1300], valid: [0, 20] },
      precision,
    ],
    output: { name: 'standard deviation', symbol: 'SD_measured', unit: '%' },
    source: OUR_OWN_DESIGN,
    doesNotKnow: 'Another scanner, another position, another operator.',
  },
  (trueSd: number, scanSd: number): number => Math.sqrt(trueSd * trueSd + 2 * scanSd * scanSd),
);

/** Bone mineral density after a change [g/cm²]. */
export const densityAfterChange = formula(
  {
    id: 'projection/density-after-change',
    revision: 1,
    title: 'Bone mineral density after a change [g/cm²]',
    equation: 'BMD = BMD_pre · (1 + x / 100)',
    inputs: [
      { name: 'density before flight', symbol: 'BMD_pre', unit: 'g/cm²', possible: [0.01, 3], valid: [0.4, 2] },
      change,
    ],
    output: { name: 'bone mineral density', symbol: 'BMD', unit: 'g/cm²' },
    source: OUR_OWN_DESIGN,
    doesNotKnow: 'Density is not strength of bone.',
  },
  (before: number, percent: number): number => before * (1 + percent / 100),
);

/** Standard error of a rate between two scans [%/month]. */
export const rateStandardError = formula(
  {
    id: 'projection/rate-standard-error',
    revision: 1,
    title: 'Standard error of a rate between two scans [%/month]',
    equation: 'SE = √(2) · SD_scan / months',
    inputs: [
      precision,
      {
        name: 'months between launch and landing',
        symbol: 'months',
        unit: 'months',
        possible: [0.1, 120],
        valid: [1, 15],
      },
    ],
    output: { name: 'standard error', symbol: 'SE', unit: '%/month' },
    source: OUR_OWN_DESIGN,
    doesNotKnow: 'What was lost or regained between the scans and the flight.',
  },
  (scanSd: number, between: number): number => (Math.SQRT2 * scanSd) / between,
);
