import fc from 'fast-check';
import { expect, test } from 'vitest';
import { callWith } from '../formula.ts';
import { runningCostFactor, sdOfRunningCostFactor, walkingCostFactor } from './harness-cost.ts';
import { effectiveLoad, harnessPull, loadForSpeed, loadOfPull, setLoad } from './harness-limits.ts';
import { LOAD_PROGRESSION, SPEED_CAPS, type SpeedCap } from './harness-rules.table.ts';
import { capOfDay, sessionUnderHarness } from './session-under-harness.ts';
import type { HarnessSession, PersonNow, SpeedLimit, UnderHarness } from './harness-session.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const NO_CAP: readonly SpeedCap[] = [];
const PERSON: PersonNow = { maximalUptake: 45, restingRate: 55, maximalRate: 176.5 };

const brought = (
  session: Partial<HarnessSession>,
  person?: PersonNow,
  caps: readonly SpeedCap[] = SPEED_CAPS.rows,
): UnderHarness => {
  const found = sessionUnderHarness(
    { gait: 'running', groundSpeed: 160, load: 0.7, flightDay: 40, ...session },
    person,
    caps,
  );
  if (found.kind === 'refused') throw new Error(found.reason);
  return found;
};

const limitSpeed = (cap: SpeedLimit): number => {
  if (cap.kind === 'no limit') throw new Error(cap.because);
  return cap.speed;
};

const anySession = fc.record({
  gait: fc.constantFrom('running' as const, 'walking' as const),
  groundSpeed: between(50, 250),
  load: between(0.3, 1),
  flightDay: fc.integer({ min: 1, max: 300 }),
});

test('at full body weight nothing changes: the factor is 1, and the speed of the same effort is the same speed', () => {
  expect(callWith(runningCostFactor, [1])).toBe(1);
  expect(callWith(walkingCostFactor, [1])).toBe(1);
  fc.assert(
    fc.property(anySession, (session) => {
      const found = brought({ ...session, load: 1 });
      expect(found.sameEffortSpeed).toBeCloseTo(session.groundSpeed, 10);
      expect(found.sameSpeed.uptake).toBeCloseTo(found.onEarth.uptake, 10);
      expect(found.ways).toBeUndefined();
    }),
  );
});

test('less load is less cost, in running more so than in walking, and less sure', () => {
  fc.assert(
    fc.property(between(0.3, 0.98), (load) => {
      expect(callWith(runningCostFactor, [load])).toBeLessThan(callWith(runningCostFactor, [load + 0.02]));
      expect(callWith(runningCostFactor, [load])).toBeLessThan(callWith(walkingCostFactor, [load]));
      expect(callWith(sdOfRunningCostFactor, [load])).toBeGreaterThan(callWith(sdOfRunningCostFactor, [load + 0.02]));
    }),
  );
});

test('without a cap the start costs what the ground did', () => {
  fc.assert(
    fc.property(anySession, (session) => {
      const found = brought(session, undefined, NO_CAP);
      expect(found.start.uptake).toBeCloseTo(found.onEarth.uptake, 8);
      expect(found.start.speed).toBe(found.sameEffortSpeed);
      expect(found.cap).toEqual({ kind: 'no limit', because: 'No rule and no belt limits the speed.' });
      expect(found.ways).toBeUndefined();
    }),
  );
});

test('the start is never above the cap, and in the first three weeks never above the speed on the ground', () => {
  fc.assert(
    fc.property(anySession, between(60, 300), (session, beltLimit) => {
      const found = brought({ ...session, beltLimit });
      expect(found.start.speed).toBeLessThanOrEqual(limitSpeed(found.cap));
      expect(found.start.speed).toBeLessThanOrEqual(beltLimit);
      if (session.flightDay <= 21) expect(found.start.speed).toBeLessThanOrEqual(session.groundSpeed);
      expect(found.start.speed).toBeLessThanOrEqual(1.15 * session.groundSpeed);
    }),
  );
});

test('a load that all but equals body weight starts at the cap and not a rounding above it', () => {
  const found = brought({ groundSpeed: 50, load: 0.9999999999987013, flightDay: 1 });
  expect(found.start.speed).toBe(50);
  expect(found.ways).toBeUndefined();
});

