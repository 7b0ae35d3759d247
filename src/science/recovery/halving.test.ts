import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { DEFAULT_HALF_LIVES } from '../adaptation/default-half-lives.table.ts';
import { RECOVERY_HALF_LIVES } from '../bone/recovery-half-lives.table.ts';
import { remainingDeficit } from '../bone/recovery.ts';
import { callWith } from '../formula.ts';
import {
  BONE_QUANTITIES,
  FEMORAL_NECK,
  LOG_QUANTITIES,
  OXYGEN_UPTAKE,
  STRENGTH,
} from '../projection/quantities.table.ts';
import { RECOVERY_CONSTANTS } from '../return/recovery-constants.table.ts';
import { recoveredLevel, timeConstantOfTwo } from '../return/recovery-curve.ts';
import { ALL_FORMULAS, ALL_TABLES } from '../textbook.ts';
import { halfLifeBetween, partLeft, PLOTTED_HALF_LIVES, PLOTTED_LOG_SD } from './halving.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

test('half is left after a half-life, and two times after each other are one', () => {
  fc.assert(
    fc.property(between(1, 500), between(0, 1000), between(0, 1000), (half, a, b) => {
      expect(partLeft(half, half)).toBeCloseTo(0.5, 12);
      expect(partLeft(a, half) * partLeft(b, half)).toBeCloseTo(partLeft(a + b, half), 12);
    }),
  );
  expect(partLeft(0, 43)).toBe(1);
});

test('density and the level of a recovery run by the same law', () => {
  fc.assert(
    fc.property(between(0.5, 50), between(0, 1000), between(1, 500), (lost, days, half) => {
      expect(callWith(remainingDeficit, [lost, days, half])).toBeCloseTo(lost * partLeft(days, half), 12);
      expect(recoveredLevel(lost, half / Math.LN2, days)).toBeCloseTo(100 - lost * partLeft(days, half), 9);
    }),
  );
});

test('two deficits give the half-life back, and the time constant over ln 2', () => {
  fc.assert(
    fc.property(between(1, 50), between(1, 500), between(1, 500), (first, half, days) => {
      const second = first * partLeft(days, half);
      fc.pre(first >= 1.001 * second && second >= 0.001);
      expect(halfLifeBetween(first, second, days) / half).toBeCloseTo(1, 8);
      expect((timeConstantOfTwo(first, second, 3, 3 + days) * Math.LN2) / half).toBeCloseTo(1, 8);
    }),
  );
});

const FILE = join(import.meta.dirname, '../../../test/fixtures/science/aerobic.json');
// Written by the script that stands beside the file.
const { equations } = JSON.parse(readFileSync(FILE, 'utf8')) as {
  readonly equations: Readonly<Record<string, readonly (readonly [number, number, number, number])[]>>;
};

test('deficits and half-lives are those that Python gives', () => {
  const [left, ofTwo] = [equations['recovery/deficit-left'] ?? [], equations['recovery/half-life-between'] ?? []];
  expect(Math.min(left.length, ofTwo.length)).toBeGreaterThan(10);
  // Both programs use doubles.
  const apart = (ours: number, theirs: number): boolean => Math.abs(ours - theirs) > 1e-12 * Math.max(1, theirs);
  expect(left.filter(([start, half, days, theirs]) => apart(start * partLeft(days, half), theirs))).toEqual([]);
  expect(ofTwo.filter(([a, b, days, theirs]) => apart(halfLifeBetween(a, b, days), theirs))).toEqual([]);
});

const timeConstant = (quality: string): number =>
  RECOVERY_CONSTANTS.find((row) => row.quality === quality)?.timeConstant ?? Number.NaN;

test('the curves are drawn at the half-lives that the forecasts and the return take', () => {
  expect(PLOTTED_HALF_LIVES).toEqual({
    oxygen: OXYGEN_UPTAKE.halfLife,
    oxygenOfFourteen: Math.round(timeConstant('Peak oxygen uptake') * Math.LN2),
    knee: STRENGTH.halfLife,
    femoralNeck: FEMORAL_NECK.halfLife,
  });
  expect(PLOTTED_LOG_SD).toBe(OXYGEN_UPTAKE.halfLifeLogSd);
});

