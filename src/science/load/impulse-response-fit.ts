import type { DailyLoads } from './daily-loads.ts';
import { regionCurves } from './fit-example.ts';
import { arbitrary, factor, performance } from './inputs.ts';
import { everyDay, fadingSums, IDENTIFIABILITY, type ImpulseResponse } from './impulse-response.ts';
import { fitThree } from './least-squares-three.ts';
import { fitFaults, type PerformanceTest } from './performance-tests.ts';
import { method } from '../method.ts';
import { CLARKE_SKIBA_2013, HELLARD_2006, MARCHAL_2025 } from './sources.ts';

/**
 * Gain and fatigue fitted to tests: by least squares at every pair of time constants of a grid. What is shown is never
 * one pair but the whole region of pairs that fit as well.
 */

/** A pair of time constants with the least squares at it. */
export interface FittedModel extends ImpulseResponse {
  /** Sum of the squared residuals. */
  readonly residual: number;
}

export interface FitRequest {
  readonly loads: DailyLoads;
  readonly tests: readonly PerformanceTest[];
  /** Quantile 0.95 of F with 5 and n − 5 degrees of freedom, n the number of tests; from a library. */
  readonly fQuantile: number;
}

export type ImpulseResponseFit =
  | {
      readonly kind: 'estimate';
      /** At the usual time constants, 42 and 7 days. */
      readonly usual: FittedModel;
      readonly best: FittedModel;
      /** Every pair that fits about as well as the best: what can be said is what they share. */
      readonly region: readonly FittedModel[];
      readonly pairs: number;
      /** Sum of squares up to which a pair belongs to the region. */
      readonly bound: number;
      /** Share of the variation that the best pair explains. */
      readonly explained: number;
      readonly cautions: readonly string[];
    }
  | { readonly kind: 'none'; readonly reason: string }
  | { readonly kind: 'refused'; readonly reasons: readonly string[] };

/** Time constants of the grid, in whole days. */
export const GAIN_FADES: readonly number[] = Array.from({ length: 51 }, (_, place) => 20 + place);
export const FATIGUE_FADES: readonly number[] = Array.from({ length: 17 }, (_, place) => 2 + place);
export const USUAL_FADES = { gainFades: 42, fatigueFades: 7 } as const;
/** Numbers that are fitted: base, gain, fatigue and two time constants. */
const FITTED = 5;

const onDays = (sums: Float64Array, tests: readonly PerformanceTest[]): Float64Array =>
  Float64Array.from(tests, ({ day }) => sums[day] ?? 0);

const modelAt = (
  levels: Float64Array,
  gains: Float64Array,
  fatigues: Float64Array,
  fades: Pick<ImpulseResponse, 'gainFades' | 'fatigueFades'>,
): FittedModel | null => {
  const fitted = fitThree(
    levels,
    gains,
    fatigues.map((value) => -value),
  );
  return (
    fitted && {
      base: fitted.constant,
      gain: fitted.first,
      fatigue: fitted.second,
      residual: fitted.residual,
      ...fades,
    }
  );
};

/** The least squares at one pair of time constants. */
export const fitAt = (
  loads: readonly number[],
  tests: readonly PerformanceTest[],
  fades: Pick<ImpulseResponse, 'gainFades' | 'fatigueFades'>,
): FittedModel | null =>
  modelAt(
    Float64Array.from(tests, ({ level }) => level),
    onDays(fadingSums(loads, fades.gainFades), tests),
    onDays(fadingSums(loads, fades.fatigueFades), tests),
    fades,
  );

const everyPair = (loads: readonly number[], tests: readonly PerformanceTest[]): readonly FittedModel[] => {
  const levels = Float64Array.from(tests, ({ level }) => level);
  const fatigues = FATIGUE_FADES.map((fades) => ({ fades, sums: onDays(fadingSums(loads, fades), tests) }));
  return GAIN_FADES.flatMap((gainFades) => {
    const gains = onDays(fadingSums(loads, gainFades), tests);
    return fatigues.flatMap(
      ({ fades, sums }) => modelAt(levels, gains, sums, { gainFades, fatigueFades: fades }) ?? [],
    );
  });
};

