import { expect, test } from 'vitest';
import { ratingOf, showEffort } from './effort.ts';

// Zourdos et al. (2016) J Strength Cond Res 30(1):267–275: RPE 10 leaves no repetition, 9 leaves one, 8 leaves two.
test.each([
  { inReserve: 0, rating: 10 },
  { inReserve: 1, rating: 9 },
  { inReserve: 2, rating: 8 },
  { inReserve: 1.5, rating: 8.5 },
])('$inReserve in reserve is RPE $rating', ({ inReserve, rating }) => {
  expect(ratingOf({ kind: 'repetitions in reserve', value: inReserve })).toBe(rating);
  expect(ratingOf({ kind: 'RPE', value: rating })).toBe(rating);
});

test('effort is shown as it was typed', () => {
  expect(showEffort({ kind: 'RPE', value: 8 })).toBe('RPE 8');
  expect(showEffort({ kind: 'repetitions in reserve', value: 2 })).toBe('2 in reserve');
});
