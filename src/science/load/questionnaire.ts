import type { FormulaInput } from '../formula.ts';
import { formula } from '../formula.ts';
import { mean, sampleSd } from './daily-loads.ts';
import { method } from '../method.ts';
import { BARGER_2014, HOOPER_1995, SAW_2016 } from './sources.ts';

/** Four questions a day, added up. Here to be read about: the product asks no such form and acts on none. */

const item = (name: string, symbol: string): FormulaInput => ({
  name: `${name}, 1 good to 7 bad`,
  symbol,
  unit: '1',
  possible: [1, 7],
  valid: [1, 7],
});

const NOT_USED =
  'Why a number is what it is. Asked daily in an isolated group it is soon answered by habit. Measured sleep on long flights averages about six hours, so that a rule on sleep would change every second day: no such rule is in the product, and none on this sum.';

/** Sum of four daily questions. */
export const questionnaireSum = formula(
  {
    id: 'load/questionnaire-sum',
    revision: 1,
    title: 'Sum of four daily questions',
    equation: 'q_sleep + q_fatigue + q_stress + q_soreness',
    inputs: [
      item('sleep', 'q_sleep'),
      item('fatigue', 'q_fatigue'),
      item('stress', 'q_stress'),
      item('soreness of muscles', 'q_soreness'),
    ],
    output: { name: 'sum', symbol: 'H', unit: '1' },
    source: HOOPER_1995,
    restsOn: [SAW_2016, BARGER_2014],
    doesNotKnow: NOT_USED,
  },
  (sleep: number, fatigue: number, stress: number, soreness: number): number => sleep + fatigue + stress + soreness,
);

export type QuestionnaireDeviation =
  | {
      readonly kind: 'estimate';
      /** Standard deviations above this person’s own days. */
      readonly value: number;
      readonly mean: number;
      readonly sd: number;
      readonly cautions: readonly string[];
    }
  | { readonly kind: 'none'; readonly reason: string }
  | { readonly kind: 'refused'; readonly reasons: readonly string[] };

const FEWEST = 10;
const DAYS_BACK = 28;
/** A person who always answers alike would otherwise stand out by one point. */
const LEAST_SD = 1;
const [LEAST, MOST] = [4, 28];

const sumInput: FormulaInput = {
  name: 'sum of a day',
  symbol: 'H',
  unit: '1',
  possible: [LEAST, MOST],
  valid: [LEAST, MOST],
};

/** Today’s sum against this person’s own last four weeks. */
export const questionnaireDeviation = method(
  {
    id: 'load/questionnaire-deviation',
    revision: 1,
    title: 'Today’s sum against this person’s own last four weeks',
    equations: ['z = (H − mean(H_k)) / max(SD(H_k), 1), SD of the sample, today left out'],
    inputs: [sumInput, { ...sumInput, name: 'sum of each of the 28 days before', symbol: 'H_k' }],
    outputs: [{ name: 'deviation', symbol: 'z', unit: 'SD' }],
    refuses: ['Fewer than ten answered days in the last 28.', 'A sum outside 4 to 28.'],
    source: HOOPER_1995,
    restsOn: [SAW_2016, BARGER_2014],
    doesNotKnow: NOT_USED,
  },
  (today: number, before: readonly (number | null)[]): QuestionnaireDeviation => {
    const recent = before.slice(-DAYS_BACK);
    const known = recent.flatMap((sum) => sum ?? []);
    const wrong = [today, ...known].filter((sum) => !(sum >= LEAST && sum <= MOST));
    if (wrong.length > 0)
      return { kind: 'refused', reasons: wrong.map((sum) => `A sum lies in ${LEAST} to ${MOST}; one is ${sum}.`) };
    if (known.length < FEWEST) return { kind: 'none', reason: `${known.length} answered days; ${FEWEST} are needed.` };
    const [middle, sd] = [mean(known), sampleSd(known)];
    return {
      kind: 'estimate',
      value: (today - middle) / Math.max(sd, LEAST_SD),
      mean: middle,
      sd,
      cautions: known.length < recent.length ? [`${known.length} of ${recent.length} days were answered.`] : [],
    };
  },
);
