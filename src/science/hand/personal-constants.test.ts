import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fraction, newtons, seconds, type Newtons, type Seconds } from '#units/quantity.ts';
import { fitFall, ratesOf } from './all-out-curve.ts';
import { leastWithin } from './golden-section.ts';
import {
  constantsAtShare,
  constantsFromCurve,
  constantsFromSummary,
  constantsOf,
  type PersonalConstants,
  type RecordedTest,
} from './personal-constants.ts';

interface Curve {
  readonly forces: readonly number[];
  readonly plateau: number;
  readonly height: number;
  readonly kept: number;
  readonly fatigue: number;
  readonly recovery: number;
}

const read = (name: string): unknown =>
  JSON.parse(readFileSync(join(import.meta.dirname, '../../../test/fixtures/science', name), 'utf8'));

// Written by the scripts that stand beside the files.
const { curves } = read('hand-scipy.json') as { readonly curves: readonly Curve[] };
const { allOut, summary } = read('hand.json') as {
  readonly allOut: readonly number[];
  readonly summary: { readonly fatigue: number; readonly recovery: number; readonly tau: number };
};

const cycle = { on: seconds(7), off: seconds(3) };
const falling = (count: number, level = 200, height = 280, kept = 0.86): readonly Newtons[] =>
  Array.from({ length: count }, (_, place) => newtons(level + height * kept ** place));

test('the golden section finds where a valley is lowest', () => {
  fc.assert(
    fc.property(fc.double({ min: -3, max: 3, noNaN: true }), (lowest) => {
      expect(leastWithin((at) => Math.abs(at - lowest), { low: -4, high: 4, within: 1e-9 })).toBeCloseTo(lowest, 8);
    }),
  );
  expect(leastWithin((at) => at, { low: 0, high: 1, within: 1e-9 })).toBeCloseTo(0, 8);
  expect(leastWithin((at) => -at, { low: 0, high: 1, within: 1e-9 })).toBeCloseTo(1, 8);
});

test.each(curves)('a curve of $plateau and $height is fitted as SciPy fits it, and gives its rates', (curve) => {
  const fit = fitFall(curve.forces);
  // Two least-squares searches: a sum of squares is flat to half the digits of a double around its least.
  expect(fit.kept).toBeCloseTo(curve.kept, 6);
  expect(fit.plateau).toBeCloseTo(curve.plateau, 6);
  expect(fit.height).toBeCloseTo(curve.height, 6);
  const rates = ratesOf(fit, { on: 7, off: 3, rest: 12.51 });
  expect(rates?.fatigue).toBeCloseTo(curve.fatigue, 7);
  expect(rates?.recovery).toBeCloseTo(curve.recovery, 7);
  const meanForces = curve.forces.map((each) => newtons(400 * each));
  const found = constantsFromCurve({ meanForces, maximum: newtons(400), ...cycle });
  if (found.kind === 'refused') throw new Error(found.reason);
  expect(found.value.fatigue).toBeCloseTo(curve.fatigue, 7);
  expect(found.value.recovery).toBeCloseTo(curve.recovery, 7);
  expect(found.cautions).toEqual([]);
});

test('the rates that made an all-out test are found again from it', () => {
  const meanForces = allOut.map((each) => newtons(500 * each));
  const found = constantsFromCurve({ meanForces, maximum: newtons(500), ...cycle });
  if (found.kind === 'refused') throw new Error(found.reason);
  expect(found.value.fatigue).toBeCloseTo(summary.fatigue, 9);
  expect(found.value.recovery).toBeCloseTo(summary.recovery, 9);
  expect(found.value).toMatchObject({ restMultiplier: 12.51, duty: 0.7 });
  expect(found.value.share).toBeCloseTo(0.4, 6);
  expect(found.value.timeConstant).toBeCloseTo(70, 4);
  const fit = fitFall(allOut);
  expect(fit.kept).toBeCloseTo(0.8668779, 7);
  expect(fit.plateau).toBeCloseTo(0.3998841, 7);
  expect(fit.height).toBeCloseTo(0.5585802, 7);
  expect(fit.residual).toBeLessThan(1e-9);
});

const spentAfter = (tired: number, after: number, fatigue: number, recovery: number): number => {
  const most = fatigue / (fatigue + recovery);
  return most + (tired - most) * Math.exp(-(fatigue + recovery) * after);
};

