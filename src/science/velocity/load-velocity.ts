import { impossibilities } from '../evaluate.ts';
import type { FormulaInput } from '../formula.ts';
import { load } from '../inputs.ts';
import { method, type MethodRecord } from '../method.ts';
import { straightLine, type StraightLine } from '../numeric/straight-line.ts';
import { spaced, type Curve } from '../plot.ts';
import { HELMS_2017 } from '../sources.ts';
import {
  loadOfVelocity,
  standardErrorOfLoad,
  standardErrorWithThreshold,
  velocityOfLoad,
  type VelocitySlope,
} from './load-velocity-line.ts';
import { BANYARD_2017, HUGHES_2019, VENABLES_RIPLEY_2002 } from './sources.ts';
import { barLoad, metresPerSecond, type BarLoad, type Kilograms, type MetresPerSecond } from '#units/quantity.ts';

/**
 * A maximum that nobody had to lift: the line through load and velocity, read at the velocity of a last repetition.
 * Loads are weighed in 1 g. Weightless points never enter: another machine, another line, and no threshold is known.
 */

export interface LoadVelocityPoint {
  readonly load: BarLoad;
  /** Best of two or three repetitions lifted as fast as possible. */
  readonly velocity: MetresPerSecond;
}

/** Velocity of the last possible repetition; with a spread where it is that of a group. */
export interface VelocityThreshold {
  readonly velocity: MetresPerSecond;
  readonly sd?: MetresPerSecond;
}

export interface LoadVelocityProfile {
  readonly kind: 'profile';
  readonly velocityWithoutLoad: MetresPerSecond;
  readonly slope: VelocitySlope;
  readonly determination: number;
  readonly residualSd: MetresPerSecond;
  readonly count: number;
  readonly meanLoad: BarLoad;
  /** [kg²] */
  readonly sumOfSquares: number;
  readonly heaviest: BarLoad;
}

export type Refused = { readonly kind: 'refused'; readonly reason: string };

export interface MaximumOfProfile {
  readonly kind: 'estimate';
  readonly value: BarLoad;
  /** Of the line, and of the threshold where it has a spread. */
  readonly sd: Kilograms;
  readonly degreesOfFreedom: number;
  readonly profile: LoadVelocityProfile;
  readonly cautions: readonly string[];
}

const LEAST_LOADS = 4;
const LEAST_DETERMINATION = 0.95;
/** The heaviest load must reach this part of the result, and should reach the other. */
const HEAVIEST_AT_LEAST = 0.75;
const HEAVIEST_SHOULD_BE = 0.85;
const FASTEST = 3;
const HEAVIEST_LOAD = 1000;
/** Slower for each kilogram than any line that the formulas take. */
const FLATTEST = -0.0005;

const loadInput = load('load of a set', 'L_i', [0.1, HEAVIEST_LOAD], [10, 400]);
const velocityInput: FormulaInput = {
  name: 'mean velocity of its best rise',
  symbol: 'v_i',
  unit: 'm/s',
  possible: [0.02, FASTEST],
  valid: [0.1, 2],
};

const refused = (reason: string): Refused => ({ kind: 'refused', reason });
/** Rounded down, so that what falls short of a limit never reads as the limit. */
const percent = (part: number): string => `${(Math.floor(1000 * part) / 10).toFixed(1)} %`;

const impossiblePoint = (points: readonly LoadVelocityPoint[]): string | undefined =>
  points.flatMap((point, place) =>
    impossibilities({ inputs: [loadInput, velocityInput] }, [point.load, point.velocity]).map(
      (reason) => `Set ${place + 1}: ${reason}`,
    ),
  )[0];

const EQUATIONS_OF_LINE = [
  'b = sum_(i=1)^k (L_i − L_mean) (v_i − v_mean) / S_LL',
  'S_LL = sum_(i=1)^k (L_i − L_mean)²',
  'a = v_mean − b L_mean',
  's = √(sum_(i=1)^k (v_i − a − b L_i)² / (k − 2))',
];

const ONE_PLACE = 'Whether the line is straight up to the maximum. Nothing of another lift, machine or gravity.';

