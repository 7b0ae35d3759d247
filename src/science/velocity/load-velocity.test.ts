import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { barLoad, metresPerSecond, type MachineLoad } from '#units/quantity.ts';
import {
  EXAMPLE_SETS,
  loadVelocityProfile,
  oneRepMaxOfVelocity,
  type LoadVelocityPoint,
  type VelocityThreshold,
} from './load-velocity.ts';
import { loadOfVelocity, velocityOfLoad } from './load-velocity-line.ts';
import { evaluate } from '../evaluate.ts';

interface Reference {
  readonly sets: readonly { readonly load: number; readonly velocity: number }[];
  readonly threshold: number;
  readonly maximum: number;
  readonly standardError: number;
  readonly intercept?: number;
  readonly slope?: number;
  readonly determination?: number;
  readonly residualSd?: number;
}

const referencesOf = (file: string): readonly Reference[] => {
  const text = readFileSync(join(import.meta.dirname, '../../../test/fixtures/science', file), 'utf8');
  // Written by the scripts that stand beside the files.
  return (JSON.parse(text) as { readonly profiles: readonly Reference[] }).profiles;
};

const setsOf = (sets: Reference['sets']): readonly LoadVelocityPoint[] =>
  sets.map(({ load, velocity }) => ({ load: barLoad(load), velocity: metresPerSecond(velocity) }));

const estimate = (sets: readonly LoadVelocityPoint[], threshold: VelocityThreshold) => {
  const found = oneRepMaxOfVelocity(sets, threshold);
  if (found.kind === 'refused') throw new Error(found.reason);
  return found;
};

/** Doubles against doubles, by another order of the same sums. */
const DIGITS = 9;

test('twelve lines are as statsmodels has them', () => {
  const references = referencesOf('load-velocity-statsmodels.json');
  expect(references).toHaveLength(12);
  for (const { sets, threshold, ...theirs } of references) {
    const { value, sd, degreesOfFreedom, profile } = estimate(setsOf(sets), { velocity: metresPerSecond(threshold) });
    expect(value).toBeCloseTo(theirs.maximum, DIGITS - 1);
    expect(sd).toBeCloseTo(theirs.standardError, DIGITS);
    expect(degreesOfFreedom).toBe(sets.length - 2);
    expect(profile.velocityWithoutLoad).toBeCloseTo(theirs.intercept ?? Number.NaN, DIGITS);
    expect(profile.slope).toBeCloseTo(theirs.slope ?? Number.NaN, DIGITS);
    expect(profile.determination).toBeCloseTo(theirs.determination ?? Number.NaN, DIGITS);
    expect(profile.residualSd).toBeCloseTo(theirs.residualSd ?? Number.NaN, DIGITS);
  }
});

test('eight loads read backwards are as dose.p of R has them', () => {
  const references = referencesOf('load-velocity-r.json');
  expect(references).toHaveLength(8);
  for (const { sets, threshold, maximum, standardError } of references) {
    const { value, sd } = estimate(setsOf(sets), { velocity: metresPerSecond(threshold) });
    expect(value).toBeCloseTo(maximum, DIGITS - 1);
    expect(sd).toBeCloseTo(standardError, DIGITS);
  }
});

const anyLine = fc.record({
  fast: fc.double({ min: 1.2, max: 1.9, noNaN: true }),
  slow: fc.double({ min: 0.1, max: 0.35, noNaN: true }),
  maximum: fc.double({ min: 40, max: 250, noNaN: true }),
  parts: fc.uniqueArray(fc.integer({ min: 40, max: 85 }), { minLength: 3, maxLength: 8 }),
});

/** Sets on a line that passes through the maximum at the slow velocity; one always near it. */
const onLine = ({ fast, slow, maximum, parts }: typeof anyLine extends fc.Arbitrary<infer Line> ? Line : never) =>
  [...parts, 90].map((part) => ({
    load: barLoad((maximum * part) / 100),
    velocity: metresPerSecond(fast - ((fast - slow) * part) / 100),
  }));

test('sets that lie on a line give the maximum of the line, and no error', () => {
  fc.assert(
    fc.property(anyLine, (line) => {
      const { value, sd, cautions } = estimate(onLine(line), { velocity: metresPerSecond(line.slow) });
      expect(value).toBeCloseTo(line.maximum, 8);
      expect(sd).toBeLessThan(1e-6);
      expect(cautions).toEqual([]);
    }),
  );
});

