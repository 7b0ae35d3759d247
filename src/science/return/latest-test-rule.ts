import { number, percent } from './inputs.ts';
import { method } from '../method.ts';
import { OUR_OWN_DESIGN } from '../sources.ts';

/** One item of the older rule. */
export interface LatestTests {
  readonly latest: number;
  readonly previous: number;
  readonly typicalError: number;
  readonly line: number;
}

export type LatestReading =
  { readonly kind: 'passes' | 'fails' } | { readonly kind: 'refused'; readonly reason: string };

/** The rule that the probability replaced; it is kept so that one can see why. */
export const latestTestRule = method(
  {
    id: 'return/latest-test-rule',
    revision: 1,
    title: 'Latest test over the line, and twice where it is near (no longer used)',
    equations: ['passes where x_n ≥ Y and (x_n − Y ≥ TE or x_(n−1) ≥ Y)'],
    inputs: [
      percent('latest and previous score', 'x_n, x_(n−1)'),
      percent('line', 'Y'),
      number('typical error', 'TE', [0.1, 50]),
    ],
    outputs: [{ name: 'passes', symbol: '', unit: 'yes or no' }],
    refuses: ['A score, a line or a typical error that is no number.'],
    source: OUR_OWN_DESIGN,
    doesNotKnow:
      'Chance. Ten items that must all pass let a fully recovered person through in about one round of twenty-five, which is why it is no longer used.',
  },
  ({ latest, previous, typicalError, line }: LatestTests): LatestReading => {
    const given = [latest, previous, typicalError, line];
    if (!given.every(Number.isFinite))
      return { kind: 'refused', reason: 'Two scores, a line and an error are needed.' };
    return latest >= line && (latest - line >= typicalError || previous >= line)
      ? { kind: 'passes' }
      : { kind: 'fails' };
  },
);
