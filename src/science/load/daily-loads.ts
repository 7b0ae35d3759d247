/** Loads of days in a row. Missing is not zero: a day that was not reported stays null. */
export type DailyLoads = readonly (number | null)[];

const LARGEST = 100_000;

/** The loads that cannot be, as sentences; days are counted from 1. */
export const loadFaults = (loads: DailyLoads): readonly string[] =>
  loads.flatMap((load, place) =>
    load === null || (load >= 0 && load <= LARGEST)
      ? []
      : [`The load of day ${place + 1} must lie in 0 to ${LARGEST}; it is ${load}.`],
  );

/** The loads of a window that is complete, or how much of it there is. */
export const completeWindow = (
  loads: DailyLoads,
  days: number,
):
  | { readonly kind: 'complete'; readonly loads: readonly number[] }
  | { readonly kind: 'none'; readonly reason: string } => {
  const known = loads.slice(-days).flatMap((load) => load ?? []);
  return known.length === days
    ? { kind: 'complete', loads: known }
    : { kind: 'none', reason: `${known.length} of ${days} days were reported.` };
};

export const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
export const mean = (values: readonly number[]): number => sum(values) / values.length;

/** Standard deviation of a sample: the squares over one less than their number. */
export const sampleSd = (values: readonly number[]): number => {
  const middle = mean(values);
  return Math.sqrt(sum(values.map((value) => (value - middle) ** 2)) / (values.length - 1));
};
