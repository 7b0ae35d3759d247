import { loadFaults, type DailyLoads } from './daily-loads.ts';

/** A test of performance on a day; day 0 is before the first load, day 1 after it. */
export interface PerformanceTest {
  readonly day: number;
  readonly level: number;
}

const FEWEST_TESTS = 15;
const SHORTEST_SPAN = 56;

/** Everything that keeps a model from being fitted, as sentences. */
export const fitFaults = (
  loads: DailyLoads,
  tests: readonly PerformanceTest[],
  fQuantile: number,
): readonly string[] => {
  const days = tests.map(({ day }) => day);
  const span = days.length === 0 ? 0 : Math.max(...days) - Math.min(...days);
  return [
    ...loadFaults(loads),
    ...tests.flatMap(({ day, level }) => [
      ...(Number.isInteger(day) && day >= 0 && day <= loads.length
        ? []
        : [`A test must lie on a day from 0 to ${loads.length}; one is on ${day}.`]),
      ...(Math.abs(level) <= 1e6 ? [] : [`A test must be a number of at most a million; one is ${level}.`]),
    ]),
    ...(tests.length < FEWEST_TESTS ? [`${tests.length} tests; the model needs ${FEWEST_TESTS}.`] : []),
    ...(span < SHORTEST_SPAN ? [`Tests over ${span} days; the model needs ${SHORTEST_SPAN}.`] : []),
    ...(fQuantile >= 1 && fQuantile <= 1000 ? [] : [`The F quantile must lie in 1 to 1000; it is ${fQuantile}.`]),
  ];
};
