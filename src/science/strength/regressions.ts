import { count, load as loadInput } from '../inputs.ts';
import { formula, type FormulaRecord, type Source } from '../formula.ts';
import { KRAVITZ_2003, REYNOLDS_2006 } from './sources.ts';
import { barLoad, type BarLoad, type Repetitions } from '#units/quantity.ts';

/** Straight lines fitted to one group of people each. No load is made from them; they show how far formulas may go. */

const record = (id: string, title: string, equation: string, source: Source, doesNotKnow: string): FormulaRecord => ({
  id: `one-rep-max/${id}`,
  revision: 1,
  title,
  equation,
  inputs: [],
  output: { name: 'one-repetition maximum', symbol: '1RM', unit: 'kg' },
  source,
  doesNotKnow,
});

const FIVE_RM = [loadInput('five-repetition maximum', 'w', [0, 1000], [10, 400])];
const SET = [loadInput('load', 'w', [0, 1000], [30, 300]), count('repetitions to failure', 'n', [1, 50], [5, 20])];
const MIXED = 'Anybody but the group it was fitted to: 34 men and 36 women of 18 to 69 years.';
const YOUNG = 'Anybody but the group it was fitted to: 18 male power lifters at school.';

/** One-repetition maximum [kg] of the chest press from a five-repetition maximum, Reynolds. */
export const oneRepMaxReynoldsChestPress = formula(
  {
    ...record(
      'reynolds-chest-press',
      'One-repetition maximum [kg] of the chest press from a five-repetition maximum, Reynolds',
      '1.1307 w + 0.6999',
      REYNOLDS_2006,
      `${MIXED} Standard error 2.98 kg.`,
    ),
    inputs: FIVE_RM,
  },
  (fiveRepMax: BarLoad): BarLoad => barLoad(1.1307 * fiveRepMax + 0.6999),
);

/** One-repetition maximum [kg] of the leg press from a five-repetition maximum, Reynolds. */
export const oneRepMaxReynoldsLegPress = formula(
  {
    ...record(
      'reynolds-leg-press',
      'One-repetition maximum [kg] of the leg press from a five-repetition maximum, Reynolds',
      '1.0970 w + 14.2546',
      REYNOLDS_2006,
      `${MIXED} Standard error 16.16 kg.`,
    ),
    inputs: FIVE_RM,
  },
  (fiveRepMax: BarLoad): BarLoad => barLoad(1.097 * fiveRepMax + 14.2546),
);

/** One-repetition maximum [kg] of the squat from a set at about 70 %, Kravitz. */
export const oneRepMaxKravitzSquat = formula(
  {
    ...record(
      'kravitz-squat',
      'One-repetition maximum [kg] of the squat from a set at about 70 %, Kravitz',
      '159.9 + 0.103 n w − 11.552 n',
      KRAVITZ_2003,
      `${YOUNG} Standard error 5.06 kg.`,
    ),
    inputs: SET,
  },
  (load: BarLoad, reps: Repetitions): BarLoad => barLoad(159.9 + 0.103 * reps * load - 11.552 * reps),
);

/** One-repetition maximum [kg] of the bench press from a set at about 70 %, Kravitz. */
export const oneRepMaxKravitzBenchPress = formula(
  {
    ...record(
      'kravitz-bench-press',
      'One-repetition maximum [kg] of the bench press from a set at about 70 %, Kravitz',
      '90.66 + 0.085 n w − 5.306 n',
      KRAVITZ_2003,
      `${YOUNG} Standard error 2.69 kg.`,
    ),
    inputs: SET,
  },
  (load: BarLoad, reps: Repetitions): BarLoad => barLoad(90.66 + 0.085 * reps * load - 5.306 * reps),
);

/** One-repetition maximum [kg] of the deadlift from a set at about 80 %, Kravitz. */
export const oneRepMaxKravitzDeadlift = formula(
  {
    ...record(
      'kravitz-deadlift',
      'One-repetition maximum [kg] of the deadlift from a set at about 80 %, Kravitz',
      '156.08 + 0.098 n w − 12.106 n',
      KRAVITZ_2003,
      `${YOUNG} Standard error 4.97 kg.`,
    ),
    inputs: SET,
  },
  (load: BarLoad, reps: Repetitions): BarLoad => barLoad(156.08 + 0.098 * reps * load - 12.106 * reps),
);
