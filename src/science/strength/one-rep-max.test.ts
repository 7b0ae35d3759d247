import fc from 'fast-check';
import { expect, test } from 'vitest';
import { barLoad, exertion, repetitions, type BarLoad, type MachineLoad, type Repetitions } from '#units/quantity.ts';
import { reserveOfExertion } from './effort.ts';
import { estimateLogSd, logSdOfMaximum, reserveSd } from './estimate-spread.ts';
import * as maxima from './one-rep-max.ts';
import { fractionWathan } from './repetition-fraction.ts';
import { fractionAllowing, maximumMultiplier, repetitionMaximum } from './repetition-maximum.ts';
import { intervalOfFormulas, intervalOfLevel, rangeOfRepetitions, readSet, type PerformedSet } from './set-estimate.ts';

const anyLoad = fc.double({ min: 1, max: 400, noNaN: true }).map(barLoad);
/** Halves, as ratings of effort give them. */
const anyEffective = fc.integer({ min: 2, max: 30 }).map((halves) => repetitions(halves / 2));
const ONE = repetitions(1);

const variants = Object.entries(maxima).map(([name, maximum]) => ({ name, maximum }));

test.each(variants)('$name: a heavier set never gives a smaller maximum', ({ maximum }) => {
  fc.assert(
    fc.property(anyLoad, anyLoad, anyEffective, (a, b, effective) => {
      const [light, heavy] = a <= b ? [a, b] : [b, a];
      expect(maximum(light, effective)).toBeLessThanOrEqual(maximum(heavy, effective));
    }),
  );
});

test.each(variants)('$name: more repetitions never give a smaller maximum', ({ maximum }) => {
  fc.assert(
    fc.property(anyLoad, anyEffective, anyEffective, (load, a, b) => {
      const [few, many] = a <= b ? [a, b] : [b, a];
      expect(maximum(load, few)).toBeLessThanOrEqual(maximum(load, many) * (1 + Number.EPSILON));
    }),
  );
});

test.each(variants)('$name: a single is the maximum', ({ maximum }) => {
  fc.assert(
    fc.property(anyLoad, (load) => {
      expect(maximum(load, ONE)).toBe(load);
    }),
  );
});

test('Epley and Brzycki meet at ten repetitions', () => {
  fc.assert(
    fc.property(anyLoad, (load) => {
      const [epley, brzycki] = [maxima.oneRepMaxEpley, maxima.oneRepMaxBrzycki].map((of) => of(load, repetitions(10)));
      // Both are four thirds of the load; the two roundings of a double may differ.
      expect(Math.abs((epley as number) - (brzycki as number))).toBeLessThanOrEqual(4 * Number.EPSILON * load);
    }),
  );
});

test('from one number of repetitions to another and back is where it began', () => {
  fc.assert(
    fc.property(anyLoad, anyEffective, anyEffective, (load, a, b) => {
      const back = repetitionMaximum(repetitionMaximum(load, a, b), b, a);
      expect(back).toBeCloseTo(load, 9);
    }),
  );
});

test('the fraction that allows n repetitions is the multiplier turned over', () => {
  fc.assert(
    fc.property(anyEffective, (n) => {
      expect(fractionAllowing(n) * maximumMultiplier(n)).toBeCloseTo(1, 12);
    }),
  );
});

test('an estimate lies inside the interval of the three formulas', () => {
  fc.assert(
    fc.property(anyLoad, anyEffective, (load, effective) => {
      const { low, high } = intervalOfFormulas(load, effective, ONE);
      const wathan = maxima.oneRepMaxWathan(load, effective);
      expect(low).toBeLessThanOrEqual(wathan);
      expect(high).toBeGreaterThanOrEqual(wathan);
    }),
  );
});

test('a reserve that is known worse makes the estimate wider', () => {
  fc.assert(
    fc.property(anyEffective, fc.nat(5), fc.nat(5), (effective, a, b) => {
      const [small, large] = [Math.min(a, b), Math.max(a, b)].map(repetitions) as [Repetitions, Repetitions];
      expect(estimateLogSd(effective, small)).toBeLessThanOrEqual(estimateLogSd(effective, large));
    }),
  );
});

test.each([
  { effective: 0, kind: 'none' },
  { effective: 1, kind: 'usable' },
  { effective: 12, kind: 'usable' },
  { effective: 12.5, kind: 'low confidence' },
  { effective: 15, kind: 'low confidence' },
  { effective: 15.5, kind: 'none' },
])('$effective effective repetitions: $kind', ({ effective, kind }) => {
  expect(rangeOfRepetitions(repetitions(effective)).kind).toBe(kind);
});

test.each([
  { rpe: 4.5, found: { kind: 'refused', reason: expect.stringContaining('too easy') as unknown } },
  { rpe: 5, found: { kind: 'reserve', repetitions: 5, coarse: true } },
  { rpe: 7, found: { kind: 'reserve', repetitions: 3, coarse: false } },
  { rpe: 9.5, found: { kind: 'reserve', repetitions: 0.5, coarse: false } },
  { rpe: 10.5, found: { kind: 'refused', reason: expect.stringContaining('ends at 10') as unknown } },
])('RPE $rpe is read as $found.kind', ({ rpe, found }) => {
  expect(reserveOfExertion(exertion(rpe))).toEqual(found);
});

