import { formula, type FormulaInput } from '../formula.ts';
import { COMMON_PRACTICE } from '../sources.ts';

/** Small arithmetic between how papers print and how their values are compared. */

const measured = (name: string, symbol: string, possible: readonly [number, number]): FormulaInput => ({
  name,
  symbol,
  unit: 'of the test',
  possible,
  valid: possible,
});

/** Change [%] from one value to another. */
export const percentChange = formula(
  {
    id: 'change/percent',
    revision: 1,
    title: 'Change [%] from one value to another',
    equation: '100 (after / before − 1)',
    inputs: [measured('value before', 'before', [0.001, 1e6]), measured('value after', 'after', [0, 1e6])],
    output: { name: 'change', symbol: 'Δ', unit: '%' },
    source: COMMON_PRACTICE,
    doesNotKnow:
      'Single people: of two means of a group it says nothing of how they differ. Whether a change is more than noise: of two scans that is judged in g/cm², never in percent.',
  },
  (before: number, after: number): number => 100 * (after / before - 1),
);

/** Standard deviation between people, from a standard error of their mean. */
export const sdOfStandardError = formula(
  {
    id: 'change/sd-of-standard-error',
    revision: 1,
    title: 'Standard deviation between people, from a standard error of their mean',
    equation: 'SE √n',
    inputs: [
      measured('standard error of the mean', 'SE', [0, 1e6]),
      { name: 'number of people', symbol: 'n', unit: '1', possible: [2, 1e5], valid: [2, 1e5] },
    ],
    output: { name: 'standard deviation', symbol: 'SD', unit: 'of the test' },
    source: COMMON_PRACTICE,
    doesNotKnow:
      'Whether the standard error was that of a plain mean; those of models with repeated tests are smaller.',
  },
  (standardError: number, people: number): number => standardError * Math.sqrt(people),
);
