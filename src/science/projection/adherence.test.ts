import fc from 'fast-check';
import { expect, test } from 'vitest';
import { adherenceAt, adherenceBelow, adherenceQuantile, expectedAdherence } from './adherence.ts';

const sessions = fc.integer({ min: 0, max: 400 });
const share = fc.double({ min: 0.001, max: 0.999, noNaN: true });

test('a quantile has its share below it', () => {
  fc.assert(
    fc.property(sessions, sessions, share, (done, missed, below) => {
      expect(adherenceBelow(done, missed, adherenceAt(done, missed, below))).toBeCloseTo(below, 8);
    }),
  );
});

test('a larger share lies at a higher adherence', () => {
  fc.assert(
    fc.property(sessions, sessions, share, share, (done, missed, one, other) => {
      fc.pre(Math.abs(one - other) > 1e-9);
      const [low, high] = [Math.min(one, other), Math.max(one, other)];
      expect(adherenceAt(done, missed, low)).toBeLessThan(adherenceAt(done, missed, high));
    }),
  );
});

test('a session more done moves everything up, a session more missed moves it down', () => {
  fc.assert(
    fc.property(sessions, sessions, share, (done, missed, below) => {
      const now = adherenceAt(done, missed, below);
      expect(adherenceAt(done + 1, missed, below)).toBeGreaterThan(now);
      expect(adherenceAt(done, missed + 1, below)).toBeLessThan(now);
    }),
  );
});

test('the probability climbs from 0 to 1, and past both ends it stays there', () => {
  expect(adherenceBelow(19, 5, -0.1)).toBe(0);
  expect(adherenceBelow(19, 5, 0)).toBe(0);
  expect(adherenceBelow(19, 5, 1)).toBe(1);
  expect(adherenceBelow(19, 5, 1.1)).toBe(1);
});

test('both tails of the sum meet where one takes over from the other', () => {
  // a / (a + b − 1) with a = 27, b = 7.
  const at = 27 / 33;
  expect(adherenceBelow(19, 5, at + 1e-12)).toBeCloseTo(adherenceBelow(19, 5, at - 1e-12), 10);
});

test('before the first session the assumption is said, later it is not', () => {
  const before = adherenceQuantile(0, 0, 0.5);
  expect(before).toMatchObject({ kind: 'estimate', cautions: [expect.stringMatching(/No session is counted yet/)] });
  expect(adherenceQuantile(1, 0, 0.5)).toMatchObject({ kind: 'estimate', cautions: [] });
  expect(adherenceQuantile(0, 1, 0.5)).toMatchObject({ kind: 'estimate', cautions: [] });
  expect(adherenceQuantile(3, 3, 0.5)).toMatchObject({ kind: 'estimate', cautions: [] });
});

test('the middle of many sessions is their plain share', () => {
  const found = adherenceQuantile(7000, 3000, 0.5);
  if (found.kind === 'refused') throw new Error(found.reason);
  expect(found.value).toBeCloseTo(0.7, 3);
  expect(expectedAdherence(7000, 3000)).toBeCloseTo(0.7, 3);
});

test.each([
  [-1, 0],
  [0, -1],
  [0.5, 0],
  [0, 1.5],
  [Number.NaN, 0],
  [10_001, 0],
  [0, 10_001],
])('%d done and %d missed are no counts', (done, missed) => {
  const result = adherenceQuantile(done, missed, 0.5);
  expect(result).toMatchObject({
    kind: 'refused',
    reason: `Sessions done and missed must be whole numbers from 0 to 10000; they are ${done} and ${missed}.`,
  });
});

test.each([0, 1, -0.1, 1.1, Number.NaN])('%d is no share', (given) => {
  expect(adherenceQuantile(3, 1, given)).toMatchObject({
    kind: 'refused',
    reason: `A share lies between 0 and 1, ends not included; it is ${given}.`,
  });
});
