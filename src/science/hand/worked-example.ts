import { fraction, newtons, seconds } from '#units/quantity.ts';
import type { FatigueConstants } from './fatigue-constants.table.ts';
import type { GripTask } from './grip-task.ts';

/** An invented space walk of one hand, for plots and checks. */

const task = (name: string, duration: number, force: number, duty: number, cycle: number): GripTask => ({
  name,
  duration: seconds(duration),
  force: newtons(force),
  duty: fraction(duty),
  cycle: seconds(cycle),
});

export const WORKED_TASKS: readonly GripTask[] = [
  task('translate out', 1200, 60, 0.5, 8),
  task('fasteners', 1800, 110, 0.6, 10),
  task('inspect', 600, 15, 0.2, 10),
  task('connector', 2400, 140, 0.5, 10),
  task('translate back', 1200, 70, 0.5, 8),
  task('ingress', 1200, 90, 0.5, 6),
];

/** 500 N bare, 0.58 of it left in the glove. */
export const WORKED_MAXIMUM = newtons(290);
/** Of a hand with this critical force at 7 s on and 3 s off, reached in 70 s. */
export const workedConstants = (share: number): FatigueConstants => ({
  fatigue: (1 - share) / (0.7 * 70),
  recovery: share / (70 * (0.7 + 12.51 * 0.3)),
  restMultiplier: 12.51,
});
export const WORKED_SHARE = 0.4;
export const WORKED_CONSTANTS = workedConstants(WORKED_SHARE);

/** Mean forces of the 24 contractions of its all-out test, of its maximum, to three decimals. */
export const WORKED_FORCES: readonly number[] = [
  0.958, 0.884, 0.82, 0.764, 0.715, 0.673, 0.637, 0.605, 0.578, 0.554, 0.534, 0.516, 0.5, 0.487, 0.475, 0.465, 0.457,
  0.449, 0.443, 0.437, 0.432, 0.428, 0.424, 0.421,
];
