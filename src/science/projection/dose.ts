import { formula, type FormulaInput, type FormulaRecord } from '../formula.ts';
import { ratio } from '../inputs.ts';
import { curveOf, type Curve } from '../plot.ts';
import { ENGLISH_2020, LEBLANC_2000, OUR_OWN_DESIGN } from '../sources.ts';
import { FEMORAL_NECK, OXYGEN_UPTAKE } from './quantities.table.ts';

/** What training holds off a loss. Nobody gains anything here from more than the reference dose. */

const AN_ASSUMPTION =
  'That more training loses less, and how much less, is an assumption: no trial has drawn lots for the dose in flight. More than the reference dose earns no credit.';

const dose = ratio('effective dose', 'd', [0, 5], [0, 1]);
const slope = ratio('slope on the dose', 'γ', [0, 10], [0, 3]);
const amplitude: FormulaInput = {
  name: 'amplitude at the full dose',
  symbol: 'A_full',
  unit: 'ln',
  possible: [-1, 2],
  valid: [0, 0.5],
};
const deviation = (name: string, symbol: string, unit: string, most: number, likely: number): FormulaInput => ({
  name,
  symbol,
  unit,
  possible: [0, most],
  valid: [0, likely],
});
const rate = (name: string, symbol: string): FormulaInput => ({
  name,
  symbol,
  unit: '%/month',
  possible: [-10, 10],
  valid: [-3, 1],
});

const record = (
  id: string,
  written: Pick<FormulaRecord, 'title' | 'equation' | 'inputs' | 'output'> & Partial<FormulaRecord>,
): FormulaRecord => ({
  id: `projection/${id}`,
  revision: 1,
  source: OUR_OWN_DESIGN,
  doesNotKnow: AN_ASSUMPTION,
  ...written,
});

/** Effective dose of training. */
export const effectiveDose = formula(
  record('effective-dose', {
    title: 'Effective dose of training',
    equation: 'd = (planned / reference) · adherence',
    inputs: [
      { name: 'planned dose', symbol: 'planned', unit: 'min/week', possible: [0, 5000], valid: [0, 1200] },
      { name: 'reference dose', symbol: 'reference', unit: 'min/week', possible: [1, 5000], valid: [30, 1200] },
      ratio('adherence', 'adherence'),
    ],
    output: { name: 'effective dose', symbol: 'd', unit: '1' },
    doesNotKnow:
      'Whether a minute of one training is worth a minute of another. Any unit serves as long as both doses are in it.',
  }),
  (planned: number, reference: number, adherence: number): number => (planned / reference) * adherence,
);

/** What is missing to the full dose; nothing where more was done. */
const shortOf = (of: number): number => Math.max(0, 1 - of);

/** Amplitude of the loss at a dose of training [ln]. */
export const amplitudeAtDose = formula(
  record('amplitude-at-dose', {
    title: 'Amplitude of the loss at a dose of training [ln]',
    equation: 'A = A_full · (1 + γ · max(0, 1 − d))',
    inputs: [dose, amplitude, slope],
    output: { name: 'amplitude', symbol: 'A', unit: 'ln' },
    plot: {
      says: 'At no training at all the loss is twice that of the reference dose, by assumption; the band is one standard deviation of a single person.',
      x: { name: 'effective dose', unit: '1' },
      y: { name: 'amplitude of the loss of maximal oxygen uptake', unit: 'ln' },
      curves: (): readonly Curve[] => {
        const { amplitude: full, amplitudeSd, doseSlope, doseSlopeSd } = OXYGEN_UPTAKE;
        const curve = curveOf('amplitude', amplitudeAtDose, [0, 1.3], (of) => [of, full, doseSlope]);
        const band = curve.points.map(([of, mean]) => {
          const sd = amplitudeSdAtDose(of, full, amplitudeSd, doseSlope, doseSlopeSd);
          return [mean - sd, mean + sd] as const;
        });
        return [{ ...curve, band }];
      },
    },
  }),
  (of: number, full: number, gamma: number): number => full * (1 + gamma * shortOf(of)),
);