const PROFILE_RECORD: MethodRecord = {
  id: 'load-velocity/profile',
  revision: 1,
  title: 'Line of velocity over load',
  equations: EQUATIONS_OF_LINE,
  inputs: [loadInput, velocityInput],
  outputs: [
    { name: 'velocity without load', symbol: 'a', unit: 'm/s' },
    { name: 'slope', symbol: 'b', unit: '(m/s)/kg' },
    { name: 'explained part of the variance', symbol: 'r²', unit: '1' },
    { name: 'standard deviation about the line', symbol: 's', unit: 'm/s' },
  ],
  refuses: [
    'Fewer than four loads, or all the same.',
    'A load or a velocity that cannot be.',
    'A line that does not fall with the load, or so little that it tells nothing.',
    'An explained part of the variance below 0.95.',
  ],
  source: BANYARD_2017,
  restsOn: [HUGHES_2019],
  doesNotKnow: `${ONE_PLACE} The limits of four loads and 0.95 are our own.`,
};

const profileOfLine = (line: StraightLine, heaviest: BarLoad): LoadVelocityProfile | Refused => {
  if (!(line.slope < FLATTEST))
    return refused(
      'Velocity does not fall with the load: the sets were not lifted as fast as possible, or are mixed up.',
    );
  if (!(line.determination >= LEAST_DETERMINATION))
    return refused(
      `The line explains ${percent(line.determination)} of the variance, less than 95 %: repeat the set that lies off it.`,
    );
  return {
    kind: 'profile',
    velocityWithoutLoad: metresPerSecond(line.intercept),
    // A change of velocity over a change of load.
    slope: line.slope as VelocitySlope,
    determination: line.determination,
    residualSd: metresPerSecond(line.residualSd),
    count: line.count,
    meanLoad: barLoad(line.meanX),
    sumOfSquares: line.sumOfSquaresX,
    heaviest,
  };
};

/** The line through the sets of one lift on one day, or why there is none. */
export const loadVelocityProfile = method(
  PROFILE_RECORD,
  (points: readonly LoadVelocityPoint[]): LoadVelocityProfile | Refused => {
    if (points.length < LEAST_LOADS)
      return refused(`A line needs at least ${LEAST_LOADS} loads; there are ${points.length}.`);
    const impossible = impossiblePoint(points);
    if (impossible !== undefined) return refused(impossible);
    const line = straightLine(points.map((point) => [point.load, point.velocity]));
    if (line.kind === 'none') return refused(line.reason);
    return profileOfLine(line, barLoad(Math.max(...points.map((point) => point.load))));
  },
);

const thresholdInput: FormulaInput = {
  name: 'velocity of the last possible repetition',
  symbol: 'v_min',
  unit: 'm/s',
  possible: [0, 1],
  valid: [0.05, 0.6],
};
const spreadInput: FormulaInput = {
  name: 'standard deviation of that velocity',
  symbol: 'τ',
  unit: 'm/s',
  possible: [0, 0.5],
  valid: [0, 0.1],
};

/** Four sets of one squat, as drawn and as checked. */
export const EXAMPLE_SETS: readonly LoadVelocityPoint[] = (
  [
    [40, 1.1],
    [60, 0.88],
    [80, 0.66],
    [100, 0.45],
  ] as const
).map(([on, at]) => ({ load: barLoad(on), velocity: metresPerSecond(at) }));

const THRESHOLD_PLOTTED = metresPerSecond(0.23);

const lineOfExample = (): readonly Curve[] => {
  const found = oneRepMaxOfVelocity(EXAMPLE_SETS, { velocity: THRESHOLD_PLOTTED });
  if (found.kind === 'refused') return [];
  const { velocityWithoutLoad, slope } = found.profile;
  const at = (on: number): number => velocityOfLoad(velocityWithoutLoad, slope, barLoad(on));
  return [
    { label: 'line', points: spaced(30, 140).map((on) => [on, at(on)]) },
    { label: 'sets', scattered: true, points: EXAMPLE_SETS.map((set) => [set.load, set.velocity]) },
    { label: 'maximum read at 0.23 m/s', scattered: true, points: [[found.value, THRESHOLD_PLOTTED]] },
  ];
};