test('the load that is offered makes the capped speed cost what the ground did', () => {
  fc.assert(
    fc.property(anySession, between(0.85, 1.15), (session, factor) => {
      const caps = [{ fromFlightDay: 1, factor, says: 'A rule.' }];
      const found = brought(session, undefined, caps);
      if (!found.ways) return;
      const { load } = found.ways.raiseLoad;
      if (load < 0.1 || load > 1.5) return;
      const heavier = brought({ ...session, load }, undefined, caps);
      expect(heavier.sameEffortSpeed).toBeCloseTo(limitSpeed(found.cap), 6);
      expect(heavier.start.uptake).toBeCloseTo(found.onEarth.uptake, 6);
      expect(load).toBeGreaterThan(session.load);
    }),
  );
});

test('the time that is offered makes up the net oxygen, and the shortfall is what is missing without it', () => {
  fc.assert(
    fc.property(anySession, (session) => {
      const found = brought({ ...session, flightDay: 3 });
      if (!found.ways) return;
      const { lengthen, acceptLess } = found.ways;
      expect(lengthen.multiple * (found.start.uptake - 3.5)).toBeCloseTo(found.onEarth.uptake - 3.5, 8);
      expect(lengthen.multiple).toBeGreaterThan(1);
      expect(acceptLess.uptake).toBeCloseTo(found.start.uptake, 10);
      expect(acceptLess.shortfall).toBeCloseTo(found.onEarth.uptake - found.start.uptake, 10);
    }),
  );
});

test('a load is allowed up to what this person may carry now, or to 1.1', () => {
  expect(brought({ flightDay: 3 }).ways?.raiseLoad).toEqual({ load: 1, allowed: true });
  expect(brought({ flightDay: 3, highestLoad: 0.75 }).ways?.raiseLoad).toEqual({ load: 1, allowed: false });
  expect(brought({ flightDay: 3, highestLoad: 1 }).ways?.raiseLoad.allowed).toBe(true);
  // A belt so slow that body weight and a half would be needed.
  expect(brought({ beltLimit: 110 }).ways?.raiseLoad.allowed).toBe(false);
});

test('on day 21 the rule still holds the ground speed, on day 22 it lets go by fifteen percent', () => {
  expect(brought({ flightDay: 21 }).cap).toMatchObject({ speed: 160 });
  expect(brought({ flightDay: 21 }).start.speed).toBe(160);
  expect(limitSpeed(brought({ flightDay: 22 }).cap)).toBeCloseTo(184, 10);
  expect(brought({ flightDay: 22 }).cap.because).toMatch(/15 % faster, once the load has been raised/);
});

test('a belt slower than the rule is the cap, and one faster is not', () => {
  expect(brought({ beltLimit: 170 }).cap).toEqual({ kind: 'limit', speed: 170, because: 'The belt runs no faster.' });
  expect(brought({ beltLimit: 200 }).cap.because).toMatch(/at most 15 % faster/);
  expect(limitSpeed(brought({ beltLimit: 170 }, undefined, NO_CAP).cap)).toBe(170);
});

test('the rule of a day is the latest that has begun, in whatever order they stand', () => {
  const rules = SPEED_CAPS.rows.toReversed();
  expect(capOfDay(rules, 1)?.factor).toBe(1);
  expect(capOfDay(rules, 21)?.factor).toBe(1);
  expect(capOfDay(rules, 22)?.factor).toBe(1.15);
  expect(capOfDay([{ fromFlightDay: 10, factor: 1.05, says: 'Later.' }], 2)?.factor).toBe(1.05);
  expect(capOfDay([], 2)).toBeUndefined();
});

test('the spread of people holds that of the harness and seven percent of the uptake', () => {
  const { sameSpeed, onEarth } = brought({});
  expect(sameSpeed.sdOfPeople).toBeCloseTo(Math.hypot(sameSpeed.sd, 0.07 * sameSpeed.uptake), 12);
  expect(onEarth).toMatchObject({ sd: 0, speed: 160 });
  expect(onEarth.sdOfPeople).toBeCloseTo(0.07 * 35.5, 10);
});

test('the spread of the harness is that of its factor times the net cost on Earth', () => {
  // By hand: √(0.03² + 0.05²) · 32 at a load of 0.7 and 160 m/min.
  expect(brought({}).sameSpeed.sd).toBeCloseTo(Math.sqrt(0.0034) * 32, 10);
});