/** Mean forces of an all-out test of three compartments, contraction by contraction, of the maximum. */
const made = ({ fatigue, recovery, restMultiplier }: PersonalConstants, count: number): readonly number[] => {
  const rate = fatigue + recovery;
  const most = fatigue / rate;
  let tired = 0;
  return Array.from({ length: count }, () => {
    const force = 1 - most - ((tired - most) * (1 - Math.exp(-rate * 7))) / (rate * 7);
    tired = (most + (tired - most) * Math.exp(-rate * 7)) * Math.exp(-restMultiplier * recovery * 3);
    return force;
  });
};

test('any plausible rates are found again from the test that they make', () => {
  const share = fc.double({ min: 0.25, max: 0.55, noNaN: true }).map(fraction);
  const tau = fc.double({ min: 40, max: 110, noNaN: true }).map(seconds);
  fc.assert(
    fc.property(share, tau, (of, falls) => {
      const person = constantsOf(of, falls, fraction(0.7));
      fc.pre(
        person.fatigue >= 0.005 && person.fatigue <= 0.035 && person.recovery >= 0.0003 && person.recovery <= 0.005,
      );
      const meanForces = made(person, 24).map((each) => newtons(450 * each));
      const found = constantsFromCurve({ meanForces, maximum: newtons(450), ...cycle });
      if (found.kind === 'refused') throw new Error(found.reason);
      expect(found.value.fatigue / person.fatigue).toBeCloseTo(1, 5);
      expect(found.value.recovery / person.recovery).toBeCloseTo(1, 5);
    }),
  );
});

/** Sum of squares left over by the best plateau and height at one ratio, from moments alone. */
const squaresAt = (forces: readonly number[], kept: number): number => {
  const average = (values: readonly number[]): number => values.reduce((sum, each) => sum + each, 0) / values.length;
  const powers = forces.map((_, place) => kept ** place);
  const [x, y] = [average(powers), average(forces)];
  const between = average(powers.map((power, place) => (power - x) * ((forces[place] ?? 0) - y)));
  const spread = average(powers.map((power) => (power - x) ** 2));
  return average(forces.map((each) => (each - y) ** 2)) - between ** 2 / spread;
};

test('no ratio on a grid fits a noisy test better than the golden section does', () => {
  const noisy = fc.record({
    level: fc.double({ min: 0.25, max: 0.55, noNaN: true }),
    height: fc.double({ min: 0.3, max: 0.45, noNaN: true }),
    kept: fc.double({ min: 0.7, max: 0.95, noNaN: true }),
    noise: fc.array(fc.double({ min: -0.08, max: 0.08, noNaN: true }), { minLength: 24, maxLength: 24 }),
  });
  fc.assert(
    fc.property(noisy, ({ level, height, kept, noise }) => {
      const forces = noise.map((each, place) => level + height * kept ** place + each);
      const least = squaresAt(forces, fitFall(forces).kept);
      for (let step = 0; step <= 100; step += 1)
        expect(squaresAt(forces, 0.5 + 0.00499 * step)).toBeGreaterThanOrEqual(least - 1e-9);
    }),
  );
});

test('rates are found again from the plateau and the fall of any cycle, and of no other plateau', () => {
  const anyRates = fc.record({
    fatigue: fc.double({ min: 0.006, max: 0.03, noNaN: true }),
    recovery: fc.double({ min: 0.0004, max: 0.005, noNaN: true }),
    on: fc.double({ min: 2, max: 12, noNaN: true }),
    off: fc.double({ min: 0.5, max: 8, noNaN: true }),
    rest: fc.double({ min: 2, max: 30, noNaN: true }),
  });
  fc.assert(
    fc.property(anyRates, ({ fatigue, recovery, on, off, rest }) => {
      // A thousand cycles of all there is, in steps that sum a contraction by its middle.
      let [tired, force] = [0, 0];
      for (let cycles = 0; cycles < 1000; cycles += 1) {
        force = 0;
        for (let part = 0; part < 20; part += 1) {
          const middle = spentAfter(tired, on / 40, fatigue, recovery);
          force += (1 - middle) / 20;
          tired = spentAfter(tired, on / 20, fatigue, recovery);
        }
        tired *= Math.exp(-rest * recovery * off);
      }
      const kept = Math.exp(-(fatigue + recovery) * on - rest * recovery * off);
      const found = ratesOf({ plateau: force, height: 1 - force, kept, residual: 0 }, { on, off, rest });
      // The middles of twenty parts are off by some millionths of the force.
      expect((found?.fatigue ?? 0) / fatigue).toBeCloseTo(1, 3);
      expect((found?.recovery ?? 0) / recovery).toBeCloseTo(1, 3);
    }),
    { numRuns: 10 },
  );
  for (const plateau of [-0.1, 1.1])
    expect(ratesOf({ plateau, height: 0.5, kept: 0.9, residual: 0 }, { on: 7, off: 3, rest: 12.51 })).toBeUndefined();
});

