import { printedResults, type Check } from '../check.ts';
import type { AnyFormula, Source } from '../formula.ts';
import { estimateLogSd, logSdOfMaximum, logSlope, noviceReserveSd, reserveSd } from './estimate-spread.ts';
import { effectiveRepetitions, repetitionsInReserve } from './effort.ts';
import { fractionAllowing, maximumMultiplier, ratioToTestedLift, repetitionMaximum } from './repetition-maximum.ts';
import {
  oneRepMaxKravitzBenchPress,
  oneRepMaxKravitzDeadlift,
  oneRepMaxKravitzSquat,
  oneRepMaxReynoldsChestPress,
  oneRepMaxReynoldsLegPress,
} from './regressions.ts';
import { COMMON_PRACTICE, OUR_OWN_DESIGN, RECOMPUTED, ZOURDOS_2016 } from '../sources.ts';
import { readSet, type Effort, type SetEstimate } from './set-estimate.ts';
import { barLoad, repetitions } from '#units/quantity.ts';
import { WATHAN_1994 } from './sources.ts';

type Row = readonly [given: readonly number[], printed: number];

const checks = (
  formula: AnyFormula,
  within: number,
  because: string,
  rows: readonly Row[],
  source: Source = formula.record.source,
): readonly Check[] =>
  rows.map(([given, printed]) => ({ kind: 'formula', formula, given, printed, within, because, source }));

/** Completed repetitions and reserve, with the log standard deviation of their estimate. */
const SPREADS: readonly (readonly [completed: number, reserve: number, sd: number])[] = [
  [1, 0, 0.03],
  [3, 0, 0.03606],
  [5, 0, 0.05],
  [6, 0, 0.05831],
  [8, 0, 0.07616],
  [10, 0, 0.09487],
  [5, 2, 0.08045],
  [8, 2, 0.10239],
  [5, 4, 0.10883],
];

export const spreadOfEstimateChecks: readonly Check[] = [
  ...checks(
    estimateLogSd,
    0.00001,
    'printed to five decimals; one in the last of them',
    SPREADS.map(([completed, reserve, sd]) => [[completed + reserve, reserve], sd]),
    OUR_OWN_DESIGN,
  ),
  ...checks(logSlope, 0.000005, 'computed a second time to six decimals', [
    [[1], 0.037923],
    [[6], 0.03096],
    [[7], 0.029606],
  ]),
  ...checks(reserveSd, 0, 'exact', [
    [[0], 0],
    [[1], 1],
    [[2], 1.5],
    [[4], 2.5],
  ]),
  ...checks(noviceReserveSd, 0, 'exact', [[[1.5], 2.25]]),
  ...checks(logSdOfMaximum, 1e-9, 'a set at its own number of repetitions keeps only the error of the test', [
    [[8, 8, 0], 0.03],
  ]),
];

export const effortChecks: readonly Check[] = [
  ...checks(
    repetitionsInReserve,
    0,
    'the scale says so in words',
    [
      [[10], 0],
      [[9.5], 0.5],
      [[9], 1],
      [[8.5], 1.5],
      [[8], 2],
      [[7.5], 2.5],
      [[7], 3],
      [[6], 4],
      [[5], 5],
    ],
    ZOURDOS_2016,
  ),
  ...checks(effectiveRepetitions, 0, 'exact', [[[5, 2], 7]]),
];

export const repetitionMaximumChecks: readonly Check[] = [
  ...checks(maximumMultiplier, 0.00001, 'printed to three decimals for a load of 100; a single is 1', [
    [[1], 1],
    [[8], 1.27671],
  ]),
  ...checks(
    fractionAllowing,
    0.0005,
    'printed in percent to one decimal; a single is 1',
    [
      [[1], 1],
      [[6], 0.831],
      [[8], 0.783],
    ],
    WATHAN_1994,
  ),
  ...checks(
    repetitionMaximum,
    0.002,
    'a quotient of two values printed to three decimals',
    [
      [[100, 8, 1], 127.671],
      [[100, 10, 5], (100 * 134.747) / 116.583],
      [[100, 5, 5], 100],
    ],
    WATHAN_1994,
  ),
  ...checks(ratioToTestedLift, 1e-9, 'exact but for binary fractions', [[[0.75, 160], 120]], COMMON_PRACTICE),
];

const WORKED = 'worked by hand to three decimals';

export const regressionChecks: readonly Check[] = [
  ...checks(oneRepMaxReynoldsChestPress, 0.001, WORKED, [[[80], 91.156]]),
  ...checks(oneRepMaxReynoldsLegPress, 0.001, WORKED, [[[200], 233.655]]),
  ...checks(oneRepMaxKravitzSquat, 0.001, WORKED, [[[120, 12], 169.596]]),
  ...checks(oneRepMaxKravitzBenchPress, 0.001, WORKED, [[[100, 10], 122.6]]),
  ...checks(oneRepMaxKravitzDeadlift, 0.001, WORKED, [[[150, 8], 176.832]]),
];

const reading = (load: number, completed: number, effort: Effort): SetEstimate => {
  const found = readSet({
    load: barLoad(load),
    completed: repetitions(completed),
    effort,
    novice: false,
    of: repetitions(1),
  });
  if (found.kind === 'none') throw new RangeError(found.reason);
  return found;
};
const inReserve = (reserve: number): Effort => ({ kind: 'reserve', reserve: repetitions(reserve) });
const toFailure: Effort = { kind: 'failure' };

export const readingChecks: readonly Check[] = [
  ...printedResults(readSet, RECOMPUTED, 0.0005, 'printed to three decimals', [
    ['100 kg × 5 with two in reserve [kg]', () => reading(100, 5, inReserve(2)).maximum, 124.03],
    ['100 kg × 6 with three in reserve [kg]', () => reading(100, 6, inReserve(3)).maximum, 131.246],
    ['100 kg × 5 with two in reserve, least of three authors [kg]', () => reading(100, 5, inReserve(2)).low, 120],
    ['100 kg × 5 with two in reserve, most of three authors [kg]', () => reading(100, 5, inReserve(2)).high, 124.03],
    ['210 lb × 8 to failure [lb]', () => reading(210, 8, toFailure).maximum, 268.11],
    ['122.5 kg × 1 to failure is the maximum [kg]', () => reading(122.5, 1, toFailure).maximum, 122.5],
  ]),
  ...printedResults(readSet, OUR_OWN_DESIGN, 0.00001, 'printed to five decimals; one in the last of them', [
    ['log standard deviation of 5 with two in reserve', () => reading(100, 5, inReserve(2)).logSd, 0.08045],
    ['log standard deviation of 8 to failure', () => reading(100, 8, toFailure).logSd, 0.07616],
    [
      'log standard deviation of 5 with a reserve of two that was planned only',
      () => reading(100, 5, { kind: 'unrecorded, target', target: repetitions(2) }).logSd,
      // √(0.03² + 0.06² + (0.029606 · 2)²)
      0.08948,
    ],
  ]),
];
