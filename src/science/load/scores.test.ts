import fc from 'fast-check';
import { expect, test } from 'vitest';
import { acuteChronic, couplingCorrelation, exponentialAverages } from './acute-chronic.ts';
import type { DailyLoads } from './daily-loads.ts';
import { impulseOfMan, impulseOfWoman, zoneImpulse } from './heart-rate-impulse.ts';
import { questionnaireDeviation } from './questionnaire.ts';
import { randomStream } from '../random.ts';
import { dayLoad } from './session-load.ts';
import { volumeLoad } from './volume-load.ts';
import { weeklyLoad } from './weekly-load.ts';
import { zoneMinutes } from './zone-minutes.ts';

test('a day of rest is 0, a session that was not rated leaves the day open', () => {
  expect(dayLoad([])).toEqual({ kind: 'estimate', value: 0 });
  expect(
    dayLoad([
      { rating: 0, minutes: 30 },
      { rating: null, minutes: 40 },
    ]),
  ).toEqual({ kind: 'none', reason: '1 of 2 sessions were rated.' });
});

test('sessions that cannot be are refused, all at once', () => {
  const found = dayLoad([
    { rating: 11, minutes: 0 },
    { rating: 10, minutes: 240 },
    { rating: -1, minutes: 241 },
  ]);
  expect(found).toEqual({
    kind: 'refused',
    reasons: [
      'The rating of session 1 must lie in 0 to 10; it is 11.',
      'The length of session 1 must lie in 0 to 240 min; it is 0.',
      'The rating of session 3 must lie in 0 to 10; it is -1.',
      'The length of session 3 must lie in 0 to 240 min; it is 241.',
    ],
  });
});

test('an incomplete week says how much of it there is', () => {
  expect(weeklyLoad([450, 300, null, 135, 610, null, 0])).toEqual({
    kind: 'none',
    reason: '5 of 7 days were reported.',
  });
});

test('a week of rest has a load of 0 and neither monotony nor strain', () => {
  const reason = { kind: 'none', reason: 'No load in this week.' };
  expect(weeklyLoad([0, 0, 0, 0, 0, 0, 0])).toMatchObject({ total: 0, monotony: reason, strain: reason });
});

test('the same load every day has no monotony, never an infinite one', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.1, max: 2000, noNaN: true }), (load) => {
      const week = weeklyLoad(Array.from({ length: 7 }, () => load));
      const reason = { kind: 'none', reason: 'No variation: every day had the same load.' };
      expect(week).toMatchObject({ kind: 'estimate', monotony: reason, strain: reason });
    }),
  );
});

test('monotony does not know the unit of load, strain grows with it', () => {
  const loads = fc.array(fc.integer({ min: 0, max: 1000 }), { minLength: 7, maxLength: 7 });
  fc.assert(
    fc.property(
      loads.filter((each) => new Set(each).size > 1),
      (each) => {
        const [once, twice] = [weeklyLoad(each), weeklyLoad(each.map((load) => 2 * load))];
        if (once.kind !== 'estimate' || twice.kind !== 'estimate') throw new Error('Both weeks are complete.');
        if (once.monotony.kind !== 'estimate' || twice.monotony.kind !== 'estimate') throw new Error('Both vary.');
        if (once.strain.kind !== 'estimate' || twice.strain.kind !== 'estimate') throw new Error('Both vary.');
        expect(twice.monotony.value).toBeCloseTo(once.monotony.value, 10);
        expect(twice.strain.value / once.strain.value).toBeCloseTo(2, 10);
      },
    ),
  );
});

test('weeks that cannot be are refused, all at once', () => {
  expect(weeklyLoad([1, -1, 3, Number.NaN, 100_001, 6])).toEqual({
    kind: 'refused',
    reasons: [
      'A week has 7 days; 6 were given.',
      'The load of day 2 must lie in 0 to 100000; it is -1.',
      'The load of day 4 must lie in 0 to 100000; it is NaN.',
      'The load of day 5 must lie in 0 to 100000; it is 100001.',
    ],
  });
});

test('an impulse is held to the reserve: under rest it is nothing, over the maximum that of the maximum', () => {
  expect(impulseOfMan(30, 50, 55, 185)).toBe(0);
  expect(impulseOfWoman(30, 200, 55, 185)).toBe(impulseOfWoman(30, 185, 55, 185));
});

test('an impulse grows with time and with heart rate', () => {
  const heart = fc.double({ min: 56, max: 184, noNaN: true });
  fc.assert(
    fc.property(heart, fc.double({ min: 1, max: 200, noNaN: true }), (beats, time) => {
      for (const impulse of [impulseOfMan, impulseOfWoman]) {
        expect(impulse(time, beats + 1, 55, 186)).toBeGreaterThan(impulse(time, beats, 55, 186));
        expect(impulse(2 * time, beats, 55, 186)).toBeCloseTo(2 * impulse(time, beats, 55, 186), 8);
      }
    }),
  );
});

