import { formula } from '../formula.ts';
import { completeWindow, loadFaults, mean, type DailyLoads } from './daily-loads.ts';
import { arbitrary, factor } from './inputs.ts';
import { method } from '../method.ts';
import { curveOf, type Curve } from '../plot.ts';
import {
  IMPELLIZZERI_2020,
  IMPELLIZZERI_2021,
  LOLLI_2019_COUPLING,
  LOLLI_2019_SCALING,
  WILLIAMS_2017,
} from './sources.ts';
import type { Found } from './weekly-load.ts';

/** The last week against the last four. Shown here with what is known against it; nothing in the product is led by it. */

const ACUTE = 7;
const CHRONIC = 28;

const CRITIQUE =
  'Injury. It does not predict it: replaced by a constant or by random numbers, the chronic load gave much the same odds. The week stands in its own divisor; dividing does not take the chronic load out; no trial steered it and hurt fewer people. Across a launch or a landing it compares two machines and two weights.';

/** Last week over the long run. */
export const loadRatio = formula(
  {
    id: 'load/ratio',
    revision: 1,
    title: 'Last week over the long run',
    equation: 'A / C',
    inputs: [arbitrary('acute load, a day', 'A'), arbitrary('chronic load, a day', 'C', [0.01, 100_000])],
    output: { name: 'ratio', symbol: 'R', unit: '1' },
    source: WILLIAMS_2017,
    restsOn: [LOLLI_2019_SCALING, IMPELLIZZERI_2021, IMPELLIZZERI_2020],
    doesNotKnow: CRITIQUE,
  },
  (acute: number, chronic: number): number => acute / chronic,
);

/** Weight of the newest day in an exponential average. */
export const averageWeight = formula(
  {
    id: 'load/average-weight',
    revision: 1,
    title: 'Weight of the newest day in an exponential average',
    equation: '2 / (N + 1)',
    inputs: [factor('days of the average', 'N', [1, 365])],
    output: { name: 'weight', symbol: 'λ', unit: '1' },
    source: WILLIAMS_2017,
    doesNotKnow: 'How long a load really lingers: 7 and 28 days are the calendar’s, not the body’s.',
  },
  (span: number): number => 2 / (span + 1),
);

/** Correlation of a week with the mean of n unrelated weeks that holds it. */
export const couplingCorrelation = formula(
  {
    id: 'load/coupling-correlation',
    revision: 1,
    title: 'Correlation of a week with the mean of n unrelated weeks that holds it',
    equation: '1 / √(n)',
    inputs: [factor('weeks in the mean, the last with them', 'n', [1, 52])],
    output: { name: 'correlation', symbol: 'r', unit: '1' },
    source: LOLLI_2019_COUPLING,
    doesNotKnow:
      'Any physiology: the weeks are independent and equally variable, and the correlation is there all the same.',
    plot: {
      says: 'Unrelated weeks correlate by one half with the mean of four that holds them: arithmetic, not training.',
      x: { name: 'weeks in the mean', unit: '1' },
      y: { name: 'correlation', unit: '1' },
      curves: (): readonly Curve[] => [
        curveOf('no relation but the arithmetic', couplingCorrelation, [1, 12], (weeks) => [weeks]),
      ],
    },
  },
  (weeks: number): number => 1 / Math.sqrt(weeks),
);

/** The exponential average on each day; a day that was not reported ends it, and the next one starts anew. */
export const exponentialAverages = (loads: DailyLoads, span: number): readonly (number | null)[] => {
  const weight = averageWeight(span);
  const averages: (number | null)[] = [];
  for (const load of loads) {
    const before = averages.at(-1) ?? null;
    averages.push(load === null || before === null ? load : weight * load + (1 - weight) * before);
  }
  return averages;
};

/** Days reported in a row up to the last. */
const unbroken = (loads: DailyLoads): number => loads.length - 1 - loads.lastIndexOf(null);

export type AcuteChronic =
  | {
      readonly kind: 'estimate';
      /** Mean of 7 days over the mean of 28 that holds them. */
      readonly coupled: Found;
      /** Mean of 7 days over the mean of the 21 before. */
      readonly uncoupled: Found;
      /** Exponential averages of 7 and 28 days; hidden for the first 28 days in a row. */
      readonly exponential: Found;
    }
  | { readonly kind: 'refused'; readonly reasons: readonly string[] };

const NO_LOAD: Found = { kind: 'none', reason: 'No load in the long run.' };

const ratioOf = (acute: number, chronic: number): Found =>
  chronic > 0 ? { kind: 'estimate', value: loadRatio(acute, chronic) } : NO_LOAD;

const exponentialRatio = (loads: DailyLoads): Found => {
  const row = unbroken(loads);
  if (row <= CHRONIC)
    return { kind: 'none', reason: `Hidden for the first ${CHRONIC} days in a row; this is day ${row}.` };
  const [acute, chronic] = [ACUTE, CHRONIC].map((span) => exponentialAverages(loads, span).at(-1) ?? 0);
  return ratioOf(acute ?? 0, chronic ?? 0);
};

/** Ratios of acute to chronic load, three ways. */
export const acuteChronic = method(
  {
    id: 'load/acute-chronic',
    revision: 1,
    title: 'Ratios of acute to chronic load, three ways',
    equations: [
      'coupled: mean(L_(t−6) … L_t) / mean(L_(t−27) … L_t)',
      'uncoupled: mean(L_(t−6) … L_t) / mean(L_(t−27) … L_(t−7))',
      'exponential: E_7 / E_28, E_t = λ · L_t + (1 − λ) · E_(t−1), E_1 = L_1, λ = 2 / (N + 1)',
    ],
    inputs: [arbitrary('load of each day, the newest last', 'L_t')],
    outputs: [{ name: 'ratio, three ways', symbol: 'R', unit: '1' }],
    refuses: [
      'A window with a day that was not reported: then it says how many of 28 were.',
      'The exponential ratio for the first 28 days in a row, which its first day rules.',
      'A ratio to no load at all.',
    ],
    source: WILLIAMS_2017,
    restsOn: [LOLLI_2019_COUPLING, LOLLI_2019_SCALING, IMPELLIZZERI_2021, IMPELLIZZERI_2020],
    doesNotKnow: CRITIQUE,
  },
  (loads: DailyLoads): AcuteChronic => {
    const reasons = loadFaults(loads);
    if (reasons.length > 0) return { kind: 'refused', reasons };
    const window = completeWindow(loads, CHRONIC);
    const acute = window.kind === 'none' ? Number.NaN : mean(window.loads.slice(-ACUTE));
    return {
      kind: 'estimate',
      coupled: window.kind === 'none' ? window : ratioOf(acute, mean(window.loads)),
      uncoupled: window.kind === 'none' ? window : ratioOf(acute, mean(window.loads.slice(0, -ACUTE))),
      exponential: exponentialRatio(loads),
    };
  },
);