test('the band is one standard deviation of the logarithm of the half-life', () => {
  const { points = [], band = [] } = partLeft.record.plot?.curves()[0] ?? {};
  expect(band.length).toBeGreaterThan(20);
  for (const [place, [low, high]] of band.entries()) {
    const [day = 0, left = 0] = points[place] ?? [];
    expect(left).toBeCloseTo(2 ** (-day / 6), 12);
    expect(low).toBeCloseTo(2 ** (-day / (6 * Math.exp(-0.5))), 12);
    expect(high).toBeCloseTo(2 ** (-day / (6 * Math.exp(0.5))), 12);
  }
});

/** Half-lives of the tables [d], as the rows of other tables tell them. */
const told = (text: string, days: number): boolean =>
  text.includes(`${Number(days.toFixed(1))} d`) || text.includes(`${days.toFixed(1)} d`);

test('where two half-lives of one thing stand, each row tells the other', () => {
  const constant = (quality: string) => RECOVERY_CONSTANTS.find((row) => row.quality === quality);
  const byDefault = (part: string) => DEFAULT_HALF_LIVES.rows.find((row) => row.part === part);
  const site = (name: string) => RECOVERY_HALF_LIVES.rows.find((row) => row.site === name);
  const half = (quality: string): number => timeConstant(quality) * Math.LN2;
  const pairs: readonly (readonly [text: string | undefined, days: number | undefined])[] = [
    [OXYGEN_UPTAKE.halfLifeOf, half('Peak oxygen uptake')],
    [constant('Peak oxygen uptake')?.elsewhere, OXYGEN_UPTAKE.halfLife],
    [STRENGTH.halfLifeOf, half('Knee extension, 60°/s')],
    [STRENGTH.halfLifeOf, byDefault('knee')?.halfLife],
    [constant('Knee extension, 60°/s')?.elsewhere, STRENGTH.halfLife],
    [constant('Knee extension, 60°/s')?.elsewhere, byDefault('knee')?.halfLife],
    [byDefault('knee')?.elsewhere, STRENGTH.halfLife],
    [byDefault('knee')?.elsewhere, half('Knee extension, 60°/s')],
    [byDefault('knee')?.elsewhere, half('Knee flexion, 60°/s')],
    [byDefault('ankle')?.elsewhere, half('Ankle plantar flexion')],
    [constant('Ankle plantar flexion')?.elsewhere, byDefault('ankle')?.halfLife],
    [byDefault('in general')?.elsewhere, half('Isokinetic strength, overall')],
    [constant('Isokinetic strength, overall')?.elsewhere, byDefault('in general')?.halfLife],
    [FEMORAL_NECK.halfLifeOf, half('Bone density of the hip')],
    [site('femoral neck')?.elsewhere, half('Bone density of the hip')],
    [site('trochanter')?.elsewhere, half('Bone density of the hip')],
    [constant('Bone density of the hip')?.elsewhere, site('femoral neck')?.halfLife],
    [constant('Bone density of the hip')?.elsewhere, site('trochanter')?.halfLife],
  ];
  expect(pairs.filter(([text = '', days = Number.NaN]) => !told(text, days))).toEqual([]);
});

test('what a record of a half-life names elsewhere is there', () => {
  const ids = new Set([...ALL_FORMULAS, ...ALL_TABLES].map(({ record }) => record.id));
  const rows = [LOG_QUANTITIES, BONE_QUANTITIES].flatMap((table) => table.rows.map(({ halfLifeOf }) => halfLifeOf));
  const texts = [
    ...rows,
    ...[...DEFAULT_HALF_LIVES.rows, ...RECOVERY_HALF_LIVES.rows, ...RECOVERY_CONSTANTS].map(
      ({ elsewhere }) => elsewhere,
    ),
    ...[partLeft, halfLifeBetween, remainingDeficit, recoveredLevel, timeConstantOfTwo].map(
      ({ record }) => record.doesNotKnow,
    ),
  ];
  const named = texts.flatMap((text) => text.match(/\b(?:bone|recovery|return|projection)\/[a-z-]+/g) ?? []);
  expect(named.length).toBeGreaterThan(15);
  expect(named.filter((id) => !ids.has(id))).toEqual([]);
});