/** Spread of the amplitude of one person at a dose of training [ln]. */
export const amplitudeSdAtDose = formula(
  record('amplitude-sd-at-dose', {
    title: 'Spread of the amplitude of one person at a dose of training [ln]',
    equation: 'SD = √((SD_full · (1 + γ · max(0, 1 − d)))^2 + (A_full · SD_γ · max(0, 1 − d))^2)',
    inputs: [
      dose,
      amplitude,
      deviation('spread at the full dose', 'SD_full', 'ln', 2, 0.5),
      slope,
      deviation('spread of the slope', 'SD_γ', '1', 10, 2),
    ],
    output: { name: 'standard deviation', symbol: 'SD', unit: 'ln' },
  }),
  (of: number, full: number, fullSd: number, gamma: number, gammaSd: number): number =>
    Math.hypot(fullSd * (1 + gamma * shortOf(of)), full * gammaSd * shortOf(of)),
);

const inOne = (of: number): number => Math.min(1, Math.max(0, of));

/** Rate of bone loss at a dose of training [%/month]. */
export const boneRateAtDose = formula(
  record('bone-rate-at-dose', {
    title: 'Rate of bone loss at a dose of training [%/month]',
    equation: 'b = h · b_full + (1 − h) · b_none with h = min(1, d)',
    inputs: [dose, rate('rate at the full dose', 'b_full'), rate('rate at no dose', 'b_none')],
    output: { name: 'rate', symbol: 'b', unit: '%/month' },
    restsOn: [ENGLISH_2020, LEBLANC_2000],
    plot: {
      says: 'Between two groups of people a straight line, by assumption; the band is one standard deviation of a single person.',
      x: { name: 'effective dose', unit: '1' },
      y: { name: 'change of the femoral neck', unit: '%/month' },
      curves: (): readonly Curve[] => {
        const { rateAtFullDose, rateAtNoDose, sdAtFullDose, sdAtNoDose, doseSd } = FEMORAL_NECK;
        const curve = curveOf('rate', boneRateAtDose, [0, 1.3], (of) => [of, rateAtFullDose, rateAtNoDose]);
        const band = curve.points.map(([of, mean]) => {
          const sd = boneRateSdAtDose(of, rateAtFullDose, rateAtNoDose, sdAtFullDose, sdAtNoDose, doseSd);
          return [mean - sd, mean + sd] as const;
        });
        return [{ ...curve, band }];
      },
    },
  }),
  (of: number, full: number, none: number): number => inOne(of) * full + (1 - inOne(of)) * none,
);

/** Spread of the rate of bone loss of one person at a dose of training [%/month]. */
export const boneRateSdAtDose = formula(
  record('bone-rate-sd-at-dose', {
    title: 'Spread of the rate of bone loss of one person at a dose of training [%/month]',
    equation: 'SD = √(h^2 · SD_full^2 + (1 − h)^2 · SD_none^2 + (b_full − b_none)^2 · SD_h^2) with h = min(1, d)',
    inputs: [
      dose,
      rate('rate at the full dose', 'b_full'),
      rate('rate at no dose', 'b_none'),
      deviation('spread at the full dose', 'SD_full', '%/month', 10, 2),
      deviation('spread at no dose', 'SD_none', '%/month', 10, 2),
      deviation('spread of the weight of the dose', 'SD_h', '1', 1, 0.5),
    ],
    output: { name: 'standard deviation', symbol: 'SD', unit: '%/month' },
    restsOn: [LEBLANC_2000],
  }),
  (of: number, full: number, none: number, fullSd: number, noneSd: number, weightSd: number): number =>
    Math.hypot(inOne(of) * fullSd, (1 - inOne(of)) * noneSd, (full - none) * weightSd),
);