const MAXIMUM_RECORD: MethodRecord = {
  id: 'load-velocity/one-rep-max',
  revision: 1,
  title: 'One-repetition maximum [kg] from load and velocity',
  equations: [
    ...EQUATIONS_OF_LINE,
    '1RM = (v_min − a) / b',
    'SE = √((s / b)² (1 / k + (1RM − L_mean)² / S_LL) + (τ / b)²)',
  ],
  inputs: [loadInput, velocityInput, thresholdInput, spreadInput],
  outputs: [
    { name: 'one-repetition maximum', symbol: '1RM', unit: 'kg' },
    { name: 'standard error', symbol: 'SE', unit: 'kg' },
  ],
  refuses: [
    'Whatever the line refuses.',
    'A threshold that is not slower than the line without load, or that gives less than what was lifted.',
    'A result above the heaviest load by more than a third: the heaviest load must be at least 75 % of it.',
  ],
  source: BANYARD_2017,
  restsOn: [HUGHES_2019, HELMS_2017, VENABLES_RIPLEY_2002],
  doesNotKnow: `${ONE_PLACE} In squats the method read 11 kg (7 %) off and mostly too high, up to 28 %; the standard error here is only that of the line. Taking 0.30 or 0.23 m/s for the threshold of a squat moves the result by some 5 %: a person’s own measured velocity is better. Weightless no threshold is known.`,
  plot: {
    says: 'Four sets up to 100 kg make a line; read at the velocity of a last repetition it gives 120 kg. The flatter the line, the more a wrong threshold costs.',
    x: { name: 'load', unit: 'kg' },
    y: { name: 'mean velocity of the rise', unit: 'm/s' },
    curves: lineOfExample,
  },
};

const impossibleThreshold = ({ velocity, sd = metresPerSecond(0) }: VelocityThreshold): string | undefined =>
  impossibilities({ inputs: [thresholdInput, spreadInput] }, [velocity, sd])[0];

const cautionsOf = (heaviest: BarLoad, maximum: BarLoad): readonly string[] =>
  heaviest < HEAVIEST_SHOULD_BE * maximum
    ? [`The heaviest load is ${percent(heaviest / maximum)} of the result: it is read well beyond what was lifted.`]
    : [];

const readAt = (profile: LoadVelocityProfile, { velocity, sd }: VelocityThreshold): MaximumOfProfile | Refused => {
  const { velocityWithoutLoad, slope, heaviest, residualSd, count, meanLoad, sumOfSquares } = profile;
  if (!(velocity < velocityWithoutLoad))
    return refused(`At ${velocity} m/s the line is above any load: the threshold is too fast.`);
  const maximum = loadOfVelocity(velocity, velocityWithoutLoad, slope);
  if (maximum < heaviest)
    return refused('The result is lighter than the heaviest load that was lifted: the threshold is too fast.');
  if (heaviest < HEAVIEST_AT_LEAST * maximum)
    return refused(
      `The heaviest load is ${percent(heaviest / maximum)} of the result, less than 75 %: add a heavier set.`,
    );
  const ofLine = standardErrorOfLoad(residualSd, slope, count, maximum, meanLoad, sumOfSquares);
  return {
    kind: 'estimate',
    value: maximum,
    sd: sd === undefined ? ofLine : standardErrorWithThreshold(ofLine, sd, slope),
    degreesOfFreedom: count - 2,
    profile,
    cautions: cautionsOf(heaviest, maximum),
  };
};

/** A maximum from submaximal sets lifted as fast as possible, or why none is read. */
export const oneRepMaxOfVelocity = method(
  MAXIMUM_RECORD,
  (points: readonly LoadVelocityPoint[], threshold: VelocityThreshold): MaximumOfProfile | Refused => {
    const profile = loadVelocityProfile(points);
    if (profile.kind === 'refused') return profile;
    const impossible = impossibleThreshold(threshold);
    return impossible === undefined ? readAt(profile, threshold) : refused(impossible);
  },
);
