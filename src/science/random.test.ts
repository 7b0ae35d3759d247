import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { randomStream, xoshiro128 } from './random.ts';

const firstOf = (count: number, draw: () => number): readonly number[] => Array.from({ length: count }, draw);

test('the generator gives the numbers of the reference in C from the state 1, 2, 3, 4', () => {
  // Worked from the published algorithm in whole-number arithmetic, independently of this program.
  const REFERENCE = [
    11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849, 3729100597, 4258142804,
  ];
  expect(firstOf(REFERENCE.length, xoshiro128(1, 2, 3, 4))).toEqual(REFERENCE);
});

test('the same seed and name give the same numbers', () => {
  expect(firstOf(20, randomStream(7, 'sleep').uniform)).toEqual(firstOf(20, randomStream(7, 'sleep').uniform));
});

test('another seed or another name gives others', () => {
  const first = firstOf(5, randomStream(7, 'sleep').bits);
  expect(firstOf(5, randomStream(8, 'sleep').bits)).not.toEqual(first);
  expect(firstOf(5, randomStream(7, 'load').bits)).not.toEqual(first);
});

test('four zeros are no state', () => {
  expect(() => xoshiro128(0, 0, 0, 0)).toThrow(/four zeros/);
});

const DRAWS = 100_000;
/** Five standard errors: a right generator fails this once in two million seeds, and the seed is fixed. */
const STANDARD_ERRORS = 5;

test('uniform numbers lie in [0, 1) with the mean and variance they should have', () => {
  const values = firstOf(DRAWS, randomStream(1, 'uniform').uniform);
  const mean = values.reduce((sum, value) => sum + value, 0) / DRAWS;
  expect(values.every((value) => value >= 0 && value < 1)).toBe(true);
  expect(Math.abs(mean - 0.5)).toBeLessThan((STANDARD_ERRORS * Math.sqrt(1 / 12)) / Math.sqrt(DRAWS));
});

test('normal numbers have mean 0 and variance 1', () => {
  const values = firstOf(DRAWS, randomStream(1, 'normal').normal);
  const mean = values.reduce((sum, value) => sum + value, 0) / DRAWS;
  const variance = values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / DRAWS;
  expect(Math.abs(mean)).toBeLessThan(STANDARD_ERRORS / Math.sqrt(DRAWS));
  expect(Math.abs(variance - 1)).toBeLessThan(STANDARD_ERRORS * Math.sqrt(2 / DRAWS));
});

test('whole numbers below a limit reach each of them and no other', () => {
  const { below } = randomStream(1, 'die');
  expect([...new Set(firstOf(1000, () => below(6)))].toSorted((a, b) => a - b)).toEqual([0, 1, 2, 3, 4, 5]);
});

interface Fixture {
  readonly streams: readonly {
    readonly seed: number;
    readonly name: string;
    readonly bits: readonly number[];
    readonly uniform: readonly number[];
    readonly normal: readonly number[];
    readonly belowSix: readonly number[];
  }[];
}

const FILE = join(import.meta.dirname, '../../test/fixtures/science/random.json');
// Written by the script that stands beside the file.
const { streams } = JSON.parse(readFileSync(FILE, 'utf8')) as Fixture;

test.each(streams)('the stream "$name" of seed $seed is what whole numbers of any size give', (stream) => {
  const draws = stream.bits.length;
  const fresh = () => randomStream(stream.seed, stream.name);
  expect(firstOf(draws, fresh().bits)).toEqual(stream.bits);
  expect(firstOf(draws, fresh().uniform)).toEqual(stream.uniform);
  const { below } = fresh();
  expect(firstOf(draws, () => below(6))).toEqual(stream.belowSix);
  // A logarithm and a cosine of two libraries.
  for (const [place, value] of firstOf(draws, fresh().normal).entries())
    expect(value).toBeCloseTo(stream.normal[place] ?? Number.NaN, 12);
});

test.each([
  { a: 1, b: 0, c: 0, d: 0 },
  { a: 0, b: 1, c: 0, d: 0 },
  { a: 0, b: 0, c: 1, d: 0 },
  { a: 0, b: 0, c: 0, d: 1 },
])('one word of state that is not zero is enough: $a $b $c $d', ({ a, b, c, d }) => {
  expect(() => xoshiro128(a, b, c, d)).not.toThrow();
});
