import type { PowerDuration } from './power-duration.ts';
import { joules, watts, type Joules, type Seconds, type Watts } from '#units/quantity.ts';

/** Trials to exhaustion, and the two straight lines through them. They weigh errors differently. */

/** A constant power kept until exhaustion. */
export interface Trial {
  readonly power: Watts;
  readonly time: Seconds;
}

export interface TrialFit extends PowerDuration {
  readonly criticalPowerSd: Watts;
  readonly capacitySd: Joules;
}

interface StraightLine {
  readonly slope: number;
  readonly intercept: number;
  readonly slopeSd: number;
  readonly interceptSd: number;
}

export const sumOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);

/** Ordinary least squares through three points or more whose x are not all one. */
const straightLine = (points: readonly (readonly [x: number, y: number])[]): StraightLine => {
  const count = points.length;
  const xMean = sumOf(points.map(([x]) => x)) / count;
  const yMean = sumOf(points.map(([, y]) => y)) / count;
  const sxx = sumOf(points.map(([x]) => (x - xMean) ** 2));
  const slope = sumOf(points.map(([x, y]) => (x - xMean) * (y - yMean))) / sxx;
  const intercept = yMean - slope * xMean;
  const variance = sumOf(points.map(([x, y]) => (y - intercept - slope * x) ** 2)) / (count - 2);
  return {
    slope,
    intercept,
    slopeSd: Math.sqrt(variance / sxx),
    interceptSd: Math.sqrt(variance * (1 / count + xMean ** 2 / sxx)),
  };
};

/** Work on time: the slope is critical power. */
export const workTimeFit = (trials: readonly Trial[]): TrialFit => {
  const line = straightLine(trials.map(({ power, time }) => [time, power * time]));
  return {
    criticalPower: watts(line.slope),
    capacity: joules(line.intercept),
    criticalPowerSd: watts(line.slopeSd),
    capacitySd: joules(line.interceptSd),
  };
};

/** Power on the inverse of time: the slope is the store. */
export const inverseTimeFit = (trials: readonly Trial[]): TrialFit => {
  const line = straightLine(trials.map(({ power, time }) => [1 / time, power]));
  return {
    criticalPower: watts(line.intercept),
    capacity: joules(line.slope),
    criticalPowerSd: watts(line.interceptSd),
    capacitySd: joules(line.slopeSd),
  };
};