test('a curve is refused with what is wrong with it, and what is implausible is to be repeated', () => {
  const recorded: RecordedTest = { meanForces: falling(24), maximum: newtons(500), ...cycle };
  const reason = (given: Partial<RecordedTest>): string => {
    const found = constantsFromCurve({ ...recorded, ...given });
    return found.kind === 'refused' ? found.reason : '';
  };
  expect(reason({})).toBe('');
  expect(reason({ meanForces: falling(11) })).toBe('A curve needs 12 contractions at least; there are 11.');
  expect(reason({ meanForces: falling(12) })).toBe('');
  for (const maximum of [19, 2001])
    expect(reason({ maximum: newtons(maximum) })).toMatch(/The maximum must lie in 20 to 2000/);
  expect(reason({ maximum: newtons(2000) })).not.toMatch(/The maximum must/);
  expect(reason({ meanForces: falling(24, 8, 12), maximum: newtons(20) })).toBe('');
  for (const [on, off] of [
    [1, 3],
    [60, 3],
    [7, 0.5],
    [7, 60],
  ] as const)
    expect(reason({ on: seconds(on), off: seconds(off) })).not.toMatch(/^Times must/);
  expect(reason({ meanForces: falling(24).with(2, newtons(0)) })).toMatch(/^Contraction 3 /);
  expect(reason({ meanForces: falling(24).with(0, newtons(500)) })).toBe('');
  expect(reason({ meanForces: falling(24).with(0, newtons(501)) })).toMatch(/^Contraction 1 .*500 N; it is 501/);
  expect(reason({ on: seconds(0.9) })).toMatch(/^Times must lie/);
  expect(reason({ on: seconds(61) })).toMatch(/^Times must lie/);
  expect(reason({ off: seconds(0.4) })).toMatch(/^Times must lie/);
  expect(reason({ off: seconds(61) })).toMatch(/^Times must lie/);
  expect(reason({ meanForces: falling(24).toReversed() })).toMatch(
    /^Test implausible, repeat: the force does not fall/,
  );
  expect(reason({ meanForces: Array.from({ length: 24 }, () => newtons(300)) })).toMatch(/^Test implausible, repeat/);
  // A straight fall tends to nothing that a curve could find.
  expect(reason({ meanForces: Array.from({ length: 24 }, (_, place) => newtons(480 - 19 * place)) })).toBe(
    'Test implausible, repeat: the force does not fall to a plateau.',
  );
  // Twelve contractions on their way to less than nothing.
  expect(reason({ meanForces: falling(12, -50, 525, 0.9) })).toBe(
    'Test implausible, repeat: the plateau does not lie between 0 and the maximum.',
  );
  // A minute each: almost all of the way is gone at the second contraction, more than a fit here looks for.
  expect(reason({ meanForces: falling(12, 200, 250, 0.35), on: seconds(60), off: seconds(0.5) })).toBe(
    'Test implausible, repeat: the force does not fall to a plateau.',
  );
  // A fall of less than a twentieth of the maximum.
  expect(reason({ meanForces: falling(24, 300, 24) })).toMatch(/does not fall to a plateau/);
  expect(reason({ meanForces: falling(24, 300, 26) })).not.toMatch(/does not fall to a plateau/);
  // Half of the way at each contraction: no muscle tires so fast.
  expect(reason({ meanForces: falling(24, 150, 320, 0.55) })).toMatch(
    /^Test implausible, repeat: the rate of fatigue would be 0\.0\d+ per second, outside 0\.004 to 0\.04\.$/,
  );
  expect(reason({ meanForces: falling(24, 420, 75, 0.86) })).toMatch(
    /^Test implausible, repeat: the rate of (?:fatigue|recovery) would be/,
  );
});

