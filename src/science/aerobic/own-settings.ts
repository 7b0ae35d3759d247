import { formula, type FormulaInput } from '../formula.ts';
import { MOORE_2014, OUR_OWN_DESIGN } from '../sources.ts';
import { beltSpeed, heartRateInput, share, uptake } from './inputs.ts';
import { SWAIN_LEUTHOLTZ_1997 } from './sources.ts';
import { RESTING_UPTAKE } from './walking-and-running.ts';
import {
  metresPerMinute,
  watts,
  type Fraction,
  type HeartRate,
  type MetresPerMinute,
  type OxygenUptake,
  type Quantity,
  type Watts,
} from '#units/quantity.ts';

/** What to set on a machine, read off the person's own stages instead of a handbook. */

/** Intercept and slope of a line through stages; the line says what x and y are. */
export type Intercept = Quantity<'intercept of a line'>;
export type Slope = Quantity<'slope of a line'>;

const constant = (name: string, symbol: string, unit: string, possible: readonly [number, number]): FormulaInput => ({
  name,
  symbol,
  unit,
  possible,
  valid: possible,
});

/** A line whose slope is nearly nothing has no place at which it reaches a value. */
const lineOf = (y: string, x: string): readonly FormulaInput[] => [
  constant('intercept of the line', 'a', y, [-300, 300]),
  constant('slope of the line', 'b', `${y} for each ${x}`, [1e-4, 10]),
];

const onLine = {
  revision: 1,
  source: OUR_OWN_DESIGN,
  restsOn: [MOORE_2014],
} as const;

const ofUptake = {
  ...onLine,
  doesNotKnow: 'That the line bends near the maximum and shifts with another machine; the error of the maximum itself.',
} as const;
const ofRate = {
  ...onLine,
  doesNotKnow:
    'Heat, sleep, caffeine, drift over a long bout; and the first weeks of flight and of return, when the heart beats faster at every power and speed.',
} as const;

const power = { name: 'power', symbol: 'P', unit: 'W' } as const;
const speed = { name: 'speed on the level in 1 g', symbol: 'S_1', unit: 'm/min' } as const;

/** Power at which the person's own line has an uptake [W]. */
export const powerAtUptake = formula(
  {
    ...ofUptake,
    id: 'own-line/power-at-uptake',
    title: "Power at which the person's own line has an uptake [W]",
    equation: '(VO2 − a) / b',
    inputs: [uptake('oxygen uptake', 'VO2', [5, 90]), ...lineOf('mL/(kg min)', 'W')],
    output: power,
  },
  (wanted: OxygenUptake, intercept: Intercept, slope: Slope): Watts => watts((wanted - intercept) / slope),
);

/** Power at which the person's own line has a heart rate [W]. */
export const powerAtRate = formula(
  {
    ...ofRate,
    id: 'own-line/power-at-rate',
    title: "Power at which the person's own line has a heart rate [W]",
    equation: '(HR − a) / b',
    inputs: [heartRateInput('heart rate', 'HR', [60, 220]), ...lineOf('1/min', 'W')],
    output: power,
  },
  (wanted: HeartRate, intercept: Intercept, slope: Slope): Watts => watts((wanted - intercept) / slope),
);

/** Speed at which the person's own line has an uptake [m/min]. */
export const speedAtUptake = formula(
  {
    ...ofUptake,
    id: 'own-line/speed-at-uptake',
    title: "Speed at which the person's own line has an uptake [m/min]",
    equation: '(VO2 − a) / b',
    inputs: [uptake('oxygen uptake', 'VO2', [5, 90]), ...lineOf('mL/(kg min)', 'm/min')],
    output: speed,
  },
  (wanted: OxygenUptake, intercept: Intercept, slope: Slope): MetresPerMinute =>
    metresPerMinute((wanted - intercept) / slope),
);

/** Speed at which the person's own line has a heart rate [m/min]. */
export const speedAtRate = formula(
  {
    ...ofRate,
    id: 'own-line/speed-at-rate',
    title: "Speed at which the person's own line has a heart rate [m/min]",
    equation: '(HR − a) / b',
    inputs: [heartRateInput('heart rate', 'HR', [60, 220]), ...lineOf('1/min', 'm/min')],
    output: speed,
  },
  (wanted: HeartRate, intercept: Intercept, slope: Slope): MetresPerMinute =>
    metresPerMinute((wanted - intercept) / slope),
);

const inProportion = {
  revision: 1,
  source: OUR_OWN_DESIGN,
  restsOn: [SWAIN_LEUTHOLTZ_1997],
  output: speed,
  doesNotKnow:
    'Whether the person runs at both speeds: on the level the net cost of one gait goes with the speed, from a walk to a run it jumps.',
} as const;
const stageSpeed = beltSpeed('speed of the own stage', 'S_i', [50, 300]);

/** Speed for an uptake, from one own stage [m/min]. */
export const speedOfStageUptake = formula(
  {
    ...inProportion,
    id: 'own-stage/speed-of-uptake',
    title: 'Speed for an uptake, from one own stage [m/min]',
    equation: 'S_i · (VO2 − 3.5) / (VO2_i − 3.5)',
    inputs: [
      stageSpeed,
      uptake('oxygen uptake', 'VO2', [8, 90], [RESTING_UPTAKE, 100]),
      uptake('measured uptake of the own stage', 'VO2_i', [8, 90], [7, 100]),
    ],
  },
  (own: MetresPerMinute, wanted: OxygenUptake, measured: OxygenUptake): MetresPerMinute =>
    metresPerMinute((own * (wanted - RESTING_UPTAKE)) / (measured - RESTING_UPTAKE)),
);

/** Speed for a share of the reserve, from one own stage [m/min]. */
export const speedOfStageReserve = formula(
  {
    ...inProportion,
    id: 'own-stage/speed-of-reserve',
    title: 'Speed for a share of the reserve, from one own stage [m/min]',
    equation: 'S_i · f / f_i',
    inputs: [
      stageSpeed,
      share('fraction of the reserve', 'f', [0.3, 1]),
      share('fraction of the reserve in the own stage', 'f_i', [0.3, 1], [0.2, 1]),
    ],
  },
  (own: MetresPerMinute, wanted: Fraction, reached: Fraction): MetresPerMinute =>
    metresPerMinute((own * wanted) / reached),
);
