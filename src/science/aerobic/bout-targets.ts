import { formula } from '../formula.ts';
import { COMMON_PRACTICE } from '../sources.ts';
import { heartRateInput, maximalRate, maximalUptake, share } from './inputs.ts';
import { GARBER_2011 } from './sources.ts';
import { heartRate, oxygenUptake, type Fraction, type HeartRate, type OxygenUptake } from '#units/quantity.ts';

/** What a share of a maximum asks of a bout, and the band of heart rate that is held. */

/** A single target is a band of so many beats either way; common practice. */
export const BEATS_EITHER_WAY = 5;

/** Heart rate of a share of the greatest one [1/min]. */
export const rateOfGreatest = formula(
  {
    id: 'bout/rate-of-greatest',
    revision: 1,
    title: 'Heart rate of a share of the greatest one [1/min]',
    equation: 'p · HR_max',
    inputs: [share('share of the greatest heart rate', 'p', [0.5, 1]), maximalRate],
    output: { name: 'target heart rate', symbol: 'HR', unit: '1/min' },
    source: GARBER_2011,
    doesNotKnow: 'The resting heart rate: the same share is easier for a person whose heart rests slowly.',
  },
  (part: Fraction, maximum: HeartRate): HeartRate => heartRate(part * maximum),
);

/** Oxygen uptake of a share of the greatest one [mL/(kg min)]. */
export const uptakeOfGreatest = formula(
  {
    id: 'bout/uptake-of-greatest',
    revision: 1,
    title: 'Oxygen uptake of a share of the greatest one [mL/(kg min)]',
    equation: 'p · VO2_max',
    inputs: [share('share of the greatest uptake', 'p', [0.3, 1]), maximalUptake()],
    output: { name: 'target oxygen uptake', symbol: 'VO2', unit: 'mL/(kg min)' },
    source: COMMON_PRACTICE,
    doesNotKnow: 'Whether the greatest uptake is of today: weeks of flight and a landing lower it.',
  },
  (part: Fraction, maximum: OxygenUptake): OxygenUptake => oxygenUptake(part * maximum),
);

const ends = [
  heartRateInput('target at the low end', 'HR_1', [60, 220]),
  heartRateInput('target at the high end', 'HR_2', [60, 220]),
] as const;
const band = {
  revision: 1,
  source: COMMON_PRACTICE,
  doesNotKnow: 'How fast a heart rate settles: in bouts of two minutes and less it lags behind the work.',
} as const;

/** Lower end of the band of heart rate [1/min]. */
export const lowestBeat = formula(
  {
    ...band,
    id: 'bout/lowest-beat',
    title: 'Lower end of the band of heart rate [1/min]',
    equation: 'min(HR_1, (HR_1 + HR_2) / 2 − 5)',
    inputs: [...ends],
    output: { name: 'lower end of the band', symbol: 'HR_low', unit: '1/min' },
  },
  (from: HeartRate, to: HeartRate): HeartRate => heartRate(Math.min(from, (from + to) / 2 - BEATS_EITHER_WAY)),
);

/** Upper end of the band of heart rate, never over the greatest [1/min]. */
export const highestBeat = formula(
  {
    ...band,
    id: 'bout/highest-beat',
    title: 'Upper end of the band of heart rate, never over the greatest [1/min]',
    equation: 'min(max(HR_2, (HR_1 + HR_2) / 2 + 5), HR_max)',
    inputs: [...ends, maximalRate],
    output: { name: 'upper end of the band', symbol: 'HR_high', unit: '1/min' },
  },
  (from: HeartRate, to: HeartRate, maximum: HeartRate): HeartRate =>
    heartRate(Math.min(Math.max(to, (from + to) / 2 + BEATS_EITHER_WAY), maximum)),
);
