import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { CONCURRENT_EFFECTS, SEPARATION_FINDINGS } from './concurrent-effects.table.ts';
import { concurrentShare, costOfGap, interferenceCost, type TimedSession } from './interference-cost.ts';
import { SCHEDULING_RULES, schedulingRule, type SchedulingRuleId } from './scheduling-rules.table.ts';
import { timingBreaches, type DayFrame, type PlacedSession } from './timing-breaches.ts';

interface Fixture {
  readonly cases: readonly {
    readonly sessions: readonly TimedSession[];
    readonly power: boolean;
    readonly cost: number;
  }[];
  readonly shares: readonly (readonly [number, number, number])[];
}

const FILE = join(import.meta.dirname, '../../../test/fixtures/science/scheduling.json');
// Written by the script that stands beside the file.
const fixture = JSON.parse(readFileSync(FILE, 'utf8')) as Fixture;

const cost = (sessions: readonly TimedSession[], power: boolean) => {
  const found = interferenceCost(sessions, power);
  if (found.kind === 'refused') throw new Error(found.reason);
  return found;
};

test('costs are as a separate program adds them up', () => {
  const off = fixture.cases.filter(({ sessions, power, cost: printed }) => {
    const { total } = cost(sessions, power);
    return Math.abs(total - printed) > 1e-12;
  });
  expect(fixture.cases.length).toBeGreaterThan(200);
  expect(off).toEqual([]);
});

test('shares left are as a separate program divides them', () => {
  for (const [concurrent, alone, printed] of fixture.shares)
    expect(concurrentShare(concurrent, alone)).toBeCloseTo(printed, 14);
});

const session: fc.Arbitrary<Omit<TimedSession, 'from' | 'until'>> = fc.record({
  work: fc.constantFrom('strength', 'endurance'),
  onTreadmill: fc.boolean(),
  lowerBody: fc.boolean(),
});
const days = fc
  .array(fc.tuple(session, fc.integer({ min: 10, max: 90 }), fc.integer({ min: 0, max: 500 })), {
    minLength: 1,
    maxLength: 5,
  })
  .map((all) => {
    let now = 0;
    return all.map(([each, long, pause]): TimedSession => {
      const from = now + pause;
      now = from + long;
      return { ...each, from, until: now };
    });
  });

test('the order in which sessions are listed does not matter', () => {
  fc.assert(
    fc.property(days, fc.boolean(), (day, power) => {
      expect(cost(day.toReversed(), power)).toEqual(cost(day, power));
    }),
  );
});

test('the parts add up, none is below zero, and each has its reason', () => {
  fc.assert(
    fc.property(days, fc.boolean(), (day, power) => {
      const { total, gap, order, treadmill, reasons } = cost(day, power);
      expect(total).toBeCloseTo(gap + order + treadmill, 12);
      expect(Math.min(gap, order, treadmill)).toBeGreaterThanOrEqual(0);
      expect(reasons.some((reason) => reason.includes('apart'))).toBe(gap > 0);
      expect(reasons.includes('endurance before strength')).toBe(order > 0);
      expect(reasons.includes('treadmill before strength of the lower body')).toBe(treadmill > 0);
      expect(new Set(reasons).size).toBe(reasons.length);
    }),
  );
});

test('hours more between two sessions never cost more', () => {
  fc.assert(
    fc.property(session, session, fc.nat(900), fc.nat(600), fc.boolean(), (first, second, gap, more, power) => {
      const at = (minutes: number): number =>
        cost(
          [
            { ...first, from: 0, until: 60 },
            { ...second, from: 60 + minutes, until: 100 + minutes },
          ],
          power,
        ).total;
      expect(at(gap + more)).toBeLessThanOrEqual(at(gap));
    }),
  );
});

test('strength first never costs more than endurance first', () => {
  fc.assert(
    fc.property(fc.nat(900), fc.boolean(), fc.boolean(), fc.boolean(), (gap, onTreadmill, lowerBody, power) => {
      const pair = (first: 'strength' | 'endurance', second: 'strength' | 'endurance'): number =>
        cost(
          [
            { work: first, onTreadmill, lowerBody, from: 0, until: 60 },
            { work: second, onTreadmill, lowerBody, from: 60 + gap, until: 120 + gap },
          ],
          power,
        ).total;
      expect(pair('strength', 'endurance')).toBeLessThanOrEqual(pair('endurance', 'strength'));
    }),
  );
});

