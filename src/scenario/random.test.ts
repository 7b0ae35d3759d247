import { expect, test } from 'vitest';
import { drawnIdentity, nextWord, normal, randomStream } from './random.ts';

// Blackman and Vigna's reference program, state 1, 2, 3, 4: the first ten words.
test('words are those of the reference program', () => {
  const state: [number, number, number, number] = [1, 2, 3, 4];
  expect(Array.from({ length: 10 }, () => nextWord(state))).toEqual([
    11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849, 3729100597, 4258142804,
  ]);
});

test('the same seed and name give the same chance; another seed or name another', () => {
  const draw = (seed: number, name: string): number[] => Array.from({ length: 5 }, randomStream(seed, name));
  expect(draw(7, 'results')).toEqual(draw(7, 'results'));
  expect(draw(7, 'results')).not.toEqual(draw(8, 'results'));
  expect(draw(7, 'results')).not.toEqual(draw(7, 'tests'));
});

test('draws fill the unit interval evenly, and normal ones have mean 0 and variance 1', () => {
  const random = randomStream(1, 'spread');
  const many = 20_000;
  const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;
  const even = Array.from({ length: many }, random);
  const bell = Array.from({ length: many }, () => normal(random));
  // Five standard errors of each mean: 0.289, 1 and 1.414 over the root of 20,000.
  expect(Math.abs(mean(even) - 0.5)).toBeLessThan(0.0103);
  expect(Math.abs(mean(bell))).toBeLessThan(0.0354);
  expect(Math.abs(mean(bell.map((value) => value ** 2)) - 1)).toBeLessThan(0.05);
  expect(Math.min(...even)).toBeGreaterThanOrEqual(0);
  expect(Math.max(...even)).toBeLessThan(1);
});

test('identities do not repeat', () => {
  const random = randomStream(1, 'identities');
  const drawn = Array.from({ length: 1000 }, () => drawnIdentity(random));
  expect(new Set(drawn).size).toBe(1000);
  expect(drawn[0]).toMatch(/^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/);
});
