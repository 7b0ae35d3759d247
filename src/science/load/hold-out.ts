import type { DailyLoads } from './daily-loads.ts';
import { arbitrary, performance } from './inputs.ts';
import { everyDay, IDENTIFIABILITY, impulseResponse } from './impulse-response.ts';
import { fitAt, USUAL_FADES } from './impulse-response-fit.ts';
import { fitFaults, type PerformanceTest } from './performance-tests.ts';
import { method } from '../method.ts';
import { OUR_OWN_DESIGN } from '../sources.ts';
import { MARCHAL_2025 } from './sources.ts';

/** Whether gain and fatigue foretell the last tests better than no model at all. */

export type HoldOut =
  | {
      readonly kind: 'estimate';
      readonly heldOut: number;
      /** Root mean square errors over the tests held out, in the unit of the test. */
      readonly model: number;
      readonly lastValue: number;
      readonly meanValue: number;
      /** Better than the last value and than the mean: else the model is switched off. */
      readonly beatsBoth: boolean;
    }
  | { readonly kind: 'none'; readonly reason: string }
  | { readonly kind: 'refused'; readonly reasons: readonly string[] };

const HELD_OUT = 0.2;

const rootMeanSquare = (errors: readonly number[]): number =>
  Math.sqrt(errors.reduce((sum, error) => sum + error * error, 0) / errors.length);

/** The last fifth of the tests, foretold from the others. */
export const holdOut = method(
  {
    id: 'load/hold-out',
    revision: 1,
    title: 'The last fifth of the tests, foretold from the others',
    equations: [
      'p_0, k_1, k_2 from the first four fifths of the tests, τ_1 = 42 d, τ_2 = 7 d',
      'E = √(sum_i (y_i − p(t_i))² / m) over the m tests held out',
      'beside it the same with p = the last test before them, and with p = the mean of those before',
    ],
    inputs: [arbitrary('load of each day', 'w(t)'), performance('performance tested', 'y_i')],
    outputs: [{ name: 'error of the model, of the last value and of the mean', symbol: 'E', unit: 'unit of the test' }],
    refuses: ['What the fit refuses.'],
    source: OUR_OWN_DESIGN,
    restsOn: [MARCHAL_2025],
    doesNotKnow: `${IDENTIFIABILITY} A few tests held out are a small court: a model that wins by little has not won.`,
  },
  (loads: DailyLoads, tests: readonly PerformanceTest[]): HoldOut => {
    // The quantile plays no part here: 1 is possible.
    const reasons = fitFaults(loads, tests, 1);
    if (reasons.length > 0) return { kind: 'refused', reasons };
    const known = everyDay(loads);
    if (typeof known === 'string') return { kind: 'none', reason: known };
    const ordered = tests.toSorted((a, b) => a.day - b.day);
    const heldOut = Math.ceil(HELD_OUT * ordered.length);
    const [before, after] = [ordered.slice(0, -heldOut), ordered.slice(-heldOut)];
    const fitted = fitAt(known, before, USUAL_FADES);
    const course = fitted && impulseResponse(known, fitted);
    if (course?.kind !== 'estimate')
      return { kind: 'none', reason: 'Loads or tests never change: gain and fatigue cannot be told apart.' };
    const last = before.at(-1)?.level ?? 0;
    const middle = before.reduce((sum, { level }) => sum + level, 0) / before.length;
    const errorOf = (foretold: (day: number) => number): number =>
      rootMeanSquare(after.map(({ day, level }) => level - foretold(day)));
    const model = errorOf((day) => course.days[day]?.performance ?? 0);
    const [lastValue, meanValue] = [errorOf(() => last), errorOf(() => middle)];
    return {
      kind: 'estimate',
      heldOut,
      model,
      lastValue,
      meanValue,
      beatsBoth: model < lastValue && model < meanValue,
    };
  },
);