test('how close two sessions stood is said in hours', () => {
  const at = (gap: number): readonly string[] =>
    cost(
      [
        { work: 'strength', from: 0, until: 60 },
        { work: 'endurance', from: 60 + gap, until: 100 + gap },
      ],
      true,
    ).reasons;
  expect(at(60)).toEqual(['strength and endurance less than 3 hours apart']);
  expect(at(180)).toEqual(['strength and endurance 3 to 6 hours apart']);
  expect(at(360)).toEqual([]);
});

test('sessions that overlap or end before they begin are refused', () => {
  const one: TimedSession = { work: 'strength', from: 0, until: 60 };
  expect(interferenceCost([one, { ...one, from: 59, until: 90 }], true)).toMatchObject({
    kind: 'refused',
    reason: expect.stringContaining('overlap') as string,
  });
  expect(interferenceCost([one, { ...one, from: 60, until: 90 }], true).kind).toBe('cost');
  for (const wrong of [
    { from: 60, until: 60 },
    { from: 70, until: 60 },
    { from: Number.NaN, until: 60 },
    { from: 0, until: Infinity },
    { from: -Infinity, until: 0 },
  ])
    expect(interferenceCost([{ ...one, ...wrong }], true)).toMatchObject({
      kind: 'refused',
      reason: expect.stringContaining('end after') as string,
    });
  expect(interferenceCost([], true)).toMatchObject({ kind: 'cost', total: 0 });
});

test('the curve of the gap stands upright at its steps', () => {
  const curves = costOfGap.record.plot?.curves() ?? [];
  expect(curves.map(({ label }) => label)).toEqual(['power is a goal', 'power is no goal']);
  expect(curves.map(({ points }) => points.map(([, y]) => y))).toEqual([
    [1, 1, 0.2, 0.2, 0, 0],
    [0.3, 0.3, 0.2, 0.2, 0, 0],
  ]);
});

// Rules

const frame: DayFrame = {
  waking: 360,
  lightsOut: 1290,
  mealsEnd: [420, 800],
  protectedWindows: [{ from: 600, until: 660 }],
};
const placed: PlacedSession = { from: 900, until: 960, intensity: 'easy', shakes: false, lifts: false };

const broken = (of: Partial<PlacedSession>, day: Partial<DayFrame> = {}): Readonly<Record<string, number>> => {
  const found = timingBreaches({ ...placed, ...of }, { ...frame, ...day });
  if (found.kind === 'refused') throw new Error(found.reason);
  return Object.fromEntries(found.breaches.map(({ rule, by }) => [rule.id, by]));
};

test('a session in the middle of the afternoon breaks nothing', () => {
  expect(broken({})).toEqual({});
  expect(broken({ from: 920, until: 980, intensity: 'maximal', shakes: true, lifts: true })).toEqual({});
});

test('vigorous work close to lights-out breaks one rule, the stricter', () => {
  expect(broken({ from: 1100, until: 1170, intensity: 'hard' })).toEqual({});
  expect(broken({ from: 1100, until: 1171, intensity: 'hard' })).toEqual({ 'before-sleep': 1 });
  expect(broken({ from: 1100, until: 1229, intensity: 'hard' })).toEqual({ 'before-sleep': 59 });
  expect(broken({ from: 1100, until: 1230, intensity: 'maximal' })).toEqual({ 'before-sleep-least': 0 });
  expect(broken({ from: 1100, until: 1250, intensity: 'maximal' })).toEqual({ 'before-sleep-least': 20 });
  expect(broken({ from: 1100, until: 1250 })).toEqual({});
});

test('the last meal before a session counts, and only that', () => {
  expect(broken({ from: 860 })).toEqual({});
  expect(broken({ from: 859 })).toEqual({ 'after-meal-easy': 1 });
  expect(broken({ from: 919, intensity: 'hard' })).toEqual({ 'after-meal-hard': 1 });
  expect(broken({ from: 800, intensity: 'maximal' })).toEqual({ 'after-meal-hard': 120 });
  expect(broken({ from: 799 })).toEqual({});
  expect(broken({ from: 859 }, { mealsEnd: [] })).toEqual({});
  // A meal later than the session begins says nothing; nor does the order in which meals are listed.
  expect(broken({ from: 859 }, { mealsEnd: [1000, 800, 420] })).toEqual({ 'after-meal-easy': 1 });
});

