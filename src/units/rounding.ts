/** Two loads closer than a millionth of a step are the same load: it absorbs binary fractions, nothing else. */
const TOLERANCE = 1e-6;

/** Whole steps nearest to a value; a half goes down. Adding 0 makes a plain zero of a negative one. */
export const stepsNearest = (value: number, step: number): number => Math.ceil(value / step - 0.5 - TOLERANCE) + 0;

/** Whole steps that do not pass a limit. */
export const stepsNotOver = (limit: number, step: number): number => Math.floor(limit / step + TOLERANCE);

/** Whole steps that are not under a value. */
export const stepsNotUnder = (least: number, step: number): number => Math.ceil(least / step - TOLERANCE) + 0;

/**
 * The load to set, in whole steps: the target to nearest with a half down, every limit down, the least of them.
 * Under the machine's least: the least, where every limit allows it, else null.
 */
export const roundedLoad = (target: number, limits: readonly number[], step: number, least: number): number | null => {
  const most = limits.reduce((lowest, limit) => Math.min(lowest, stepsNotOver(limit, step)), Infinity);
  const steps = Math.min(stepsNearest(target, step), most);
  const fewest = stepsNotUnder(least, step);
  if (steps >= fewest) return steps;
  return fewest <= most ? fewest : null;
};
