import type { Condition } from '../formula.ts';
import { formula } from '../formula.ts';
import { loadFaults, type DailyLoads } from './daily-loads.ts';
import { arbitrary, gain, performance, timeConstant } from './inputs.ts';
import { method } from '../method.ts';
import type { Curve } from '../plot.ts';
import { BANISTER_1975, BUSSO_1994, CLARKE_SKIBA_2013, HELLARD_2006, MARCHAL_2025 } from './sources.ts';

/** Every load leaves a gain that fades slowly and a fatigue that fades fast; performance is their difference. */

export interface ImpulseResponse {
  /** Performance without any training, p_0. */
  readonly base: number;
  /** Performance for each unit of load that is left as gain, k_1, and as fatigue, k_2. */
  readonly gain: number;
  readonly fatigue: number;
  /** Time constants of gain and fatigue [d], τ_1 > τ_2. */
  readonly gainFades: number;
  readonly fatigueFades: number;
}

export interface PerformanceDay {
  readonly day: number;
  readonly gain: number;
  readonly fatigue: number;
  readonly performance: number;
}

export type PerformanceCourse =
  | {
      readonly kind: 'estimate';
      /** From before the first load to the day after the last. */
      readonly days: readonly PerformanceDay[];
    }
  | { readonly kind: 'none'; readonly reason: string }
  | { readonly kind: 'refused'; readonly reasons: readonly string[] };

export const IDENTIFIABILITY =
  'Its own constants. Quite different pairs of time constants fit the same tests as well, so that no single one may be read as a person’s; adding fatigue hardly predicts better than leaving it out. Loads of weightless weeks and of weeks on the ground are not one metric.';

/** What is left of daily loads on each day, each fading by the same share a day; a load counts from the next day on. */
export const fadingSums = (loads: readonly number[], fades: number): Float64Array => {
  const kept = Math.exp(-1 / fades);
  const sums = new Float64Array(loads.length + 1);
  for (const [day, load] of loads.entries()) sums[day + 1] = ((sums[day] ?? 0) + load) * kept;
  return sums;
};

const [SHORTEST, LONGEST] = timeConstant('', '').possible;

const faultsOf = (loads: DailyLoads, model: ImpulseResponse): readonly string[] => [
  ...loadFaults(loads),
  ...[model.base, model.gain, model.fatigue].flatMap((value) =>
    Math.abs(value) <= 1e6 ? [] : [`Base, gain and fatigue must be numbers of at most a million; one is ${value}.`],
  ),
  ...(model.fatigueFades >= SHORTEST && model.gainFades <= LONGEST && model.gainFades > model.fatigueFades
    ? []
    : [
        `The gain must fade more slowly than the fatigue, within ${SHORTEST} to ${LONGEST} d; they are ${model.gainFades} and ${model.fatigueFades}.`,
      ]),
];

/** The loads as numbers, or how many there are. */
export const everyDay = (loads: DailyLoads): readonly number[] | string => {
  const known = loads.flatMap((load) => load ?? []);
  return known.length === loads.length
    ? known
    : `${known.length} of ${loads.length} days were reported; the model needs every one.`;
};

/** Performance from daily loads: gain less fatigue. */
export const impulseResponse = method(
  {
    id: 'load/impulse-response',
    revision: 1,
    title: 'Performance from daily loads: gain less fatigue',
    equations: [
      'g(t) = (g(t − 1) + w(t − 1)) · exp(−1 / τ_1), g(0) = 0',
      'h(t) = (h(t − 1) + w(t − 1)) · exp(−1 / τ_2), h(0) = 0',
      'p(t) = p_0 + k_1 · g(t) − k_2 · h(t)',
    ],
    inputs: [
      arbitrary('load of each day', 'w(t)'),
      performance('performance without training', 'p_0'),
      gain('gain and fatigue of a unit of load', 'k_1, k_2'),
      timeConstant('time constants of gain and fatigue', 'τ_1, τ_2', [SHORTEST, LONGEST], [4, 74]),
    ],
    outputs: [{ name: 'performance of each day', symbol: 'p(t)', unit: 'unit of the test' }],
    refuses: [
      'A day that was not reported: then it says how many were.',
      'A gain that fades as fast as the fatigue or faster. A load that cannot be.',
    ],
    source: BANISTER_1975,
    restsOn: [BUSSO_1994, CLARKE_SKIBA_2013, HELLARD_2006, MARCHAL_2025],
    doesNotKnow: IDENTIFIABILITY,
    plot: {
      says: 'One hard week on day 10 and rest after it: performance dips, comes back and rises over what it was.',
      x: { name: 'day', unit: 'd' },
      y: { name: 'performance', unit: 'unit of the test' },
      curves: () => oneWeek(),
    },
  },
  (loads: DailyLoads, model: ImpulseResponse): PerformanceCourse => {
    const reasons = faultsOf(loads, model);
    if (reasons.length > 0) return { kind: 'refused', reasons };
    const known = everyDay(loads);
    if (typeof known === 'string') return { kind: 'none', reason: known };
    const gains = fadingSums(known, model.gainFades);
    const fatigues = fadingSums(known, model.fatigueFades);
    return {
      kind: 'estimate',
      days: Array.from(gains, (gained, day) => {
        const fatigue = fatigues[day] ?? 0;
        return { day, gain: gained, fatigue, performance: model.base + model.gain * gained - model.fatigue * fatigue };
      }),
    };
  },
);

