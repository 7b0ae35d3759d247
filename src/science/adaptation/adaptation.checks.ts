import { printedResults, printedRows, type Check } from '../check.ts';
import { ENGLISH_2020, RECOMPUTED } from '../sources.ts';
import { partLeft } from '../recovery/halving.ts';
import { percentChange, sdOfStandardError } from './change.ts';
import { strengthOfMinimalDose, weeklyGain } from './gain.ts';
import {
  DAYS_AFTER_LANDING,
  isokineticChange,
  ISOKINETIC_CHANGES,
  type FlightTraining,
} from './isokinetic-change.table.ts';
import {
  kneeExtensorLoss,
  longestPauseCarried,
  longestPauseUnloaded,
  oxygenUptakeLost,
  strengthByRuleOfThumb,
  strengthCarried,
  strengthUnloaded,
} from './pause.ts';
import { remainingStrength, type DaysMissed } from './remaining-strength.ts';
import { DE_BOER_2007, LATELLA_2020, MUIR_2011, STEELE_2022 } from './sources.ts';

const SIX = 'printed to six decimals';
const HALF_OF_SIX = 5e-7;

const leftAfter = (missed: DaysMissed): number => {
  const found = remainingStrength(missed);
  if (found.kind === 'refused') throw new RangeError(found.reason);
  return found.fraction;
};

export const pauseChecks: readonly Check[] = [
  ...printedRows(
    DE_BOER_2007,
    HALF_OF_SIX,
    'the curve is made to pass through both points; its numbers have six decimals',
    [
      [strengthUnloaded, [14], 0.852],
      [strengthUnloaded, [23], 0.79],
    ],
  ),
  ...printedRows(RECOMPUTED, HALF_OF_SIX, SIX, [
    [strengthUnloaded, [21], 0.802066],
    [strengthUnloaded, [28], 0.763439],
    [strengthUnloaded, [60], 0.672286],
    [strengthCarried, [28], 0.968783],
    [strengthCarried, [84], 0.89671],
    [oxygenUptakeLost, [7], 4.561788],
    [oxygenUptakeLost, [12], 7],
    [oxygenUptakeLost, [21], 10.154329],
    [oxygenUptakeLost, [56], 14.908497],
    [oxygenUptakeLost, [84], 15.714913],
  ]),
  ...printedRows(RECOMPUTED, 0, 'a fortnight costs nothing', [
    [strengthCarried, [0], 1],
    [strengthCarried, [14], 1],
  ]),
  ...printedRows(RECOMPUTED, 1e-9, 'exact but for binary fractions', [
    [strengthByRuleOfThumb, [14, 0.01], 1],
    [strengthByRuleOfThumb, [28, 0.01], 0.98],
    [strengthByRuleOfThumb, [56, 0.005], 0.97],
  ]),
  ...printedRows(
    RECOMPUTED,
    0.0007,
    'read back from strengths of six decimals: half a millionth over a slope of 0.00078 a day at 84 days',
    [
      [longestPauseCarried, [0.968783], 28],
      [longestPauseCarried, [0.89671], 84],
      [longestPauseUnloaded, [0.852], 14],
      [longestPauseUnloaded, [0.79], 23],
    ],
  ),
  ...printedRows(RECOMPUTED, 0.005, 'printed to two decimals', [
    [kneeExtensorLoss, [5], 7.36],
    [kneeExtensorLoss, [14], 13.01],
    [kneeExtensorLoss, [28], 17.52],
    [kneeExtensorLoss, [60], 22.83],
    [kneeExtensorLoss, [70], 23.94],
    [kneeExtensorLoss, [120], 27.85],
  ]),
  // Ninety days in bed took 25.7 % of knee extension.
  ...printedRows(
    MUIR_2011,
    0.1,
    'the curve is drawn to illustrate, and meets this study within its rounding to whole foot-pounds',
    [[kneeExtensorLoss, [90], 25.7]],
  ),
  ...printedResults(remainingStrength, RECOMPUTED, HALF_OF_SIX, SIX, [
    ['21 days unloaded', () => leftAfter({ days: 21, legs: 'unloaded', ill: false }), 0.802066],
    ['28 days still loaded', () => leftAfter({ days: 28, legs: 'still loaded', ill: false }), 0.968783],
  ]),
  ...printedResults(remainingStrength, RECOMPUTED, 0.0005, 'printed to three decimals', [
    [
      'load after 21 days unloaded, of 100 kg and with 5 % taken off [kg]',
      () => 95 * leftAfter({ days: 21, legs: 'unloaded', ill: false }),
      76.196,
    ],
  ]),
];

