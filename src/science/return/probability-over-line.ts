import { formula } from '../formula.ts';
import { number, percent } from './inputs.ts';
import { method } from '../method.ts';
import { normalCdf } from '../numeric/normal.ts';
import { curveOf, type Curve } from '../plot.ts';
import { OUR_OWN_DESIGN } from '../sources.ts';

/**
 * How sure one may be that a person is over a line, from the last tests together. Nothing is assumed of the person
 * beforehand (a flat prior) and the tests are equally noisy, so that the posterior is normal around their mean.
 */

/** More tests than these reach too far back while a person still recovers. */
export const MOST_TESTS = 3;

/** Probability that the true value is over a line, from the mean of one to three tests. */
export const probabilityOfMean = formula(
  {
    id: 'return/probability-over-line',
    revision: 1,
    title: 'Probability that the true value is over a line, from the mean of one to three tests',
    equation: 'Φ((m − Y) · √(n) / TE)',
    inputs: [
      percent('mean of the tests', 'm'),
      number('number of tests', 'n', [1, MOST_TESTS]),
      percent('typical error of one test', 'TE', [0.1, 50], [1, 20]),
      percent('line', 'Y'),
    ],
    output: { name: 'probability', symbol: 'P', unit: '1' },
    source: OUR_OWN_DESIGN,
    doesNotKnow:
      'What was likely before the tests: the prior is flat. The error of the value before flight, which all tests share. Recovery between the tests, which makes it too low.',
    plot: {
      says: 'Close to the line one test says little; three together say almost twice as much.',
      x: { name: 'mean of the tests above the line', unit: 'typical errors' },
      y: { name: 'probability of being over the line', unit: '1' },
      curves: (): readonly Curve[] =>
        [1, 2, 3].map((tests) =>
          curveOf(`${tests} test${tests > 1 ? 's' : ''}`, probabilityOfMean, [-3, 3], (distance) => [
            90 + 5 * distance,
            tests,
            5,
            90,
          ]),
        ),
    },
  },
  (mean: number, tests: number, typicalError: number, line: number): number =>
    normalCdf(((mean - line) * Math.sqrt(tests)) / typicalError),
);

export type LineReading =
  | {
      readonly kind: 'estimate';
      /** Mean of the tests [%]. */
      readonly value: number;
      readonly sd: number;
      /** That the true value is over the line. */
      readonly probability: number;
      readonly testsUsed: number;
      readonly cautions: readonly string[];
    }
  | { readonly kind: 'none' | 'refused'; readonly reason: string };

const refusalOf = (scores: readonly number[], typicalError: number, line: number): string | null => {
  if (!(typicalError >= 0.1 && typicalError <= 50))
    return `The typical error must lie in 0.1 to 50 %; it is ${typicalError}.`;
  if (!(line >= 0 && line <= 200)) return `The line must lie in 0 to 200 %; it is ${line}.`;
  const wrong = scores.find((score) => !(score >= 0 && score <= 200));
  return wrong === undefined ? null : `A score must lie in 0 to 200 %; one is ${wrong}.`;
};

/** Whether the true value is over a line, from the last tests. */
export const lastTestsOverLine = method(
  {
    id: 'return/last-tests-over-line',
    revision: 1,
    title: 'Whether the true value is over a line, from the last two or three tests together',
    equations: ['m = sum_(k=1)^n x_k / n', 'SD = TE / √(n)', 'P = Φ((m − Y) / SD)'],
    inputs: [
      percent('score of each of the last tests', 'x_k'),
      percent('typical error of one test', 'TE', [0.1, 50], [1, 20]),
      percent('line', 'Y'),
    ],
    outputs: [
      { name: 'mean', symbol: 'm', unit: '%' },
      { name: 'standard deviation', symbol: 'SD', unit: '%' },
      { name: 'probability of being over the line', symbol: 'P', unit: '1' },
    ],
    refuses: ['No test.', 'A score, a typical error or a line that cannot be.'],
    source: OUR_OWN_DESIGN,
    doesNotKnow:
      'What was likely before the tests (the prior is flat, so that the mean weighted by precision and the plain mean are the same), and what happened between the tests: while a person gains, the mean of three runs behind, on the safe side; while a person loses it runs behind on the other, so that a newest test far under the line, or tests too far apart, are not put together.',
  },
  (scores: readonly number[], typicalError: number, line: number): LineReading => {
    const reason = refusalOf(scores, typicalError, line);
    if (reason !== null) return { kind: 'refused', reason };
    const last = scores.slice(-MOST_TESTS);
    if (last.length === 0) return { kind: 'none', reason: 'There is no test.' };
    const value = last.reduce((total, score) => total + score, 0) / last.length;
    return {
      kind: 'estimate',
      value,
      sd: typicalError / Math.sqrt(last.length),
      probability: probabilityOfMean(value, last.length, typicalError, line),
      testsUsed: last.length,
      cautions: last.length === 1 ? ['One test only: another may well fall on the other side.'] : [],
    };
  },
);
