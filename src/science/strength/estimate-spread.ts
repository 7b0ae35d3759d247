import { count } from '../inputs.ts';
import { formula, type FormulaInput } from '../formula.ts';
import { curveOf, type Curve } from '../plot.ts';
import { COMMON_PRACTICE, OUR_OWN_DESIGN, ZOURDOS_2016 } from '../sources.ts';
import { GRGIC_2020, HALPERIN_2022, HUTCHINS_GEARHART_2010, MITTER_2022 } from './sources.ts';
import { multiplierWathan } from './repetition-multiplier.ts';
import { logRatio, repetitions, type LogRatio, type Repetitions } from '#units/quantity.ts';

/** Standard deviation of one estimate of a maximum, on the log scale: 0.06 is about 6 %. */

/** Day to day and in the test itself; tested maxima have a median coefficient of variation of 4.2 %, true change included. */
const OF_THE_TEST = 0.03;
/** Of the formula, for each repetition between the set and the maximum read from it; meets the printed 5.7 to 7.1 % at six repetitions. */
const PER_REPETITION = 0.01;

const SINGLE = repetitions(1);

/** Standard deviation of the reserve where it was not recorded and the set had a target of reserve. */
export const UNKNOWN_RESERVE_SD: Repetitions = repetitions(2);

const effective: FormulaInput = count('effective repetitions', 'n_eff', [1, 50], [1, 15]);
const output = { name: 'log standard deviation', symbol: 'σ', unit: 'ln' } as const;

/** Standard deviation of a reported reserve. */
export const reserveSd = formula(
  {
    id: 'estimate/reserve-sd',
    revision: 1,
    title: 'Standard deviation of a reported reserve',
    equation: '0 where r = 0, else 0.5 + 0.5 r',
    inputs: [count('repetitions in reserve', 'r', [0, 20], [0, 5])],
    output: { name: 'standard deviation of the reserve', symbol: 'σ_r', unit: 'repetitions' },
    source: OUR_OWN_DESIGN,
    restsOn: [HALPERIN_2022, ZOURDOS_2016],
    doesNotKnow: 'How well this person judges; the error is taken to be without direction.',
  },
  (reserve: Repetitions): Repetitions => repetitions(reserve <= 0 ? 0 : 0.5 + 0.5 * reserve),
);

/** Standard deviation of the reserve of somebody who has trained for less than six months. */
export const noviceReserveSd = formula(
  {
    id: 'estimate/novice-reserve-sd',
    revision: 1,
    title: 'Standard deviation of the reserve of somebody who has trained for less than six months',
    equation: '1.5 σ_r',
    inputs: [count('standard deviation of the reserve', 'σ_r', [0, 20], [0, 3])],
    output: { name: 'standard deviation of the reserve', symbol: 'σ_r', unit: 'repetitions' },
    source: COMMON_PRACTICE,
    restsOn: [ZOURDOS_2016],
    doesNotKnow: 'That novices rate a true maximum lower than others do was measured; the factor was not.',
  },
  (sd: Repetitions): Repetitions => repetitions(1.5 * sd),
);

/** Change of the log maximum for one repetition more. */
export const logSlope = formula(
  {
    id: 'estimate/log-slope',
    revision: 1,
    title: 'Change of the log maximum for one repetition more',
    equation: 'ln f_W(n_eff + 0.5) − ln f_W(n_eff − 0.5)',
    inputs: [effective],
    output: { name: 'slope', symbol: "f'", unit: 'ln' },
    source: OUR_OWN_DESIGN,
    doesNotKnow: 'The slope of this person; it is that of Wathan’s line.',
  },
  (reps: Repetitions): LogRatio =>
    logRatio(Math.log(multiplierWathan(repetitions(reps + 0.5)) / multiplierWathan(repetitions(reps - 0.5)))),
);

/** Log standard deviation of one estimate of a maximum for m repetitions, from the standard deviation of its reserve. */
export const logSdOfMaximum = formula(
  {
    id: 'estimate/log-sd',
    revision: 1,
    title:
      'Log standard deviation of one estimate of a maximum for m repetitions, from the standard deviation of its reserve',
    equation: "√(0.03² + (0.01 (n_eff − m))² + (f'(n_eff) σ_r)²)",
    inputs: [
      effective,
      count('repetitions of the maximum', 'm', [1, 50], [1, 15]),
      count('standard deviation of the reserve', 'σ_r', [0, 20], [0, 3]),
    ],
    output,
    source: OUR_OWN_DESIGN,
    restsOn: [GRGIC_2020, HUTCHINS_GEARHART_2010, MITTER_2022],
    doesNotKnow:
      'The error that stays the same from day to day for one person: a curve fitted to the person would be better.',
  },
  (reps: Repetitions, of: Repetitions, sd: Repetitions): LogRatio =>
    logRatio(Math.hypot(OF_THE_TEST, PER_REPETITION * (reps - of), logSlope(reps) * sd)),
);

/** Log standard deviation of one estimate with a reported reserve. */
export const estimateLogSd = formula(
  {
    id: 'estimate/log-sd-reported',
    revision: 1,
    title: 'Log standard deviation of one estimate with a reported reserve',
    equation: "√(0.03² + (0.01 (n_eff − 1))² + (f'(n_eff) σ_r(r))²)",
    inputs: [effective, count('repetitions in reserve', 'r', [0, 20], [0, 5])],
    output,
    source: OUR_OWN_DESIGN,
    restsOn: [GRGIC_2020, HUTCHINS_GEARHART_2010, MITTER_2022],
    doesNotKnow: 'Whether the person judges the reserve well.',
    plot: {
      says: 'A heavy single is known to 3 %. Every repetition further away, and every one left in reserve, makes the reading less sure.',
      x: { name: 'effective repetitions', unit: 'repetitions' },
      y: { name: 'log standard deviation', unit: 'ln' },
      curves: (): readonly Curve[] =>
        [0, 1, 2, 4].map((reserve) =>
          curveOf(reserve === 0 ? 'to failure' : `${reserve} in reserve`, estimateLogSd, [1 + reserve, 15], (reps) => [
            reps,
            reserve,
          ]),
        ),
    },
  },
  (reps: Repetitions, reserve: Repetitions): LogRatio => logSdOfMaximum(reps, SINGLE, reserveSd(reserve)),
);
