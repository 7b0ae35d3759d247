import { count, load as loadInput, ratio } from '../inputs.ts';
import { formula } from '../formula.ts';
import { LESUER_1997, WATHAN_1994 } from './sources.ts';
import { multiplierWathan } from './repetition-multiplier.ts';
import { barLoad, fraction, type BarLoad, type Fraction, type Repetitions } from '#units/quantity.ts';

/** Between maxima of different numbers of repetitions: Wathan's line, with 1 where no more than one was possible. */

/** Multiple of the load that is the one-repetition maximum, 1 for a single. */
export const maximumMultiplier = formula(
  {
    id: 'repetition-maximum/multiplier',
    revision: 1,
    title: 'Multiple of the load that is the one-repetition maximum, 1 for a single',
    equation: '1 where n_eff ≤ 1, else 100 / (48.8 + 53.8 e^(−0.075 n_eff))',
    inputs: [count('effective repetitions', 'n_eff', [0, 50], [1, 12])],
    output: { name: 'multiple of the load', symbol: 'f', unit: '1' },
    source: WATHAN_1994,
    restsOn: [LESUER_1997],
    doesNotKnow: 'It steps from 1 to 1.013 just above one repetition.',
  },
  (effective: Repetitions): Fraction => (effective <= 1 ? fraction(1) : multiplierWathan(effective)),
);

/** Highest fraction of the one-repetition maximum that allows n repetitions, 1 for a single. */
export const fractionAllowing = formula(
  {
    id: 'repetition-maximum/fraction-allowing',
    revision: 1,
    title: 'Highest fraction of the one-repetition maximum that allows n repetitions, 1 for a single',
    equation: '1 where n ≤ 1, else (48.8 + 53.8 e^(−0.075 n)) / 100',
    inputs: [count('repetitions', 'n', [0, 50], [1, 12])],
    output: { name: 'fraction of the maximum', symbol: 'p', unit: '1' },
    source: WATHAN_1994,
    doesNotKnow: 'How many repetitions this person reaches at this fraction.',
  },
  (reps: Repetitions): Fraction => fraction(1 / maximumMultiplier(reps)),
);

/** Maximum for n repetitions [kg] from a set. */
export const repetitionMaximum = formula(
  {
    id: 'repetition-maximum/of-set',
    revision: 1,
    title: 'Maximum for n repetitions [kg] from a set',
    equation: 'w · f(n_eff) / f(n)',
    inputs: [
      loadInput('load', 'w'),
      count('effective repetitions', 'n_eff', [0, 50], [1, 15]),
      count('repetitions of the maximum', 'n', [1, 50], [1, 15]),
    ],
    output: { name: 'n-repetition maximum', symbol: 'nRM', unit: 'kg' },
    source: WATHAN_1994,
    doesNotKnow:
      'The line is used between the two numbers of repetitions only; the closer they are, the less it matters.',
  },
  (load: BarLoad, effective: Repetitions, of: Repetitions): BarLoad =>
    barLoad((load * maximumMultiplier(effective)) / maximumMultiplier(of)),
);

/** Maximum [kg] as a ratio of another lift's. */
export const ratioToTestedLift = formula(
  {
    id: 'repetition-maximum/ratio',
    revision: 1,
    title: "Maximum [kg] as a ratio of another lift's",
    equation: 'ratio · R',
    inputs: [ratio('ratio of the two lifts', 'k', [0, 3]), loadInput('maximum of the tested lift', 'R')],
    output: { name: 'maximum', symbol: 'R', unit: 'kg' },
    source: { text: 'Common practice, no source.', status: 'common practice' },
    doesNotKnow: 'The ratio of this person; its log standard deviation is taken as 0.15.',
  },
  (of: Fraction, maximum: BarLoad): BarLoad => barLoad(of * maximum),
);
