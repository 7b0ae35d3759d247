import fc from 'fast-check';
import { expect, test } from 'vitest';
import { callWith } from '../formula.ts';
import { evaluate } from '../evaluate.ts';
import {
  maximalRateGellish,
  maximalRateGellishCurved,
  maximalRateGellishUnrounded,
  maximalRateTanaka,
} from './maximal-rate-of-age.ts';
import { heartRateReserveCycling, heartRateReserveCyclingOfReserve, maximalRateReached } from './intensity-lines.ts';
import { boundsOfZone, intensityZone } from './intensity-zone.ts';
import { INTENSITY_MEASURES, INTENSITY_ZONES, ZONE_NAMES, type IntensityMetric } from './intensity-zones.table.ts';
import { personalMaximalRate } from './personal-maximal-rate.ts';
import { wordsOf } from './read-estimate.ts';
import {
  expectedHeartRate,
  expectedUptake,
  heartRateReserve,
  reserveOfMaximumFraction,
  targetHeartRate,
  targetUptake,
  uptakeReserve,
} from './effort-reserve.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const rest = between(40, 80);
const most = between(140, 210);
const maximum = between(15, 85);
const part = between(0, 1);

test('a target heart rate is read back as its fraction, and lies between rest and maximum', () => {
  fc.assert(
    fc.property(part, rest, most, (fraction, resting, maximal) => {
      const target = callWith(targetHeartRate, [fraction, resting, maximal]);
      expect(callWith(heartRateReserve, [target, resting, maximal])).toBeCloseTo(fraction, 10);
      expect(target).toBeGreaterThanOrEqual(resting - 1e-9);
      expect(target).toBeLessThanOrEqual(maximal + 1e-9);
    }),
  );
});

test('nothing of the reserve is rest and all of it the maximum', () => {
  expect(callWith(targetHeartRate, [0, 55, 176.5])).toBe(55);
  expect(callWith(targetHeartRate, [1, 55, 176.5])).toBe(176.5);
  expect(callWith(targetUptake, [0, 42])).toBe(3.5);
  expect(callWith(targetUptake, [1, 42])).toBe(42);
});

test('a fraction of the uptake reserve is read back from its uptake', () => {
  fc.assert(
    fc.property(part, maximum, (fraction, maximal) => {
      const target = callWith(targetUptake, [fraction, maximal]);
      expect(callWith(uptakeReserve, [target, maximal])).toBeCloseTo(fraction, 10);
    }),
  );
});

test('a fraction of the maximal uptake is a smaller one of the reserve, and the same only at the maximum', () => {
  fc.assert(
    fc.property(between(0.2, 0.99), maximum, (fraction, maximal) => {
      expect(callWith(reserveOfMaximumFraction, [fraction, maximal])).toBeLessThan(fraction);
    }),
  );
  expect(callWith(reserveOfMaximumFraction, [1, 42])).toBe(1);
});

test('heart rate of an uptake and uptake of a heart rate undo each other', () => {
  fc.assert(
    fc.property(between(3.5, 80), maximum, rest, most, (uptake, maximal, resting, fastest) => {
      const rate = callWith(expectedHeartRate, [uptake, maximal, resting, fastest]);
      expect(callWith(expectedUptake, [rate, maximal, resting, fastest])).toBeCloseTo(uptake, 8);
    }),
  );
});

test('a maximum without twenty beats above rest is refused in a sentence', () => {
  expect(evaluate(targetHeartRate, [0.6, 90, 105])).toEqual({
    kind: 'refused',
    reasons: ['The maximal heart rate lies at least 20 beats above the resting one.'],
  });
  expect(evaluate(expectedHeartRate, [30, 45, 90, 109.9]).kind).toBe('refused');
  expect(evaluate(expectedHeartRate, [30, 45, 90, 110]).kind).toBe('value');
  expect(evaluate(heartRateReserve, [95, 90, 109.9]).kind).toBe('refused');
  expect(evaluate(expectedUptake, [95, 45, 90, 109.9]).kind).toBe('refused');
});

test('every line lets the maximal heart rate fall with age, all within five beats from 30 to 60 years', () => {
  const lines = [maximalRateTanaka, maximalRateGellish, maximalRateGellishUnrounded, maximalRateGellishCurved];
  fc.assert(
    fc.property(between(30, 60), (years) => {
      const rates = lines.map((line) => callWith(line, [years]));
      expect(Math.max(...rates) - Math.min(...rates)).toBeLessThan(5);
      for (const line of lines) expect(callWith(line, [years + 1])).toBeLessThan(callWith(line, [years]));
    }),
  );
});

