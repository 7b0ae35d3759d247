import { recoveryForecast, type ForecastRequest } from '#science/return/recovery-forecast.ts';
import { measure, measured, present, ratioOf } from './measure.ts';
import { askReference, largestDistance, sayAgreement } from './python-reference.ts';

/** Four tests after landing against every loss and every time constant of the grid: dates, levels and their spread. */
const RUNS = 101;
const REQUEST: ForecastRequest & { readonly sigma: number; readonly on: readonly number[] } = {
  tests: [
    { day: 1, level: 84 },
    { day: 7, level: 90 },
    { day: 14, level: 94 },
    { day: 21, level: 95 },
  ],
  prior: { timeConstant: 14, logSd: 0.5 },
  sigma: 2,
  level: 97,
  on: [28, 35, 42],
};

/** Everything that the forecast says, in one row. */
const rowOf = (): readonly number[] => {
  const result = recoveryForecast(REQUEST);
  if (result.kind !== 'forecast') throw new Error('These tests lie on the curve.');
  const { loss, timeConstant, newestResidual, levels, time } = result;
  return [
    loss,
    timeConstant,
    newestResidual,
    ...levels.flatMap(({ q10, q50, q90, probability }) => [q10, q50, q90, probability]),
    time.q10,
    time.q50,
    time.q90,
  ];
};

const reference = askReference<readonly number[]>('recovery_grid.py', { ...REQUEST, runs: RUNS });
const ours = await measure('grid of 79 losses and 61 time constants', rowOf, { runs: RUNS, warmUp: 25 });

const title = 'Recovery after landing, posterior on a grid';
if (reference.kind === 'missing') {
  present(title, [ours]);
  console.log(`  ${reference.why}`);
} else {
  const { versions, times, result } = reference.answer;
  present(title, [ratioOf('NumPy against ours', measured('NumPy, whole arrays', times['NumPy'] ?? []), ours)]);
  console.log(`  ${versions}`);
  // Both take quantiles from the same curves: anything but rounding would be another curve.
  sayAgreement(`${result.length} results`, largestDistance(rowOf(), result), 1e-9);
}
