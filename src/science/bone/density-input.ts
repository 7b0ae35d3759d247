import type { FormulaInput } from '../formula.ts';

/** A bone mineral density as DXA reads it [g/cm²]; hips and spines of adults lie well inside the valid range. */
export const densityInput = (name: string, symbol: string): FormulaInput => ({
  name,
  symbol,
  unit: 'g/cm²',
  possible: [0.05, 3],
  valid: [0.3, 1.8],
});

/** Precision of repeat scans as the root mean square of their standard deviations [g/cm²]. */
export const precisionInput: FormulaInput = {
  name: 'precision of repeat scans',
  symbol: 'RMS_SD',
  unit: 'g/cm²',
  possible: [0, 0.5],
  valid: [0.001, 0.05],
};
