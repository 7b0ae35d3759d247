import { count } from '../inputs.ts';
import { formula, type FormulaRecord, type Source } from '../formula.ts';
import { MAYHEW_2008 } from '../sources.ts';
import {
  BRZYCKI_1993,
  EPLEY_1985,
  HUTCHINS_GEARHART_2010,
  LANDER_1985,
  LESUER_1997,
  LOMBARDI_1989,
  MAYHEW_1992,
  OCONNER_1989,
  WATHAN_1994,
  WHISENANT_2003,
} from './sources.ts';
import { fraction, type Fraction, type Repetitions } from '#units/quantity.ts';

/**
 * How many times the load of a set taken to failure the one-repetition maximum is, as eight authors printed it. At one
 * repetition most of them do not give 1: the rule that puts this right stands in one-rep-max.ts.
 */

type Range = readonly [number, number];

const ANY: Range = [1, 50];
/** Both lines run to infinity at 37 to 38 repetitions; halves are the finest step of a rating of effort. */
const BEFORE_DIVERGING: Range = [1, 29.5];

interface Printed {
  readonly author: string;
  readonly name: string;
  readonly equation: string;
  readonly source: Source;
  readonly possible?: Range;
  readonly valid?: Range;
  readonly doesNotKnow: string;
}

const record = ({
  author,
  name,
  equation,
  source,
  possible = ANY,
  valid = [1, 12],
  doesNotKnow,
}: Printed): FormulaRecord => ({
  id: `repetition-multiplier/${author}`,
  revision: 1,
  title: `One-repetition maximum as a multiple of the load of a set to failure, ${name}`,
  equation,
  inputs: [count('repetitions to failure', 'n', possible, valid)],
  output: { name: 'multiple of the load', symbol: 'f', unit: '1' },
  source,
  restsOn: [LESUER_1997, HUTCHINS_GEARHART_2010, WHISENANT_2003, MAYHEW_2008],
  doesNotKnow,
});

const BETWEEN_PERSONS =
  'How many repetitions this person reaches at a given fraction: people differ more than the formulas do, and all of them fall short for the deadlift.';

/** One-repetition maximum as a multiple of the load of a set to failure, Epley. */
export const multiplierEpley = formula(
  record({
    author: 'epley',
    name: 'Epley',
    equation: '1 + n / 30',
    source: EPLEY_1985,
    doesNotKnow: `${BETWEEN_PERSONS} At one repetition it gives 3.3 % too much.`,
  }),
  (reps: Repetitions): Fraction => fraction(1 + reps / 30),
);

/** One-repetition maximum as a multiple of the load of a set to failure, Brzycki. */
export const multiplierBrzycki = formula(
  record({
    author: 'brzycki',
    name: 'Brzycki',
    equation: '36 / (37 − n)',
    source: BRZYCKI_1993,
    possible: BEFORE_DIVERGING,
    valid: [1, 10],
    doesNotKnow: `${BETWEEN_PERSONS} It runs to infinity at 37 repetitions.`,
  }),
  (reps: Repetitions): Fraction => fraction(36 / (37 - reps)),
);

/** One-repetition maximum as a multiple of the load of a set to failure, Brzycki with rounded constants. */
export const multiplierBrzyckiRounded = formula(
  record({
    author: 'brzycki-rounded',
    name: 'Brzycki with rounded constants',
    equation: '1 / (1.0278 − 0.0278 n)',
    source: BRZYCKI_1993,
    possible: BEFORE_DIVERGING,
    valid: [1, 10],
    doesNotKnow: `${BETWEEN_PERSONS} These are the rounded constants as first printed; 36 / (37 − n) is the same line.`,
  }),
  (reps: Repetitions): Fraction => fraction(1 / (1.0278 - 0.0278 * reps)),
);

/** One-repetition maximum as a multiple of the load of a set to failure, Lombardi. */
export const multiplierLombardi = formula(
  record({
    author: 'lombardi',
    name: 'Lombardi',
    equation: 'n^0.10',
    source: LOMBARDI_1989,
    valid: [1, 10],
    doesNotKnow: `${BETWEEN_PERSONS} Above ten repetitions it saturates.`,
  }),
  (reps: Repetitions): Fraction => fraction(reps ** 0.1),
);

/** One-repetition maximum as a multiple of the load of a set to failure, Mayhew. */
export const multiplierMayhew = formula(
  record({
    author: 'mayhew',
    name: 'Mayhew',
    equation: '100 / (52.2 + 41.9 e^(−0.055 n))',
    source: MAYHEW_1992,
    valid: [5, 15],
    doesNotKnow: `${BETWEEN_PERSONS} It was fitted to long sets of bench press: at one repetition it gives 8.9 % too much.`,
  }),
  (reps: Repetitions): Fraction => fraction(100 / (52.2 + 41.9 * Math.exp(-0.055 * reps))),
);

/** One-repetition maximum as a multiple of the load of a set to failure, O'Conner. */
export const multiplierOConner = formula(
  record({
    author: 'oconner',
    name: "O'Conner",
    equation: '1 + 0.025 n',
    source: OCONNER_1989,
    valid: [1, 10],
    doesNotKnow: `${BETWEEN_PERSONS} Above ten repetitions it is too flat.`,
  }),
  (reps: Repetitions): Fraction => fraction(1 + 0.025 * reps),
);

/** One-repetition maximum as a multiple of the load of a set to failure, Wathan. */
export const multiplierWathan = formula(
  record({
    author: 'wathan',
    name: 'Wathan',
    equation: '100 / (48.8 + 53.8 e^(−0.075 n))',
    source: WATHAN_1994,
    doesNotKnow: `${BETWEEN_PERSONS} At one repetition it gives 1.3 % too much.`,
  }),
  (reps: Repetitions): Fraction => fraction(100 / (48.8 + 53.8 * Math.exp(-0.075 * reps))),
);

/** One-repetition maximum as a multiple of the load of a set to failure, Lander. */
export const multiplierLander = formula(
  record({
    author: 'lander',
    name: 'Lander',
    equation: '100 / (101.3 − 2.67123 n)',
    source: LANDER_1985,
    possible: BEFORE_DIVERGING,
    valid: [1, 10],
    doesNotKnow: `${BETWEEN_PERSONS} It runs to infinity at 37.9 repetitions.`,
  }),
  (reps: Repetitions): Fraction => fraction(100 / (101.3 - 2.67123 * reps)),
);
