import { newtons, type Fraction, type Newtons } from '#units/quantity.ts';
import { COMMON_PRACTICE } from '../sources.ts';
import { formula } from '../formula.ts';
import { force, share } from './inputs.ts';

/** Force of a share of a hand's own test [N]. */
export const partOfForce = formula(
  {
    id: 'hand-training/part-of-force',
    revision: 1,
    title: "Force of a share of a hand's own test [N]",
    equation: 'p · F',
    inputs: [
      share('share of the tested force', 'p', [0, 1.5], [0.3, 1.1]),
      force('tested force of this hand', 'F', [0, 2000], [20, 1000]),
    ],
    output: { name: 'force to hold', symbol: 'F_p', unit: 'N' },
    source: COMMON_PRACTICE,
    doesNotKnow:
      'Whether hand, span of the handle and time of day are those of the test; two tests of critical force of one person differ by 21 %.',
  },
  (part: Fraction, tested: Newtons): Newtons => newtons(part * tested),
);
