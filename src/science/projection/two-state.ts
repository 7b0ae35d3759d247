import { method } from '../method.ts';
import { add, multiply, transpose, type Matrix2 } from '../numeric/two-by-two.ts';
import { logDensity } from '../estimation/observation.ts';
import { KALMAN_1960 } from '../estimation/sources.ts';
import { OUR_OWN_DESIGN } from '../sources.ts';
import type { Amplitude } from './amplitude.ts';
import type { Refused } from './adherence.ts';

/** A person’s own value before flight and the amplitude of their own loss, both unknown, seen through tests. */
export interface TwoState {
  /** Natural logarithm of the true value before flight. */
  readonly level: number;
  /** Of the loss, as a natural logarithm. */
  readonly amplitude: number;
  /** Variance of the level, covariance, covariance, variance of the amplitude. */
  readonly covariance: Matrix2;
}

export interface Test {
  /** Days after launch. */
  readonly day: number;
  readonly value: number;
  /** Spread of such a test around the truth, as a natural logarithm: 0.03 is about 3 %. */
  readonly sd: number;
}

export interface TwoStateGiven {
  readonly pre: { readonly value: number; readonly sd: number };
  readonly amplitude: Amplitude;
  readonly course: (day: number) => number;
  readonly driftPerDay: number;
  readonly tests: readonly Test[];
}

export interface TwoStateStep {
  readonly day: number;
  readonly innovation: number;
  readonly innovationVariance: number;
  readonly gain: readonly [level: number, amplitude: number];
  readonly state: TwoState;
}

export type TwoStateResult =
  | {
      readonly kind: 'state';
      readonly state: TwoState;
      readonly steps: readonly TwoStateStep[];
      readonly logLikelihood: number;
    }
  | Refused;

const MOST_FLIGHT_DAYS = 3650;
const refused = (reason: string): Refused => ({ kind: 'refused', reason });
const isPositive = (value: number): boolean => value > 0 && Number.isFinite(value);

const faultOfTest = ({ day, value, sd }: Test, place: number): readonly string[] => [
  ...(day >= 0 && day <= MOST_FLIGHT_DAYS
    ? []
    : [`Test ${place + 1} must lie 0 to ${MOST_FLIGHT_DAYS} days after launch; it is ${day}.`]),
  ...(isPositive(value) ? [] : [`Test ${place + 1} must have a value above zero; it is ${value}.`]),
  ...(isPositive(sd) ? [] : [`Test ${place + 1} must have a spread above zero; it is ${sd}.`]),
];

const faultsOf = ({ pre, amplitude, driftPerDay, tests }: TwoStateGiven): readonly string[] => [
  ...(isPositive(pre.value) ? [] : [`The value before flight must be above zero; it is ${pre.value}.`]),
  ...(isPositive(pre.sd) ? [] : [`The spread of the value before flight must be above zero; it is ${pre.sd}.`]),
  ...(Number.isFinite(amplitude.mean) && isPositive(amplitude.sd)
    ? []
    : ['The amplitude needs a finite mean and a spread above zero.']),
  ...(driftPerDay >= 0 && Number.isFinite(driftPerDay)
    ? []
    : [`The drift must be zero or more; it is ${driftPerDay}.`]),
  ...tests.flatMap(faultOfTest),
];

/** What one test does to what is known. Joseph’s form: no variance can fall below zero. */
const update = (state: TwoState, { day, value, sd }: Test, course: number, driftPerDay: number): TwoStateStep => {
  const [levelVariance, covariance, , amplitudeVariance] = state.covariance;
  const noise = sd * sd + driftPerDay * day;
  const towardsLevel = levelVariance - course * covariance;
  const towardsAmplitude = covariance - course * amplitudeVariance;
  const innovationVariance = towardsLevel - course * towardsAmplitude + noise;
  const innovation = Math.log(value) - (state.level - course * state.amplitude);
  const [k1, k2] = [towardsLevel / innovationVariance, towardsAmplitude / innovationVariance];
  const kept: Matrix2 = [1 - k1, k1 * course, -k2, 1 + k2 * course];
  const added: Matrix2 = [k1 * k1 * noise, k1 * k2 * noise, k1 * k2 * noise, k2 * k2 * noise];
  const [a, b, c, d] = add(multiply(multiply(kept, state.covariance), transpose(kept)), added);
  return {
    day,
    innovation,
    innovationVariance,
    gain: [k1, k2],
    state: {
      level: state.level + k1 * innovation,
      amplitude: state.amplitude + k2 * innovation,
      covariance: [a, (b + c) / 2, (b + c) / 2, d],
    },
  };
};

