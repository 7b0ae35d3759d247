import fc from 'fast-check';
import { expect, test } from 'vitest';
import { callWith } from '../formula.ts';
import { capacityIndex, capacityRatio } from './capacity-index.ts';
import { expectedMaximumDeSouza, expectedMaximumMyers } from './expected-maximum.ts';
import { sdOf, valueOf, wordsOf } from './read-estimate.ts';
import type { Stage } from './staged-estimate.ts';
import { PERCENTILES, UPTAKE_NORMS } from './uptake-norms.table.ts';
import { uptakeOfPercentile, uptakePercentile } from './uptake-percentile.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const sexes = fc.constantFrom('female' as const, 'male' as const);
const test3 = (...rates: readonly number[]): readonly Stage[] =>
  rates.map((heartRate, place) => ({ heartRate, uptake: 10.5 * (place + 1) }));
const before = test3(95, 118, 142);

test('the same test is the same index, and the ratio is one', () => {
  expect(capacityRatio(before, before, 178, 45)).toEqual({ kind: 'estimate', value: 1, sd: 0.06, cautions: [] });
});

test('a heart that beats faster at every stage reads as a smaller capacity', () => {
  fc.assert(
    fc.property(between(1, 30), (more) => {
      const now = before.map(({ heartRate, uptake }) => ({ uptake, heartRate: heartRate + more }));
      const ratio = capacityRatio(before, now, 178, 45);
      expect(valueOf(ratio)).toBeLessThan(1);
      expect(sdOf(ratio)).toBeCloseTo(0.06 * valueOf(ratio), 12);
    }),
  );
});

test('the index says that it is one, and is as sure as its line alone', () => {
  const index = capacityIndex(before, 178);
  expect(index).toMatchObject({ cautions: ['An index, not a maximal uptake: compare it only with itself.'] });
  expect(sdOf(index)).toBeGreaterThan(0);
  expect(sdOf(index)).toBeLessThan(1);
  expect(wordsOf(capacityIndex(test3(118, 128, 140), 178))).toMatch(/span 22 beats/);
});

test('before flight day 30 a ratio is flagged, on it no longer', () => {
  expect(wordsOf(capacityRatio(before, before, 178, 29))).toMatch(/Before flight day 30/);
  expect(capacityRatio(before, before, 178, 30)).toMatchObject({ cautions: [] });
});

test('a refused test says which of the two it was', () => {
  expect(wordsOf(capacityRatio(before.slice(0, 2), before, 178, 15))).toMatch(/^Before flight: /);
  expect(wordsOf(capacityRatio(before, before.slice(0, 2), 178, 15))).toMatch(/^This test: /);
  expect(capacityIndex(before, 142).kind).toBe('refused');
});

test('an index takes stages and a peak heart rate, and no spread of it', () => {
  expect(capacityIndex.record.inputs.map(({ symbol }) => symbol)).toEqual(['VO2_i', 'HR_i', 'HR_max']);
});

test('in every row of the norms the columns rise, women lie below men and ten years cost something', () => {
  for (const { sex, from, uptakes } of UPTAKE_NORMS.rows) {
    expect([...uptakes].toSorted((a, b) => a - b)).toEqual([...uptakes]);
    const older = UPTAKE_NORMS.rows.find((row) => row.sex === sex && row.from === from + 10);
    const women = UPTAKE_NORMS.rows.find((row) => row.sex === 'female' && row.from === from);
    for (const [place, value] of uptakes.entries()) {
      expect(older?.uptakes[place] ?? 0).toBeLessThan(value);
      if (sex === 'male') expect(women?.uptakes[place]).toBeLessThan(value);
    }
  }
  expect(UPTAKE_NORMS.rows).toHaveLength(12);
});

test('a percentile is read back from its uptake, at every age', () => {
  fc.assert(
    fc.property(sexes, between(20, 79.9), between(5, 95), (sex, years, percentile) => {
      const uptake = uptakeOfPercentile(sex, years, percentile);
      if (uptake.kind === 'refused') throw new Error(uptake.reason);
      const back = uptakePercentile(sex, years, uptake.value);
      if (back.kind !== 'percentile') throw new Error(back.kind);
      expect(back.value).toBeCloseTo(percentile, 8);
    }),
  );
});

