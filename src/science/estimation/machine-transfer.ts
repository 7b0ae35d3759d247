import { method } from '../method.ts';
import { GELMAN_2013, OUR_OWN_DESIGN } from '../sources.ts';

/** One lift that a person was seen to do on both machines. */
export interface LiftOnBoth {
  /** Logarithm of what the machine shows over what the bar shows. */
  readonly logRatio: number;
  /** Variances of both estimates together, on the log scale. */
  readonly variance: number;
}

export interface MachineTransfer {
  /** What the machine shows over what the bar shows. */
  readonly ratio: number;
  readonly logSd: number;
}

/** Before anything was seen on both: the same level, this far apart (our own design). */
export const TRANSFER_PRIOR_LOG_SD = 0.1;

/** What a machine shows over what a bar shows, learned from the lifts that one person did on both. */
export const machineTransfer = method(
  {
    id: 'estimation/machine-transfer',
    revision: 1,
    title: 'What a machine shows over what a bar shows, learned from lifts done on both',
    equations: [
      'precision = 1 / τ² + sum_(i=1)^n 1 / v_i, τ = 0.10',
      'm = (sum_(i=1)^n d_i / v_i) / precision',
      'ratio = e^m',
      'SD of the logarithm = 1 / √(precision)',
    ],
    inputs: [
      {
        name: 'logarithm of machine over bar of a lift',
        symbol: 'd_i',
        unit: '1',
        possible: [-2, 2],
        valid: [-0.4, 0.4],
      },
      { name: 'its variance', symbol: 'v_i', unit: '1', possible: [1e-9, 4], valid: [0.0004, 0.09] },
    ],
    outputs: [
      { name: 'machine over bar', symbol: 'ratio', unit: '1' },
      { name: 'standard deviation of the logarithm', symbol: 'SD', unit: '1' },
    ],
    refuses: ['A variance that is not above zero, or a number that is not finite: an error of the program.'],
    source: OUR_OWN_DESIGN,
    restsOn: [GELMAN_2013],
    doesNotKnow:
      'That a ratio may differ from lift to lift on one machine, and that lifts of one day share the error of the day: with few lifts the standard deviation is too small. The spread of 0.10 before anything is seen is our own setting.',
  },
  (lifts: readonly LiftOnBoth[]): MachineTransfer => {
    if (
      lifts.some(({ logRatio, variance }) => !Number.isFinite(logRatio) || !Number.isFinite(variance) || variance <= 0)
    )
      throw new RangeError('A lift on both machines needs a finite ratio and a variance above zero.');
    const precision = lifts.reduce((sum, { variance }) => sum + 1 / variance, TRANSFER_PRIOR_LOG_SD ** -2);
    const mean = lifts.reduce((sum, { logRatio, variance }) => sum + logRatio / variance, 0) / precision;
    return { ratio: Math.exp(mean), logSd: 1 / Math.sqrt(precision) };
  },
);
