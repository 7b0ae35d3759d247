import fc from 'fast-check';
import { expect, test } from 'vitest';
import { addDays, type Day } from '#units/day.ts';
import { entered } from '#units/entered.ts';
import { enduranceOn, enduranceReader } from '#assessing/endurance.ts';
import { handOn } from '#assessing/hands.ts';
import { ownLine } from '#assessing/own-stages.ts';
import type { Test } from '#domain/tested.ts';
import { workingWindow } from '#server/windows/card-window.ts';
import { LAUNCH, onFlightDay } from './rehearsal/rehearsal.ts';
import { A_BIRTHDAY, BEFORE, bouts, Modes, percent, RIDE, RUN, times } from './rehearsal/all-modes.ts';

/* What is known of somebody's endurance and hands on a day. */

const tested = (...tests: readonly (readonly [Test, Day])[]): Modes => {
  const modes = new Modes({ items: [bouts(RIDE, times(1, 600, null))], birthDate: A_BIRTHDAY });
  for (const [test, day] of tests) modes.tested(test, day);
  return modes;
};
const uptake = (value: string): Test => ({
  what: 'greatest oxygen uptake',
  value: entered(value, 'mL/(kg min)'),
  how: 'measured',
});

test('the newest day counts, of one day what was entered last, and nothing from after the day', () => {
  const modes = tested([uptake('44'), addDays(BEFORE, 5)], [uptake('40'), BEFORE], [uptake('43'), addDays(BEFORE, 5)]);
  const on = (days: number) => enduranceOn(modes.known(), addDays(BEFORE, days)).maximalUptake?.value ?? null;
  expect([on(-1), on(0), on(4), on(5), on(50)]).toEqual([null, 40, 40, 43, 43]);
  expect(enduranceOn(modes.known(), addDays(BEFORE, 5)).maximalUptake?.from.says).toBe(
    'greatest oxygen uptake, measured 2026-11-26',
  );
});

test('years are completed ones', () => {
  const age = (day: Day) => enduranceOn(tested().known(), day).age?.value;
  const birthday = addDays(A_BIRTHDAY, 365 * 47 + 12);
  expect([age(addDays(birthday, -1)), age(birthday)]).toEqual([46, 47]);
});

const anyTest: fc.Arbitrary<Test> = fc.oneof(
  fc.integer({ min: 20, max: 70 }).map((value) => uptake(String(value))),
  fc
    .integer({ min: 40, max: 80 })
    .map((value): Test => ({ what: 'resting heart rate', value: entered(String(value), '1/min') })),
  fc
    .tuple(fc.integer({ min: 50, max: 300 }), fc.option(fc.integer({ min: 90, max: 190 })))
    .map(([watts, rate]): Test => ({
      what: 'cycle stage',
      watts: entered(String(watts), 'W'),
      heartRate: rate === null ? null : entered(String(rate), '1/min'),
      uptake: entered(String(Math.round(watts / 6)), 'mL/(kg min)'),
      machine: null,
    })),
);

test('what is kept between two tests is what would be read anew', () => {
  fc.assert(
    fc.property(
      fc.array(fc.tuple(anyTest, fc.integer({ min: -400, max: 400 })), { maxLength: 6 }),
      fc.array(fc.integer({ min: -450, max: 450 }), { minLength: 1, maxLength: 8 }),
      (tests, days) => {
        const known = tested(...tests.map(([each, day]) => [each, addDays(LAUNCH, day)] as const)).known();
        const reader = enduranceReader(known);
        for (const each of days) {
          const { age, ...kept } = reader.on(addDays(LAUNCH, each));
          const { age: now, ...anew } = enduranceOn(known, addDays(LAUNCH, each));
          expect(kept).toEqual(anew);
          expect(age?.value).toBe(now?.value);
        }
      },
    ),
    { numRuns: 40 },
  );
});

const stages = (...pairs: readonly (readonly [number, number])[]) => {
  const modes = tested(
    ...pairs.map(([watts, rate]): readonly [Test, Day] => [
      {
        what: 'cycle stage',
        watts: entered(String(watts), 'W'),
        heartRate: entered(String(rate), '1/min'),
        uptake: null,
        machine: null,
      },
      BEFORE,
    ]),
  );
  const { cycleRate } = enduranceOn(modes.known(), BEFORE);
  return cycleRate && ownLine(cycleRate, 'Ride');
};

test('three stages that rise make a line; two, or a line that falls, make none', () => {
  expect(stages([150, 146], [50, 102], [100, 123])).toMatchObject({ from: 50, to: 150, origin: { exercise: 'Ride' } });
  expect(stages([150, 146], [50, 102], [100, 123])?.slope).toBeCloseTo(0.44, 12);
  expect(stages([150, 146], [50, 102])).toBeNull();
  expect(stages([50, 146], [100, 123], [150, 102])).toBeNull();
});

test('of a hand its own side, newest', () => {
  const grip = (side: 'left' | 'right', value: string): Test => ({
    what: 'greatest grip',
    side,
    value: entered(value, 'lb'),
  });
  const known = tested([grip('left', '100'), BEFORE], [grip('left', '110'), addDays(BEFORE, 1)]).known();
  // 110 lb of force.
  expect(handOn(known, 'greatest grip', 'left', LAUNCH)?.value).toBeCloseTo(489.304, 3);
  expect(handOn(known, 'greatest grip', 'right', LAUNCH)).toBeNull();
  expect(handOn(known, 'critical force', 'left', LAUNCH)).toBeNull();
});

test('the panel opens the working of a run: tests, body mass, harness, each with where it comes from', () => {
  const modes = new Modes({ items: [bouts(RUN, times(4, 240, percent('of heart-rate reserve', 85), 180))] });
  modes.endures({ uptake: '45', rest: '50', greatest: '190' });
  const on = onFlightDay(5);
  const item = modes.bouts(on);
  const panel = workingWindow(modes.known(), modes.road(on), on, item.item);
  expect(panel?.load).toMatch(/^4 × 4 min, 3 min easy · .*km\/h · 164–174\/min · harness 52 kg/);
  expect(panel?.workings.map(({ reckoning }) => reckoning)).toEqual([
    'pull of the harness',
    'heart rate by its reserve',
    'oxygen uptake by its reserve',
    'running speed by the handbook',
    'running speed under the harness',
  ]);
  const given = panel?.workings.flatMap((working) => working.given) ?? [];
  expect(given.every(({ from }) => from.says !== '')).toBe(true);
  expect(given.map(({ from }) => from.says)).toEqual(
    expect.arrayContaining([
      'All modes, version 1: 85 % of the heart-rate reserve',
      'greatest oxygen uptake, measured 2026-08-13',
      'last body mass before launch',
      'where the ramp stands: from 65 % in steps of 3 % to 90 % of body weight',
    ]),
  );
});
