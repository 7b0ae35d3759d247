import { formula, type FormulaInput, type FormulaRecord } from '../formula.ts';
import { curveOf, type Curve } from '../plot.ts';
import { PETERSEN_2015 } from '../sources.ts';
import { BOSCO_1983 } from './sources.ts';
import { STANDARD_GRAVITY } from '#units/gravity.ts';
import { metres, metresPerSecond, type Metres, type MetresPerSecond, type Seconds } from '#units/quantity.ts';

/** A jump timed from take-off to landing. There is no jump without weight: before and after a flight only. */

const flightTime: FormulaInput = {
  name: 'time in the air',
  symbol: 't',
  unit: 's',
  possible: [0, 1.5],
  valid: [0.2, 0.75],
};

const limits: Pick<FormulaRecord, 'source' | 'restsOn' | 'doesNotKnow'> = {
  source: BOSCO_1983,
  restsOn: [PETERSEN_2015],
  doesNotKnow:
    'Whether the person landed as tall as they took off: tucked legs at landing read too high. Between days the jump itself repeats only moderately (intraclass correlation 0.63 without and 0.76 with a countermovement).',
};

/** Height of a jump [m] from its time in the air. */
export const heightOfFlightTime = formula(
  {
    id: 'jump/height-of-flight-time',
    revision: 1,
    title: 'Height of a jump [m] from its time in the air',
    equation: 'g_0 t² / 8',
    inputs: [flightTime],
    output: { name: 'jump height', symbol: 'h', unit: 'm' },
    ...limits,
    plot: {
      says: 'Height grows with the square of the time: at half a second, a timing error of 10 ms is an error of 12 mm.',
      x: { name: 'time in the air', unit: 's' },
      y: { name: 'jump height', unit: 'm' },
      curves: (): readonly Curve[] => [curveOf('height', heightOfFlightTime, [0.2, 0.75], (time) => [time])],
    },
  },
  (time: Seconds): Metres => metres((STANDARD_GRAVITY * time * time) / 8),
);

/** Speed at take-off [m/s] from the time in the air. */
export const takeOffSpeed = formula(
  {
    id: 'jump/take-off-speed',
    revision: 1,
    title: 'Speed at take-off [m/s] from the time in the air',
    equation: 'g_0 t / 2',
    inputs: [flightTime],
    output: { name: 'speed at take-off', symbol: 'v', unit: 'm/s' },
    ...limits,
  },
  (time: Seconds): MetresPerSecond => metresPerSecond((STANDARD_GRAVITY * time) / 2),
);
