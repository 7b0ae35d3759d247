import { formula, type FormulaInput } from '../formula.ts';
import { method } from '../method.ts';
import { spaced, type Curve } from '../plot.ts';
import { CAVANAGH_2010 } from '../sources.ts';
import { impossible, refused, type Refused } from './impossible.ts';
import { BEAUPRE_1990, CARTER_1987, WHALEN_1988 } from './sources.ts';

/** The day of one leg as cycles of force: magnitude weighs far more than number. */

/** Cycles of one leg at one peak force, in body weights. */
export interface LoadGroup {
  readonly cycles: number;
  readonly force: number;
}

export const cyclesInput: FormulaInput = {
  name: 'cycles of one leg',
  symbol: 'n',
  unit: 'cycles',
  possible: [0, 1_000_000],
  valid: [0, 50_000],
};
export const forceInput: FormulaInput = {
  name: 'peak force',
  symbol: 'F',
  unit: 'BW',
  possible: [0, 20],
  valid: [0, 5],
};
export const exponentInput: FormulaInput = {
  name: 'exponent of the force',
  symbol: 'm',
  unit: '1',
  possible: [1, 12],
  valid: [3, 8],
};

/** Which root is taken of the sum: the stress form, or the form for apparent density and in-shoe forces. */
export type OuterExponent = '1/m' | '1/(2m)';

export interface StimulusSettings {
  readonly exponent: number;
  readonly outer: OuterExponent;
}

export type LoadStimulus =
  | { readonly kind: 'estimate'; readonly value: number; readonly sum: number; readonly settings: StimulusSettings }
  | Refused;

/** Cycles at another force that count as much. */
export const equalCycles = formula(
  {
    id: 'bone/equal-cycles',
    revision: 1,
    title: 'Cycles at another force that count as much',
    equation: "n · (F / F')^m",
    inputs: [
      { ...cyclesInput, possible: [0, 1_000_000] },
      { ...forceInput, possible: [0.1, 20], valid: [0.1, 5] },
      { ...forceInput, name: 'the other peak force', symbol: "F'", possible: [0.1, 20], valid: [0.1, 5] },
      exponentInput,
    ],
    output: { name: 'cycles at the other force', symbol: "n'", unit: 'cycles' },
    source: CARTER_1987,
    restsOn: [WHALEN_1988],
    doesNotKnow: 'The exponent of this bone; values from 3 to 8 have been fitted, 4 is usual.',
    plot: {
      says: 'How many cycles stand for 4500 steps of walking at 1.1 body weights: with the usual exponent some two hundred of running do.',
      x: { name: 'peak force', unit: 'BW' },
      y: { name: 'cycles that count as much', unit: 'cycles' },
      curves: (): readonly Curve[] => [3, 4, 6].map(equalTo),
    },
  },
  (cycles: number, force: number, other: number, exponent: number): number => cycles * (force / other) ** exponent,
);

const equalTo = (exponent: number): Curve => ({
  label: `m = ${exponent}`,
  points: spaced(1.1, 3).map((force) => [force, equalCycles(4500, 1.1, force, exponent)] as const),
});

/** Daily load stimulus of one leg, with its settings. */
export const dailyLoadStimulus = method(
  {
    id: 'bone/daily-load-stimulus',
    revision: 1,
    title: 'Daily load stimulus of one leg',
    equations: ['S = sum_i n_i F_i^m', 'stimulus = S^(1/m), or S^(1/(2m)) for apparent density'],
    inputs: [cyclesInput, forceInput, exponentInput],
    outputs: [{ name: 'daily load stimulus', symbol: 'DLS', unit: 'BW or √BW' }],
    refuses: ['Cycles, a force or an exponent that cannot be.'],
    source: CARTER_1987,
    restsOn: [WHALEN_1988, BEAUPRE_1990, CAVANAGH_2010],
    doesNotKnow:
      'Rest, saturation, the rate and direction of loading, and muscle: foot force is a stand-in for what the hip bears. Results compare only within one m and one outer exponent; no dose is made from it.',
  },
  (groups: readonly LoadGroup[], settings: StimulusSettings): LoadStimulus => {
    const reasons = impossible([[exponentInput, settings.exponent], ...groups.flatMap(groupInputs)]);
    if (reasons.length > 0) return refused(reasons);
    const { exponent, outer } = settings;
    const sum = groups.reduce((total, { cycles, force }) => total + cycles * force ** exponent, 0);
    return { kind: 'estimate', value: sum ** (1 / (outer === '1/m' ? exponent : 2 * exponent)), sum, settings };
  },
);

/** What of a group must be possible. */
export const groupInputs = ({ cycles, force }: LoadGroup): readonly (readonly [FormulaInput, number])[] => [
  [cyclesInput, cycles],
  [forceInput, force],
];

export type StimulusRatio =
  { readonly kind: 'estimate'; readonly value: number } | { readonly kind: 'none'; readonly reason: string } | Refused;

/** One day against another, in one setting. */
export const loadStimulusRatio = method(
  {
    id: 'bone/load-stimulus-ratio',
    revision: 1,
    title: 'Daily load stimulus against a reference day',
    equations: ['R = DLS of the day / DLS of the reference'],
    inputs: [cyclesInput, forceInput, exponentInput],
    outputs: [{ name: 'ratio to the reference day', symbol: 'R', unit: '1' }],
    refuses: ['What the stimulus refuses.', 'A reference day without any load: no ratio.'],
    source: CARTER_1987,
    restsOn: [CAVANAGH_2010],
    doesNotKnow:
      'How much bone a ratio costs: in four men a measured stimulus about a quarter lower went with 0.7 to 0.8 % a month.',
  },
  (day: readonly LoadGroup[], reference: readonly LoadGroup[], settings: StimulusSettings): StimulusRatio => {
    const [ofDay, ofReference] = [dailyLoadStimulus(day, settings), dailyLoadStimulus(reference, settings)];
    if (ofDay.kind === 'refused') return ofDay;
    if (ofReference.kind === 'refused') return ofReference;
    if (ofReference.value === 0) return { kind: 'none', reason: 'The reference day holds no load to compare with.' };
    return { kind: 'estimate', value: ofDay.value / ofReference.value };
  },
);