test('maximal lifts wait after waking, other work does not', () => {
  const early = { from: 395, until: 415, shakes: true } as const;
  const fasting = { mealsEnd: [] };
  expect(broken({ ...early, intensity: 'maximal', lifts: true }, fasting)).toEqual({ 'after-waking': 10 });
  expect(broken({ ...early, intensity: 'maximal', lifts: true, from: 405 }, fasting)).toEqual({});
  expect(broken({ ...early, intensity: 'hard', lifts: true }, fasting)).toEqual({});
  expect(broken({ ...early, intensity: 'maximal', lifts: false }, fasting)).toEqual({});
});

test('what shakes stays out of protected windows', () => {
  const shaking = { shakes: true } as const;
  expect(broken({ ...shaking, from: 540, until: 600 })).toEqual({});
  expect(broken({ ...shaking, from: 660, until: 700 })).toEqual({});
  expect(broken({ ...shaking, from: 540, until: 610 })).toEqual({ 'protected-window': 10 });
  expect(broken({ ...shaking, from: 650, until: 700 })).toEqual({ 'protected-window': 10 });
  expect(broken({ ...shaking, from: 590, until: 700 })).toEqual({ 'protected-window': 60 });
  expect(broken({ from: 590, until: 700 })).toEqual({});
});

test('each breach carries its rule, hard or soft', () => {
  const found = timingBreaches({ ...placed, from: 590, until: 700, shakes: true }, frame);
  expect(found).toMatchObject({ breaches: [{ rule: { kind: 'hard', id: 'protected-window' } }] });
});

test('a day or a session the wrong way round is refused', () => {
  expect(timingBreaches({ ...placed, until: 900 }, frame)).toMatchObject({
    kind: 'refused',
    reason: expect.stringContaining('session') as string,
  });
  expect(timingBreaches(placed, { ...frame, lightsOut: 360 })).toMatchObject({
    kind: 'refused',
    reason: expect.stringContaining('Lights-out') as string,
  });
});

test('a meal or a window without a time is refused and never drops out of the rules', () => {
  const { NaN: none, POSITIVE_INFINITY: never } = Number;
  expect(timingBreaches(placed, { ...frame, mealsEnd: [none, never] })).toEqual({
    kind: 'refused',
    reason:
      'The end of meal 1 must be a minute of the running clock; it is NaN. The end of meal 2 must be a minute of the running clock; it is Infinity.',
  });
  const windows = [
    { from: none, until: 700 },
    { from: 600, until: none },
    { from: 700, until: 600 },
  ];
  expect(timingBreaches({ ...placed, shakes: true }, { ...frame, protectedWindows: windows })).toEqual({
    kind: 'refused',
    reason:
      'The begin of protected window 1 must be a minute of the running clock; it is NaN. The end of protected window 2 must be a minute of the running clock; it is NaN. Protected window 3 must not end before it begins.',
  });
  const empty = [{ from: 600, until: 600 }];
  expect(timingBreaches(placed, { ...frame, protectedWindows: empty }).kind).toBe('breaches');
});

test('all that cannot be of a day is said at once', () => {
  const found = timingBreaches({ ...placed, from: Number.NaN }, { ...frame, lightsOut: Number.NaN, mealsEnd: [-1e10] });
  if (found.kind !== 'refused') throw new Error('was not refused');
  for (const part of [
    'A session must end',
    'Lights-out must come',
    'begin of the session',
    'Lights-out must be',
    'meal 1',
  ])
    expect(found.reason).toContain(part);
});

test('every rule has a name of its own and can be asked for by it', () => {
  const names = SCHEDULING_RULES.rows.map(({ id }) => id);
  expect(new Set(names).size).toBe(names.length);
  for (const name of names) expect(schedulingRule(name).id).toBe(name);
  expect(() => schedulingRule('no such rule' as SchedulingRuleId)).toThrow('no such rule');
});

test('tables show what they say, with author and year', () => {
  const shown = CONCURRENT_EFFECTS.rows.map((row) => CONCURRENT_EFFECTS.cells(row));
  expect(shown[0]).toEqual([
    'maximal strength',
    'strength alone, and with endurance',
    1.76,
    1.44,
    null,
    null,
    'effect size',
    'Wilson J.M. et al. (2012)',
  ]);
  expect(SEPARATION_FINDINGS.rows.map((row) => SEPARATION_FINDINGS.cells(row)[1])).toContain('Hickson R.C. (1980)');
});
