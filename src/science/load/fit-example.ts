import { impulseResponse, type ImpulseResponse } from './impulse-response.ts';
import { impulseResponseFit, type FitRequest, type ImpulseResponseFit } from './impulse-response-fit.ts';
import type { Curve } from '../plot.ts';

/** Sixteen invented weeks of load and 29 tests of a person whose true constants are known. */

const DAYS_OF_WEEK = [4.5, 3, 5.25, 1.35, 6.1, 3, 0];
const WEEKS = [0.8, 0.9, 1, 0.6];
const EVERY = 4;

export const KNOWN_MODEL: ImpulseResponse = { base: 100, gain: 0.1, fatigue: 0.25, gainFades: 42, fatigueFades: 7 };

export const EXAMPLE_LOADS: readonly number[] = Array.from(
  { length: 112 },
  (_, day) => (DAYS_OF_WEEK[day % 7] ?? 0) * (WEEKS[Math.floor(day / 7) % 4] ?? 0),
);

/** A disturbance that anybody can compute anew: half of the sine of 12.9898 times the number of the test. */
const disturbance = (test: number): number => 0.5 * Math.sin(12.9898 * test);

const testsOf = (): FitRequest['tests'] => {
  const course = impulseResponse(EXAMPLE_LOADS, KNOWN_MODEL);
  if (course.kind !== 'estimate') return [];
  return course.days
    .filter(({ day }) => day % EVERY === 0)
    .map(({ day, performance }, place) => ({ day, level: performance + disturbance(place + 1) }));
};

/** The quantile is SciPy’s: F(0.95; 5, 24). */
export const EXAMPLE_FIT: FitRequest = { loads: EXAMPLE_LOADS, tests: testsOf(), fQuantile: 2.620654147862887 };

/** Computed when it is first asked for; one fit serves its checks and its plot. */
let kept: ImpulseResponseFit | null = null;
export const exampleFit = (): ImpulseResponseFit => (kept ??= impulseResponseFit(EXAMPLE_FIT));

/** Performance on a day, with rest after the last load. */
export const foretold = (model: ImpulseResponse, day: number): number => {
  const rest = Array.from({ length: Math.max(0, day - EXAMPLE_LOADS.length) }, () => 0);
  const course = impulseResponse([...EXAMPLE_LOADS, ...rest], model);
  return course.kind === 'estimate' ? (course.days[day]?.performance ?? Number.NaN) : Number.NaN;
};

/** The region as points, with the usual pair, the best and the true one. */
export const regionCurves = (): readonly Curve[] => {
  const fit = exampleFit();
  if (fit.kind !== 'estimate') return [];
  const point = ({ gainFades, fatigueFades }: ImpulseResponse): readonly [number, number] => [gainFades, fatigueFades];
  return [
    { label: 'fits as well', points: fit.region.map(point), scattered: true },
    { label: 'fits best', points: [point(fit.best)], scattered: true },
    { label: 'true', points: [point(KNOWN_MODEL)], scattered: true },
  ];
};
