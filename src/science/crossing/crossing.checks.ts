import type { Check } from '../check.ts';
import type { AnyFormula, Source } from '../formula.ts';
import { axialExcess, axialLoadInFlight, axialLoadOnGround, shoulderExcess } from './axial-load.ts';
import { deliveredLoad, loadToCommand } from './calibration.ts';
import {
  barEquivalent,
  barOfFraction,
  barPart,
  bodyWeightAdded,
  cappedOff,
  evidenceFloor,
  fractionOfBar,
  machineTarget,
  programmeFractionOf,
  trueFraction,
} from './crossing.ts';
import {
  barFractionOfSystemFraction,
  differenceOfReadings,
  machineLoadByBar,
  machineLoadBySystem,
  systemFractionOfBarFraction,
} from './percent-of-system.ts';
import { oneRepMaxWathan } from '../strength/one-rep-max.ts';
import { COMMON_PRACTICE, OUR_OWN_DESIGN } from '../sources.ts';

type Row = readonly [formula: AnyFormula, given: readonly number[], printed: number];

const rows = (
  within: number,
  because: string,
  list: readonly Row[],
  source: Source = OUR_OWN_DESIGN,
): readonly Check[] =>
  list.map(([formula, given, printed]) => ({ kind: 'formula', formula, given, printed, within, because, source }));

/** A person of 200 lb whose squat is 300 lb; share 0.72. Loads in pounds: the formulas do not mind. */
const [PERSON, MAXIMUM, SHARE] = [200, 300, 0.72];
const BINARY = 'exact but for binary fractions';

const READINGS: readonly (readonly [
  p: number,
  bar: number,
  system: number,
  difference: number,
  asBar: number,
  asSystem: number,
])[] = [
  [0.6, 324, 266.4, 57.6, 40.8, 73.0],
  [0.7, 354, 310.8, 43.2, 55.6, 79.7],
  [0.8, 384, 355.2, 28.8, 70.4, 86.5],
  [0.9, 414, 399.6, 14.4, 85.2, 93.2],
];

export const readingChecks: readonly Check[] = READINGS.flatMap(([p, bar, system, difference, asBar, asSystem]) => [
  ...rows(1e-9, BINARY, [
    [machineLoadByBar, [p, MAXIMUM, SHARE, PERSON], bar],
    [machineLoadBySystem, [p, MAXIMUM, SHARE, PERSON], system],
    [differenceOfReadings, [p, SHARE, PERSON], difference],
  ]),
  ...rows(0.0005, 'printed in percent to one decimal', [
    [barFractionOfSystemFraction, [p, MAXIMUM, SHARE, PERSON], asBar / 100],
    [systemFractionOfBarFraction, [p, MAXIMUM, SHARE, PERSON], asSystem / 100],
  ]),
]);

const [PERSON_KG, MAXIMUM_KG] = [90.718474, 136.077711];

export const crossingChecks: readonly Check[] = [
  ...rows(1e-9, BINARY, [
    [barPart, [1, 0.7, MAXIMUM], 210],
    [barOfFraction, [0.7, MAXIMUM], 210],
    [fractionOfBar, [210, MAXIMUM], 0.7],
    [bodyWeightAdded, [1, SHARE, PERSON], 144],
    [machineTarget, [210, 144], 354],
    [barEquivalent, [354, SHARE, PERSON], 210],
    [trueFraction, [354, SHARE, PERSON, MAXIMUM], 0.7],
    [programmeFractionOf, [354, 1, SHARE, PERSON, 1, MAXIMUM], 0.7],
    [cappedOff, [354, 350], 4],
    [evidenceFloor, [SHARE, PERSON], 154],
    [machineLoadByBar, [0.7, MAXIMUM, 1, PERSON], 410],
    [machineLoadBySystem, [0.7, MAXIMUM, 1, PERSON], 350],
  ]),
  ...rows(0.0005, 'printed to three decimals', [
    [machineLoadByBar, [0.7, MAXIMUM_KG, SHARE, PERSON_KG], 160.572],
    [machineLoadBySystem, [0.7, MAXIMUM_KG, SHARE, PERSON_KG], 140.977],
    [oneRepMaxWathan, [210, 8], 268.11],
  ]),
];

/** The trade's rule of thumb: a squat of 300 lb by a person of 200 lb asks for 500 lb. */
export const commonPracticeChecks: readonly Check[] = rows(
  0,
  'whole numbers',
  [
    [bodyWeightAdded, [1, 1, PERSON], 200],
    [machineTarget, [MAXIMUM, 200], 500],
  ],
  COMMON_PRACTICE,
);

