import type { FormulaInput, FormulaOutput } from '../formula.ts';
import type { MethodRecord } from '../method.ts';
import type { Curve } from '../plot.ts';
import { OUR_OWN_DESIGN } from '../sources.ts';
import { GRGIC_2020, MITTER_2022 } from '../strength/sources.ts';
import { EXAMPLE_OBSERVATIONS } from './example-series.ts';
import { DURBIN_KOOPMAN_2012, KALMAN_1960, RAUCH_TUNG_STRIEBEL_1965 } from './sources.ts';

/** What the filters say of themselves. */

const daysBetween: FormulaInput = {
  name: 'days since the reading before',
  symbol: 'Δ',
  unit: 'd',
  possible: [0, 10_000],
  valid: [0, 60],
};
const reading: FormulaInput = {
  name: 'logarithm of the maximum read',
  symbol: 'y',
  unit: 'ln kg',
  possible: [-10, 10],
  valid: [1.6, 6.2],
};
const itsVariance: FormulaInput = {
  name: 'variance of the reading',
  symbol: 'R_y',
  unit: 'ln²',
  possible: [1e-12, 100],
  valid: [0.0009, 0.05],
};
const widening: FormulaInput = {
  name: 'variance added at launch, landing or a known gap',
  symbol: 'w',
  unit: 'ln²',
  possible: [0, 10],
  valid: [0, 0.02],
};
const drift: FormulaInput = {
  name: 'variance of the drift of a day',
  symbol: 'q',
  unit: 'ln²/d',
  possible: [0, 1],
  valid: [0, 0.001],
};
const trendDrift: FormulaInput = {
  name: 'variance of the drift of the trend',
  symbol: 'z',
  unit: 'ln²/d³',
  possible: [0, 1],
  valid: [0, 1e-6],
};

const level: FormulaOutput = { name: 'level', symbol: 'm', unit: 'ln kg' };
const variance: FormulaOutput = { name: 'variance of the level', symbol: 'P', unit: 'ln²' };
const trend: FormulaOutput = { name: 'trend', symbol: 'β', unit: 'ln/d' };

const DOUBTED = 'R = 9 R_y where |y − m_pred| > 3 √(P_pred + R_y), else R_y';
const BOUND = 'K = 0 where y is a lower bound and v ≤ 0';
const LIKELIHOOD = 'ln L = −(1 / 2) sum_(i=1)^n (ln(2 π) + ln S_i + v_i² / S_i)';
/** Of the smoothers. */
const SUBSCRIPTS = 'pred: as the filter predicted the reading after this one; next: smoothed at that reading';
const ORDER = [
  'An observation before the prior, or before the one ahead of it: an error of the program.',
  'A reading without a finite value, or with a variance that is not above zero: an error of the program.',
];

/** What was read, as it is drawn beside what is made of it: kilograms, with one standard deviation each way. */
export const readingsDrawn = (): Curve => ({
  label: 'readings, ± standard deviation',
  scattered: true,
  points: EXAMPLE_OBSERVATIONS.map(({ day, y }) => [day, Math.exp(y)]),
  band: EXAMPLE_OBSERVATIONS.map(({ y, variance: of }) => [Math.exp(y - Math.sqrt(of)), Math.exp(y + Math.sqrt(of))]),
});

/** A log level with its interval of 95 %, in kilograms. */
export const levelDrawn = (
  label: string,
  levels: readonly { readonly day: number; readonly level: number; readonly variance: number }[],
): Curve => ({
  label,
  points: levels.map(({ day, level: at }) => [day, Math.exp(at)]),
  band: levels.map(({ level: at, variance: of }) => {
    const half = 1.96 * Math.sqrt(of);
    return [Math.exp(at - half), Math.exp(at + half)];
  }),
});

const AXES = { x: { name: 'day', unit: 'd' }, y: { name: 'maximum', unit: 'kg' } } as const;

export const LEVEL_FILTER: MethodRecord = {
  id: 'level/filter',
  revision: 1,
  title: 'Level of a maximum, known on the day',
  equations: [
    'm = y, P = R_y at the first reading, where no prior is given',
    'm_pred = m',
    'P_pred = P + q Δ + w',
    DOUBTED,
    'v = y − m_pred',
    'S = P_pred + R',
    'K = P_pred / S',
    BOUND,
    'm = m_pred + K v',
    'P = (1 − K)² P_pred + K² R',
    LIKELIHOOD,
  ],
  inputs: [daysBetween, reading, itsVariance, widening, drift],
  outputs: [level, variance],
  refuses: ORDER,
  source: DURBIN_KOOPMAN_2012,
  equationFromMemory: true,
  restsOn: [KALMAN_1960, GRGIC_2020, MITTER_2022, OUR_OWN_DESIGN],
  doesNotKnow:
    'Why strength changed. Ahead of the last reading it holds the level and only grows unsure. The drift (q = 1.6e-5, about 1 % a week), the gate of three standard deviations and its factor of nine are our own and editable.',
};