test('forces that scatter around their curve are used with a caution', () => {
  const scattered = falling(24).map((each, place) => newtons(each + (place % 2 === 0 ? 40 : -40)));
  const found = constantsFromCurve({ meanForces: scattered, maximum: newtons(520), ...cycle });
  expect(found).toMatchObject({ kind: 'estimate' });
  if (found.kind === 'estimate') expect(found.cautions.join(' ')).toContain('scatter');
});

test('constants from a summary are those of a second program, and implausible ones are refused', () => {
  const summedUp = { criticalForce: newtons(200), maximum: newtons(500), impulse: 14_700, duty: fraction(0.7) };
  const found = constantsFromSummary(summedUp);
  if (found.kind === 'refused') throw new Error(found.reason);
  expect(found.value.fatigue).toBeCloseTo(summary.fatigue, 14);
  expect(found.value.recovery).toBeCloseTo(summary.recovery, 14);
  expect(found.value.timeConstant).toBeCloseTo(summary.tau, 10);
  expect(found.value).toMatchObject({ share: 0.4, duty: 0.7, restMultiplier: 12.51 });
  expect(found.cautions).toHaveLength(1);
  const reason = (given: Partial<typeof summedUp>): string => {
    const other = constantsFromSummary({ ...summedUp, ...given });
    return other.kind === 'refused' ? other.reason : '';
  };
  expect(reason({ criticalForce: newtons(500) })).toMatch(/below 0.99 of the maximum/);
  expect(reason({ impulse: 0 })).toMatch(/impulse above critical force must lie/);
  expect(reason({ impulse: 2000 })).toBe(
    'Test implausible, repeat: the rate of fatigue would be 0.0900 per second, outside 0.004 to 0.04.',
  );
  expect(reason({ impulse: 60_000 })).toMatch(/rate of fatigue would be 0\.00300 per second/);
  expect(reason({ criticalForce: newtons(40), impulse: 32_000 })).toMatch(
    /rate of recovery would be 0\.000\d+ per second, outside 0\.0002 to 0\.006/,
  );
});

test('constants at another critical force keep the time constant, and stay within what is plausible', () => {
  const person = constantsOf(fraction(0.4), seconds(70), fraction(0.7));
  const lower = constantsAtShare(person, 0.316);
  expect(lower).toMatchObject({ clamped: false, value: { share: 0.316, timeConstant: 70, duty: 0.7 } });
  expect(lower.value.fatigue).toBeCloseTo(0.684 / 49, 14);
  expect(constantsAtShare(person, 0.9)).toMatchObject({ clamped: true, value: { fatigue: 0.004 } });
  const slow = constantsOf(fraction(0.2), seconds(200), fraction(0.7));
  expect(constantsAtShare(slow, 0.05)).toMatchObject({ clamped: true, value: { recovery: 0.0002 } });
  const fast = constantsOf(fraction(0.5), seconds(15), fraction(0.7));
  expect(constantsAtShare(fast, 0.4)).toMatchObject({ clamped: true, value: { fatigue: 0.04 } });
  expect(constantsAtShare(fast, 0.6)).toMatchObject({ clamped: true, value: { recovery: 0.006 } });
  expect(constantsAtShare(person, 1.2)).toMatchObject({ clamped: true, value: { share: 0.99 } });
  expect(constantsAtShare(person, 0.001)).toMatchObject({ clamped: true, value: { share: 0.01 } });
  const unbroken = constantsOf(fraction(0.2), seconds(40), fraction(1));
  expect(constantsAtShare(unbroken, 0.005)).toMatchObject({
    clamped: true,
    value: { share: 0.01, fatigue: 0.99 / 40, recovery: 0.01 / 40 },
  });
});

test('times of no test make no constants', () => {
  expect(
    constantsFromCurve({ meanForces: falling(24), maximum: newtons(500), on: Number.NaN as Seconds, off: seconds(3) }),
  ).toMatchObject({
    kind: 'refused',
  });
});