test('loads in another unit give the same maximum in that unit', () => {
  const wobble = fc.array(fc.double({ min: -0.005, max: 0.005, noNaN: true }), { minLength: 9, maxLength: 9 });
  fc.assert(
    fc.property(anyLine, wobble, fc.double({ min: 0.5, max: 2.2, noNaN: true }), (line, off, unit) => {
      const sets = onLine(line).map(({ load, velocity }, place) => ({
        load,
        velocity: metresPerSecond(velocity + (off[place] ?? 0)),
      }));
      const threshold = { velocity: metresPerSecond(line.slow) };
      const [one, other] = [sets, sets.map((set) => ({ ...set, load: barLoad(unit * set.load) }))].map((each) =>
        oneRepMaxOfVelocity(each, threshold),
      );
      if (one?.kind !== 'estimate' || other?.kind !== 'estimate') return;
      expect(other.value).toBeCloseTo(unit * one.value, 7);
      expect(other.sd).toBeCloseTo(unit * one.sd, 7);
    }),
  );
});

test('the order of the sets does not matter', () => {
  const threshold = { velocity: metresPerSecond(0.23) };
  const [one, other] = [EXAMPLE_SETS, EXAMPLE_SETS.toReversed()].map((sets) => estimate(sets, threshold));
  expect(one?.value).toBeCloseTo(other?.value ?? Number.NaN, 10);
  expect(one?.sd).toBeCloseTo(other?.sd ?? Number.NaN, 10);
});

test('a slower threshold gives a heavier and less certain maximum', () => {
  const velocity = fc.double({ min: 0.12, max: 0.44, noNaN: true });
  fc.assert(
    fc.property(velocity, velocity, (a, b) => {
      const [slow, fast] = [Math.min(a, b), Math.max(a, b)].map((at) =>
        estimate(EXAMPLE_SETS, { velocity: metresPerSecond(at) }),
      );
      expect(slow?.value).toBeGreaterThanOrEqual(fast?.value ?? Number.NaN);
      expect(slow?.sd).toBeGreaterThanOrEqual(fast?.sd ?? Number.NaN);
    }),
  );
});

test('the spread of a threshold adds to the error of the line as at a right angle', () => {
  const velocity = metresPerSecond(0.23);
  const known = estimate(EXAMPLE_SETS, { velocity });
  const spread = estimate(EXAMPLE_SETS, { velocity, sd: metresPerSecond(0.05) });
  expect(spread.value).toBe(known.value);
  // 0.05 m/s on a slope of 0.01085 (m/s)/kg.
  expect(spread.sd ** 2 - known.sd ** 2).toBeCloseTo((0.05 / 0.01085) ** 2, 8);
});

test('a set less heavy than it might be is told', () => {
  const light = EXAMPLE_SETS.map((set) => ({ ...set, load: barLoad(0.95 * set.load) }));
  const { cautions, profile } = estimate(light, { velocity: metresPerSecond(0.17) });
  expect(cautions).toEqual(['The heaviest load is 79.6 % of the result: it is read well beyond what was lifted.']);
  expect(profile.heaviest).toBe(95);
});

/** Sets on v = a − L / 256, exact in binary. */
const onBinaryLine = (start: number, loads: readonly number[]): readonly LoadVelocityPoint[] =>
  loads.map((load) => point(load, start - load / 256));

test('a heaviest set of exactly three quarters of the result is heavy enough', () => {
  const { value, cautions } = estimate(onBinaryLine(1.5, [48, 96, 144, 192]), { velocity: metresPerSecond(0.5) });
  expect(value).toBe(256);
  expect(cautions).toHaveLength(1);
});

test('a heaviest set of exactly 85 % of the result is no caution', () => {
  const sets = [25, 45, 65, 85].map((load) => point(load, 1.28125 - load / 128));
  const { value, cautions } = estimate(sets, { velocity: metresPerSecond(0.5) });
  expect([value, cautions]).toEqual([100, []]);
});

test('a result that is the heaviest load itself is a result', () => {
  expect(estimate(onBinaryLine(1.5, [64, 128, 192, 256]), { velocity: metresPerSecond(0.5) }).value).toBe(256);
});

test('the velocity without load is no threshold', () => {
  const found = oneRepMaxOfVelocity(onBinaryLine(1, [64, 128, 160, 224]), { velocity: metresPerSecond(1) });
  expect(found).toEqual({ kind: 'refused', reason: 'At 1 m/s the line is above any load: the threshold is too fast.' });
});

test('a load is read only below the velocity without load', () => {
  const SLOW = 'The velocity must lie below that without load.';
  for (const velocity of [1.25, 1.5])
    expect(evaluate(loadOfVelocity, [velocity, 1.25, -0.01])).toEqual({ kind: 'refused', reasons: [SLOW] });
});

const point = (load: number, velocity: number): LoadVelocityPoint => ({
  load: load as LoadVelocityPoint['load'],
  velocity: velocity as LoadVelocityPoint['velocity'],
});