export const LEVEL_FILTER_AXES = {
  says: 'Each reading moves the level by as much as it is sure; between readings the level is held and the interval widens.',
  ...AXES,
} as const;

export const LEVEL_SMOOTHER: MethodRecord = {
  id: 'level/smoother',
  revision: 1,
  title: 'Level of a maximum, seen from the last reading',
  equations: [
    'G = P / P_pred',
    'm_smooth = m + G (m_next − m_pred)',
    'P_smooth = P + G² (P_next − P_pred)',
    SUBSCRIPTS,
  ],
  inputs: [
    { ...reading, name: 'level of the filter', symbol: 'm' },
    { ...itsVariance, name: 'variance of the filter', symbol: 'P' },
  ],
  outputs: [
    { ...level, symbol: 'm_smooth' },
    { ...variance, symbol: 'P_smooth' },
  ],
  refuses: ['Nothing that the filter let through.'],
  source: RAUCH_TUNG_STRIEBEL_1965,
  equationFromMemory: true,
  restsOn: [DURBIN_KOOPMAN_2012],
  doesNotKnow: 'What a specialist could know on the day: it looks back from the end, and no load is made from it.',
};

export const LEVEL_SMOOTHER_AXES = {
  says: 'Seen from the end the level is calmer and surer than it was on the day; at the last reading both are the same.',
  ...AXES,
} as const;

const PREDICTED = [
  'F = [[1, Δ], [0, 1]]',
  'Q = [[q Δ + z Δ³ / 3, z Δ² / 2], [z Δ² / 2, z Δ]]',
  'x_pred = F x',
  'P_pred = F P F^T + Q',
];

export const TREND_FILTER: MethodRecord = {
  id: 'level/trend-filter',
  revision: 1,
  title: 'Level and trend of a maximum, known on the day',
  equations: [
    'x = (m, β)',
    ...PREDICTED,
    'at launch, landing or a known gap: β = 0 with its variance of the start, and w added to the variance of m',
    DOUBTED,
    'v = y − m_pred',
    'S = p_11 + R, where p_11 and p_21 are the first column of P_pred',
    'K = (p_11, p_21) / S',
    BOUND,
    'x = x_pred + K v',
    'P = (I − K H) P_pred (I − K H)^T + K R K^T',
    LIKELIHOOD,
  ],
  inputs: [daysBetween, reading, itsVariance, widening, drift, trendDrift],
  outputs: [level, variance, trend],
  refuses: ORDER,
  source: DURBIN_KOOPMAN_2012,
  equationFromMemory: true,
  restsOn: [KALMAN_1960, OUR_OWN_DESIGN],
  doesNotKnow:
    'Whether a trend goes on. It draws the history; no load is made from it and nothing is foretold. Its two drifts and the start of the trend (0.001 a day) are our own and editable.',
};

export const TREND_SMOOTHER: MethodRecord = {
  id: 'level/trend-smoother',
  revision: 1,
  title: 'Level and trend of a maximum, seen from the last reading',
  equations: [
    'G = P F^T P_pred^(−1)',
    'x_smooth = x + G (x_next − x_pred)',
    'P_smooth = P + G (P_next − P_pred) G^T',
    SUBSCRIPTS,
  ],
  inputs: [
    { ...reading, name: 'level of the filter', symbol: 'm' },
    { name: 'trend of the filter', symbol: 'β', unit: 'ln/d', possible: [-1, 1], valid: [-0.01, 0.01] },
    { ...itsVariance, name: 'variance of the filter', symbol: 'P' },
  ],
  outputs: [level, variance, trend],
  refuses: ['A covariance without an inverse: an error of the program.'],
  source: RAUCH_TUNG_STRIEBEL_1965,
  equationFromMemory: true,
  restsOn: [DURBIN_KOOPMAN_2012],
  doesNotKnow: 'What a specialist could know on the day. It draws the history; no load is made from it.',
};

export const TREND_SMOOTHER_AXES = {
  says: 'With a trend the history bends less: it is drawn through all readings, each as far as it is sure.',
  ...AXES,
} as const;
