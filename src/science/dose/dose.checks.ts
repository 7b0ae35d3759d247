import { printedResults, printedRows, type Check } from '../check.ts';
import { RECOMPUTED } from '../sources.ts';
import { HIGH_VOLUME_SETS, LOW_VOLUME_SETS } from './dose-response.table.ts';
import { RALSTON_2017, SCHOENFELD_2017 } from './sources.ts';
import { setsForShare, shareOfStrengthEffect, strengthEffect, strengthEffectOfNextSet } from './strength-effect.ts';
import { fractionalSets, mostSetsNextWeek, setsForStrength, sizeDifference } from './weekly-sets.ts';
import { weeklyDose, type SetsOfWeek } from './weekly-dose.ts';

const half = (digits: number): number => 0.5 * 10 ** -digits + 1e-12;
const SIX = 'written to six decimals';

const WEEK: readonly SetsOfWeek[] = [
  { role: 'direct', sets: 4, fraction: 0.78 },
  { role: 'direct', sets: 3, fraction: 0.5 },
  { role: 'indirect', sets: 4, fraction: 0.74 },
];

const dose = (of: 'sets' | 'forStrength' | 'share') => (): number => {
  const found = weeklyDose(WEEK, null);
  if (found.kind === 'refused') throw new RangeError(found.reason);
  return found[of];
};

export const strengthDoseChecks: readonly Check[] = [
  ...printedRows(RALSTON_2017, 0.005, 'the means are printed to two decimals', [
    [strengthEffect, [LOW_VOLUME_SETS], 0.82],
    [strengthEffect, [HIGH_VOLUME_SETS], 1.01],
  ]),
  ...printedRows(RECOMPUTED, half(6), SIX, [
    [strengthEffect, [1], 0.430772],
    [strengthEffect, [5], 0.948259],
    [strengthEffect, [8], 0.999371],
    [strengthEffectOfNextSet, [3], 0.10618],
    [strengthEffectOfNextSet, [8], 0.006618],
    [shareOfStrengthEffect, [5], 0.937668],
    [setsForShare, [0.94], 5.068687],
  ]),
];

export const countingChecks: readonly Check[] = [
  ...printedRows(SCHOENFELD_2017, 1e-9, 'printed for one set; a product', [[sizeDifference, [6, 5], 0.37]]),
  ...printedRows(RECOMPUTED, 1e-9, 'sums and products of tenths and halves', [
    [sizeDifference, [10, 5], 1.85],
    [fractionalSets, [6, 4], 8],
    [setsForStrength, [4, 3], 5.5],
    [mostSetsNextWeek, [10], 12],
  ]),
  ...printedResults(weeklyDose, RECOMPUTED, half(6), SIX, [
    ['Sets of a week of 4 heavy, 3 light and 4 indirect', dose('sets'), 9],
    ['Of these for strength', dose('forStrength'), 7.5],
    ['Share of the modelled effect', dose('share'), 0.984438],
  ]),
];
