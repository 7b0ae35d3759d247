import { formula } from '../formula.ts';
import { loadFaults, type DailyLoads } from './daily-loads.ts';
import { everyDay, fadingSums } from './impulse-response.ts';
import { arbitrary, gain, performance, timeConstant } from './inputs.ts';
import { method } from '../method.ts';
import { curveOf, type Curve } from '../plot.ts';
import { OUR_OWN_DESIGN } from '../sources.ts';
import { BUSSO_2003 } from './sources.ts';

/** As gain and fatigue, but the fatigue of a load grows with the loads of the days before: too much turns down. */

export interface VariableDose {
  /** Performance without training, p_0. */
  readonly base: number;
  /** k_1 and k_3. */
  readonly gain: number;
  readonly fatigue: number;
  /** Time constants [d]: of gain, of fatigue, and of what makes fatigue grow: τ_1, τ_2, τ_3. */
  readonly gainFades: number;
  readonly fatigueFades: number;
  readonly growthFades: number;
}

/** Mean of six untrained people. */
export const PUBLISHED_DOSE: Omit<VariableDose, 'base'> = {
  gain: 0.031,
  fatigue: 0.000035,
  gainFades: 30.8,
  fatigueFades: 16.8,
  growthFades: 2.3,
};

export type DoseCourse =
  | {
      readonly kind: 'estimate';
      /** Performance from before the first load to the day after the last. */
      readonly performance: readonly number[];
    }
  | { readonly kind: 'none'; readonly reason: string }
  | { readonly kind: 'refused'; readonly reasons: readonly string[] };

const DOES_NOT_KNOW =
  'Whether six untrained people on a cycle speak for anybody else. Six numbers are fitted, more than most series of tests can carry; the best daily load that comes out of them is a property of the model.';

const [SHORTEST, LONGEST] = timeConstant('', '').possible;

const faultsOf = (loads: DailyLoads, model: VariableDose): readonly string[] => [
  ...loadFaults(loads),
  ...[model.base, model.gain, model.fatigue].flatMap((value) =>
    Math.abs(value) <= 1e6 ? [] : [`Base, gain and fatigue must be numbers of at most a million; one is ${value}.`],
  ),
  ...[model.gainFades, model.fatigueFades, model.growthFades].flatMap((value) =>
    value >= SHORTEST && value <= LONGEST
      ? []
      : [`A time constant must lie in ${SHORTEST} to ${LONGEST} d; one is ${value}.`],
  ),
];

/** Loads times what the loads so far make them tire, k_3 apart: the day itself counts in full. */
const tiring = (loads: readonly number[], growthFades: number): readonly number[] => {
  const kept = Math.exp(-1 / growthFades);
  let sum = 0;
  return loads.map((load) => {
    sum = sum * kept + load;
    return sum * load;
  });
};

/** Performance from daily loads where fatigue grows with the load. */
export const variableDose = method(
  {
    id: 'load/variable-dose',
    revision: 1,
    title: 'Performance from daily loads where fatigue grows with the load',
    equations: [
      'p(n) = p_0 + k_1 · sum_(i=1)^(n−1) w_i · exp(−(n − i) / τ_1) − sum_(i=1)^(n−1) k_2(i) · w_i · exp(−(n − i) / τ_2)',
      'k_2(i) = k_3 · sum_(j=1)^i w_j · exp(−(i − j) / τ_3)',
    ],
    inputs: [
      arbitrary('load of each day', 'w_i'),
      performance('performance without training', 'p_0'),
      gain('gain of a unit of load, fatigue of its square', 'k_1, k_3'),
      timeConstant('time constants', 'τ_1, τ_2, τ_3'),
    ],
    outputs: [{ name: 'performance of each day', symbol: 'p(n)', unit: 'unit of the test' }],
    refuses: ['A day that was not reported: then it says how many were.', 'A load or a constant that cannot be.'],
    source: BUSSO_2003,
    doesNotKnow: DOES_NOT_KNOW,
  },
  (loads: DailyLoads, model: VariableDose): DoseCourse => {
    const reasons = faultsOf(loads, model);
    if (reasons.length > 0) return { kind: 'refused', reasons };
    const known = everyDay(loads);
    if (typeof known === 'string') return { kind: 'none', reason: known };
    const gains = fadingSums(known, model.gainFades);
    const fatigues = fadingSums(tiring(known, model.growthFades), model.fatigueFades);
    return {
      kind: 'estimate',
      performance: Array.from(gains, (up, day) => model.base + model.gain * up - model.fatigue * (fatigues[day] ?? 0)),
    };
  },
);

const constants = [
  timeConstant('time constant of the gain', 'τ_1'),
  timeConstant('time constant of the fatigue', 'τ_2'),
  timeConstant('time constant of its growth', 'τ_3'),
] as const;
const up = gain('gain of a unit of load', 'k_1', [0, 1000]);
const down = gain('fatigue of its square', 'k_3', [1e-9, 1000]);

/** What a load of one every day adds up to: the newest has faded for a day. */
const total = (fades: number): number => 1 / Math.expm1(1 / fades);

/** Lasting change of performance at the same load every day. */
export const steadyChange = formula(
  {
    id: 'load/steady-change',
    revision: 1,
    title: 'Lasting change of performance at the same load every day',
    equation: 'k_1 · G_1 · w − k_3 · G_2 · G_3 · w², G_1 and G_2 = 1 / (exp(1 / τ) − 1), G_3 = 1 / (1 − exp(−1 / τ_3))',
    inputs: [arbitrary('load of every day', 'w', [0, 10_000], [0, 1000]), up, down, ...constants],
    output: { name: 'change', symbol: 'Δp', unit: 'unit of the test' },
    source: OUR_OWN_DESIGN,
    restsOn: [BUSSO_2003],
    doesNotKnow: DOES_NOT_KNOW,
    plot: {
      says: 'More helps up to a point, then it harms: with the published means the top lies near 290 a day.',
      x: { name: 'load of every day', unit: 'arbitrary units' },
      y: { name: 'lasting change', unit: 'W' },
      curves: (): readonly Curve[] => [
        curveOf('published means', steadyChange, [0, 600], (load) => [load, 0.031, 0.000035, 30.8, 16.8, 2.3]),
      ],
    },
  },
  (load: number, k1: number, k3: number, tau1: number, tau2: number, tau3: number): number =>
    k1 * total(tau1) * load - k3 * total(tau2) * (total(tau3) + 1) * load * load,
);

/** Load of every day at which lasting performance is highest. */
export const steadyOptimum = formula(
  {
    id: 'load/steady-optimum',
    revision: 1,
    title: 'Load of every day at which lasting performance is highest',
    equation: 'k_1 · G_1 / (2 · k_3 · G_2 · G_3), G_1 and G_2 = 1 / (exp(1 / τ) − 1), G_3 = 1 / (1 − exp(−1 / τ_3))',
    inputs: [up, down, ...constants],
    output: { name: 'best load of every day', symbol: 'w*', unit: 'arbitrary units' },
    source: OUR_OWN_DESIGN,
    restsOn: [BUSSO_2003],
    doesNotKnow: DOES_NOT_KNOW,
  },
  (k1: number, k3: number, tau1: number, tau2: number, tau3: number): number =>
    (k1 * total(tau1)) / (2 * k3 * total(tau2) * (total(tau3) + 1)),
);
