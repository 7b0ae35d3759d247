import { formula } from '../formula.ts';
import { lean, percent } from './inputs.ts';
import { method } from '../method.ts';
import { BALANCE_TABLE_2022, NASHNER_1993 } from './sources.ts';

/**
 * Standing balance in six conditions: eyes open, eyes closed, moving surround, each on a firm and on a moving floor.
 * Each trial is scored by how far the body swayed; a fall scores nothing.
 */

/** Sway from the furthest lean backward to the furthest forward at which a standing person falls [°]. */
const LIMIT_OF_SWAY = 12.5;

/** Score of one trial of standing balance (%). */
export const equilibriumScore = formula(
  {
    id: 'return/equilibrium-score',
    revision: 1,
    title: 'Score of one trial of standing balance (%)',
    equation: '100 · (12.5 − (θ_max − θ_min)) / 12.5 where θ_max − θ_min < 12.5, else 0',
    inputs: [lean('furthest lean forward', 'θ_max'), lean('furthest lean backward', 'θ_min')],
    output: { name: 'score of the trial', symbol: 's', unit: '%' },
    conditions: [
      {
        says: 'The furthest lean forward lies in front of the furthest lean backward.',
        holds: (forward = 0, backward = 0) => forward >= backward,
      },
    ],
    source: NASHNER_1993,
    doesNotKnow:
      'The limit of sway of this person: 12.5° stands for everybody. Sway to the sides, steps and grabs for the rail are not in it.',
  },
  (forward: number, backward: number): number =>
    Math.max(0, (100 * (LIMIT_OF_SWAY - (forward - backward))) / LIMIT_OF_SWAY),
);

/** One trial: its score, a fall, or nothing recorded. */
export type BalanceTrial = number | 'fall' | null;

/** The trials of conditions 1 to 6, in their order. */
export type BalanceTrials = readonly [
  readonly BalanceTrial[],
  readonly BalanceTrial[],
  readonly BalanceTrial[],
  readonly BalanceTrial[],
  readonly BalanceTrial[],
  readonly BalanceTrial[],
];

export type BalanceReading =
  | {
      readonly kind: 'estimate';
      /** Composite of 14 trials [%]. */
      readonly value: number;
      /** Conditions with a fall, 1 to 6. */
      readonly fallsIn: readonly number[];
      readonly cautions: readonly string[];
    }
  | { readonly kind: 'refused'; readonly reasons: readonly string[] };

const TRIALS_EACH = 3;
/** Conditions 1 and 2 enter by their mean, so that fewer trials of them weigh the same. */
const EASY_CONDITIONS = 2;
/** Two means and twelve trials. */
const TRIALS_COUNTED = 14;

const scoresOf = (trials: readonly BalanceTrial[]): readonly number[] =>
  trials.flatMap((trial) => (trial === null ? [] : trial === 'fall' ? 0 : trial));

const faultsOf = (trials: readonly BalanceTrial[], condition: number): readonly string[] => {
  const scores = scoresOf(trials);
  const fewest = condition <= EASY_CONDITIONS ? 1 : TRIALS_EACH;
  const wrong = scores.filter((score) => !(score >= 0 && score <= 100));
  return [
    ...wrong.map((score) => `Condition ${condition} has a score of ${score}; a score lies in 0 to 100 %.`),
    ...(scores.length > TRIALS_EACH ? [`Condition ${condition} has ${scores.length} trials; three are scored.`] : []),
    ...(scores.length < fewest
      ? [`Condition ${condition} has ${scores.length} of ${TRIALS_EACH} trials; record the others or test again.`]
      : []),
  ];
};

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

/** Composite score of standing balance, six conditions (%). */
export const standingBalance = method(
  {
    id: 'return/standing-balance',
    revision: 1,
    title: 'Standing balance, six conditions: composite of 14 trials (%)',
    equations: [
      'C = (mean_1 + mean_2 + sum_(c=3)^6 (s_(c,1) + s_(c,2) + s_(c,3))) / 14',
      's = 0 for a trial that ended in a fall',
    ],
    inputs: [percent('score of each trial of conditions 1 to 6', 's_(c,k)', [0, 100])],
    outputs: [
      { name: 'composite', symbol: 'C', unit: '%' },
      { name: 'conditions with a fall', symbol: 'c', unit: 'condition n' },
    ],
    refuses: [
      'A condition from 3 to 6 with fewer than three trials, or condition 1 or 2 without any.',
      'A score outside 0 to 100 %, or more than three trials.',
    ],
    source: BALANCE_TABLE_2022,
    restsOn: [NASHNER_1993],
    doesNotKnow:
      'Learning: the second test of a healthy person is better than the first. The hard conditions carry twelve fourteenths of the score, so a loss in condition 5 shows little in it; look at the conditions too.',
  },
  (trials: BalanceTrials): BalanceReading => {
    const reasons = trials.flatMap((each, place) => faultsOf(each, place + 1));
    if (reasons.length > 0) return { kind: 'refused', reasons };
    const scores = trials.map(scoresOf);
    const easy = scores.slice(0, EASY_CONDITIONS);
    const hard = scores.slice(EASY_CONDITIONS).flat();
    return {
      kind: 'estimate',
      value: (sum(easy.map((each) => sum(each) / each.length)) + sum(hard)) / TRIALS_COUNTED,
      fallsIn: trials.flatMap((each, place) => (each.includes('fall') ? [place + 1] : [])),
      cautions: easy.flatMap((each, place) =>
        each.length < TRIALS_EACH ? [`Condition ${place + 1} has ${each.length} of ${TRIALS_EACH} trials.`] : [],
      ),
    };
  },
);
