import { impossibilities } from '../evaluate.ts';
import { percent } from './inputs.ts';
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

const latestInput = percent('latest score', 'x_n');
const previousInput = percent('previous score', 'x_(n−1)');
const errorInput = percent('typical error', 'TE', [0.1, 50]);
const lineInput = percent('line', 'Y');

/** The rule that the probability replaced; it is kept so that one can see why. */
export const latestTestRule = method(
  {
    id: 'return/latest-test-rule',
    revision: 1,
    title: 'Latest test over the line, and twice where it is near (no longer used)',
    equations: ['passes where x_n ≥ Y and (x_n − Y ≥ TE or x_(n−1) ≥ Y)'],
    inputs: [latestInput, previousInput, errorInput, lineInput],
    outputs: [{ name: 'passes', symbol: '', unit: 'yes or no' }],
    refuses: ['A score, a line or a typical error that cannot be.'],
    source: OUR_OWN_DESIGN,
    doesNotKnow:
      'Chance. Ten items that must all pass let a fully recovered person through in about one round of twenty-five, which is why it is no longer used.',
  },
  ({ latest, previous, typicalError, line }: LatestTests): LatestReading => {
    const reasons = impossibilities({ inputs: [latestInput, previousInput, errorInput, lineInput] }, [
      latest,
      previous,
      typicalError,
      line,
    ]);
    if (reasons.length > 0) return { kind: 'refused', reason: reasons.join(' ') };
    return latest >= line && (latest - line >= typicalError || previous >= line)
      ? { kind: 'passes' }
      : { kind: 'fails' };
  },
);
