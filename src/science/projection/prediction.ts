import { formula, type FormulaInput } from '../formula.ts';
import { method } from '../method.ts';
import { spaced, type Curve } from '../plot.ts';
import { KALMAN_1960 } from '../estimation/sources.ts';
import { OUR_OWN_DESIGN } from '../sources.ts';
import type { Refused } from './adherence.ts';
import { oxygenUptakeCourse } from './course.ts';
import { twoStateFilter, type Test, type TwoState } from './two-state.ts';

/** What two states say of a day ahead: normal on the logarithmic scale. */

const variance = (name: string, symbol: string, low = 0): FormulaInput => ({
  name,
  symbol,
  unit: 'ln²',
  possible: [low, 4],
  valid: [Math.max(low, -0.25), 0.25],
});
const course: FormulaInput = { name: 'course', symbol: 'g', unit: '1', possible: [0, 120], valid: [0, 1] };
const drift: FormulaInput = {
  name: 'drift, variance per day',
  symbol: 'q',
  unit: 'ln²/d',
  possible: [0, 0.01],
  valid: [0, 1e-4],
};
const day: FormulaInput = { name: 'days after launch', symbol: 't', unit: 'd', possible: [0, 3650], valid: [0, 365] };
const AHEAD = 'Anything that the course does not hold: an illness, a machine that fails, a new drug.';

/** Expected logarithm of the value on a flight day [ln]. */
export const expectedLogValue = formula(
  {
    id: 'projection/expected-log-value',
    revision: 1,
    title: 'Expected logarithm of the value on a flight day [ln]',
    equation: 'μ = L_0 − g · A',
    inputs: [
      { name: 'own value before flight, logarithm', symbol: 'L_0', unit: 'ln', possible: [-21, 14], valid: [-7, 12] },
      { name: 'own amplitude', symbol: 'A', unit: 'ln', possible: [-2, 3], valid: [-0.2, 0.5] },
      course,
    ],
    output: { name: 'logarithm of the value', symbol: 'μ', unit: 'ln' },
    source: OUR_OWN_DESIGN,
    doesNotKnow: AHEAD,
  },
  (level: number, amplitude: number, of: number): number => level - of * amplitude,
);

/** Variance of the logarithm of the value on a flight day [ln²]. */
export const logValueVariance = formula(
  {
    id: 'projection/log-value-variance',
    revision: 1,
    title: 'Variance of the logarithm of the value on a flight day [ln²]',
    equation: 'v = P_11 − 2 · g · P_12 + g^2 · P_22 + q · t',
    inputs: [
      variance('variance of the own value before flight', 'P_11'),
      variance('covariance', 'P_12', -4),
      variance('variance of the own amplitude', 'P_22'),
      course,
      drift,
      day,
    ],
    conditions: [
      {
        says: 'A covariance is no larger than the two standard deviations multiplied.',
        holds: (level = 0, covariance = 0, amplitude = 0) => covariance * covariance <= level * amplitude,
      },
    ],
    output: { name: 'variance', symbol: 'v', unit: 'ln²' },
    source: KALMAN_1960,
    equationFromMemory: true,
    doesNotKnow: AHEAD,
  },
  (level: number, covariance: number, amplitude: number, of: number, perDay: number, on: number): number =>
    // Twice the same root may round below zero where both are one.
    Math.max(0, level - 2 * of * covariance + of * of * amplitude) + perDay * on,
);

/** Variance of the logarithm of the ratio to the own value before flight [ln²]. */
export const logRatioVariance = formula(
  {
    id: 'projection/log-ratio-variance',
    revision: 1,
    title: 'Variance of the logarithm of the ratio to the own value before flight [ln²]',
    equation: 'v = g^2 · P_22 + q · t',
    inputs: [variance('variance of the own amplitude', 'P_22'), course, drift, day],
    output: { name: 'variance', symbol: 'v', unit: 'ln²' },
    source: OUR_OWN_DESIGN,
    doesNotKnow: AHEAD,
  },
  (amplitude: number, of: number, perDay: number, on: number): number => of * of * amplitude + perDay * on,
);

/** Value at a quantile of a logarithm. */
export const valueAtQuantile = formula(
  {
    id: 'projection/value-at-quantile',
    revision: 1,
    title: 'Value at a quantile of a logarithm',
    equation: 'Q = exp(μ + z · SD)',
    inputs: [
      { name: 'expected logarithm', symbol: 'μ', unit: 'ln', possible: [-300, 300], valid: [-7, 12] },
      { name: 'its standard deviation', symbol: 'SD', unit: 'ln', possible: [0, 20], valid: [0, 0.5] },
      { name: 'standard normal value', symbol: 'z', unit: '1', possible: [-10, 10], valid: [-3, 3] },
    ],
    output: { name: 'value', symbol: 'Q', unit: 'as measured' },
    source: OUR_OWN_DESIGN,
    doesNotKnow: 'In the tails the logarithm need not be normal.',
  },
  (mean: number, sd: number, z: number): number => Math.exp(mean + z * sd),
);

/** What is asked for: the true value, what a test would show of it, or its ratio to the own true value before flight. */
export type Asked = 'value' | 'test' | 'ratio to own pre';

export interface Ahead {
  readonly day: number;
  readonly course: (day: number) => number;
  readonly driftPerDay: number;
  /** The longest mission of the source data [d]. */
  readonly longestFlight: number;
}

export interface Prediction {
  readonly kind: 'estimate';
  readonly of: Asked;
  readonly median: number;
  /** Nine tenths lie between these. */
  readonly low: number;
  readonly high: number;
  /** On the logarithmic scale. */
  readonly mean: number;
  readonly sd: number;
  readonly cautions: readonly string[];
}

