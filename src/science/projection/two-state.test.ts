import fc from 'fast-check';
import { expect, test } from 'vitest';
import { oxygenUptakeCourse } from './course.ts';
import { momentsAhead, projectedValue } from './prediction.ts';
import { twoStateFilter, type Test, type TwoState, type TwoStateGiven } from './two-state.ts';

const GIVEN: TwoStateGiven = {
  pre: { value: 42, sd: 0.03 },
  amplitude: { mean: 0.17, sd: 0.14 },
  course: oxygenUptakeCourse,
  driftPerDay: 2e-5,
  tests: [],
};

const filtered = (given: TwoStateGiven): TwoState => {
  const result = twoStateFilter(given);
  if (result.kind === 'refused') throw new Error(result.reason);
  return result.state;
};

const someTest: fc.Arbitrary<Test> = fc.record({
  day: fc.integer({ min: 0, max: 365 }),
  value: fc.double({ min: 10, max: 90, noNaN: true }),
  sd: fc.double({ min: 0.005, max: 0.3, noNaN: true }),
});
const someTests = fc.array(someTest, { minLength: 1, maxLength: 8 });

test('without a test, what was known stays', () => {
  const { level, amplitude, covariance } = filtered(GIVEN);
  expect(level).toBe(Math.log(42));
  expect(amplitude).toBe(0.17);
  expect(covariance).toEqual([0.03 ** 2, 0, 0, 0.14 ** 2]);
});

test('a test never widens what is known, and no variance falls to zero or below', () => {
  fc.assert(
    fc.property(someTests, (tests) => {
      let before = filtered(GIVEN);
      for (const [place] of tests.entries()) {
        const after = filtered({ ...GIVEN, tests: tests.slice(0, place + 1) });
        const [p11, p12, p21, p22] = after.covariance;
        expect(p12).toBe(p21);
        expect(p11).toBeGreaterThan(0);
        expect(p22).toBeGreaterThan(0);
        expect(p11 * p22 - p12 * p21).toBeGreaterThan(0);
        expect(p11).toBeLessThanOrEqual(before.covariance[0] * (1 + 1e-12));
        expect(p22).toBeLessThanOrEqual(before.covariance[3] * (1 + 1e-12));
        before = after;
      }
    }),
  );
});

test('variances stay above zero where tests are a billion times as sharp as what was known', () => {
  const sharp = Array.from({ length: 30 }, (_, place) => ({ day: 10 + place, value: 36, sd: 1e-9 }));
  const { covariance } = filtered({
    ...GIVEN,
    pre: { value: 42, sd: 1 },
    amplitude: { mean: 0.1, sd: 1 },
    driftPerDay: 0,
    tests: sharp,
  });
  expect(covariance[0]).toBeGreaterThanOrEqual(0);
  expect(covariance[3]).toBeGreaterThanOrEqual(0);
});

test('the order of tests does not matter', () => {
  fc.assert(
    fc.property(someTests, (tests) => {
      const forwards = filtered({ ...GIVEN, tests });
      const backwards = filtered({ ...GIVEN, tests: tests.toReversed() });
      expect(backwards.level).toBeCloseTo(forwards.level, 9);
      expect(backwards.amplitude).toBeCloseTo(forwards.amplitude, 9);
      for (const place of [0, 1, 2, 3] as const)
        expect(backwards.covariance[place]).toBeCloseTo(forwards.covariance[place], 9);
    }),
  );
});

test('a test as expected leaves the middle where it was', () => {
  const { level, amplitude } = filtered(GIVEN);
  const expected = Math.exp(level - oxygenUptakeCourse(60) * amplitude);
  const after = filtered({ ...GIVEN, tests: [{ day: 60, value: expected, sd: 0.03 }] });
  expect(after.level).toBeCloseTo(level, 12);
  expect(after.amplitude).toBeCloseTo(amplitude, 12);
});

test('a lower test says of a larger loss and of less before flight', () => {
  const after = filtered({ ...GIVEN, tests: [{ day: 60, value: 30, sd: 0.03 }] });
  expect(after.amplitude).toBeGreaterThan(0.17);
  expect(after.level).toBeLessThan(Math.log(42));
});

test('the unit of the value does not matter', () => {
  fc.assert(
    fc.property(someTests, fc.double({ min: 0.01, max: 100, noNaN: true }), (tests, unit) => {
      const one = filtered({ ...GIVEN, tests });
      const other = filtered({
        ...GIVEN,
        pre: { value: 42 * unit, sd: 0.03 },
        tests: tests.map((each) => ({ ...each, value: each.value * unit })),
      });
      expect(other.level - Math.log(unit)).toBeCloseTo(one.level, 9);
      expect(other.amplitude).toBeCloseTo(one.amplitude, 9);
    }),
  );
});