const performed = (more: Partial<PerformedSet> = {}): PerformedSet => ({
  load: barLoad(100),
  completed: repetitions(6),
  effort: { kind: 'reserve', reserve: repetitions(2) },
  novice: false,
  of: ONE,
  ...more,
});

const estimate = (more: Partial<PerformedSet> = {}) => {
  const reading = readSet(performed(more));
  if (reading.kind === 'none') throw new Error(reading.reason);
  return reading;
};

test('a set with reserve is read at the repetitions it would have had', () => {
  expect(estimate().maximum).toBe(maxima.oneRepMaxWathan(barLoad(100), repetitions(8)));
});

test('effort that nobody recorded is the target, known to two repetitions', () => {
  const reading = estimate({ effort: { kind: 'unrecorded, target', target: repetitions(2) } });
  expect(reading).toMatchObject({ effective: 8, assumedReserve: true, lowerBound: false });
  expect(reading.logSd).toBe(logSdOfMaximum(repetitions(8), ONE, repetitions(2)));
});

test('effort that nobody recorded nor planned leaves a lower bound', () => {
  expect(estimate({ effort: { kind: 'unrecorded' } })).toMatchObject({ effective: 6, lowerBound: true });
});

test('a novice judges the reserve half again as badly', () => {
  const sd = repetitions(1.5 * reserveSd(repetitions(2)));
  expect(estimate({ novice: true }).logSd).toBe(logSdOfMaximum(repetitions(8), ONE, sd));
});

test('a set at its own number of repetitions is its own maximum', () => {
  const reading = estimate({ effort: { kind: 'failure' }, of: repetitions(6) });
  expect(reading.maximum).toBe(100);
  expect([reading.low, reading.high]).toEqual([100, 100]);
  expect(reading.logSd).toBeCloseTo(0.03, 12);
});

test.each([
  { more: { completed: repetitions(0) }, says: 'No repetition was completed.' },
  { more: { load: barLoad(-3) }, says: 'The load, less the share of body weight, is not above zero.' },
  { more: { completed: repetitions(16) }, says: '18 effective repetitions: above 15 no maximum is read from a set.' },
])('nothing is read where there is nothing to read: $says', ({ more, says }) => {
  expect(readSet(performed(more))).toEqual({ kind: 'none', reason: says });
});

test('the interval of a level is about two standard deviations to each side', () => {
  const { median, low, high } = intervalOfLevel(Math.log(120) as Parameters<typeof intervalOfLevel>[0], 0.05 ** 2);
  expect(median).toBeCloseTo(120, 9);
  expect(low).toBeCloseTo(120 * Math.exp(-0.098), 9);
  expect(high).toBeCloseTo(120 * Math.exp(0.098), 9);
});

// @ts-expect-error a pull in 0 g is no bar load: take the share of body weight off first
export const swapped = (pull: MachineLoad): BarLoad => maxima.oneRepMaxWathan(pull, ONE);

test('a set of no load says nothing, and an effort of ten is read', () => {
  expect(readSet(performed({ load: barLoad(0) })).kind).toBe('none');
  expect(reserveOfExertion(exertion(10))).toEqual({ kind: 'reserve', repetitions: 0, coarse: false });
});

test('a reserve that was told is not taken for the planned one', () => {
  expect(estimate()).toMatchObject({ assumedReserve: false, lowerBound: false });
  expect(estimate({ effort: { kind: 'failure' } })).toMatchObject({ assumedReserve: false, lowerBound: false });
  expect(estimate({ effort: { kind: 'unrecorded' } })).toMatchObject({ assumedReserve: false, lowerBound: true });
});

test('readings of a hundred kilograms are drawn with a standard deviation each way', () => {
  const [wathan] = readSet.record.plot?.curves() ?? [];
  const [first] = wathan?.points ?? [];
  expect([first, wathan?.points.length]).toEqual([[1, 100], 15]);
  const [low = 0, high = 0] = wathan?.band?.[0] ?? [];
  expect([low, high].map((each) => Math.log(each / 100))).toEqual([
    expect.closeTo(-0.03, 12) as number,
    expect.closeTo(0.03, 12) as number,
  ]);
});

test('the spread of an estimate is drawn from the fewest repetitions that a reserve allows', () => {
  const curves = estimateLogSd.record.plot?.curves() ?? [];
  expect(curves.map(({ label, points }) => [label, points[0]?.[0]])).toEqual([
    ['to failure', 1],
    ['1 in reserve', 2],
    ['2 in reserve', 3],
    ['4 in reserve', 5],
  ]);
});

test('the handbook is drawn in fractions', () => {
  const handbook = fractionWathan.record.plot?.curves().find(({ label }) => label === 'handbook table');
  expect(handbook?.scattered).toBe(true);
  expect(handbook?.points.slice(0, 2)).toEqual([
    [1, 1],
    [2, 0.95],
  ]);
});
