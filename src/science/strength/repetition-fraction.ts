import { count } from '../inputs.ts';
import { formula, type FormulaRecord } from '../formula.ts';
import { curveOf, type Curve, type Plot } from '../plot.ts';
import {
  multiplierBrzycki,
  multiplierBrzyckiRounded,
  multiplierEpley,
  multiplierLander,
  multiplierLombardi,
  multiplierMayhew,
  multiplierOConner,
  multiplierWathan,
} from './repetition-multiplier.ts';
import { HAFF_TRIPLETT_2016, NUZZO_2024 } from './sources.ts';
import { fraction, type Fraction, type Repetitions } from '#units/quantity.ts';

/** The multipliers read backwards: the fraction of the one-repetition maximum that just allows n repetitions. */

const backwards = (of: { readonly record: FormulaRecord }, equation: string): FormulaRecord => {
  const [author, name] = [of.record.id.split('/')[1] as string, of.record.title.split(', ')[1] as string];
  return {
    ...of.record,
    id: `repetition-fraction/${author}`,
    title: `Fraction of the one-repetition maximum that allows n repetitions, ${name}`,
    equation,
    inputs: of.record.inputs.map((input) => count('repetitions', 'n', input.possible, input.valid)),
    output: { name: 'fraction of the maximum', symbol: 'p', unit: '1' },
    restsOn: [HAFF_TRIPLETT_2016, NUZZO_2024],
  };
};

/** Percent of the maximum against repetitions 1 to 12 and 15, as the handbook prints it; secondary copies differ at 11 and 12. */
const HANDBOOK = [
  [1, 100],
  [2, 95],
  [3, 93],
  [4, 90],
  [5, 87],
  [6, 85],
  [7, 83],
  [8, 80],
  [9, 77],
  [10, 75],
  [11, 70],
  [12, 67],
  [15, 65],
] as const;

const eightAuthors: Plot = {
  says: 'At five and six repetitions the authors agree within 6 %; from ten on they part. Two of them run flat, two fall ever faster.',
  x: { name: 'repetitions', unit: 'repetitions' },
  y: { name: 'fraction of the maximum', unit: '1' },
  curves: (): readonly Curve[] => [
    ...(
      [
        ['Wathan', fractionWathan],
        ['Epley', fractionEpley],
        ['Brzycki', fractionBrzycki],
        ['Brzycki, rounded', fractionBrzyckiRounded],
        ['Lombardi', fractionLombardi],
        ['Mayhew', fractionMayhew],
        ["O'Conner", fractionOConner],
        ['Lander', fractionLander],
      ] as const
    ).map(([label, of]) => curveOf(label, of, [1, 15], (reps) => [reps])),
    {
      label: 'handbook table',
      scattered: true,
      points: HANDBOOK.map(([reps, percent]) => [reps, percent / 100]),
    },
  ],
};

/** Fraction of the one-repetition maximum that allows n repetitions, Epley. */
export const fractionEpley = formula(backwards(multiplierEpley, '1 / (1 + n / 30)'), (reps: Repetitions): Fraction =>
  fraction(1 / (1 + reps / 30)),
);

/** Fraction of the one-repetition maximum that allows n repetitions, Brzycki. */
export const fractionBrzycki = formula(backwards(multiplierBrzycki, '(37 − n) / 36'), (reps: Repetitions): Fraction =>
  fraction((37 - reps) / 36),
);

/** Fraction of the one-repetition maximum that allows n repetitions, Brzycki with rounded constants. */
export const fractionBrzyckiRounded = formula(
  backwards(multiplierBrzyckiRounded, '1.0278 − 0.0278 n'),
  (reps: Repetitions): Fraction => fraction(1.0278 - 0.0278 * reps),
);

/** Fraction of the one-repetition maximum that allows n repetitions, Lombardi. */
export const fractionLombardi = formula(backwards(multiplierLombardi, 'n^−0.10'), (reps: Repetitions): Fraction =>
  fraction(reps ** -0.1),
);

/** Fraction of the one-repetition maximum that allows n repetitions, Mayhew. */
export const fractionMayhew = formula(
  backwards(multiplierMayhew, '(52.2 + 41.9 e^(−0.055 n)) / 100'),
  (reps: Repetitions): Fraction => fraction((52.2 + 41.9 * Math.exp(-0.055 * reps)) / 100),
);

/** Fraction of the one-repetition maximum that allows n repetitions, O'Conner. */
export const fractionOConner = formula(
  backwards(multiplierOConner, '1 / (1 + 0.025 n)'),
  (reps: Repetitions): Fraction => fraction(1 / (1 + 0.025 * reps)),
);

/** Fraction of the one-repetition maximum that allows n repetitions, Wathan. */
export const fractionWathan = formula(
  { ...backwards(multiplierWathan, '(48.8 + 53.8 e^(−0.075 n)) / 100'), plot: eightAuthors },
  (reps: Repetitions): Fraction => fraction((48.8 + 53.8 * Math.exp(-0.075 * reps)) / 100),
);

/** Fraction of the one-repetition maximum that allows n repetitions, Lander. */
export const fractionLander = formula(
  backwards(multiplierLander, '(101.3 − 2.67123 n) / 100'),
  (reps: Repetitions): Fraction => fraction((101.3 - 2.67123 * reps) / 100),
);
