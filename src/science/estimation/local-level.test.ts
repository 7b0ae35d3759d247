import fc from 'fast-check';
import { expect, test } from 'vitest';
import { day, type Day } from '#units/day.ts';
import { DRIFT_PER_DAY, filterLocalLevel, levelAt, smoothLocalLevel } from './local-level.ts';
import { filterLocalTrend, smoothLocalTrend } from './local-trend.ts';
import type { Observation } from './observation.ts';

/** Readings near one another, so that none is doubted. */
const anyReading = fc.record({
  day: fc.nat(300),
  y: fc.double({ min: 4.55, max: 4.65, noNaN: true }),
  variance: fc.double({ min: 0.0025, max: 0.02, noNaN: true }),
});
const inOrder = (readings: readonly { readonly day: number; readonly y: number; readonly variance: number }[]) =>
  readings.toSorted((a, b) => a.day - b.day).map((reading): Observation => ({ ...reading, day: day(reading.day) }));
const anySeries = fc.array(anyReading, { minLength: 1, maxLength: 30 }).map(inOrder);

/** Rounding of some thirty updates in doubles. */
const ROUNDING = 1e-12;

test('a smoothed level is never less sure than a filtered one, and the last is the same', () => {
  fc.assert(
    fc.property(anySeries, (series) => {
      const { steps } = filterLocalLevel(series);
      const smoothed = smoothLocalLevel(filterLocalLevel(series));
      for (const [place, step] of steps.entries())
        expect(smoothed[place]?.variance).toBeLessThanOrEqual(step.variance + ROUNDING);
      expect(smoothed.at(-1)).toEqual({
        day: steps.at(-1)?.day,
        level: steps.at(-1)?.level,
        variance: steps.at(-1)?.variance,
      });
    }),
  );
});

test('the same holds with a trend', () => {
  fc.assert(
    fc.property(anySeries, (series) => {
      const filtered = filterLocalTrend(series);
      const smoothed = smoothLocalTrend(filtered);
      for (const [place, { filtered: state }] of filtered.steps.entries()) {
        const [p11, p12, p21, p22] = state.covariance;
        expect(smoothed[place]?.variance).toBeLessThanOrEqual(p11 + ROUNDING);
        expect(smoothed[place]?.trendVariance).toBeLessThanOrEqual(p22 + ROUNDING);
        expect(Math.abs(p12 - p21)).toBeLessThan(ROUNDING);
        expect(p11 * p22 - p12 * p21).toBeGreaterThan(-ROUNDING);
      }
      const last = filtered.steps.at(-1)?.filtered;
      expect(smoothed.at(-1)).toMatchObject({ level: last?.mean[0], trend: last?.mean[1] });
    }),
  );
});

test('the order of readings of one day does not matter', () => {
  const sameDay = fc.array(anyReading, { minLength: 2, maxLength: 6 });
  fc.assert(
    fc.property(anySeries, sameDay, (series, readings) => {
      const on = day((series.at(-1)?.day ?? 0) + 3);
      const together = readings.map((reading) => ({ ...reading, day: on }));
      const one = levelAt(filterLocalLevel([...series, ...together]), on);
      const other = levelAt(filterLocalLevel([...series, ...together.toReversed()]), on);
      if (one.kind !== 'level' || other.kind !== 'level') throw new Error('There is a level after readings.');
      expect(one.level).toBeCloseTo(other.level, 11);
      expect(one.variance).toBeCloseTo(other.variance, 11);
    }),
  );
});

test('the order does not matter when the day is the first either', () => {
  fc.assert(
    fc.property(fc.array(anyReading, { minLength: 2, maxLength: 6 }), (readings) => {
      const together = readings.map((reading) => ({ ...reading, day: day(0) }));
      const [one, other] = [together, together.toReversed()].map((each) => filterLocalLevel(each).steps.at(-1));
      expect(one?.level).toBeCloseTo(other?.level ?? Number.NaN, 11);
    }),
  );
});

const reading = (on: number, y: number, more: Partial<Observation> = {}): Observation => ({
  day: day(on),
  y,
  variance: 0.0009,
  ...more,
});
const at = (series: readonly Observation[], on: Day, options = {}) => levelAt(filterLocalLevel(series, options), on);

