import { formula, type FormulaInput } from '../formula.ts';
import { normalCdf } from '../numeric/normal.ts';
import { curveOf, type Curve } from '../plot.ts';
import { OUR_OWN_DESIGN } from '../sources.ts';

/** The probability that a true value lies at or over a limit, where all that is known is a mean and a spread. */

const MODEL = 'Whether mean and spread are right, and the normal shape far out. What nobody measured is not in it.';

const limit: FormulaInput = { name: 'limit', symbol: 'c', unit: 'as given', possible: [-1e6, 1e6], valid: [-1e6, 1e6] };
const mean: FormulaInput = { name: 'mean', symbol: 'μ', unit: 'as given', possible: [-1e6, 1e6], valid: [-1e6, 1e6] };
const sd: FormulaInput = {
  name: 'standard deviation',
  symbol: 'σ',
  unit: 'as given',
  possible: [1e-9, 1e6],
  valid: [1e-9, 1e6],
};

/** Probability that a normal value is at least a limit. */
export const chanceAtLeast = formula(
  {
    id: 'standards/chance-at-least',
    revision: 1,
    title: 'Probability that a normal value is at least a limit',
    equation: 'Φ((μ − c) / σ)',
    inputs: [limit, mean, sd],
    output: { name: 'probability', symbol: 'P', unit: '1' },
    source: OUR_OWN_DESIGN,
    doesNotKnow: MODEL,
    plot: {
      says: 'A mean on the limit is a coin toss, however well it is known; only distance in standard deviations makes sure.',
      x: { name: 'mean of the T score', unit: '1' },
      y: { name: 'probability of at least −2', unit: '1' },
      curves: (): readonly Curve[] =>
        [0.1, 0.2, 0.4].map((spread) =>
          curveOf(`standard deviation ${spread}`, chanceAtLeast, [-3, -1], (at) => [-2, at, spread]),
        ),
    },
  },
  (at: number, middle: number, spread: number): number => normalCdf((middle - at) / spread),
);

/** Probability that a log-normal value is at least a limit. */
export const chanceAtLeastOfLog = formula(
  {
    id: 'standards/chance-at-least-log',
    revision: 1,
    title: 'Probability that a log-normal value is at least a limit',
    equation: 'Φ((μ − ln c) / σ)',
    inputs: [
      { ...limit, possible: [1e-6, 1e6], valid: [1e-6, 1e6] },
      { ...mean, name: 'mean of the logarithm', unit: 'ln', possible: [-20, 20], valid: [-20, 20] },
      { ...sd, name: 'standard deviation of the logarithm', unit: 'ln', possible: [1e-9, 10], valid: [1e-9, 10] },
    ],
    output: { name: 'probability', symbol: 'P', unit: '1' },
    source: OUR_OWN_DESIGN,
    doesNotKnow: MODEL,
  },
  (at: number, middle: number, spread: number): number => normalCdf((middle - Math.log(at)) / spread),
);