/** Standard deviations on either side that hold nine tenths. */
const NINE_TENTHS = 1.6448536269514722;
/** Beyond this many times the longest mission in the data a band is drawn as a warning. */
const WARNING_AFTER = 1.5;

/** The flight day from which a band is a warning: half as long again as the longest mission of the source data. */
export const warningDay = (longestFlight: number): number => WARNING_AFTER * longestFlight;

/** How far a day lies beyond what was ever measured, or nothing. */
export const beyondTheData = (on: number, longestFlight: number): readonly string[] => {
  if (on <= longestFlight) return [];
  const longest = `the longest mission in the source data, ${longestFlight} days`;
  return on <= warningDay(longestFlight)
    ? [`Day ${on} lies beyond ${longest}.`]
    : [`Day ${on} lies more than half as far again beyond ${longest}: nobody knows.`];
};

/** Mean and variance on the logarithmic scale, for a day that was looked at before. */
export const momentsAhead = (
  { level, amplitude, covariance: [p11, p12, , p22] }: TwoState,
  { day: on, course: courseOn, driftPerDay }: Omit<Ahead, 'longestFlight'>,
  of: Asked,
): { readonly mean: number; readonly variance: number } => {
  const g = courseOn(on);
  return of === 'ratio to own pre'
    ? { mean: -g * amplitude, variance: logRatioVariance(p22, g, driftPerDay, on) }
    : {
        mean: expectedLogValue(level, amplitude, g),
        variance: logValueVariance(p11, p12, p22, g, driftPerDay, on),
      };
};

const plotGiven = (tests: readonly Test[]) => ({
  pre: { value: 42, sd: 0.03 },
  amplitude: { mean: 0.17784, sd: 0.1454822718581202 },
  course: oxygenUptakeCourse,
  driftPerDay: 2e-5,
  tests,
});
const PLOT_TESTS: readonly Test[] = [
  { day: 15, value: 36.5, sd: 0.06 },
  { day: 45, value: 37.5, sd: 0.06 },
];

const bandAhead = (label: string, tests: readonly Test[]): readonly Curve[] => {
  const filtered = twoStateFilter(plotGiven(tests));
  if (filtered.kind === 'refused') return [];
  const rows = spaced(0, 180, 61).flatMap((on) => {
    const ahead = { day: on, course: oxygenUptakeCourse, driftPerDay: 2e-5, longestFlight: 219 };
    const each = projectedValue(filtered.state, ahead, 'value');
    return each.kind === 'estimate' ? [{ on, ...each }] : [];
  });
  return [
    {
      label,
      points: rows.map(({ on, median }) => [on, median] as const),
      band: rows.map(({ low, high }) => [low, high] as const),
    },
  ];
};

/** Median, band of nine tenths and ratio on a day ahead. */
export const projectedValue = method(
  {
    id: 'projection/projected-value',
    revision: 1,
    title: 'Value on a day ahead, with its band',
    equations: [
      'μ = L_0 − g · A, v = P_11 − 2 · g · P_12 + g^2 · P_22 + q · t',
      'ratio to own pre: μ = −g · A, v = g^2 · P_22 + q · t',
      'what a test would show: v + SD_test^2',
      'median = exp(μ), band = exp(μ ± 1.644854 · √(v))',
    ],
    inputs: [
      { name: 'own value before flight, logarithm', symbol: 'L_0', unit: 'ln', possible: [-21, 14], valid: [-7, 12] },
      { name: 'own amplitude', symbol: 'A', unit: 'ln', possible: [-2, 3], valid: [-0.2, 0.5] },
      day,
      drift,
      { name: 'spread of a test', symbol: 'SD_test', unit: 'ln', possible: [0, 2], valid: [0, 0.15] },
    ],
    outputs: [
      { name: 'median', symbol: 'Q', unit: 'as measured' },
      { name: 'lower and upper end of nine tenths', symbol: 'band', unit: 'as measured' },
    ],
    refuses: ['A day must lie 0 to 3650 days after launch.'],
    source: OUR_OWN_DESIGN,
    restsOn: [KALMAN_1960],
    doesNotKnow: AHEAD,
    plot: {
      says: 'Two tests of 36.5 and 37.5 on flight days 15 and 45 narrow a band that before them rested on other people alone. Nine tenths lie in it.',
      x: { name: 'days after launch', unit: 'd' },
      y: { name: 'maximal oxygen uptake', unit: 'mL/(kg min)' },
      curves: (): readonly Curve[] => [
        ...bandAhead('before any test in flight', []),
        ...bandAhead('after two tests', PLOT_TESTS),
        {
          label: 'tests',
          scattered: true,
          points: [[0, 42], ...PLOT_TESTS.map(({ day: on, value }) => [on, value] as const)],
        },
      ],
    },
  },
  (state: TwoState, ahead: Ahead, of: Asked, testSd: number = 0): Prediction | Refused => {
    if (!(ahead.day >= 0 && ahead.day <= 3650))
      return { kind: 'refused', reason: `A day must lie 0 to 3650 days after launch; it is ${ahead.day}.` };
    const { mean, variance: v } = momentsAhead(state, ahead, of);
    const sd = of === 'test' ? Math.hypot(Math.sqrt(v), testSd) : Math.sqrt(v);
    return {
      kind: 'estimate',
      of,
      median: Math.exp(mean),
      low: valueAtQuantile(mean, sd, -NINE_TENTHS),
      high: valueAtQuantile(mean, sd, NINE_TENTHS),
      mean,
      sd,
      cautions: beyondTheData(ahead.day, ahead.longestFlight),
    };
  },
);
