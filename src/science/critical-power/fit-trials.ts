import { impossibilities } from '../evaluate.ts';
import type { FormulaInput } from '../formula.ts';
import { method } from '../method.ts';
import { COMMON_PRACTICE } from '../sources.ts';
import { hyperbolicFit } from './hyperbolic-fit.ts';
import { MONOD_SCHERRER_1965, SKIBA_2012, SKIBA_CLARKE_2021 } from './sources.ts';
import { inverseTimeFit, workTimeFit, type Trial, type TrialFit } from './trial-fits.ts';
import { fraction, type Fraction } from '#units/quantity.ts';

export interface ThreeFits {
  readonly workTime: TrialFit;
  readonly inverseTime: TrialFit;
  readonly hyperbolic: TrialFit;
}

export type FittedTrials =
  | {
      readonly kind: 'estimate';
      /** The hyperbolic fit. */
      readonly fit: TrialFit;
      readonly fits: ThreeFits;
      /** Largest less smallest of the three, over the hyperbolic one. */
      readonly spread: { readonly criticalPower: Fraction; readonly capacity: Fraction };
      readonly cautions: readonly string[];
    }
  | {
      readonly kind: 'too uncertain';
      readonly fits: ThreeFits;
      readonly reasons: readonly string[];
    }
  | { readonly kind: 'refused'; readonly reason: string };

/** Limits of the standard errors over the values; common practice. */
export const LARGEST_CRITICAL_POWER_ERROR = 0.05;
export const LARGEST_CAPACITY_ERROR = 0.1;
/** Trials of this length are what the model holds for [s]. */
const SHORTEST = 120;
const LONGEST = 1800;
const LEAST_TRIALS = 3;
/** The longest trial is at least this many times the shortest; common practice. */
const LEAST_REACH = 2;
/** Trials closer than this in power or time are one trial: their line would be drawn by rounding. */
const LEAST_DIFFERENCE = 1.01;

const trialInputs: readonly FormulaInput[] = [
  { name: 'power of a trial', symbol: 'P', unit: 'W', possible: [1, 2500], valid: [80, 800] },
  { name: 'time to exhaustion of a trial', symbol: 't', unit: 's', possible: [1, 86_400], valid: [SHORTEST, LONGEST] },
];

const refusalOf = (trials: readonly Trial[]): string | null => {
  if (trials.length < LEAST_TRIALS)
    return `Three trials at least; there ${trials.length === 1 ? 'is' : 'are'} ${trials.length}. Two always lie on a line, and say nothing of their error.`;
  const wrong = trials.flatMap(({ power, time }, place) =>
    impossibilities({ inputs: trialInputs }, [power, time]).map((reason) => `Trial ${place + 1}: ${reason}`),
  );
  if (wrong.length > 0) return wrong.join(' ');
  const reach = (of: (trial: Trial) => number): number => Math.max(...trials.map(of)) / Math.min(...trials.map(of));
  if (!(reach(({ power }) => power) >= LEAST_DIFFERENCE && reach(({ time }) => time) >= LEAST_DIFFERENCE))
    return 'All trials have the same power or the same time within 1 %: a line needs two places.';
  return null;
};

const percent = (value: number): string => `${(100 * value).toFixed(1)} %`;

const uncertainties = ({ criticalPower, criticalPowerSd, capacity, capacitySd }: TrialFit): readonly string[] => {
  const [power, store] = [criticalPowerSd / criticalPower, capacitySd / capacity];
  return [
    ...(power > LARGEST_CRITICAL_POWER_ERROR
      ? [`The standard error of critical power is ${percent(power)}, over 5 %. Repeat a trial.`]
      : []),
    ...(store > LARGEST_CAPACITY_ERROR
      ? [`The standard error of the store is ${percent(store)}, over 10 %. Repeat a trial.`]
      : []),
  ];
};

const cautionsOf = (trials: readonly Trial[]): readonly string[] => {
  const times = trials.map(({ time }) => time);
  const [shortest, longest] = [Math.min(...times), Math.max(...times)];
  return [
    ...(shortest < SHORTEST || longest > LONGEST ? ['A trial is shorter than 2 or longer than 30 minutes.'] : []),
    ...(longest < LEAST_REACH * shortest ? ['The longest trial is less than twice the shortest.'] : []),
  ];
};

const spreadOf = ({ workTime, inverseTime, hyperbolic }: ThreeFits, of: (fit: TrialFit) => number): Fraction => {
  const values = [workTime, inverseTime, hyperbolic].map(of);
  return fraction((Math.max(...values) - Math.min(...values)) / of(hyperbolic));
};

const UPSIDE_DOWN =
  'The trials do not follow the model: critical power or the store comes out at nothing or less. A harder trial must end sooner; look for one that was stopped early.';

/** Critical power and its store from trials to exhaustion. */
export const fitTrials = method(
  {
    id: 'critical-power/fit-trials',
    revision: 1,
    title: 'Critical power [W] and its store [J] from trials to exhaustion',
    equations: [
      "work on time: P · t = W'_0 + CP · t",
      "power on the inverse of time: P = CP + W'_0 · (1 / t)",
      "hyperbola: t = W'_0 / (P − CP), by Gauss and Newton from the first line",
      "residual: t − W'_0 / (P − CP), with derivatives W'_0 / (P − CP)² and 1 / (P − CP)",
    ],
    inputs: trialInputs,
    outputs: [
      { name: 'critical power', symbol: 'CP', unit: 'W' },
      { name: 'store above critical power', symbol: "W'_0", unit: 'J' },
      { name: 'standard errors', symbol: 'SE', unit: 'W, J' },
    ],
    refuses: [
      'fewer than three trials',
      'trials of one power or one time, within 1 %',
      'trials in which critical power or the store comes out at nothing or less',
      'a standard error over 5 % of critical power or 10 % of the store (shown, but not used)',
    ],
    source: MONOD_SCHERRER_1965,
    restsOn: [SKIBA_2012, SKIBA_CLARKE_2021, COMMON_PRACTICE],
    doesNotKnow:
      'Whether each trial went to exhaustion. With three trials one degree of freedom is left, so that the standard errors are rough. The hyperbola is used because time is what varies; all three are shown.',
  },
  (trials: readonly Trial[]): FittedTrials => {
    const reason = refusalOf(trials);
    if (reason !== null) return { kind: 'refused', reason };
    const [workTime, inverseTime] = [workTimeFit(trials), inverseTimeFit(trials)];
    if ([workTime, inverseTime].some(isUpsideDown)) return { kind: 'refused', reason: UPSIDE_DOWN };
    const searched = hyperbolicFit(trials);
    if (searched.kind === 'none') return { kind: 'refused', reason: searched.reason };
    const fit = searched.fit;
    if (isUpsideDown(fit)) return { kind: 'refused', reason: UPSIDE_DOWN };
    const fits: ThreeFits = { workTime, inverseTime, hyperbolic: fit };
    const reasons = uncertainties(fit);
    if (reasons.length > 0) return { kind: 'too uncertain', fits, reasons };
    const spread = {
      criticalPower: spreadOf(fits, (each) => each.criticalPower),
      capacity: spreadOf(fits, (each) => each.capacity),
    };
    return { kind: 'estimate', fit, fits, spread, cautions: cautionsOf(trials) };
  },
);

const isUpsideDown = ({ criticalPower, capacity }: TrialFit): boolean => !(criticalPower > 0 && capacity > 0);
