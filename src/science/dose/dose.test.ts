import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { DOSE_FINDINGS, HIGH_VOLUME_SETS, LOW_VOLUME_SETS, WEEKLY_TARGETS } from './dose-response.table.ts';
import { setsForShare, shareOfStrengthEffect, strengthEffect, strengthEffectOfNextSet } from './strength-effect.ts';
import { weeklyDose, type SetsOfWeek } from './weekly-dose.ts';
import { fractionalSets, mostSetsNextWeek, setsForStrength, sizeDifference } from './weekly-sets.ts';
import { fraction } from '#units/quantity.ts';

type Pairs = readonly (readonly [number, number])[];
type Triples = readonly (readonly [number, number, number])[];

interface Fixture {
  readonly top: number;
  readonly scale: number;
  readonly effect: Pairs;
  readonly slope: Pairs;
  readonly share: Pairs;
  readonly setsForShare: Pairs;
  readonly size: Triples;
  readonly sets: Triples;
}

const FILE = join(import.meta.dirname, '../../../test/fixtures/science/dose.json');
// Written by the script that stands beside the file.
const fixture = JSON.parse(readFileSync(FILE, 'utf8')) as Fixture;

const farthest = (pairs: Pairs, compute: (x: number) => number): number =>
  Math.max(...pairs.map(([x, printed]) => Math.abs(compute(x) - printed)));

test('the two numbers of the curve are those that SciPy finds through the two means', () => {
  // Written to seven decimals.
  expect(strengthEffect(1e6)).toBeCloseTo(fixture.top, 6);
  expect(setsForShare(fraction(1 - Math.exp(-1)))).toBeCloseTo(fixture.scale, 6);
});

test('effect, slope and share are as a separate program has them', () => {
  expect(farthest(fixture.effect, strengthEffect)).toBeLessThan(1e-14);
  expect(farthest(fixture.share, shareOfStrengthEffect)).toBeLessThan(1e-14);
  expect(farthest(fixture.setsForShare, (share) => setsForShare(fraction(share)))).toBeLessThan(1e-12);
  // Differences over a step of 1e-5 leave some 1e-10.
  expect(farthest(fixture.slope, strengthEffectOfNextSet)).toBeLessThan(1e-9);
});

test('size and sets are as a separate program has them', () => {
  for (const [now, compared, printed] of fixture.size) expect(sizeDifference(now, compared)).toBeCloseTo(printed, 12);
  for (const [direct, indirect, printed] of fixture.sets) expect(fractionalSets(direct, indirect)).toBe(printed);
});

const sets = fc.double({ min: 0, max: 30, noNaN: true });

test('more sets never give less, and each gives less than the one before', () => {
  fc.assert(
    fc.property(sets, fc.double({ min: 0.01, max: 10, noNaN: true }), (n, more) => {
      expect(strengthEffect(n + more)).toBeGreaterThanOrEqual(strengthEffect(n));
      expect(strengthEffectOfNextSet(n + more)).toBeLessThan(strengthEffectOfNextSet(n));
      expect(strengthEffect(n + 2 * more) - strengthEffect(n + more)).toBeLessThanOrEqual(
        strengthEffect(n + more) - strengthEffect(n) + 1e-12,
      );
    }),
  );
});

test('no sets give nothing, and sets and share are there and back', () => {
  expect(strengthEffect(0)).toBe(0);
  fc.assert(
    fc.property(fc.double({ min: 0, max: 20, noNaN: true }), (n) => {
      expect(setsForShare(shareOfStrengthEffect(n))).toBeCloseTo(n, 6);
      expect(strengthEffect(n)).toBeCloseTo(1.0112947 * shareOfStrengthEffect(n), 14);
    }),
  );
});

test('the line of size is a line: differences add up and turn with their order', () => {
  fc.assert(
    fc.property(
      ...([1, 1, 1].map(() => fc.integer({ min: 1, max: 20 })) as [
        fc.Arbitrary<number>,
        fc.Arbitrary<number>,
        fc.Arbitrary<number>,
      ]),
      (a, b, c) => {
        expect(sizeDifference(a, b) + sizeDifference(b, c)).toBeCloseTo(sizeDifference(a, c), 12);
        expect(sizeDifference(a, b)).toBeCloseTo(0 - sizeDifference(b, a), 12);
      },
    ),
  );
});

// A week

const dose = (week: readonly SetsOfWeek[], before: number | null = null) => {
  const found = weeklyDose(week, before);
  if (found.kind === 'refused') throw new Error(found.reason);
  return found;
};

