import fc from 'fast-check';
import { expect, test } from 'vitest';
import { randomStream } from '../random.ts';
import { higherBetterScore, lowerBetterScore, sidesAgainstThemselves, symmetryScore } from './recovery-score.ts';
import { equilibriumScore, standingBalance, type BalanceTrial, type BalanceTrials } from './standing-balance.ts';
import { recoveredLevel, timeConstantOfTwo, timeToLevel } from './recovery-curve.ts';

const positive = fc.double({ min: 0.01, max: 10_000, noNaN: true });
const FULL: BalanceTrials = [
  [94, 94, 94],
  [90, 90, 90],
  [91, 90, 92],
  [85, 86, 84],
  [60, 64, 68],
  [58, 62, 63],
];

test('the two scores are one another’s mirror', () => {
  fc.assert(
    fc.property(positive, positive, (now, before) => {
      expect(higherBetterScore(now, before) * lowerBetterScore(now, before)).toBeCloseTo(10_000, 6);
      expect(higherBetterScore(now, now)).toBeCloseTo(100, 10);
    }),
  );
});

test('symmetry does not know the sides and never exceeds 100 %', () => {
  fc.assert(
    fc.property(positive, positive, (left, right) => {
      expect(symmetryScore(left, right)).toBe(symmetryScore(right, left));
      expect(symmetryScore(left, right)).toBeLessThanOrEqual(100);
    }),
  );
});

test('of two equal sides with an error of 5 % the smaller over the larger averages 94.6 %', () => {
  const chance = randomStream(20_270_301, 'symmetry');
  const noisy = (): number => 100 + 5 * chance.normal();
  const scores = Array.from({ length: 20_000 }, () => symmetryScore(noisy(), noisy()));
  const mean = scores.reduce((sum, score) => sum + score, 0) / scores.length;
  // A million pairs of NumPy average 94.586 with a spread of 3.97: four standard errors of twenty thousand are 0.11.
  expect(Math.abs(mean - 94.586)).toBeLessThan(0.11);
});

test('a person who differed before flight is told so', () => {
  const unequal = sidesAgainstThemselves({ left: 180, right: 200 }, { left: 178, right: 200 });
  expect(unequal).toMatchObject({
    kind: 'estimate',
    symmetry: 90,
    symmetryBefore: 89,
    cautions: ['The sides differed before flight too: symmetry was 89.0 %.'],
  });
  expect(unequal.kind === 'estimate' && unequal.left).toBeCloseTo(101.1236, 4);
  expect(unequal.kind === 'estimate' && unequal.right).toBe(100);
  expect(sidesAgainstThemselves({ left: 180, right: 200 }, { left: 180, right: 200 })).toMatchObject({ cautions: [] });
});

test('sides that were not measured are refused, all at once', () => {
  const found = sidesAgainstThemselves({ left: 0, right: Number.NaN }, { left: 200, right: 200_000 });
  expect(found).toEqual({
    kind: 'refused',
    reasons: [
      'The left side now must be a number above zero; it is 0.',
      'The right side now must be a number above zero; it is NaN.',
      'The right side before flight must be a number above zero; it is 200000.',
    ],
  });
});

test('no sway scores 100, and the score falls evenly to nothing at 12.5°', () => {
  expect([0, 6.25, 12.5, 15].map((sway) => equilibriumScore(sway, 0))).toEqual([100, 50, 0, 0]);
});

test('a fall scores nothing and is named with its condition', () => {
  const fallen: BalanceTrials = [FULL[0], FULL[1], FULL[2], FULL[3], ['fall', 64, 68], [58, 'fall', 'fall']];
  const zero: BalanceTrials = [FULL[0], FULL[1], FULL[2], FULL[3], [0, 64, 68], [58, 0, 0]];
  const [a, b] = [standingBalance(fallen), standingBalance(zero)];
  expect(a).toMatchObject({ kind: 'estimate', fallsIn: [5, 6] });
  expect(b).toMatchObject({ kind: 'estimate', fallsIn: [] });
  expect(a.kind === 'estimate' && b.kind === 'estimate' && a.value - b.value).toBe(0);
});

test('a trial of a hard condition weighs one fourteenth, an easy condition as much by its mean', () => {
  const valueOf = (trials: BalanceTrials): number => {
    const found = standingBalance(trials);
    return found.kind === 'estimate' ? found.value : Number.NaN;
  };
  const hard: BalanceTrials = [FULL[0], FULL[1], FULL[2], FULL[3], FULL[4], [72, 62, 63]];
  const easy: BalanceTrials = [[80, 80, 80], FULL[1], FULL[2], FULL[3], FULL[4], FULL[5]];
  expect(valueOf(hard) - valueOf(FULL)).toBeCloseTo(1, 10);
  expect(valueOf(easy) - valueOf(FULL)).toBeCloseTo(-1, 10);
});

test('easy conditions may have fewer trials, which is said; hard ones may not', () => {
  const few: BalanceTrials = [[94], [90, null, 90], FULL[2], FULL[3], FULL[4], FULL[5]];
  expect(standingBalance(few)).toMatchObject({
    kind: 'estimate',
    cautions: ['Condition 1 has 1 of 3 trials.', 'Condition 2 has 2 of 3 trials.'],
  });
  expect(standingBalance(FULL)).toMatchObject({ cautions: [] });
  const missing: readonly BalanceTrial[] = [60, null, 68];
  expect(standingBalance([[], FULL[1], FULL[2], FULL[3], missing, FULL[5]])).toEqual({
    kind: 'refused',
    reasons: [
      'Condition 1 has 0 of 3 trials; record the others or test again.',
      'Condition 5 has 2 of 3 trials; record the others or test again.',
    ],
  });
});

test('scores that cannot be and trials too many are refused', () => {
  expect(standingBalance([[94, 94, 94, 94], [90], FULL[2], FULL[3], FULL[4], [58, 101, -1]])).toEqual({
    kind: 'refused',
    reasons: [
      'Condition 1 has 4 trials; three are scored.',
      'Condition 6 has a score of 101; a score lies in 0 to 100 %.',
      'Condition 6 has a score of -1; a score lies in 0 to 100 %.',
    ],
  });
});

const loss = fc.double({ min: 1, max: 40, noNaN: true });
const constant = fc.double({ min: 0.5, max: 500, noNaN: true });

test('the time to a level is where the curve reaches it', () => {
  fc.assert(
    fc.property(loss, constant, fc.double({ min: 60, max: 99.5, noNaN: true }), (lost, tau, level) => {
      const time = timeToLevel(lost, tau, level);
      expect(recoveredLevel(lost, tau, time)).toBeCloseTo(Math.max(level, 100 - lost), 8);
    }),
  );
});

test('two losses of one curve give back its time constant', () => {
  fc.assert(
    fc.property(loss, constant, fc.double({ min: 0.1, max: 3, noNaN: true }), (lost, tau, spans) => {
      const [from, to] = [0.2 * tau, (0.2 + spans) * tau];
      const [first, second] = [from, to].map((t) => 100 - recoveredLevel(lost, tau, t)) as [number, number];
      expect(timeConstantOfTwo(first, second, from, to) / tau).toBeCloseTo(1, 6);
    }),
  );
});