const oneWeek = (): readonly Curve[] => {
  const loads = Array.from({ length: 90 }, (_, day) => (day >= 10 && day < 17 ? 8 : 0));
  return [
    [42, 7],
    [30, 15],
  ].flatMap(([gainFades = 0, fatigueFades = 0]) => {
    const course = impulseResponse(loads, { base: 100, gain: 0.1, fatigue: 0.25, gainFades, fatigueFades });
    return course.kind === 'estimate'
      ? [
          {
            label: `τ_1 ${gainFades} d, τ_2 ${fatigueFades} d`,
            points: course.days.map(({ day, performance: level }) => [day, level] as const),
          },
        ]
      : [];
  });
};

const slow = timeConstant('time constant of the gain', 'τ_1', [SHORTEST, LONGEST], [4, 74]);
const fast = timeConstant('time constant of the fatigue', 'τ_2', [SHORTEST, LONGEST], [1, 60]);
const gained = gain('gain of a unit of load', 'k_1', [1e-6, 1e3]);
const tired = gain('fatigue of a unit of load', 'k_2', [1e-6, 1e3]);
const SLOWER: Condition = {
  says: 'The gain fades more slowly than the fatigue, by a hundredth at least.',
  holds: (first = 0, second = 0) => first >= 1.01 * second,
};
const STRONGER: Condition = {
  says: 'Fatigue outweighs gain at first.',
  holds: (_first, _second, up = 0, down = 0) => down > up,
};

/** Days after one load until performance is back where it was. */
export const daysToBaseline = formula(
  {
    id: 'load/days-to-baseline',
    revision: 1,
    title: 'Days after one load until performance is back where it was',
    equation: 'τ_1 · τ_2 / (τ_1 − τ_2) · ln(k_2 / k_1)',
    inputs: [slow, fast, gained, tired],
    output: { name: 'days to baseline', symbol: 't_n', unit: 'd' },
    conditions: [SLOWER, STRONGER],
    source: BUSSO_1994,
    restsOn: [HELLARD_2006],
    doesNotKnow: `${IDENTIFIABILITY} Among swimmers it ran from 7 to 35 days.`,
  },
  (tau1: number, tau2: number, up: number, down: number): number =>
    ((tau1 * tau2) / (tau1 - tau2)) * Math.log(down / up),
);

/** Days after one load until performance is highest. */
export const daysToPeak = formula(
  {
    id: 'load/days-to-peak',
    revision: 1,
    title: 'Days after one load until performance is highest',
    equation: 'τ_1 · τ_2 / (τ_1 − τ_2) · ln(k_2 · τ_1 / (k_1 · τ_2))',
    inputs: [slow, fast, gained, tired],
    output: { name: 'days to the peak', symbol: 't_g', unit: 'd' },
    conditions: [SLOWER, STRONGER],
    source: BUSSO_1994,
    restsOn: [HELLARD_2006],
    doesNotKnow: `${IDENTIFIABILITY} Among swimmers it ran from 25 to 61 days.`,
  },
  (tau1: number, tau2: number, up: number, down: number): number =>
    ((tau1 * tau2) / (tau1 - tau2)) * Math.log((down * tau1) / (up * tau2)),
);