const variation = (tests: readonly PerformanceTest[]): number => {
  const middle = tests.reduce((sum, { level }) => sum + level, 0) / tests.length;
  return tests.reduce((sum, { level }) => sum + (level - middle) ** 2, 0);
};

/** Gain and fatigue fitted to tests, with the region of what fits as well. */
export const impulseResponseFit = method(
  {
    id: 'load/impulse-response-fit',
    revision: 1,
    title: 'Gain and fatigue fitted to tests, with the region of what fits as well',
    equations: [
      'τ_1 = 20, 21, … 70 d; τ_2 = 2, 3, … 18 d',
      'at each pair: p_0, k_1, k_2 by least squares of y on 1, g, −h',
      'region: SSE ≤ SSE_min · (1 + 5 / (n − 5) · F(0.95; 5, n − 5))',
      'R² = 1 − SSE_min / sum_i (y_i − mean(y))²',
    ],
    inputs: [
      arbitrary('load of each day', 'w(t)'),
      performance('performance tested', 'y_i'),
      factor('F quantile, from a library', 'F', [1, 1000]),
    ],
    outputs: [
      { name: 'usual, best and all pairs of the region', symbol: 'p_0, k_1, k_2, τ_1, τ_2', unit: 'as in the model' },
    ],
    refuses: [
      'Fewer than 15 tests, or tests over less than 8 weeks.',
      'A day that was not reported. A test outside the days of the loads.',
      'Loads that never change: gain and fatigue cannot then be told apart.',
    ],
    source: CLARKE_SKIBA_2013,
    restsOn: [HELLARD_2006, MARCHAL_2025],
    plot: {
      says: 'Pairs of time constants that fit 29 invented tests about as well as the best pair, which is not the true one.',
      x: { name: 'time constant of the gain', unit: 'd' },
      y: { name: 'time constant of the fatigue', unit: 'd' },
      curves: () => regionCurves(),
    },
    doesNotKnow: `${IDENTIFIABILITY} The region is the usual one of least squares, on a grid with ends: where it touches them it would go further. That 15 tests over 8 weeks are the least is our own.`,
  },
  ({ loads, tests, fQuantile }: FitRequest): ImpulseResponseFit => {
    const reasons = fitFaults(loads, tests, fQuantile);
    if (reasons.length > 0) return { kind: 'refused', reasons };
    const known = everyDay(loads);
    if (typeof known === 'string') return { kind: 'none', reason: known };
    const pairs = everyPair(known, tests);
    const usual = fitAt(known, tests, USUAL_FADES);
    const best = pairs.toSorted((a, b) => a.residual - b.residual)[0];
    const all = variation(tests);
    if (!usual || !best || !(all > 0))
      return { kind: 'none', reason: 'Loads or tests never change: gain and fatigue cannot be told apart.' };
    const bound = best.residual * (1 + (FITTED / (tests.length - FITTED)) * fQuantile);
    const region = pairs.filter(({ residual }) => residual <= bound);
    const explained = 1 - best.residual / all;
    return {
      kind: 'estimate',
      usual,
      best,
      region,
      pairs: pairs.length,
      bound,
      explained,
      cautions: cautionsOf(region),
    };
  },
);

const cautionsOf = (region: readonly FittedModel[]): readonly string[] => {
  const gains = region.map(({ gainFades }) => gainFades);
  const fatigues = region.map(({ fatigueFades }) => fatigueFades);
  const [low, high] = [Math.min(...gains), Math.max(...gains)];
  const [least, most] = [Math.min(...fatigues), Math.max(...fatigues)];
  return [
    `${region.length} pairs of time constants fit as well: gain ${low} to ${high} days, fatigue ${least} to ${most} days.`,
    ...(low === GAIN_FADES[0] ||
    high === GAIN_FADES.at(-1) ||
    least === FATIGUE_FADES[0] ||
    most === FATIGUE_FADES.at(-1)
      ? ['The region touches the end of the grid: it goes further.']
      : []),
  ];
};