const direct = (count: number, of: number | null = 0.8): SetsOfWeek => ({ role: 'direct', sets: count, fraction: of });

test('a week counts direct sets whole, indirect half, light ones half again for strength', () => {
  expect(dose([direct(4), { ...direct(4), role: 'indirect' }])).toMatchObject({ sets: 6, forStrength: 6 });
  expect(dose([direct(4, 0.5), { ...direct(4, 0.5), role: 'indirect' }])).toMatchObject({ sets: 6, forStrength: 3 });
  expect(dose([direct(4, 0.6)])).toMatchObject({ sets: 4, forStrength: 4 });
  expect(dose([direct(4, 0.599)])).toMatchObject({ forStrength: 2 });
  expect(dose([direct(4, null)])).toMatchObject({ forStrength: 4 });
  expect(setsForStrength(3, 5)).toBe(5.5);
});

test('a week is warned about when it is too little, too much or too sudden', () => {
  const warned = (count: number, before: number | null = null): string =>
    dose([direct(count)], before).warnings.join(' ');
  expect(warned(4)).toBe('');
  expect(warned(3.5)).toContain('Fewer than 4');
  expect(warned(20)).toBe('');
  expect(warned(20.5)).toContain('More than 20');
  expect(warned(12, 10)).toBe('');
  expect(warned(12.5, 10)).toBe('12.5 sets after 10 are more than a fifth more in one week.');
  expect(warned(6, 5)).toBe('');
  expect(warned(10, 0)).toBe('There were no sets in the week before: begin as after a pause, not by a percentage.');
  expect(warned(8, 20)).toBe('');
  expect(dose([], 0).warnings).toEqual(['Fewer than 4 sets a week.']);
});

test('the warning of a sudden week stands exactly where the most sets are exceeded', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 0, max: 100 }), (before, halves) => {
      const now = halves / 2;
      const sudden = dose([direct(now)], before).warnings.some((warning) => warning.includes('a fifth more'));
      expect(sudden).toBe(now > mostSetsNextWeek(before) + 1e-9);
    }),
  );
});

test('the lines of a week may stand in any order', () => {
  const line = fc.record({
    role: fc.constantFrom('direct' as const, 'indirect' as const),
    sets: fc.integer({ min: 0, max: 12 }),
    fraction: fc.option(fc.double({ min: 0.1, max: 1, noNaN: true })),
  });
  fc.assert(
    fc.property(fc.array(line), (week) => {
      const [there, back] = [dose(week), dose(week.toReversed())];
      expect(back).toEqual(there);
      expect(there.forStrength).toBeLessThanOrEqual(there.sets);
      expect(there.forStrength).toBeGreaterThanOrEqual(there.sets / 2);
    }),
  );
});

test('what cannot be is refused at its line', () => {
  const reason = (week: readonly SetsOfWeek[], before: number | null = null): string => {
    const found = weeklyDose(week, before);
    return found.kind === 'refused' ? found.reason : 'accepted';
  };
  for (const wrong of [-1, 201, Number.NaN]) {
    expect(reason([direct(4), direct(wrong)])).toContain('Line 2');
    expect(reason([direct(4)], wrong)).toContain('week before');
  }
  for (const wrong of [0, -0.1, 1.6, Number.NaN]) expect(reason([direct(4, wrong)])).toContain('Line 1');
  expect(reason([direct(-1), direct(4, 0)], -1)).toMatch(/Line 1: sets.*Line 2: fraction.*week before/);
  expect(reason([direct(200, 1.5), direct(0, 0.01)], 200)).toBe('accepted');
});

test('tables say what they hold, with the means that the curve goes through', () => {
  const shown = DOSE_FINDINGS.rows.map((row) => DOSE_FINDINGS.cells(row));
  expect(shown[0]).toEqual([
    'strength',
    'up to 5 weekly sets of an exercise',
    0.82,
    0.47,
    1.17,
    'effect size',
    'before to after',
    'Ralston G.W. et al. (2017)',
    'seen',
  ]);
  expect(WEEKLY_TARGETS.rows.map((row) => WEEKLY_TARGETS.cells(row))[2]).toEqual(['calf', 8, 12, null, null, '']);
  const curves = strengthEffect.record.plot?.curves() ?? [];
  expect(curves.map(({ scattered }) => scattered === true)).toEqual([false, true, true]);
  expect(curves.slice(1).map(({ points, band }) => [points, band])).toEqual([
    [[[LOW_VOLUME_SETS, 0.82]], [[0.47, 1.17]]],
    [[[HIGH_VOLUME_SETS, 1.01]], [[0.7, 1.32]]],
  ]);
});