test('zones are closed below and open above, but for the last', () => {
  const heartRates = [99, 100, 119, 120, 139, 140, 159, 160, 179, 180, 200];
  expect(zoneMinutes({ heartRates, step: 0.5, maximal: 200 })).toEqual({
    kind: 'estimate',
    zones: [1, 1, 1, 1, 1],
    below: 0.5,
    cautions: [],
  });
});

test('steps that were not recorded count nowhere, which is said; so are beats above the maximum', () => {
  expect(zoneMinutes({ heartRates: [150, null, 210, null], step: 1, maximal: 200 })).toEqual({
    kind: 'estimate',
    zones: [0, 0, 1, 0, 1],
    below: 0,
    cautions: [
      '2 of 4 steps were recorded.',
      '1 steps lie above the maximal heart rate, which may be too low; they count in zone 5.',
    ],
  });
  expect(zoneMinutes({ heartRates: [null, null], step: 1, maximal: 200 })).toEqual({
    kind: 'none',
    reason: '0 of 2 steps were recorded.',
  });
});

test('traces that cannot be are refused, all at once', () => {
  expect(zoneMinutes({ heartRates: [24, 241, 150], step: 0, maximal: 99 })).toEqual({
    kind: 'refused',
    reasons: [
      'The heart rate of step 1 must lie in 25 to 240; it is 24.',
      'The heart rate of step 2 must lie in 25 to 240; it is 241.',
      'A step must last 0.001 to 60 min; it is 0.',
      'The maximal heart rate must lie in 100 to 240; it is 99.',
    ],
  });
  expect(zoneMinutes({ heartRates: [25, 240], step: 60, maximal: 240 }).kind).toBe('estimate');
  expect(zoneMinutes({ heartRates: [25, 240], step: 0.001, maximal: 100 }).kind).toBe('estimate');
});

test('a trace and its score agree', () => {
  const found = zoneMinutes({ heartRates: [110, 130, 150, 170, 190], step: 2, maximal: 200 });
  expect(found.kind === 'estimate' && zoneImpulse(...found.zones)).toBe(2 * 15);
});

test('volumes of two machines or two patterns are never added', () => {
  const line = { sets: 2, repetitions: 5, load: 100 };
  expect(
    volumeLoad([
      { machine: 'barbell', pattern: 'squat', ...line },
      { machine: 'flight machine', pattern: 'squat', ...line },
      { machine: 'barbell', pattern: 'hinge', ...line },
      { machine: 'flight machine', pattern: 'squat', ...line, sets: 1 },
    ]),
  ).toEqual({
    kind: 'estimate',
    volumes: [
      { machine: 'barbell', pattern: 'squat', volume: 1000 },
      { machine: 'flight machine', pattern: 'squat', volume: 1500 },
      { machine: 'barbell', pattern: 'hinge', volume: 1000 },
    ],
  });
  expect(volumeLoad([])).toEqual({ kind: 'estimate', volumes: [] });
});

test('lines that cannot be are refused, all at once', () => {
  expect(
    volumeLoad([
      { machine: 'a', pattern: 'b', sets: -1, repetitions: 1001, load: 1001 },
      { machine: 'a', pattern: 'b', sets: 101, repetitions: -1, load: Number.NaN },
      { machine: 'a', pattern: 'b', sets: 100, repetitions: 1000, load: 1000 },
    ]),
  ).toEqual({
    kind: 'refused',
    reasons: [
      'The sets of line 1 must lie in 0 to 100; it is -1.',
      'The repetitions in a set of line 1 must lie in 0 to 1000; it is 1001.',
      'The load of line 1 must lie in 0 to 1000; it is 1001.',
      'The sets of line 2 must lie in 0 to 100; it is 101.',
      'The repetitions in a set of line 2 must lie in 0 to 1000; it is -1.',
      'The load of line 2 must lie in 0 to 1000; it is NaN.',
    ],
  });
});

const even = (days: number, load = 300): DailyLoads => Array.from({ length: days }, () => load);

test('the same load every day has ratios of 1, the exponential one from the 29th day on', () => {
  const one = { kind: 'estimate', value: 1 };
  expect(acuteChronic(even(28))).toEqual({
    kind: 'estimate',
    coupled: one,
    uncoupled: one,
    exponential: { kind: 'none', reason: 'Hidden for the first 28 days in a row; this is day 28.' },
  });
  const late = acuteChronic(even(29));
  expect(late.kind === 'estimate' && late.exponential.kind === 'estimate' && late.exponential.value).toBeCloseTo(1, 12);
});

