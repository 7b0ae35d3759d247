import type { Check } from '../check.ts';
import { printedResults, printedRows } from '../check.ts';
import { RECOMPUTED } from '../sources.ts';
import { enduranceBand } from './endurance-band.ts';
import {
  enduranceTimeFreyLawAvin,
  enduranceTimeManenica,
  enduranceTimeRohmert,
  enduranceTimeRose,
} from './endurance-time.ts';
import {
  gloveFactorByHandSize,
  gloveFactorByPressure,
  LEFT_AT_LOW_PRESSURE,
  LEFT_AT_WORKING_PRESSURE,
  LOW_PRESSURE,
  relativeLoad,
  suitedMaximum,
  WORKING_PRESSURE,
} from './glove-factor.ts';
import { gripNorms } from './grip-norms.table.ts';
import { gripScore, gripStandardScore } from './grip-score.ts';
import { MATHIOWETZ_1985, PUBLIC_FATIGUE_TABLE, ROESCH_1986, STRAUSS_2005 } from './sources.ts';
import { suitedTrainingComplaints } from './glove.table.ts';
import { suitedGrip } from './suited-grip.ts';
import { fraction, kilograms, newtons } from '#units/quantity.ts';

const SIX = 'written with six decimals';
const EXACT = 'the printed mean itself; doubles';

const suited = (pressure: number): number => {
  const grip = suitedGrip(newtons(500), { kind: 'by pressure', kilopascals: pressure });
  return grip.kind === 'estimate' ? grip.value : Number.NaN;
};

export const gloveChecks: readonly Check[] = [
  ...printedRows(ROESCH_1986, 1e-9, EXACT, [
    [gloveFactorByPressure, [LOW_PRESSURE], LEFT_AT_LOW_PRESSURE],
    [gloveFactorByPressure, [WORKING_PRESSURE], LEFT_AT_WORKING_PRESSURE],
  ]),
  ...printedRows(RECOMPUTED, 5e-7, SIX, [
    [gloveFactorByPressure, [20], 0.605776],
    [gloveFactorByPressure, [10], 0.632493],
    [gloveFactorByHandSize, [0.17], 0.5395],
    [gloveFactorByHandSize, [0.12], 0.572],
    [gloveFactorByHandSize, [0.09], 0.5915],
    [gloveFactorByHandSize, [0.01], 0.6435],
    [suitedMaximum, [500, 0.58], 290],
    [relativeLoad, [60, 290], 0.206897],
    [relativeLoad, [140, 290], 0.482759],
  ]),
  ...printedResults(suitedGrip, RECOMPUTED, 5e-5, 'written with four decimals', [
    ['500 N bare at 20 kPa, in the suit [N]', () => suited(20), 302.8878],
    ['500 N bare at 29.6474551 kPa, in the suit [N]', () => suited(WORKING_PRESSURE), 290],
  ]),
  ...suitedTrainingComplaints.rows.map(({ site, count, percent }): Check => ({
    kind: 'series',
    title: `Complaints of the ${site}, of 352 [%]`,
    compute: () => (100 * count) / 352,
    printed: percent,
    within: 0.05 + 1e-9,
    because: 'printed to one decimal',
    source: STRAUSS_2005,
  })),
];

const score = (): number => {
  const of = gripScore({ sex: 'male', age: 42, side: 'right', grip: kilograms(50), from: 'mean of three' });
  return of.kind === 'estimate' ? of.value : Number.NaN;
};

/** Mean of all groups weighted alike, against the mean of all people that the table prints beneath them. */
const meanOf = (people: 'men' | 'women', side: 'right' | 'left'): number =>
  gripNorms.rows.reduce((sum, row) => sum + row[people][side][0], 0) / gripNorms.rows.length;

export const normChecks: readonly Check[] = [
  ...printedRows(RECOMPUTED, 5e-7, SIX, [[gripStandardScore, [50, 52.979589, 9.389362], -0.317337]]),
  ...printedResults(gripScore, RECOMPUTED, 5e-7, SIX, [['50 kg, right, a man of 42', score, -0.317337]]),
  ...(
    [
      ['men, right', 104.3, () => meanOf('men', 'right')],
      ['men, left', 93.1, () => meanOf('men', 'left')],
    ] as const
  ).map(([who, printed, compute]): Check => ({
    kind: 'series',
    title: `Mean grip of all groups [lb], ${who}`,
    compute,
    printed,
    within: 1.5,
    because: 'the printed mean weights groups by their 21 to 29 people, this one weights them alike',
    source: MATHIOWETZ_1985,
  })),
];

const band = (share: number, place: 0 | 1): number => {
  const found = enduranceBand(fraction(share));
  return found.kind === 'estimate' ? found.band[place] : Number.NaN;
};

export const enduranceChecks: readonly Check[] = [
  ...printedRows(PUBLIC_FATIGUE_TABLE, 0.05 + 1e-9, 'tabulated to a tenth of a second', [
    [enduranceTimeFreyLawAvin, [0.6], 76.4],
    [enduranceTimeFreyLawAvin, [0.7], 59.6],
    [enduranceTimeFreyLawAvin, [0.8], 48.1],
    [enduranceTimeFreyLawAvin, [0.9], 39.8],
  ]),
  ...printedRows(RECOMPUTED, 5e-7, SIX, [
    [enduranceTimeFreyLawAvin, [0.5], 102.411993],
    [enduranceTimeFreyLawAvin, [0.3], 233.091966],
    [enduranceTimeRohmert, [0.5], 66],
    [enduranceTimeRohmert, [0.3], 152.222222],
    [enduranceTimeRose, [0.5], 59.666669],
    [enduranceTimeRose, [0.3], 137.108634],
    [enduranceTimeManenica, [0.5], 105.040235],
    [enduranceTimeManenica, [0.3], 258.357288],
  ]),
  ...printedResults(enduranceBand, RECOMPUTED, 5e-7, SIX, [
    ['shortest of four at half of the maximum [s]', () => band(0.5, 0), 59.666669],
    ['longest of four at half of the maximum [s]', () => band(0.5, 1), 105.040235],
  ]),
];
