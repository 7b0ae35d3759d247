import { printedRows, type Check } from '../check.ts';
import { SCIPY } from '../sources.ts';
import { ABRAMOWITZ_STEGUN_1964, normalCdf, normalDensity, normalQuantile } from './normal.ts';

const TEN = 'printed here to ten decimals';

export const normalChecks: readonly Check[] = [
  ...printedRows(ABRAMOWITZ_STEGUN_1964, 5e-11, 'one over the root of 2 π, known to any number of decimals', [
    [normalDensity, [0], 0.3989422804],
  ]),
  ...printedRows(SCIPY, 5e-11, TEN, [
    [normalCdf, [-2.5], 0.0062096653],
    [normalCdf, [-1], 0.1586552539],
    [normalCdf, [0.5], 0.6914624613],
    [normalCdf, [3.2], 0.9993128621],
    [normalQuantile, [0.001], -3.0902323062],
    [normalQuantile, [0.05], -1.644853627],
    [normalQuantile, [0.9], 1.2815515655],
    [normalQuantile, [0.975], 1.9599639845],
  ]),
  ...printedRows(SCIPY, 5e-21, 'printed here to eleven digits', [[normalCdf, [-6], 9.8658764504e-10]]),
  ...printedRows(ABRAMOWITZ_STEGUN_1964, 0, 'half of everything lies below the middle', [[normalCdf, [0], 0.5]]),
];
