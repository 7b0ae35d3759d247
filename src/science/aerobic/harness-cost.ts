import { curveOf, type Curve } from '../plot.ts';
import { formula } from '../formula.ts';
import { OUR_OWN_DESIGN } from '../sources.ts';
import { beltSpeed, harnessLoad, uptake } from './inputs.ts';
import { ARELLANO_KRAM_2014, FARLEY_MCMAHON_1992, TEUNISSEN_2007 } from './sources.ts';
import { RESTING_UPTAKE } from './walking-and-running.ts';
import {
  fraction,
  metresPerMinute,
  oxygenUptake,
  type Fraction,
  type MetresPerMinute,
  type OxygenUptake,
} from '#units/quantity.ts';

/**
 * What walking and running cost under a harness that pulls with a fraction f of the body's weight: the net cost in 1 g
 * times a factor k(f). Measured under vertical support on Earth; nobody has published it weightless.
 */

/** Slopes of the factor: running the mean of the two lines of 2007, walking a third saved at a quarter of the weight. */
export const RUNNING_SLOPE = 0.77;
export const WALKING_SLOPE = 0.44;
const RUNNING_SLOPE_SD = 0.1;
const WALKING_SLOPE_SD = 0.12;
/** What the step from support on Earth to a harness weightless adds; our own setting. */
const TRANSFER_SD = 0.05;

const load = harnessLoad();
const factor = { name: 'share of the net cost in 1 g', symbol: 'k', unit: '1' } as const;
const factorSd = { name: 'standard deviation of the factor', symbol: 'SD_k', unit: '1' } as const;
const fitted = {
  revision: 1,
  source: OUR_OWN_DESIGN,
  restsOn: [TEUNISSEN_2007, FARLEY_MCMAHON_1992, ARELLANO_KRAM_2014],
  doesNotKnow:
    'Weightless legs and arms, where harness and bungees pull, and whether the belt is driven: no measurement in flight was found. The slopes are our own fit, editable; a person’s own pairs are better as soon as there are any.',
} as const;
const axes = {
  x: { name: 'effective harness load over body weight', unit: '1' },
  y: { name: 'share of the net cost in 1 g', unit: '1' },
} as const;

/** Share of the net cost of running left under a harness. */
export const runningCostFactor = formula(
  {
    ...fitted,
    id: 'harness/running-factor',
    title: 'Share of the net cost of running left under a harness',
    equation: '1 − 0.77 · (1 − f)',
    inputs: [load],
    output: factor,
    plot: {
      says: 'The line used, with one standard deviation, between the two lines measured in 2007; older points lie on both sides.',
      ...axes,
      curves: (): readonly Curve[] => [
        banded('used here', (f) => [runningCostFactor(f), sdOfRunningCostFactor(f)]),
        curveOf('rolling trolley 2007', rollingTrolleyLine, [0.25, 1], (f) => [f]),
        curveOf('fixed pulley 2007', fixedPulleyLine, [0.25, 1], (f) => [f]),
        { label: 'Farley and McMahon 1992', points: [[0.25, 0.28]], scattered: true },
        { label: 'extrapolated to no weight', points: [[0, 0.35]], scattered: true },
      ],
    },
  },
  (part: Fraction): Fraction => fraction(1 - RUNNING_SLOPE * (1 - part)),
);

/** Share of the net cost of walking left under a harness. */
export const walkingCostFactor = formula(
  {
    ...fitted,
    id: 'harness/walking-factor',
    title: 'Share of the net cost of walking left under a harness',
    equation: '1 − 0.44 · (1 − f)',
    inputs: [load],
    output: factor,
    plot: {
      says: 'Walking gains much less from support than running does.',
      ...axes,
      curves: (): readonly Curve[] => [
        banded('walking', (f) => [walkingCostFactor(f), sdOfWalkingCostFactor(f)]),
        curveOf('running', runningCostFactor, [0.3, 1.1], (f) => [f]),
        { label: 'Farley and McMahon 1992, walking', points: [[0.25, 0.67]], scattered: true },
      ],
    },
  },
  (part: Fraction): Fraction => fraction(1 - WALKING_SLOPE * (1 - part)),
);

