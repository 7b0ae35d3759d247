import { printedResults, printedRows, type Check } from '../check.ts';
import { higherBetterScore, lowerBetterScore, sidesAgainstThemselves, symmetryScore } from './recovery-score.ts';
import { RECOMPUTED } from '../sources.ts';
import { standTest, type StandJudgement, type StandTest } from './stand-test.ts';
import { equilibriumScore, standingBalance, type BalanceReading, type BalanceTrials } from './standing-balance.ts';
import { FREEMAN_2011 } from './sources.ts';

const SIX = 'printed to six decimals';
const HALF_OF_SIX = 0.5e-6;
const EXACT = 'whole numbers, but for rounding';
const ROUNDING = 1e-9;

const TRIALS: BalanceTrials = [[94], [90], [91, 90, 92], [85, 86, 84], [60, 64, 68], [58, 62, 63]];

const compositeOf = (reading: BalanceReading): number => (reading.kind === 'estimate' ? reading.value : Number.NaN);

export const balanceChecks: readonly Check[] = [
  ...printedRows(RECOMPUTED, ROUNDING, EXACT, [
    [equilibriumScore, [2, -1.5], 72],
    [equilibriumScore, [8, -6], 0],
  ]),
  ...printedResults(standingBalance, RECOMPUTED, HALF_OF_SIX, SIX, [
    [
      'composite of 94; 90; 91, 90, 92; 85, 86, 84; 60, 64, 68; 58, 62, 63',
      () => compositeOf(standingBalance(TRIALS)),
      77.642857,
    ],
  ]),
];

export const scoreChecks: readonly Check[] = [
  ...printedRows(RECOMPUTED, HALF_OF_SIX, SIX, [
    [lowerBetterScore, [13, 12], 92.307692],
    [higherBetterScore, [184, 208], 88.461538],
    [symmetryScore, [212, 236], 89.830508],
  ]),
  ...printedResults(sidesAgainstThemselves, RECOMPUTED, HALF_OF_SIX, SIX, [
    [
      'symmetry of 212 and 236, once 230 and 240',
      () => {
        const sides = sidesAgainstThemselves({ left: 212, right: 236 }, { left: 230, right: 240 });
        return sides.kind === 'estimate' ? sides.symmetry : Number.NaN;
      },
      89.830508,
    ],
    [
      'left side of the same against itself',
      () => {
        const sides = sidesAgainstThemselves({ left: 212, right: 236 }, { left: 230, right: 240 });
        return sides.kind === 'estimate' ? sides.left : Number.NaN;
      },
      92.173913,
    ],
  ]),
];

/** A person with 120 over 70 mmHg and 60 beats lying; standing as told, each minute. */
const standing = (systolic: number, diastolic: number, heartRate: number): StandTest => ({
  lying: { systolic: 120, diastolic: 70, heartRate: 60 },
  standing: [1, 2, 3, 5, 7, 10].map((minute) => ({ minute, systolic, diastolic, heartRate })),
  presyncope: false,
  stood: 10,
});

/** 1 for normal, 0 for not. */
const normalOf = (judgement: StandJudgement): number =>
  judgement.kind === 'judgement' ? Number(judgement.normal) : Number.NaN;

export const standChecks: readonly Check[] = printedResults(
  standTest,
  FREEMAN_2011,
  0,
  'yes is 1, no is 0; the limits are whole numbers',
  [
    ['systolic fall of 19 mmHg: normal', () => normalOf(standTest(standing(101, 70, 80))), 1],
    ['systolic fall of 20 mmHg: not normal', () => normalOf(standTest(standing(100, 70, 80))), 0],
    ['diastolic fall of 9 mmHg: normal', () => normalOf(standTest(standing(120, 61, 80))), 1],
    ['diastolic fall of 10 mmHg: not normal', () => normalOf(standTest(standing(120, 60, 80))), 0],
    ['heart rate up by 29: normal', () => normalOf(standTest(standing(120, 70, 89))), 1],
    ['heart rate up by 30: not normal', () => normalOf(standTest(standing(120, 70, 90))), 0],
  ],
);