test('a measured peak replaces every formula, and is surer', () => {
  expect(personalMaximalRate({ age: 45, measured: 191 })).toEqual({
    kind: 'estimate',
    value: 191,
    sd: 3,
    cautions: [],
  });
  expect(personalMaximalRate({ age: 45 })).toEqual({
    kind: 'estimate',
    value: 176.5,
    sd: 10,
    cautions: ['The maximal heart rate is predicted from age.'],
  });
});

test('an age outside the lines is flagged, one that cannot be is refused, and nothing known is said', () => {
  expect(personalMaximalRate({ age: 80 })).toMatchObject({
    cautions: ['The maximal heart rate is predicted from age.', 'age 80 years is outside 20 to 75.'],
  });
  expect(wordsOf(personalMaximalRate({ age: 3 }))).toContain('age must lie in');
  expect(wordsOf(personalMaximalRate({ measured: 20 }))).toContain('maximal heart rate must');
  expect(wordsOf(personalMaximalRate({}))).toContain('Give a measured peak');
});

const METRICS = Object.keys(INTENSITY_MEASURES) as readonly IntensityMetric[];

test.each(METRICS)('by %s every value has one zone, whose edges hold it', (metric) => {
  const [low, high] = INTENSITY_MEASURES[metric].possible;
  fc.assert(
    fc.property(between(low, high), (value) => {
      const zone = intensityZone(metric, value);
      if (zone.kind === 'refused') throw new Error(zone.reason);
      const { from = -Infinity, upTo = Infinity } = zone;
      expect(from <= value && value < upTo).toBe(true);
      const holding = ZONE_NAMES.filter((name) => {
        const bounds = boundsOfZone(INTENSITY_MEASURES[metric], name);
        return (bounds.from ?? -Infinity) <= value && value < (bounds.upTo ?? Infinity);
      });
      expect(holding).toEqual([zone.name]);
    }),
  );
});

test.each(METRICS)('by %s an edge belongs to the zone above it', (metric) => {
  for (const [place, edge] of INTENSITY_MEASURES[metric].begins.entries()) {
    expect(intensityZone(metric, edge)).toMatchObject({ kind: 'zone', name: ZONE_NAMES[place + 1], from: edge });
    expect(intensityZone(metric, edge - 1e-9)).toMatchObject({ kind: 'zone', name: ZONE_NAMES[place], upTo: edge });
  }
});

test('the lowest zone has no lower edge and the highest no upper one', () => {
  expect(intensityZone('exertion', 7)).toEqual({
    kind: 'zone',
    name: 'very light',
    measure: 'perceived exertion, 6 to 20',
    upTo: 9,
  });
  expect(intensityZone('exertion', 20)).toEqual({
    kind: 'zone',
    name: 'near maximal to maximal',
    measure: 'perceived exertion, 6 to 20',
    from: 18,
  });
});

test('a value that its measure cannot have is refused at both ends, and so is no number', () => {
  for (const value of [Number.NaN, 5.99, 20.01])
    expect(intensityZone('exertion', value)).toEqual({
      kind: 'refused',
      reason: `The perceived exertion, 6 to 20 must lie in 6 to 20 points; it is ${value}.`,
    });
  for (const value of [6, 20]) expect(intensityZone('exertion', value).kind).toBe('zone');
});

test('bounds that are not there are left out, and every measure is an input of the method', () => {
  expect(Object.keys(boundsOfZone(INTENSITY_MEASURES.exertion, 'very light'))).toEqual(['upTo']);
  expect(Object.keys(boundsOfZone(INTENSITY_MEASURES.exertion, 'near maximal to maximal'))).toEqual(['from']);
  expect(intensityZone.record.inputs.map(({ name, possible }) => [name, possible])).toEqual(
    INTENSITY_ZONES.rows.map(({ measure, possible }) => [measure, possible]),
  );
});

test('a percent of effort above a hundred is refused by every measured line', () => {
  for (const line of [heartRateReserveCycling, heartRateReserveCyclingOfReserve, maximalRateReached])
    expect(evaluate(line, [100.1]).kind).toBe('refused');
  expect(evaluate(heartRateReserveCycling, [29])).toMatchObject({
    kind: 'value',
    cautions: ['percent of the maximal uptake 29 % is outside 30 to 100'],
  });
});

test('the edges of every measure rise', () => {
  for (const { begins } of INTENSITY_ZONES.rows) expect([...begins].toSorted((a, b) => a - b)).toEqual([...begins]);
});
