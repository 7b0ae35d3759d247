import fc from 'fast-check';
import { expect, test } from 'vitest';
import { day, type Day } from '#units/day.ts';
import { DRIFT_PER_DAY, filterLocalLevel, levelAt, smoothLocalLevel } from './local-level.ts';
import { filterLocalTrend, smoothLocalTrend } from './local-trend.ts';
import type { Observation } from './observation.ts';
import { readSet, type SetEstimate } from '../strength/set-estimate.ts';
import { sessionObservation } from './session-observation.ts';
import { barLoad, logRatio, repetitions } from '#units/quantity.ts';

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

test('a lower bound that is the level itself says nothing new', () => {
  const [, step] = filterLocalLevel([reading(0, 4.6), reading(0, 4.6, { lowerBound: true })]).steps;
  expect(step).toMatchObject({ treatment: 'bound not above', level: 4.6, variance: 0.0009 });
  const [, withTrend] = filterLocalTrend([reading(0, 4.6), reading(0, 4.6, { lowerBound: true })]).steps;
  expect(withTrend).toMatchObject({ treatment: 'bound not above', filtered: { mean: [4.6, 0] } });
});

test('a bound that says nothing new, or a start, is not counted in the likelihood', () => {
  const bound = reading(0, 4.5, { lowerBound: true });
  for (const filter of [filterLocalLevel, filterLocalTrend]) {
    expect(filter([reading(0, 4.6)]).logLikelihood).toBe(0);
    expect(filter([reading(0, 4.6), bound]).logLikelihood).toBe(0);
    // One innovation of 0 with a variance of 0.0018.
    const used = -0.5 * Math.log(2 * Math.PI * 0.0018);
    expect(filter([reading(0, 4.6), reading(0, 4.6)]).logLikelihood).toBeCloseTo(used, 10);
    // A doubted reading counts with nine times its variance.
    const doubted = -0.5 * (Math.log(2 * Math.PI * 0.009) + 0.4 ** 2 / 0.009);
    expect(filter([reading(0, 4.6), reading(0, 5)]).logLikelihood).toBeCloseTo(doubted, 10);
  }
});

test('a trend doubts, bounds and starts as the level does', () => {
  const [, doubted] = filterLocalTrend([reading(0, 4.6), reading(0, 5)]).steps;
  expect(doubted?.treatment).toBe('widened');
  expect(doubted?.filtered.mean[0]).toBeCloseTo(4.6 + 0.4 / 10, 12);
  const [start, lifted] = filterLocalTrend([reading(0, 4.6), reading(0, 4.62, { lowerBound: true })]).steps;
  expect(start).toMatchObject({ treatment: 'start', innovation: 0, innovationVariance: 0.0009 });
  expect(start?.filtered.covariance).toEqual([0.0009, 0, 0, 0.001 ** 2]);
  expect(lifted?.filtered.mean[0]).toBeCloseTo(4.61, 12);
});

test('a widening counts after its prior’s day and up to the day itself, in either filter', () => {
  const prior = { day: day(10), level: 4.6, variance: 0.01 };
  const variances = (on: number) => {
    const options = { prior, widenings: [{ day: day(on), variance: 0.02 }], driftPerDay: 0, trendDrift: 0, trendSd: 0 };
    return [
      filterLocalLevel([reading(20, 4.6)], options).steps[0]?.predictedVariance,
      filterLocalTrend([reading(20, 4.6)], options).steps[0]?.predicted.covariance[0],
    ];
  };
  for (const variance of [...variances(10), ...variances(21)]) expect(variance).toBeCloseTo(0.01, 12);
  for (const variance of [...variances(11), ...variances(20)]) expect(variance).toBeCloseTo(0.03, 12);
});

test('widenings of one stretch are taken in order of their days, however they are given', () => {
  const widenings = [
    { day: day(30), variance: 0.01 },
    { day: day(20), variance: 0.02 },
  ];
  const series = [reading(0, 4.6), reading(40, 4.6)];
  const [one, other] = [widenings, widenings.toReversed()].map((each) =>
    filterLocalTrend(series, { widenings: each }).steps.at(-1),
  );
  expect(one?.predicted).toEqual(other?.predicted);
  // Twenty days at the start of the trend, ten more after each widening: what is left of a trend is that of ten days.
  expect(one?.predicted.covariance[3]).toBeCloseTo(0.001 ** 2 + 10 * 1e-8, 12);
});

test('an observation on the day of its prior is in order', () => {
  const prior = { day: day(10), level: 4.6, variance: 0.01 };
  expect(filterLocalLevel([reading(10, 4.6)], { prior }).steps).toHaveLength(1);
  expect(() => filterLocalTrend([reading(9, 4.6)], { prior })).toThrow(/before the prior/);
});

test('a session without a set says why it says nothing', () => {
  expect(sessionObservation(day(0), [])).toEqual({
    kind: 'none',
    reason: 'No work set of the session says anything of a maximum.',
  });
});

const set = (logMaximum: number, logSd: number, lowerBound: boolean): SetEstimate => {
  const read = readSet({
    load: barLoad(100),
    completed: repetitions(1),
    effort: { kind: 'failure' },
    novice: false,
    of: repetitions(1),
  });
  if (read.kind === 'none') throw new Error(read.reason);
  return { ...read, logMaximum: logRatio(logMaximum), logSd: logRatio(logSd), lowerBound };
};

test('sets of a session are averaged, bounds only where there is nothing else', () => {
  const known = [set(4.6, 0.1, false), set(4.7, 0.2, false)];
  const bounds = [set(4.9, 0.3, true), set(4.8, 0.1, true)];
  const [ofKnown, ofAll, ofBounds] = [known, [...bounds, ...known], bounds].map((sets) => {
    const found = sessionObservation(day(3), sets);
    return found.kind === 'observation' ? found.observation : null;
  });
  expect(ofKnown).toEqual({
    day: 3,
    y: expect.closeTo(4.65, 12) as number,
    variance: expect.closeTo(0.025, 12) as number,
    lowerBound: false,
  });
  expect(ofAll).toEqual(ofKnown);
  expect(ofBounds).toEqual({
    day: 3,
    y: expect.closeTo(4.85, 12) as number,
    variance: expect.closeTo(0.05, 12) as number,
    lowerBound: true,
  });
});

test('a reading of exactly three standard deviations off is still used', () => {
  const exact = (y: number) => ({ day: day(0), y, variance: 0.5 });
  expect(filterLocalLevel([exact(4), exact(7)]).steps[1]?.treatment).toBe('used');
  expect(filterLocalLevel([exact(4), exact(7.001)]).steps[1]?.treatment).toBe('widened');
});

test('an error names the observation', () => {
  expect(() => filterLocalLevel([reading(5, 4.6), reading(4, 4.6)])).toThrow('Observation 2 lies before the one ahead');
  expect(() => filterLocalTrend([reading(5, 4.6), reading(6, Number.NaN)])).toThrow('Observation 2 needs a finite');
});

test('a lower bound under the level leaves a level with a trend as it was, and as unsure', () => {
  const [start, bound] = filterLocalTrend([reading(0, 4.6), reading(0, 4.5, { lowerBound: true })]).steps;
  expect(bound?.filtered).toEqual(start?.filtered);
});