test('the first reading is the level', () => {
  expect(at([reading(10, 4.6)], day(10))).toEqual({ kind: 'level', level: 4.6, variance: 0.0009, newest: day(10) });
});

test('ahead of the last reading the level is held and only the variance grows', () => {
  const found = at([reading(10, 4.6)], day(30));
  expect(found).toMatchObject({ kind: 'level', level: 4.6 });
  expect(found.kind === 'level' && found.variance).toBeCloseTo(0.0009 + 20 * DRIFT_PER_DAY, 12);
});

test('a day knows nothing of later readings', () => {
  const series = [reading(0, 4.6), reading(20, 4.7)];
  expect(at(series, day(19))).toMatchObject({ level: 4.6, newest: day(0) });
  expect(at(series, day(-1))).toEqual({ kind: 'nothing yet' });
  expect(at([], day(5))).toEqual({ kind: 'nothing yet' });
});

test('a prior stands until there is a reading', () => {
  const options = { prior: { day: day(100), level: 4.5, variance: 0.01 } };
  expect(at([], day(99), options)).toEqual({ kind: 'nothing yet' });
  expect(at([], day(100), options)).toEqual({ kind: 'level', level: 4.5, variance: 0.01, newest: null });
  expect(() => at([reading(90, 4.5)], day(100), options)).toThrow(/before the prior/);
});

test('variance is added once, before the readings of its day', () => {
  const options = { widenings: [{ day: day(10), variance: 0.01 }] };
  const variance = (on: number, series = [reading(0, 4.6)]): number => {
    const found = at(series, day(on), options);
    return found.kind === 'level' ? found.variance : Number.NaN;
  };
  expect(variance(9)).toBeCloseTo(0.0009 + 9 * DRIFT_PER_DAY, 12);
  expect(variance(10)).toBeCloseTo(0.0109 + 10 * DRIFT_PER_DAY, 12);
  expect(variance(20, [reading(10, 4.6)])).toBeCloseTo(0.0009 + 10 * DRIFT_PER_DAY, 12);
  expect(filterLocalLevel([reading(0, 4.6), reading(10, 4.6)], options).steps[1]?.predictedVariance).toBeCloseTo(
    0.0109 + 10 * DRIFT_PER_DAY,
    12,
  );
});

test('a reading too far off counts a ninth and is flagged', () => {
  const [, step] = filterLocalLevel([reading(0, 4.6), reading(0, 5)]).steps;
  expect(step?.treatment).toBe('widened');
  // Precision weights 1 / 0.0009 and 1 / 0.0081.
  expect(step?.level).toBeCloseTo(4.6 + 0.4 / 10, 12);
});

test('a lower bound lifts the level and never lowers it', () => {
  const bound = (y: number) => filterLocalLevel([reading(0, 4.6), reading(0, y, { lowerBound: true })]).steps[1];
  expect(bound(4.5)).toMatchObject({ treatment: 'bound not above', level: 4.6, variance: 0.0009 });
  expect(bound(4.62)).toMatchObject({ treatment: 'used' });
  expect(bound(4.62)?.level).toBeCloseTo(4.61, 12);
});

test('a widening starts the trend again', () => {
  const climbing = [0, 7, 14, 21, 28].map((on) => reading(on, 4.6 + on * 0.002));
  const after = reading(40, 4.66);
  const kept = filterLocalTrend([...climbing, after]).steps.at(-1);
  const again = filterLocalTrend([...climbing, after], { widenings: [{ day: day(40), variance: 0.01 }] }).steps.at(-1);
  expect(kept?.predicted.mean[1]).toBeGreaterThan(0.0001);
  expect(again?.predicted.mean[1]).toBe(0);
});

test.each([
  { series: [reading(5, 4.6), reading(4, 4.6)], says: /before the one ahead/ },
  { series: [reading(5, 4.6, { variance: 0 })], says: /variance above zero/ },
  { series: [reading(5, Number.NaN)], says: /finite value/ },
])('readings out of order or without a value are an error of the program', ({ series, says }) => {
  expect(() => filterLocalLevel(series)).toThrow(says);
  expect(() => filterLocalTrend(series)).toThrow(says);
});
