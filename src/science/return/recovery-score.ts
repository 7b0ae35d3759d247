import { formula } from '../formula.ts';
import { measured } from './inputs.ts';
import { method } from '../method.ts';
import { COMMON_PRACTICE } from '../sources.ts';

/** How far a person is back: each test as percent of the same person's value before flight. */

const score = { name: 'score', symbol: 's', unit: '%' } as const;
const DOES_NOT_KNOW =
  'The error of the test before flight: it stays in every score afterwards. That value should be the mean of two or three.';

/** Recovery score where more is better (%). */
export const higherBetterScore = formula(
  {
    id: 'return/score-higher-better',
    revision: 1,
    title: 'Recovery score where more is better (%)',
    equation: '100 · x / x_0',
    inputs: [measured('value now', 'x', [0, 100_000]), measured('value before flight', 'x_0')],
    output: score,
    source: COMMON_PRACTICE,
    doesNotKnow: DOES_NOT_KNOW,
  },
  (now: number, before: number): number => (100 * now) / before,
);

/** Recovery score where less is better, as with times (%). */
export const lowerBetterScore = formula(
  {
    id: 'return/score-lower-better',
    revision: 1,
    title: 'Recovery score where less is better, as with times (%)',
    equation: '100 · x_0 / x',
    inputs: [measured('value now', 'x'), measured('value before flight', 'x_0', [0, 100_000])],
    output: score,
    source: COMMON_PRACTICE,
    doesNotKnow: DOES_NOT_KNOW,
  },
  (now: number, before: number): number => (100 * before) / now,
);

/** Symmetry of left and right (%). */
export const symmetryScore = formula(
  {
    id: 'return/symmetry',
    revision: 1,
    title: 'Symmetry of left and right (%)',
    equation: '100 · min(L, R) / max(L, R)',
    inputs: [measured('left', 'L'), measured('right', 'R')],
    output: { name: 'symmetry', symbol: 'S', unit: '%' },
    source: COMMON_PRACTICE,
    doesNotKnow:
      'Which side is the weak one, and whether it was so before flight; two weak sides are symmetrical. The smaller side always counts over the larger, so that chance alone pulls it down: at a true 100 % with an error of 5 % on each side it averages about 94.6 %.',
  },
  (left: number, right: number): number => (100 * Math.min(left, right)) / Math.max(left, right),
);

/** A measurement of both sides. */
export interface Sides {
  readonly left: number;
  readonly right: number;
}

export type SidesReading =
  | {
      readonly kind: 'estimate';
      /** Each side against its own value before flight [%]. */
      readonly left: number;
      readonly right: number;
      readonly symmetry: number;
      readonly symmetryBefore: number;
      readonly cautions: readonly string[];
    }
  | { readonly kind: 'refused'; readonly reasons: readonly string[] };

const [LEAST, MOST] = measured('', '').possible;

/** A difference between the sides that was there before flight and is worth a word [%]. */
const UNEQUAL_BEFORE = 90;

const faultsOf = (when: string, { left, right }: Sides): readonly string[] =>
  (
    [
      ['left', left],
      ['right', right],
    ] as const
  ).flatMap(([side, value]) =>
    value >= LEAST && value <= MOST ? [] : [`The ${side} side ${when} must be a number above zero; it is ${value}.`],
  );

/** Each side against itself before flight, and against the other. */
export const sidesAgainstThemselves = method(
  {
    id: 'return/sides-against-themselves',
    revision: 1,
    title: 'Each side against itself before flight, and against the other (%)',
    equations: ['s_L = 100 · L / L_0', 's_R = 100 · R / R_0', 'S = 100 · min(L, R) / max(L, R)'],
    inputs: [measured('each side now', 'L, R'), measured('each side before flight', 'L_0, R_0')],
    outputs: [
      { name: 'score of each side', symbol: 's_L, s_R', unit: '%' },
      { name: 'symmetry', symbol: 'S', unit: '%' },
    ],
    refuses: ['A side that was not measured, now or before flight.'],
    source: COMMON_PRACTICE,
    doesNotKnow:
      'Which matters more. A person who was unequal before flight is not made equal by the return: then each side against itself is the honest one.',
  },
  (now: Sides, before: Sides): SidesReading => {
    const reasons = [...faultsOf('now', now), ...faultsOf('before flight', before)];
    if (reasons.length > 0) return { kind: 'refused', reasons };
    const symmetryBefore = symmetryScore(before.left, before.right);
    return {
      kind: 'estimate',
      left: higherBetterScore(now.left, before.left),
      right: higherBetterScore(now.right, before.right),
      symmetry: symmetryScore(now.left, now.right),
      symmetryBefore,
      cautions:
        symmetryBefore < UNEQUAL_BEFORE
          ? [`The sides differed before flight too: symmetry was ${symmetryBefore.toFixed(1)} %.`]
          : [],
    };
  },
);
