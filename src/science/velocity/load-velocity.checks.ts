import { printedResults, printedRows, type Check } from '../check.ts';
import { R_PROJECT, STATSMODELS } from '../sources.ts';
import {
  loadOfVelocity,
  standardErrorOfLoad,
  standardErrorWithThreshold,
  velocityOfLoad,
} from './load-velocity-line.ts';
import {
  EXAMPLE_SETS,
  loadVelocityProfile,
  oneRepMaxOfVelocity,
  type LoadVelocityPoint,
  type LoadVelocityProfile,
  type MaximumOfProfile,
} from './load-velocity.ts';
import { barLoad, metresPerSecond } from '#units/quantity.ts';

const example = (): LoadVelocityProfile => {
  const found = loadVelocityProfile(EXAMPLE_SETS);
  if (found.kind === 'refused') throw new RangeError(found.reason);
  return found;
};

const readingOf = (sets: readonly LoadVelocityPoint[], threshold: number): MaximumOfProfile => {
  const found = oneRepMaxOfVelocity(sets, { velocity: metresPerSecond(threshold) });
  if (found.kind === 'refused') throw new RangeError(found.reason);
  return found;
};

/** Five invented sets, read by dose.p of R. */
const SETS_OF_R: readonly LoadVelocityPoint[] = (
  [
    [66.5, 0.905],
    [99, 0.703],
    [137.4, 0.474],
    [152.3, 0.372],
    [159.6, 0.285],
  ] as const
).map(([on, at]) => ({ load: barLoad(on), velocity: metresPerSecond(at) }));

/** The line of the four sets, as statsmodels fits it: intercept, slope, standard deviation, loads, mean, squares. */
const [A, B, S, LOADS, MEAN, SQUARES] = [1.532, -0.01085, 0.0038729833, 4, 70, 2000] as const;

const FOUR = 'printed to four decimals';
const HALF_OF_FOUR = 5e-5;

export const lineChecks: readonly Check[] = [
  ...printedRows(STATSMODELS, 1e-9, 'exact but for binary fractions', [[velocityOfLoad, [A, B, 120], 0.23]]),
  ...printedRows(STATSMODELS, HALF_OF_FOUR, FOUR, [
    [loadOfVelocity, [0.3, A, B], 113.5484],
    [loadOfVelocity, [0.23, A, B], 120],
    [loadOfVelocity, [0.17, A, B], 125.53],
    [loadOfVelocity, [0, A, B], 141.1982],
    [standardErrorOfLoad, [S, B, LOADS, 113.5484, MEAN, SQUARES], 0.3907],
    [standardErrorOfLoad, [S, B, LOADS, 120, MEAN, SQUARES], 0.4372],
    [standardErrorOfLoad, [S, B, LOADS, 125.53, MEAN, SQUARES], 0.4778],
    // √(3² + 4²) with 0.04 m/s on a slope of 0.01.
    [standardErrorWithThreshold, [3, 0.04, -0.01], 5],
  ]),
];

export const profileChecks: readonly Check[] = [
  ...printedResults(loadVelocityProfile, STATSMODELS, 5e-9, 'printed to eight decimals', [
    ['velocity without load of four sets [m/s]', () => example().velocityWithoutLoad, 1.532],
    ['slope of four sets [(m/s)/kg]', () => example().slope, -0.01085],
    ['explained part of the variance of four sets', () => example().determination, 0.9998726],
    ['standard deviation about the line of four sets [m/s]', () => example().residualSd, 0.00387298],
  ]),
  ...printedResults(oneRepMaxOfVelocity, STATSMODELS, HALF_OF_FOUR, FOUR, [
    ['maximum of four sets at 0.30 m/s [kg]', () => readingOf(EXAMPLE_SETS, 0.3).value, 113.5484],
    ['its standard error [kg]', () => readingOf(EXAMPLE_SETS, 0.3).sd, 0.3907],
    ['maximum of four sets at 0.23 m/s [kg]', () => readingOf(EXAMPLE_SETS, 0.23).value, 120],
    ['standard error at 0.23 m/s [kg]', () => readingOf(EXAMPLE_SETS, 0.23).sd, 0.4372],
    ['maximum of four sets at 0.17 m/s [kg]', () => readingOf(EXAMPLE_SETS, 0.17).value, 125.53],
    ['standard error at 0.17 m/s [kg]', () => readingOf(EXAMPLE_SETS, 0.17).sd, 0.4778],
  ]),
  ...printedResults(oneRepMaxOfVelocity, R_PROJECT, HALF_OF_FOUR, FOUR, [
    ['maximum of five sets, by dose.p [kg]', () => readingOf(SETS_OF_R, 0.23).value, 172.3321],
    ['standard error of five sets, by dose.p [kg]', () => readingOf(SETS_OF_R, 0.23).sd, 2.4974],
  ]),
];