const GOOD: Test = { day: 15, value: 36.5, sd: 0.06 };
const REFUSED: readonly (readonly [Partial<TwoStateGiven>, RegExp])[] = [
  [{ pre: { value: 0, sd: 0.03 } }, /value before flight must be above zero; it is 0/],
  [{ pre: { value: Number.NaN, sd: 0.03 } }, /value before flight/],
  [{ pre: { value: 42, sd: 0 } }, /spread of the value before flight must be above zero; it is 0/],
  [{ amplitude: { mean: Number.NaN, sd: 0.1 } }, /finite mean and a spread above zero/],
  [{ amplitude: { mean: 0.1, sd: 0 } }, /finite mean and a spread above zero/],
  [{ driftPerDay: -1e-9 }, /drift must be zero or more; it is -1e-9/],
  [{ driftPerDay: Infinity }, /drift must be zero or more/],
  [{ tests: [GOOD, { ...GOOD, day: -1 }] }, /Test 2 must lie 0 to 3650 days after launch; it is -1/],
  [{ tests: [{ ...GOOD, day: 3651 }] }, /Test 1 must lie 0 to 3650 days/],
  [{ tests: [{ ...GOOD, day: Number.NaN }] }, /Test 1 must lie 0 to 3650 days/],
  [{ tests: [{ ...GOOD, value: 0 }] }, /Test 1 must have a value above zero; it is 0/],
  [{ tests: [{ ...GOOD, value: Infinity }] }, /Test 1 must have a value above zero/],
  [{ tests: [{ ...GOOD, sd: 0 }] }, /Test 1 must have a spread above zero; it is 0/],
];

test.each(REFUSED)('%j is refused in a sentence', (change, says) => {
  const result = twoStateFilter({ ...GIVEN, ...change });
  expect(result.kind).toBe('refused');
  if (result.kind === 'refused') expect(result.reason).toMatch(says);
});

test('days 0 and 3650 and a drift of nothing are taken', () => {
  const tests = [
    { ...GOOD, day: 0 },
    { ...GOOD, day: 3650 },
  ];
  expect(twoStateFilter({ ...GIVEN, driftPerDay: 0, tests }).kind).toBe('state');
});

const AHEAD = { course: oxygenUptakeCourse, driftPerDay: 2e-5, longestFlight: 219 };

test('on launch day the ratio is 1 for sure, and the value is what was measured', () => {
  const state = filtered(GIVEN);
  const ratio = projectedValue(state, { ...AHEAD, day: 0 }, 'ratio to own pre');
  expect(ratio).toMatchObject({ median: 1, low: 1, high: 1, sd: 0 });
  const value = projectedValue(state, { ...AHEAD, day: 0 }, 'value');
  if (value.kind === 'refused') throw new Error(value.reason);
  expect(value.median).toBeCloseTo(42, 10);
  expect(value.sd).toBeCloseTo(0.03, 12);
});

test('a band holds its middle, and grows with the days of drift', () => {
  const state = filtered({ ...GIVEN, tests: [GOOD] });
  const [near, far] = [
    momentsAhead(state, { ...AHEAD, day: 600 }, 'value'),
    momentsAhead(state, { ...AHEAD, day: 900 }, 'value'),
  ];
  expect(far.variance).toBeGreaterThan(near.variance);
  const value = projectedValue(state, { ...AHEAD, day: 100 }, 'value');
  if (value.kind === 'refused') throw new Error(value.reason);
  expect(value.low).toBeLessThan(value.median);
  expect(value.high).toBeGreaterThan(value.median);
});

test('day 3650 is the last that is forecast, and only a test has the spread of a test', () => {
  const state = filtered(GIVEN);
  expect(projectedValue(state, { ...AHEAD, day: 3650 }, 'value').kind).toBe('estimate');
  const [value, tested] = [
    projectedValue(state, { ...AHEAD, day: 60 }, 'value', 0.06),
    projectedValue(state, { ...AHEAD, day: 60 }, 'test', 0.06),
  ];
  expect(value).toMatchObject({ sd: Math.sqrt(momentsAhead(state, { ...AHEAD, day: 60 }, 'value').variance) });
  if (value.kind === 'refused' || tested.kind === 'refused') throw new Error('Both can be.');
  expect(tested.sd ** 2 - value.sd ** 2).toBeCloseTo(0.06 ** 2, 12);
});

test.each([-1, 3651, Number.NaN])('a forecast of day %d is refused', (day) => {
  expect(projectedValue(filtered(GIVEN), { ...AHEAD, day }, 'value')).toMatchObject({
    kind: 'refused',
    reason: expect.stringMatching(/must lie 0 to 3650 days after launch/) as string,
  });
});

test('beyond the longest mission of the data a forecast says so, and beyond half as much again it warns', () => {
  const cautionsOn = (day: number): readonly string[] => {
    const result = projectedValue(filtered(GIVEN), { ...AHEAD, day }, 'value');
    return result.kind === 'estimate' ? result.cautions : [];
  };
  expect(cautionsOn(219)).toEqual([]);
  expect(cautionsOn(220)).toEqual(['Day 220 lies beyond the longest mission in the source data, 219 days.']);
  expect(cautionsOn(328.5)).toEqual(['Day 328.5 lies beyond the longest mission in the source data, 219 days.']);
  expect(cautionsOn(329)).toEqual([
    'Day 329 lies more than half as far again beyond the longest mission in the source data, 219 days: nobody knows.',
  ]);
});