test('a larger uptake never has a lower percentile', () => {
  const standing = (sex: 'female' | 'male', years: number, value: number): number => {
    const found = uptakePercentile(sex, years, value);
    return found.kind === 'below'
      ? 0
      : found.kind === 'above'
        ? 100
        : found.kind === 'percentile'
          ? found.value
          : Number.NaN;
  };
  fc.assert(
    fc.property(sexes, between(20, 79), between(5, 90), between(0, 5), (sex, years, value, more) => {
      expect(standing(sex, years, value + more)).toBeGreaterThanOrEqual(standing(sex, years, value));
    }),
  );
});

test('every printed cell has its column’s percentile, and beyond the outer columns nothing is made up', () => {
  for (const { sex, from, uptakes } of UPTAKE_NORMS.rows) {
    for (const [place, value] of uptakes.entries())
      expect(uptakePercentile(sex, from + 3, value)).toEqual({ kind: 'percentile', value: PERCENTILES[place] });
    expect(uptakePercentile(sex, from, uptakes[0] - 0.01)).toEqual({
      kind: 'below',
      percentile: 5,
      uptake: uptakes[0],
    });
    expect(uptakePercentile(sex, from, uptakes[6] + 0.01)).toEqual({
      kind: 'above',
      percentile: 95,
      uptake: uptakes[6],
    });
  }
});

test('a decade holds from its first birthday to the day before the next', () => {
  expect(uptakePercentile('male', 49.99, 37.8)).toMatchObject({ value: 50 });
  expect(uptakePercentile('male', 50, 32.6)).toMatchObject({ value: 50 });
  expect(uptakePercentile('male', 79.99, 24.4)).toMatchObject({ value: 50 });
});

test('ages and values that the table has not are refused', () => {
  expect(uptakePercentile('male', 80, 30)).toEqual({ kind: 'refused', reason: 'The figures end at 79 years.' });
  expect(uptakeOfPercentile('female', 80, 50)).toEqual({ kind: 'refused', reason: 'The figures end at 79 years.' });
  expect(wordsOf(uptakePercentile('male', 19.9, 30))).toContain('age must lie in 20 to 80');
  expect(wordsOf(uptakePercentile('male', 30, Number.NaN))).toContain('maximal oxygen uptake');
  for (const percentile of [4.9, 95.1])
    expect(wordsOf(uptakeOfPercentile('male', 30, percentile))).toContain('percentile must');
});

test('both comparison equations fall with age and weight, and lie close to the printed medians', () => {
  fc.assert(
    fc.property(between(20, 70), between(55, 110), (years, mass) => {
      expect(callWith(expectedMaximumMyers, [years + 1, 0, mass])).toBeLessThan(
        callWith(expectedMaximumMyers, [years, 0, mass]),
      );
      expect(callWith(expectedMaximumMyers, [years, 1, mass])).toBeLessThan(
        callWith(expectedMaximumMyers, [years, 0, mass]),
      );
      const silva = (age: number, body: number): number => callWith(expectedMaximumDeSouza, [age, 1, body, 1.75, 1]);
      expect(silva(years + 1, mass)).toBeLessThan(silva(years, mass));
      expect(silva(years, mass + 1)).toBeLessThan(silva(years, mass));
      expect(callWith(expectedMaximumDeSouza, [years, 1, mass, 1.75, 2])).toBeCloseTo(silva(years, mass) - 0.46, 10);
    }),
  );
  // Both were fitted to this registry: a man of 85 kg and 1.78 m must come out near its medians.
  for (const { sex, from, uptakes } of UPTAKE_NORMS.rows.filter((row) => row.sex === 'male')) {
    expect(sex).toBe('male');
    expect(Math.abs(callWith(expectedMaximumMyers, [from + 5, 0, 85]) - uptakes[3])).toBeLessThan(4);
    expect(Math.abs(callWith(expectedMaximumDeSouza, [from + 5, 1, 85, 1.78, 1]) - uptakes[3])).toBeLessThan(4);
  }
});