test.each([
  { sets: EXAMPLE_SETS.slice(0, 3), says: 'A line needs at least 4 loads; there are 3.' },
  { sets: [...EXAMPLE_SETS, point(0, 0.4)], says: 'Set 5: load of a set must lie in 0.1 to 1000 kg; it is 0.' },
  {
    sets: [point(90, Number.NaN), ...EXAMPLE_SETS],
    says: 'Set 1: mean velocity of its best rise must lie in 0.02 to 3 m/s; it is NaN.',
  },
  {
    sets: EXAMPLE_SETS.map((set) => point(100, set.velocity)),
    says: 'All points stand at the same place: no line is told.',
  },
  {
    sets: EXAMPLE_SETS.map((set) => point(140 - set.load, set.velocity)),
    says: 'Velocity does not fall with the load: the sets were not lifted as fast as possible, or are mixed up.',
  },
  {
    sets: EXAMPLE_SETS.map((set) => point(set.load, 0.8)),
    says: 'Velocity does not fall with the load: the sets were not lifted as fast as possible, or are mixed up.',
  },
  {
    sets: [...EXAMPLE_SETS, point(90, 0.95)],
    says: 'The line explains 58.8 % of the variance, less than 95 %: repeat the set that lies off it.',
  },
])('no line is drawn, and why: $says', ({ sets, says }) => {
  expect(loadVelocityProfile(sets)).toEqual({ kind: 'refused', reason: says });
  expect(oneRepMaxOfVelocity(sets, { velocity: metresPerSecond(0.23) })).toEqual({ kind: 'refused', reason: says });
});

test.each([
  { sets: EXAMPLE_SETS, threshold: 0.6, says: /lighter than the heaviest load that was lifted/ },
  {
    sets: EXAMPLE_SETS.map((set) => point(0.2 * set.load, 0.5 + set.velocity / 10)),
    threshold: 0.9,
    says: /above any load/,
  },
  { sets: EXAMPLE_SETS, threshold: 0, says: /is 70.8 % of the result, less than 75 %: add a heavier set/ },
  { sets: EXAMPLE_SETS, threshold: -0.1, says: /velocity of the last possible repetition must lie in 0 to 1/ },
  { sets: EXAMPLE_SETS, threshold: Number.NaN, says: /velocity of the last possible repetition must lie in 0 to 1/ },
  { sets: EXAMPLE_SETS, threshold: 0.23, sd: -0.1, says: /standard deviation of that velocity must lie in 0 to 0.5/ },
])('no maximum is read at $threshold m/s: $says', ({ sets, threshold, sd, says }) => {
  // Impossible numbers have no brand: they are what is tested.
  const at = { velocity: threshold, ...(sd === undefined ? {} : { sd }) } as unknown as VelocityThreshold;
  const found = oneRepMaxOfVelocity(sets, at);
  expect(found.kind === 'refused' && found.reason).toMatch(says);
});

test('whatever sets are given, a line falls and a maximum is finite, or a sentence says why not', () => {
  const sets = fc.array(
    fc.record({
      load: fc.double({ min: -5, max: 300 }),
      velocity: fc.double({ min: -0.5, max: 2 }),
    }),
    { maxLength: 8 },
  );
  fc.assert(
    fc.property(sets, fc.double({ min: -0.2, max: 1.2 }), (given, threshold) => {
      const found = oneRepMaxOfVelocity(
        given.map(({ load, velocity }) => point(load, velocity)),
        { velocity: threshold as LoadVelocityPoint['velocity'] },
      );
      if (found.kind === 'refused') expect(found.reason).toMatch(/\.$/);
      else {
        expect(Number.isFinite(found.value) && Number.isFinite(found.sd)).toBe(true);
        expect(found.profile.slope).toBeLessThan(0);
        expect(velocityOfLoad(found.profile.velocityWithoutLoad, found.profile.slope, found.value)).toBeCloseTo(
          threshold,
          8,
        );
      }
    }),
  );
});

// @ts-expect-error a pull in 0 g is no point of a line in 1 g
export const weightless = (load: MachineLoad): LoadVelocityPoint => ({ load, velocity: metresPerSecond(0.5) });

test('sets and their reading are drawn as single points, the line through them', () => {
  const curves = oneRepMaxOfVelocity.record.plot?.curves() ?? [];
  expect(curves.map(({ label, scattered = false }) => [label, scattered])).toEqual([
    ['line', false],
    ['sets', true],
    ['maximum read at 0.23 m/s', true],
  ]);
  expect(curves[2]?.points).toEqual([[expect.closeTo(120, 8) as number, 0.23]]);
});