/** Own value before flight and own amplitude, after each test. */
export const twoStateFilter = method(
  {
    id: 'projection/two-state-filter',
    revision: 1,
    title: 'Own value before flight and own amplitude of the loss, through tests',
    equations: [
      'ln Q(t) = L_0 − A · g(t) − drift, with drift ~ N(0, q · t)',
      'L_0 ~ N(ln Q_pre, SD_pre^2), A ~ N(A_prior, SD_prior^2)',
      'S = P_11 − 2 · g · P_12 + g^2 · P_22 + SD_test^2 + q · t',
      'K = (P_11 − g · P_12, P_12 − g · P_22) / S',
      '(L_0, A) becomes (L_0, A) + K · (ln Q_test − L_0 + g · A)',
      'P becomes (1 − K · H) · P · (1 − K · H)^T + K · (SD_test^2 + q · t) · K^T with H = (1, −g)',
    ],
    inputs: [
      { name: 'value before flight', symbol: 'Q_pre', unit: 'as measured', possible: [1e-9, 1e6], valid: [1e-3, 1e5] },
      { name: 'its spread', symbol: 'SD_pre', unit: 'ln', possible: [1e-9, 2], valid: [0.005, 0.15] },
      { name: 'amplitude before any test', symbol: 'A_prior', unit: 'ln', possible: [-1, 2], valid: [0, 0.5] },
      { name: 'its spread', symbol: 'SD_prior', unit: 'ln', possible: [1e-9, 2], valid: [0.01, 0.5] },
      { name: 'course on the day of a test', symbol: 'g', unit: '1', possible: [0, 120], valid: [0, 1] },
      { name: 'value of a test', symbol: 'Q_test', unit: 'as measured', possible: [1e-9, 1e6], valid: [1e-3, 1e5] },
      { name: 'spread of a test', symbol: 'SD_test', unit: 'ln', possible: [1e-9, 2], valid: [0.01, 0.15] },
      { name: 'drift, variance per day', symbol: 'q', unit: 'ln²/d', possible: [0, 0.01], valid: [0, 1e-4] },
      { name: 'day of a test', symbol: 't', unit: 'd', possible: [0, MOST_FLIGHT_DAYS], valid: [0, 365] },
    ],
    outputs: [
      { name: 'own value before flight, logarithm', symbol: 'L_0', unit: 'ln' },
      { name: 'own amplitude', symbol: 'A', unit: 'ln' },
      { name: 'their covariance', symbol: 'P', unit: 'ln²' },
    ],
    refuses: [
      'The value before flight, each test and each spread must be above zero.',
      'A test must lie on a day after launch.',
    ],
    source: KALMAN_1960,
    equationFromMemory: true,
    restsOn: [OUR_OWN_DESIGN],
    doesNotKnow:
      'Drift counts as new at each test, though it is one walk: with the two tests of the worked example this widens the band by a tenth and moves its middle by 0.3 %. A course that is wrong for this person shows only as a surprise.',
  },
  (given: TwoStateGiven): TwoStateResult => {
    const [fault] = faultsOf(given);
    if (fault) return refused(fault);
    const { pre, amplitude, course, driftPerDay, tests } = given;
    let state: TwoState = {
      level: Math.log(pre.value),
      amplitude: amplitude.mean,
      covariance: [pre.sd ** 2, 0, 0, amplitude.sd ** 2],
    };
    const steps: TwoStateStep[] = [];
    let logLikelihood = 0;
    for (const test of tests) {
      const step = update(state, test, course(test.day), driftPerDay);
      logLikelihood += logDensity(step.innovation, step.innovationVariance);
      steps.push(step);
      state = step.state;
    }
    return { kind: 'state', state, steps, logLikelihood };
  },
);
