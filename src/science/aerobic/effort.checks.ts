import { printedResults, printedRows, type Check } from '../check.ts';
import { RECOMPUTED } from '../sources.ts';
import {
  maximalRateGellish,
  maximalRateGellishCurved,
  maximalRateGellishUnrounded,
  maximalRateTanaka,
} from './maximal-rate-of-age.ts';
import {
  heartRateReserveCycling,
  heartRateReserveCyclingOfReserve,
  heartRateReserveTreadmill,
  heartRateReserveTreadmillOfReserve,
  maximalRateReached,
} from './intensity-lines.ts';
import { intensityZone } from './intensity-zone.ts';
import { ZONE_NAMES, type IntensityMetric } from './intensity-zones.table.ts';
import { personalMaximalRate } from './personal-maximal-rate.ts';
import { DOUBLES, sdOf, valueOf } from './read-estimate.ts';
import {
  expectedHeartRate,
  expectedUptake,
  heartRateReserve,
  reserveOfMaximumFraction,
  targetHeartRate,
  targetUptake,
  uptakeReserve,
} from './effort-reserve.ts';
import { ACSM_HANDBOOK, GARBER_2011, SWAIN_1994 } from './sources.ts';

export const maximalRateChecks: readonly Check[] = [
  ...printedRows(RECOMPUTED, 1e-9, DOUBLES, [
    [maximalRateTanaka, [45], 176.5],
    [maximalRateGellish, [45], 175.5],
    [maximalRateGellishUnrounded, [45], 176.75],
    [maximalRateGellishCurved, [45], 177.825],
  ]),
  ...printedResults(personalMaximalRate, RECOMPUTED, 1e-9, DOUBLES, [
    ['from an age of 45', () => valueOf(personalMaximalRate({ age: 45 })), 176.5],
    ['its standard deviation', () => sdOf(personalMaximalRate({ age: 45 })), 10],
    ['measured, whatever the age', () => valueOf(personalMaximalRate({ age: 45, measured: 184 })), 184],
  ]),
];

export const reserveChecks: readonly Check[] = printedRows(RECOMPUTED, 1e-9, DOUBLES, [
  [targetHeartRate, [0.6, 55, 176.5], 127.9],
  [targetHeartRate, [0.75, 55, 176.5], 146.125],
  [heartRateReserve, [146.125, 55, 176.5], 0.75],
  [targetUptake, [0.7272727272727273, 42], 31.5],
  [uptakeReserve, [31.5, 42], 0.7272727272727273],
  [reserveOfMaximumFraction, [0.75, 42], 0.7272727272727273],
  [expectedHeartRate, [35.5, 45, 55, 176.5], 148.6867469879518],
  [expectedHeartRate, [28.108, 45, 55, 176.5], 127.04510843373494],
  [expectedUptake, [148.6867469879518, 45, 55, 176.5], 35.5],
]);

const ROUNDED_MEAN =
  'means printed to a whole percent; a straight line from memory through four of them misses each by less than one';

export const regressionChecks: readonly Check[] = [
  ...printedRows(SWAIN_1994, 1, ROUNDED_MEAN, [
    [maximalRateReached, [40], 63],
    [maximalRateReached, [60], 76],
    [maximalRateReached, [80], 89],
    [maximalRateReached, [85], 92],
  ]),
  ...printedRows(RECOMPUTED, 1e-9, DOUBLES, [
    [heartRateReserveCycling, [75], 72.4],
    [heartRateReserveTreadmill, [75], 76.4],
    [heartRateReserveCyclingOfReserve, [75], 74.9],
    [heartRateReserveTreadmillOfReserve, [75], 78.75],
    [maximalRateReached, [75], 85],
  ]),
];

/** The place of a zone, from 1, so that a check can hold a number. */
const placeOf = (metric: IntensityMetric, value: number): number => {
  const zone = intensityZone(metric, value);
  return zone.kind === 'zone' ? ZONE_NAMES.indexOf(zone.name) + 1 : Number.NaN;
};

const WHOLE = 'the number of a zone';

export const zoneChecks: readonly Check[] = [
  ...printedResults(intensityZone, ACSM_HANDBOOK, 0, WHOLE, [
    ['39 % of the heart-rate reserve is light', () => placeOf('heartRateReserve', 0.39), 2],
    ['40 % of the heart-rate reserve is moderate', () => placeOf('heartRateReserve', 0.4), 3],
    ['59 % of the heart-rate reserve is moderate', () => placeOf('heartRateReserve', 0.59), 3],
    ['60 % of the heart-rate reserve is vigorous', () => placeOf('heartRateReserve', 0.6), 4],
    ['56 % of the maximal heart rate is very light', () => placeOf('maximalHeartRate', 0.56), 1],
    ['76 % of the maximal heart rate is moderate', () => placeOf('maximalHeartRate', 0.76), 3],
    ['95 % of the maximal heart rate is vigorous', () => placeOf('maximalHeartRate', 0.95), 4],
    ['96 % of the maximal heart rate is near maximal', () => placeOf('maximalHeartRate', 0.96), 5],
    ['an exertion of 13 is moderate', () => placeOf('exertion', 13), 3],
    ['an exertion of 14 is vigorous', () => placeOf('exertion', 14), 4],
  ]),
  ...printedResults(intensityZone, GARBER_2011, 0, WHOLE, [
    ['45 % of the maximal uptake is light', () => placeOf('maximalUptake', 0.45), 2],
    ['91 % of the maximal uptake is near maximal', () => placeOf('maximalUptake', 0.91), 5],
    ['7.1 MET in the twenties is moderate', () => placeOf('equivalentsTwenties', 7.1), 3],
    ['8.7 MET in general is vigorous', () => placeOf('equivalents', 8.7), 4],
  ]),
];