export const gainChecks: readonly Check[] = [
  ...printedRows(RECOMPUTED, 1e-4, 'printed to four decimals; one in the last of them', [
    [strengthOfMinimalDose, [4], 1.1621],
    [strengthOfMinimalDose, [12], 1.2584],
    [strengthOfMinimalDose, [26], 1.332],
    [strengthOfMinimalDose, [52], 1.4],
    [strengthOfMinimalDose, [312], 1.5789],
  ]),
  ...printedRows(STEELE_2022, 0.1, 'printed as 30 to 50 % over the first year', [[strengthOfMinimalDose, [52], 1.4]]),
  ...printedRows(STEELE_2022, 0.05, 'printed as 50 to 60 % six years later', [[strengthOfMinimalDose, [312], 1.55]]),
  ...printedRows(LATELLA_2020, 0.0005, 'printed to three decimals', [[weeklyGain, [0.15, 513.3], 0.205]]),
];

export const recoveryChecks: readonly Check[] = printedRows(RECOMPUTED, 1e-9, 'halves and quarters', [
  [partLeft, [0, 28], 1],
  [partLeft, [28, 28], 0.5],
  [partLeft, [28, 14], 0.25],
  [partLeft, [21, 21], 0.5],
]);

/** Changes of group means after 5, 14 and 30 days, as worked out by hand from the printed means. */
const CHANGES: readonly (readonly [test: string, training: FlightTraining, ...percents: readonly (number | null)[]])[] =
  [
    ['knee extension, 60°/s', 'standard', -6.7, -8.2, -6.2],
    ['knee extension, 60°/s', 'heavy and short', -7.3, -2.6, -1.6],
    ['knee flexion, 60°/s', 'standard', -9.7, -8.8, -5.3],
    ['knee flexion, 60°/s', 'heavy and short', 0, 2, 3],
    ['plantar flexion, 30°/s', 'standard', -10.4, -8.2, -1.5],
    ['plantar flexion, 30°/s', 'heavy and short', -11.5, -8.4, 1.5],
    ['plantar flexion, eccentric 30°/s', 'standard', -9.9, -5.8, -1],
    ['plantar flexion, eccentric 30°/s', 'heavy and short', -16.6, -9.8, 2.6],
    ['trunk extension, 60°/s', 'standard', null, -8.5, -5.2],
    ['trunk extension, 60°/s', 'heavy and short', null, 7.3, -1.8],
    ['trunk flexion, 60°/s', 'standard', null, -12.9, -6.7],
    ['trunk flexion, 60°/s', 'heavy and short', null, -12.2, -7.7],
  ];

const changeOf = (test: string, training: FlightTraining, place: number): number => {
  const row = ISOKINETIC_CHANGES.rows.find((each) => each.test === test && each.training === training);
  const change = row ? isokineticChange(row, DAYS_AFTER_LANDING[place] ?? 5) : null;
  if (change === null) throw new RangeError(`${test} was not tested then.`);
  return change;
};

export const lossChecks: readonly Check[] = [
  ...CHANGES.flatMap(([test, training, ...percents]) =>
    percents.flatMap((printed, place): readonly Check[] =>
      printed === null
        ? []
        : [
            {
              kind: 'series',
              title: `${test}, ${training}, ${DAYS_AFTER_LANDING[place] ?? '?'} days after landing [%]`,
              compute: () => changeOf(test, training, place),
              printed,
              within: 0.051,
              because: 'worked out to one decimal; −6.25 was rounded to −6.2',
              source: ENGLISH_2020,
            },
          ],
    ),
  ),
  ...printedRows(MUIR_2011, 0.05, 'worked out from printed means to one decimal', [
    [percentChange, [109, 81], -25.7],
    [percentChange, [64, 51], -20.3],
    [percentChange, [72.5, 52.9], -27],
    [percentChange, [108, 74.8], -30.7],
    [percentChange, [249, 218], -12.4],
  ]),
  ...printedRows(ENGLISH_2020, 0.05, 'worked out to one decimal', [[sdOfStandardError, [11, 17], 45.4]]),
];