/** Five steps of both ramps: 104.714 kg, 71.4 kg, share 0.7170, programme fraction 0.78. */
const RAMP: readonly (readonly [
  effort: number,
  share: number,
  bar: number,
  added: number,
  target: number,
  pounds: number,
  worth: number,
])[] = [
  [0.8, 0.6, 65.342, 30.716, 96.058, 210, 0.421],
  [0.85, 0.7, 69.425, 35.836, 105.261, 225, 0.486],
  [0.9, 0.8, 73.509, 40.955, 114.464, 250, 0.594],
  [0.95, 0.9, 77.593, 46.074, 123.667, 275, 0.702],
  [1, 1, 81.677, 51.194, 132.871, 295, 0.789],
];
const [RAMP_MAXIMUM, RAMP_MASS, RAMP_SHARE, RAMP_FRACTION] = [104.714, 71.4, 0.717, 0.78];
const KILOGRAMS_PER_POUND = 0.45359237;

export const rampChecks: readonly Check[] = RAMP.flatMap(([effort, step, bar, added, target, pounds, worth]) => [
  ...rows(0.0005, 'printed to three decimals', [[barPart, [effort, RAMP_FRACTION, RAMP_MAXIMUM], bar]]),
  ...rows(0.0005, 'printed to three decimals', [[bodyWeightAdded, [step, RAMP_SHARE, RAMP_MASS], added]]),
  ...rows(0.001, 'a sum of two values printed to three decimals', [[machineTarget, [bar, added], target]]),
  ...rows(0.0005, 'printed to three decimals', [
    [trueFraction, [pounds * KILOGRAMS_PER_POUND, RAMP_SHARE, RAMP_MASS, RAMP_MAXIMUM], worth],
  ]),
]);

/** Excess by level, in percent: no addition, matching L5/S1, share 0.72, matching the knees, whole body weight. */
const PULLS = [300, 407.2, 444, 477.2, 500] as const;
type Excess = readonly [share: number, onGround: number, ...percents: readonly number[]];

const MALE_LEVELS: readonly Excess[] = [
  [0, 300, 0, 35.7, 48.0, 59.1, 66.7],
  [0.5358, 407.2, -26.3, 0, 9.0, 17.2, 22.8],
  [0.6028, 420.6, -28.7, -3.2, 5.6, 13.5, 18.9],
  [0.886, 477.2, -37.1, -14.7, -7.0, 0, 4.8],
  [0.9726, 494.5, -39.3, -17.7, -10.2, -3.5, 1.1],
  [1, 500, -40.0, -18.6, -11.2, -4.6, 0],
];

const FEMALE_AT_444: readonly Excess[] = [
  [0.5075, 401.5, 10.6],
  [0.5824, 416.5, 6.6],
  [0.878, 475.6, -6.6],
  [0.9742, 494.8, -10.3],
  [1, 500, -11.2],
];

const ONE_DECIMAL = 'printed to one decimal';
const PERCENT_DECIMAL = 'printed in percent to one decimal';

const levelRows = (levels: readonly Excess[], pulls: readonly number[]): readonly Check[] =>
  levels.flatMap(([share, onGround, ...percents]) => [
    ...rows(0.05 + 1e-9, ONE_DECIMAL, [[axialLoadOnGround, [MAXIMUM, share, PERSON], onGround]]),
    ...percents.flatMap((percent, place) =>
      rows(0.0005 + 1e-9, PERCENT_DECIMAL, [
        [axialExcess, [pulls[place] ?? Number.NaN, MAXIMUM, share, PERSON], percent / 100],
      ]),
    ),
  ]);

/** A 70 % day: 354 lb by percent of the bar, 310.8 lb by percent of the system, against a bar of 210 lb. */
const LIGHT_DAY: readonly Row[] = [
  [axialExcess, [354, 210, 0.5358, PERSON], 0.116],
  [axialExcess, [354, 210, 0.6028, PERSON], 0.071],
  [axialExcess, [354, 210, 0.886, PERSON], -0.086],
  [axialExcess, [354, 210, 1, PERSON], -0.137],
  [axialExcess, [310.8, 210, 0.5358, PERSON], -0.02],
  [axialExcess, [310.8, 210, 0.886, PERSON], -0.197],
  [axialExcess, [310.8, 210, 1, PERSON], -0.242],
  [shoulderExcess, [354, 210], 0.686],
  [shoulderExcess, [310.8, 210], 0.48],
  [shoulderExcess, [444, 300], 0.48],
];

export const axialChecks: readonly Check[] = [
  ...levelRows(MALE_LEVELS, PULLS),
  ...levelRows(FEMALE_AT_444, [444]),
  ...rows(0.0005 + 1e-9, PERCENT_DECIMAL, LIGHT_DAY),
  ...rows(0, 'weightless, every level carries the pull', [[axialLoadInFlight, [444], 444]]),
];

export const calibrationChecks: readonly Check[] = rows(
  1e-9,
  BINARY,
  [
    [deliveredLoad, [100, 1, 0], 100],
    [deliveredLoad, [100, 1.04, -1], 103],
    [loadToCommand, [103, 1.04, -1], 100],
  ],
  COMMON_PRACTICE,
);
