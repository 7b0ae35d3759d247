import { expect, test } from 'vitest';
import { newtons, seconds, type Newtons } from '#units/quantity.ts';
import { compareCriticalForces, scoreAllOutTest, type AllOutTest } from './all-out-test.ts';

const cycle = { on: seconds(7), off: seconds(3) };
const falling = (count: number, level = 200, height = 280, kept = 0.86): readonly Newtons[] =>
  Array.from({ length: count }, (_, place) => newtons(level + height * kept ** place));
const test24: AllOutTest = { meanForces: falling(24), ...cycle };

const scored = (given: AllOutTest) => {
  const score = scoreAllOutTest(given);
  if (score.kind === 'refused') throw new Error(score.reason);
  return score;
};
const refusal = (given: Partial<AllOutTest>): string => {
  const score = scoreAllOutTest({ ...test24, ...given });
  return score.kind === 'refused' ? score.reason : '';
};

test('critical force is the mean of the last three, and the impulse counts what lies below it against it', () => {
  const meanForces = [...Array.from({ length: 21 }, (_, place) => 500 - 10 * place), 260, 320, 290].map(newtons);
  const { criticalForce, planningForce, impulse, maximum, share, duty } = scored({ meanForces, ...cycle });
  expect(criticalForce.value).toBe(290);
  expect(criticalForce.band.map((each) => Math.round(1e6 * each) / 1e6)).toEqual([229.1, 350.9]);
  expect(planningForce).toBeCloseTo(243.6, 10);
  // 21 · 400 = 8400 and 870 in all, less 24 · 290, times 7 s.
  expect(impulse.value).toBeCloseTo((8400 + 870 - 6960) * 7, 8);
  expect(impulse.band[0]).toBeCloseTo(0.868 * impulse.value, 8);
  expect(impulse.band[1]).toBeCloseTo(1.132 * impulse.value, 8);
  expect(maximum.value).toBe(500);
  expect(maximum.band[1]).toBeCloseTo(528, 8);
  expect(share).toBe(0.58);
  expect(duty).toBe(0.7);
});

test('the maximum is the greatest of a separate one, the peaks and the means', () => {
  expect(scored({ ...test24, maxima: [newtons(470), newtons(530)] }).maximum.value).toBe(530);
  expect(scored({ ...test24, maxima: [newtons(300)] }).maximum.value).toBe(480);
  expect(scored(test24).maximum.value).toBe(480);
});

test('a test that is not the usual one, or has no plateau, says so', () => {
  expect(scored(test24).cautions).toHaveLength(1);
  const unlike = 'Its reliability is published for 24 contractions of 7 s with 3 s of rest.';
  expect(scored({ ...test24, meanForces: falling(23) }).cautions).toContain(unlike);
  expect(scored({ ...test24, on: seconds(6) }).cautions).toContain(unlike);
  expect(scored({ ...test24, off: seconds(4) }).cautions).toContain(unlike);
  const plateau = 'The force still falls at the end: there is no plateau yet.';
  expect(scored({ ...test24, meanForces: falling(24, 200, 280, 0.94) }).cautions).toContain(plateau);
  // The last six contractions: three of 210 and three of 200 N are one twentieth apart, three of 211 more.
  const end = (force: number) => [...falling(18), force, force, force, 200, 200, 200].map(newtons);
  expect(scored({ ...test24, meanForces: end(210) }).cautions).not.toContain(plateau);
  expect(scored({ ...test24, meanForces: end(211) }).cautions).toContain(plateau);
});

test('a test is refused with all that is wrong with it', () => {
  expect(refusal({})).toBe('');
  expect(refusal({ meanForces: falling(11) })).toBe(
    'An all-out test needs 12 contractions at least, and usually has 24; there are 11.',
  );
  expect(refusal({ meanForces: falling(12) })).toBe('');
  const broken = falling(24)
    .with(4, newtons(0))
    .with(7, Number.NaN as Newtons)
    .with(9, newtons(2001));
  expect(refusal({ meanForces: broken, on: seconds(0.5), off: seconds(61), maxima: [newtons(0), newtons(2001)] })).toBe(
    [
      'Contraction 5 must lie above 0 and at most at 2000 N; it is 0.',
      'Contraction 8 must lie above 0 and at most at 2000 N; it is NaN.',
      'Contraction 10 must lie above 0 and at most at 2000 N; it is 2001.',
      'A maximum must lie above 0 and at most at 2000 N; it is 0.',
      'A maximum must lie above 0 and at most at 2000 N; it is 2001.',
      'A contraction must last 1 to 60 s; it lasts 0.5.',
      'A rest must last 0.5 to 60 s; it lasts 61.',
    ].join(' '),
  );
  expect(refusal({ meanForces: falling(24).with(0, newtons(2000)), maxima: [newtons(2000)] })).toBe('');
  for (const [on, off] of [
    [1, 0.5],
    [60, 60],
  ] as const)
    expect(refusal({ on: seconds(on), off: seconds(off) })).toBe('');
  expect(refusal({ on: seconds(61) })).toMatch(/1 to 60 s/);
  expect(refusal({ off: seconds(0.4) })).toMatch(/0.5 to 60 s/);
  expect(refusal({ meanForces: Array.from({ length: 24 }, () => newtons(200)) })).toMatch(/does not fall/);
  expect(refusal({ meanForces: falling(24).toReversed() })).toMatch(/does not fall/);
});

test('a change within one coefficient of variation is not distinguishable from test noise', () => {
  const verdict = (earlier: number, later: number) => compareCriticalForces(newtons(earlier), newtons(later));
  expect(verdict(200, 241.9)).toMatchObject({ verdict: 'not distinguishable from test noise', cautions: [] });
  expect(verdict(200, 158.1)).toMatchObject({ verdict: 'not distinguishable from test noise' });
  expect(verdict(200, 242.1)).toMatchObject({ verdict: 'higher by more than one CV' });
  expect(verdict(200, 157.9)).toMatchObject({ verdict: 'lower by more than one CV' });
  expect(verdict(100, 121)).toMatchObject({ verdict: 'higher by more than one CV' });
  expect(verdict(100, 79)).toMatchObject({ verdict: 'lower by more than one CV' });
  const beyond = verdict(200, 300);
  expect(beyond).toMatchObject({ kind: 'estimate', value: 0.5 });
  if (beyond.kind === 'estimate') expect(beyond.cautions.join(' ')).toContain('1.4 CV');
  for (const [earlier, later] of [
    [4, 200],
    [200, 4],
    [2001, 200],
    [200, 2001],
    [200, Number.NaN],
  ] as const)
    expect(compareCriticalForces(earlier as Newtons, later as Newtons)).toMatchObject({
      kind: 'refused',
      reason: expect.stringContaining('5 to 2000 N') as string,
    });
  expect(verdict(5, 2000).kind).toBe('estimate');
});