/** Standard deviation of the share left of running. */
export const sdOfRunningCostFactor = formula(
  {
    ...fitted,
    id: 'harness/running-factor-sd',
    title: 'Standard deviation of the share left of running',
    equation: '√((0.10 · (1 − f))^2 + 0.05^2)',
    inputs: [load],
    output: factorSd,
  },
  (part: Fraction): Fraction => fraction(Math.hypot(RUNNING_SLOPE_SD * (1 - part), TRANSFER_SD)),
);

/** Standard deviation of the share left of walking. */
export const sdOfWalkingCostFactor = formula(
  {
    ...fitted,
    id: 'harness/walking-factor-sd',
    title: 'Standard deviation of the share left of walking',
    equation: '√((0.12 · (1 − f))^2 + 0.05^2)',
    inputs: [load],
    output: factorSd,
  },
  (part: Fraction): Fraction => fraction(Math.hypot(WALKING_SLOPE_SD * (1 - part), TRANSFER_SD)),
);

const measured = {
  revision: 1,
  inputs: [harnessLoad([0.25, 1])],
  output: factor,
  source: TEUNISSEN_2007,
  doesNotKnow: 'Other speeds than 3 m/s, other people than ten runners, and limbs that weigh nothing.',
} as const;

/** Share of the net cost of running left, rolling trolley. */
export const rollingTrolleyLine = formula(
  {
    ...measured,
    id: 'harness/rolling-trolley',
    title: 'Share of the net cost of running left, rolling trolley',
    equation: '(0.73 · 100 · f + 26.18) / 100',
  },
  (part: Fraction): Fraction => fraction((73 * part + 26.18) / 100),
);

/** Share of the net cost of running left, fixed pulley. */
export const fixedPulleyLine = formula(
  {
    ...measured,
    id: 'harness/fixed-pulley',
    title: 'Share of the net cost of running left, fixed pulley',
    equation: '(0.81 · 100 · f + 19.36) / 100',
  },
  (part: Fraction): Fraction => fraction((81 * part + 19.36) / 100),
);

/** Oxygen uptake under a harness [mL/(kg min)]. */
export const uptakeUnderHarness = formula(
  {
    ...fitted,
    id: 'harness/uptake',
    title: 'Oxygen uptake under a harness [mL/(kg min)]',
    equation: '3.5 + k · (VO2 − 3.5)',
    inputs: [
      uptake('gross uptake of the same belt in 1 g', 'VO2', [RESTING_UPTAKE, 90]),
      { ...factor, possible: [0, 1.5], valid: [0.5, 1.1] },
    ],
    output: { name: 'oxygen uptake under the harness', symbol: 'VO2_h', unit: 'mL/(kg min)' },
  },
  (onEarth: OxygenUptake, part: Fraction): OxygenUptake =>
    oxygenUptake(RESTING_UPTAKE + part * (onEarth - RESTING_UPTAKE)),
);

/** Belt speed of the same effort under a harness [m/min]. */
export const sameEffortSpeed = formula(
  {
    ...fitted,
    id: 'harness/same-effort-speed',
    title: 'Belt speed of the same effort under a harness [m/min]',
    equation: 'S_1 / k',
    inputs: [
      beltSpeed('speed on the level in 1 g', 'S_1', [50, 300]),
      { ...factor, possible: [0.2, 1.5], valid: [0.5, 1.1] },
    ],
    output: { name: 'speed under the harness', symbol: 'S_h', unit: 'm/min' },
  },
  (onEarth: MetresPerMinute, part: Fraction): MetresPerMinute => metresPerMinute(onEarth / part),
);

const banded = (label: string, at: (f: Fraction) => readonly [value: number, sd: number]): Curve => {
  const places = Array.from({ length: 41 }, (_, place) => fraction(0.3 + 0.02 * place));
  return {
    label,
    points: places.map((f) => [f, at(f)[0]] as const),
    band: places.map((f) => {
      const [value, sd] = at(f);
      return [value - sd, value + sd] as const;
    }),
  };
};
