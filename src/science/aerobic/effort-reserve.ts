import { formula, type Condition } from '../formula.ts';
import { heartRateInput, maximalRate, maximalUptake, restingRate, share, uptake } from './inputs.ts';
import { GARBER_2011, KARVONEN_1957, SWAIN_LEUTHOLTZ_1997 } from './sources.ts';
import { RESTING_UPTAKE } from './walking-and-running.ts';
import {
  fraction,
  heartRate,
  oxygenUptake,
  type Fraction,
  type HeartRate,
  type OxygenUptake,
} from '#units/quantity.ts';

/**
 * Effort as a fraction of what lies between rest and maximum. The fraction of the heart-rate reserve is taken for that
 * of the uptake reserve; it is not the fraction of the maximal uptake.
 */

/** Smallest difference of maximal and resting heart rate that a fraction can be read in [1/min]. */
const LEAST_RESERVE = 20;

const reserveIsThere = (restAt: number, maximumAt: number): Condition => ({
  says: `The maximal heart rate lies at least ${LEAST_RESERVE} beats above the resting one.`,
  holds: (...given) => (given[maximumAt] ?? 0) - (given[restAt] ?? 0) >= LEAST_RESERVE,
});
const ofReserve = share('fraction of the reserve', 'f', [0.2, 1]);
const karvonen = { source: KARVONEN_1957, restsOn: [GARBER_2011] } as const;
const rates = { name: 'target heart rate', symbol: 'HR', unit: '1/min' } as const;

const identity = {
  source: SWAIN_LEUTHOLTZ_1997,
  restsOn: [KARVONEN_1957],
  doesNotKnow:
    'Drift over a long bout, heat, caffeine, and the first weeks of flight and of return, when the heart beats faster for the same uptake.',
} as const;

/** Target heart rate at a fraction of its reserve [1/min]. */
export const targetHeartRate = formula(
  {
    id: 'reserve/target-heart-rate',
    revision: 1,
    title: 'Target heart rate at a fraction of its reserve [1/min]',
    equation: 'HR_rest + f · (HR_max − HR_rest)',
    inputs: [ofReserve, restingRate, maximalRate],
    conditions: [reserveIsThere(1, 2)],
    output: rates,
    ...karvonen,
    doesNotKnow: 'That resting and maximal rate move with plasma volume: take those of today.',
  },
  (part: Fraction, rest: HeartRate, maximum: HeartRate): HeartRate => heartRate(rest + part * (maximum - rest)),
);

/** Fraction of the heart-rate reserve of a heart rate. */
export const heartRateReserve = formula(
  {
    id: 'reserve/of-heart-rate',
    revision: 1,
    title: 'Fraction of the heart-rate reserve of a heart rate',
    equation: '(HR − HR_rest) / (HR_max − HR_rest)',
    inputs: [heartRateInput('heart rate', 'HR', [40, 220]), restingRate, maximalRate],
    conditions: [reserveIsThere(1, 2)],
    output: { name: 'fraction of the reserve', symbol: 'f', unit: '1' },
    ...karvonen,
    doesNotKnow: 'Above 1 or below 0 one of the three rates is not right.',
  },
  (rate: HeartRate, rest: HeartRate, maximum: HeartRate): Fraction => fraction((rate - rest) / (maximum - rest)),
);

/** Target uptake at a fraction of its reserve [mL/(kg min)]. */
export const targetUptake = formula(
  {
    id: 'reserve/target-uptake',
    revision: 1,
    title: 'Target uptake at a fraction of its reserve [mL/(kg min)]',
    equation: '3.5 + f · (VO2_max − 3.5)',
    inputs: [ofReserve, maximalUptake()],
    output: { name: 'target oxygen uptake', symbol: 'VO2', unit: 'mL/(kg min)' },
    source: SWAIN_LEUTHOLTZ_1997,
    doesNotKnow: 'The person’s own resting uptake.',
  },
  (part: Fraction, maximum: OxygenUptake): OxygenUptake =>
    oxygenUptake(RESTING_UPTAKE + part * (maximum - RESTING_UPTAKE)),
);

/** Fraction of the uptake reserve of an uptake. */
export const uptakeReserve = formula(
  {
    id: 'reserve/of-uptake',
    revision: 1,
    title: 'Fraction of the uptake reserve of an uptake',
    equation: '(VO2 − 3.5) / (VO2_max − 3.5)',
    inputs: [uptake('oxygen uptake', 'VO2'), maximalUptake()],
    output: { name: 'fraction of the reserve', symbol: 'f', unit: '1' },
    source: SWAIN_LEUTHOLTZ_1997,
    doesNotKnow: 'Above 1 the bout cannot be held in a steady state, or the maximum is out of date.',
  },
  (used: OxygenUptake, maximum: OxygenUptake): Fraction =>
    fraction((used - RESTING_UPTAKE) / (maximum - RESTING_UPTAKE)),
);

/** Fraction of the uptake reserve of a fraction of the maximal uptake. */
export const reserveOfMaximumFraction = formula(
  {
    id: 'reserve/of-maximum-fraction',
    revision: 1,
    title: 'Fraction of the uptake reserve of a fraction of the maximal uptake',
    equation: '(p · VO2_max − 3.5) / (VO2_max − 3.5)',
    inputs: [share('fraction of the maximal uptake', 'p', [0.2, 1]), maximalUptake()],
    output: { name: 'fraction of the reserve', symbol: 'f', unit: '1' },
    source: SWAIN_LEUTHOLTZ_1997,
    doesNotKnow: 'The person’s own resting uptake.',
  },
  (part: Fraction, maximum: OxygenUptake): Fraction => uptakeReserve(oxygenUptake(part * maximum), maximum),
);

/** Heart rate expected at an uptake [1/min]. */
export const expectedHeartRate = formula(
  {
    id: 'reserve/expected-heart-rate',
    revision: 1,
    title: 'Heart rate expected at an uptake [1/min]',
    equation: 'HR_rest + (VO2 − 3.5) / (VO2_max − 3.5) · (HR_max − HR_rest)',
    inputs: [uptake('oxygen uptake', 'VO2'), maximalUptake(), restingRate, maximalRate],
    conditions: [reserveIsThere(2, 3)],
    output: { name: 'expected heart rate', symbol: 'HR', unit: '1/min' },
    ...identity,
  },
  (used: OxygenUptake, most: OxygenUptake, rest: HeartRate, maximum: HeartRate): HeartRate =>
    targetHeartRate(uptakeReserve(used, most), rest, maximum),
);

/** Uptake expected at a heart rate [mL/(kg min)]. */
export const expectedUptake = formula(
  {
    id: 'reserve/expected-uptake',
    revision: 1,
    title: 'Uptake expected at a heart rate [mL/(kg min)]',
    equation: '3.5 + (HR − HR_rest) / (HR_max − HR_rest) · (VO2_max − 3.5)',
    inputs: [heartRateInput('heart rate', 'HR', [40, 220]), maximalUptake(), restingRate, maximalRate],
    conditions: [reserveIsThere(2, 3)],
    output: { name: 'expected oxygen uptake', symbol: 'VO2', unit: 'mL/(kg min)' },
    ...identity,
  },
  (rate: HeartRate, most: OxygenUptake, rest: HeartRate, maximum: HeartRate): OxygenUptake =>
    targetUptake(heartRateReserve(rate, rest, maximum), most),
);
