import { printedRows, type Check } from '../check.ts';
import { RECOMPUTED } from '../sources.ts';
import { heightOfFlightTime, takeOffSpeed } from './flight-time.ts';
import {
  averagePowerHarman,
  averagePowerLewis,
  peakPowerCanavanVescovi,
  peakPowerHarman,
  peakPowerSayersCountermovementJump,
  peakPowerSayersSquatJump,
} from './jump-power.ts';
import { CANAVAN_VESCOVI_2004 } from './sources.ts';

export const flightTimeChecks: readonly Check[] = [
  ...printedRows(RECOMPUTED, 5e-7, 'printed to six decimals', [
    [heightOfFlightTime, [0.4], 0.196133],
    [heightOfFlightTime, [0.5], 0.306458],
    [heightOfFlightTime, [0.6], 0.441299],
  ]),
  ...printedRows(RECOMPUTED, 1e-9, 'exact but for binary fractions', [
    [takeOffSpeed, [0.4], 1.96133],
    [takeOffSpeed, [0.5], 2.4516625],
    [takeOffSpeed, [0.6], 2.941995],
  ]),
];

/**
 * Canavan and Vescovi printed the mean power of the same jumps by four lines, and the mean body mass, but no mean height
 * in their abstract. A line of least squares passes through its means: their own gives 32.85 cm, to 0.1 cm.
 */
const MEANS = [32.85, 65.9] as const;

const ofMeans = (watts: string): string => `the mean height is known to 0.1 cm and the mean mass to 0.05 kg: ${watts}`;

/** One of these decides a sign: with + 1822 for − 1822 Harman’s line misses the printed mean by 3600 W. */
const signChecks: readonly Check[] = [
  ...printedRows(CANAVAN_VESCOVI_2004, 8, ofMeans('61.9 · 0.1 + 36 · 0.05 W'), [[peakPowerHarman, MEANS, 2585]]),
  ...printedRows(CANAVAN_VESCOVI_2004, 8.4, ofMeans('60.7 · 0.1 + 45.3 · 0.05 W'), [
    [peakPowerSayersSquatJump, MEANS, 2920.8],
  ]),
  ...printedRows(CANAVAN_VESCOVI_2004, 7.7, ofMeans('51.9 · 0.1 + 48.9 · 0.05 W'), [
    [peakPowerSayersCountermovementJump, MEANS, 2925.1],
  ]),
];

export const jumpPowerChecks: readonly Check[] = [
  ...signChecks,
  ...printedRows(RECOMPUTED, 1e-9, 'exact but for binary fractions', [
    [peakPowerSayersSquatJump, [40, 80], 3997],
    [peakPowerSayersCountermovementJump, [40, 80], 3981],
    [peakPowerHarman, [40, 80], 3534],
    [averagePowerHarman, [40, 80], 1295],
    [peakPowerCanavanVescovi, [40, 80], 3254.9],
    [averagePowerLewis, [40, 80], 1098.72],
  ]),
];