test('a window with gaps says how much of it there is, and the exponential average starts anew', () => {
  const gap = [...even(30), null, ...even(10)];
  expect(acuteChronic(gap)).toEqual({
    kind: 'estimate',
    coupled: { kind: 'none', reason: '27 of 28 days were reported.' },
    uncoupled: { kind: 'none', reason: '27 of 28 days were reported.' },
    exponential: { kind: 'none', reason: 'Hidden for the first 28 days in a row; this is day 10.' },
  });
  expect(exponentialAverages([10, null, 20, 40], 3)).toEqual([10, null, 20, 30]);
  expect(acuteChronic(even(20))).toMatchObject({ coupled: { reason: '20 of 28 days were reported.' } });
});

test('a ratio to no load is none', () => {
  const none = { kind: 'none', reason: 'No load in the long run.' };
  expect(acuteChronic(even(40, 0))).toEqual({ kind: 'estimate', coupled: none, uncoupled: none, exponential: none });
  expect(acuteChronic([...even(21, 0), ...even(7)])).toMatchObject({ coupled: { value: 4 }, uncoupled: none });
});

test('loads that cannot be are refused', () => {
  expect(acuteChronic([...even(30), -1]).kind).toBe('refused');
});

test('an exponential average lies within its loads', () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 0, max: 1000 }), { minLength: 1, maxLength: 60 }), (loads) => {
      const last = exponentialAverages(loads, 7).at(-1) ?? Number.NaN;
      expect(last).toBeGreaterThanOrEqual(Math.min(...loads) - 1e-9);
      expect(last).toBeLessThanOrEqual(Math.max(...loads) + 1e-9);
    }),
  );
});

const correlation = (pairs: readonly (readonly [number, number])[]): number => {
  const [middleA, middleB] = [0, 1].map(
    (of) => pairs.reduce((total, pair) => total + (pair[of as 0 | 1] ?? 0), 0) / pairs.length,
  ) as [number, number];
  let [both, squaresA, squaresB] = [0, 0, 0];
  for (const [a, b] of pairs) {
    both += (a - middleA) * (b - middleB);
    squaresA += (a - middleA) ** 2;
    squaresB += (b - middleB) ** 2;
  }
  return both / Math.sqrt(squaresA * squaresB);
};

test('unrelated weeks correlate by one half with the mean of four that holds them: 200,000 fours', () => {
  const chance = randomStream(1, 'unrelated weeks');
  const pairs = Array.from({ length: 200_000 }, () => {
    const weeks = [chance.normal(), chance.normal(), chance.normal(), chance.normal()];
    return [weeks[0] ?? 0, weeks.reduce((sum, week) => sum + week, 0) / 4] as const;
  });
  // The standard error is (1 − r²) / √200,000 = 0.0017; three of them.
  expect(Math.abs(correlation(pairs) - couplingCorrelation(4))).toBeLessThan(0.005);
});

test('a sum of questions stands against at least ten own days of the last 28', () => {
  const ten = Array.from({ length: 10 }, (_, place) => 9 + (place % 3));
  expect(questionnaireDeviation(14, ten.slice(1))).toEqual({
    kind: 'none',
    reason: '9 answered days; 10 are needed.',
  });
  expect(questionnaireDeviation(14, ten)).toMatchObject({ kind: 'estimate', cautions: [] });
  expect(questionnaireDeviation(14, [...ten, null, null])).toMatchObject({
    cautions: ['10 of 12 days were answered.'],
  });
  const longAgo = Array.from({ length: 20 }, () => 28);
  const recent = Array.from({ length: 28 }, (_, place) => 8 + 4 * (place % 2));
  expect(questionnaireDeviation(10, [...longAgo, ...recent])).toMatchObject({ mean: 10, value: 0 });
});

test('a person who answers evenly is measured in whole points, one who varies in own deviations', () => {
  expect(
    questionnaireDeviation(
      12,
      Array.from({ length: 12 }, () => 10),
    ),
  ).toMatchObject({ sd: 0, value: 2 });
  const varied = questionnaireDeviation(20, [6, 14, 6, 14, 6, 14, 6, 14, 6, 14]);
  expect(varied.kind === 'estimate' && varied.value).toBeCloseTo(10 / Math.sqrt(160 / 9), 12);
});

test('sums that cannot be are refused', () => {
  expect(questionnaireDeviation(3, [29, 10])).toEqual({
    kind: 'refused',
    reasons: ['A sum lies in 4 to 28; one is 3.', 'A sum lies in 4 to 28; one is 29.'],
  });
  expect(
    questionnaireDeviation(
      4,
      Array.from({ length: 10 }, () => 28),
    ).kind,
  ).toBe('estimate');
});