test('exactly at the maximum and exactly at the fastest walk nothing is flagged', () => {
  const atMaximum = { ...PERSON, maximalUptake: brought({}).start.uptake };
  expect(told({}, atMaximum)).not.toMatch(/more oxygen/);
  expect(told({ gait: 'walking', groundSpeed: 100, load: 1 })).not.toMatch(/break into a run/);
});

test('a heart rate stands only where the person is known, and is lower under less load', () => {
  expect('heartRate' in brought({}).sameSpeed).toBe(false);
  const found = brought({}, PERSON);
  expect(found.sameSpeed.heartRate).toBeLessThan(found.onEarth.heartRate ?? 0);
  expect(found.start.heartRate).toBeGreaterThan(found.sameSpeed.heartRate ?? 300);
});

const told = (session: Partial<HarnessSession>, person?: PersonNow): string =>
  brought(session, person).cautions.join(' ');

test('what lies outside what was measured is flagged, and the model never goes without its sentence', () => {
  expect(brought({}).cautions).toHaveLength(1);
  expect(told({})).toMatch(/heart rate, perceived exertion and talking govern/);
  for (const load of [0.29, 1.11]) expect(told({ load })).toMatch(/lies outside 0.3 to 1.1/);
  for (const load of [0.3, 1.1]) expect(told({ load })).not.toMatch(/lies outside 0.3/);
  expect(told({ groundSpeed: 110 })).toMatch(/belt speed, running 110 m\/min is outside/);
  expect(told({ gait: 'walking', groundSpeed: 95 })).toMatch(/most people break into a run/);
  expect(told({ gait: 'walking', groundSpeed: 80, load: 0.9 })).not.toMatch(/break into a run/);
  expect(told({ groundSpeed: 240 }, PERSON)).toMatch(/more oxygen than the person’s maximum/);
  expect(told({ groundSpeed: 160 }, PERSON)).not.toMatch(/more oxygen/);
});

test('a session or a person that cannot be is refused, all reasons at once', () => {
  const found = sessionUnderHarness(
    { gait: 'running', groundSpeed: 5, load: 3, flightDay: 0, beltLimit: 5, highestLoad: 9 },
    { maximalUptake: 1, restingRate: 5, maximalRate: 20 },
  );
  if (found.kind !== 'refused') throw new Error('was brought over');
  for (const reason of [
    'speed on the level',
    'effective harness load',
    'flight day',
    'fastest belt',
    'highest load allowed now',
    'maximal oxygen uptake',
    'resting heart rate must',
    'maximal heart rate must',
    'at least 20 beats',
  ])
    expect(found.reason).toContain(reason);
  const near = (maximalRate: number) =>
    sessionUnderHarness(
      { gait: 'running', groundSpeed: 160, load: 0.7, flightDay: 1 },
      { ...PERSON, restingRate: 90, maximalRate },
    );
  expect(near(109).kind).toBe('refused');
  expect(near(110).kind).toBe('under harness');
});

test('set and effective load undo each other, as do load and pull', () => {
  fc.assert(
    fc.property(between(0.3, 1.1), between(45, 140), (load, mass) => {
      expect(callWith(effectiveLoad, [callWith(setLoad, [load])])).toBeCloseTo(load, 12);
      expect(callWith(loadOfPull, [callWith(harnessPull, [load, mass]), mass])).toBeCloseTo(load, 12);
    }),
  );
});

test('at the same speed the load that keeps the effort is body weight, for any slope', () => {
  fc.assert(
    fc.property(between(50, 300), between(0.2, 1), (speed, slope) => {
      expect(callWith(loadForSpeed, [speed, speed, slope])).toBe(1);
    }),
  );
});

test('the rules stand in order, and the weeks of the progression follow each other', () => {
  const days = SPEED_CAPS.rows.map(({ fromFlightDay }) => fromFlightDay);
  expect(days).toEqual([...days].toSorted((a, b) => a - b));
  const { rows } = LOAD_PROGRESSION;
  for (const [place, row] of rows.slice(1).entries()) expect(row.from).toBe((rows[place]?.to ?? 0) + 1);
  for (const { load } of rows) expect(load[0]).toBeLessThan(load[1]);
});
