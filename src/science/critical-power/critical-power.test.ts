import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  balanceAfterRecovery,
  balanceAfterWork,
  recoveredInTwoParts,
  recoveryNeeded,
  recoveryTimeConstantOfElite,
  timeConstantOfIntegral,
} from './balance-steps.ts';
import { evaluate } from '../evaluate.ts';
import { balanceAlong, balanceOfRecording, type Stretch } from './balance-along.ts';
import { powerForTime, timeToExhaustion, workUntilExhaustion, type PowerDuration } from './power-duration.ts';
import { sessionFeasibility } from './session-feasibility.ts';
import { RECOVERY_MODELS, wPrimeBalance, type RecoveryModel } from './w-prime-balance.ts';
import { joules, seconds, watts } from '#units/quantity.ts';

interface Along {
  readonly criticalPower: number;
  readonly capacity: number;
  readonly stretches: readonly (readonly [power: number, lasting: number])[];
  readonly byDistance: readonly number[];
  readonly elite: readonly number[];
  readonly integral: readonly number[];
}

interface Fixture {
  readonly made: Readonly<Record<string, string | number>>;
  readonly example: Along;
  readonly session: Along;
  readonly chance: readonly Along[];
  readonly eliteTimeConstants: readonly (readonly [number, number])[];
  readonly integralTimeConstants: readonly (readonly [number, number])[];
  readonly recoveredInTwoParts: readonly (readonly [number, number])[];
  readonly recoveryNeeded: readonly (readonly [number, number, number, number, number])[];
}

const FILE = join(import.meta.dirname, '../../../test/fixtures/science/critical-power-balance.json');
// Written by the script that stands beside the file.
const fixture = JSON.parse(readFileSync(FILE, 'utf8')) as Fixture;

const stretchesOf = (of: Along): readonly Stretch[] =>
  of.stretches.map(([power, lasting]) => ({ power: watts(power), lasting: seconds(lasting) }));
const personOf = ({ criticalPower, capacity }: Along): PowerDuration => ({
  criticalPower: watts(criticalPower),
  capacity: joules(capacity),
});

const balances = (stretches: readonly Stretch[], person: PowerDuration, model: RecoveryModel): Float64Array => {
  const along = balanceAlong(stretches, person, model);
  if (along.kind !== 'balance') throw new Error(along.reason);
  return along.after;
};

const farthest = (ours: Float64Array, theirs: readonly number[]): number =>
  Math.max(...theirs.map((value, place) => Math.abs(value - (ours[place] ?? Number.NaN))));

test('the reference says what made it', () => {
  expect(Object.keys(fixture.made)).toEqual(expect.arrayContaining(['by', 'seed', 'numpy', 'scipy']));
});

test.each([fixture.example, fixture.session, ...fixture.chance].map((each, place) => [place, each] as const))(
  'session %i has the balance that SciPy integrates, in all three models',
  (_, each) => {
    const [stretches, person] = [stretchesOf(each), personOf(each)];
    // The integrator is asked for a relative 1e-12 and an absolute 1e-9 a step, on tens of kilojoules.
    expect(farthest(balances(stretches, person, 'by distance'), each.byDistance)).toBeLessThan(1e-5);
    expect(farthest(balances(stretches, person, 'by distance, elite cyclists'), each.elite)).toBeLessThan(1e-5);
    expect(farthest(balances(stretches, person, 'integral'), each.integral)).toBeLessThan(1e-5);
  },
);

test('time constants and fractions are as a separate program has them', () => {
  for (const [distance, printed] of fixture.eliteTimeConstants)
    expect(recoveryTimeConstantOfElite(watts(distance))).toBeCloseTo(printed, 9);
  for (const [distance, printed] of fixture.integralTimeConstants)
    expect(timeConstantOfIntegral(watts(distance))).toBeCloseTo(printed, 9);
  for (const [time, printed] of fixture.recoveredInTwoParts)
    expect(recoveredInTwoParts(seconds(time))).toBeCloseTo(printed, 12);
  for (const [before, wanted, capacity, tau, printed] of fixture.recoveryNeeded)
    expect(recoveryNeeded(joules(before), joules(wanted), joules(capacity), seconds(tau))).toBeCloseTo(printed, 9);
});

// Laws

const people = fc.record({
  criticalPower: fc.integer({ min: 100, max: 350 }).map(watts),
  capacity: fc.integer({ min: 5000, max: 30_000 }).map(joules),
});
const stretch = fc.record({
  power: fc.oneof(fc.integer({ min: 0, max: 500 }), fc.integer({ min: 100, max: 350 })).map(watts),
  lasting: fc.integer({ min: 1, max: 600 }).map(seconds),
});
const sessions = fc.array(stretch, { minLength: 1, maxLength: 12 });
const models = fc.constantFrom(...RECOVERY_MODELS);

test('splitting a stretch changes nothing', () => {
  fc.assert(
    fc.property(people, sessions, models, fc.nat(), fc.double({ min: 0.01, max: 0.99, noNaN: true }), (...all) => {
      const [person, session, model, where, share] = all;
      const place = where % session.length;
      const whole = session[place] as Stretch;
      const parts = [share, 1 - share].map((part) => ({ ...whole, lasting: seconds(whole.lasting * part) }));
      const split = session.toSpliced(place, 1, ...parts);
      const [once, twice] = [balances(session, person, model), balances(split, person, model)];
      const scale = Math.max(person.capacity, ...once.map(Math.abs));
      expect(Math.abs((once.at(-1) as number) - (twice.at(-1) as number))).toBeLessThan(1e-9 * scale);
    }),
  );
});

test('a second-by-second recording ends where its stretches end', () => {
  fc.assert(
    fc.property(people, sessions, models, (person, session, model) => {
      const record = Float64Array.from(
        session.flatMap(({ power, lasting }) => Array.from({ length: lasting }, () => power)),
      );
      const [bySecond, byStretch] = [wPrimeBalance(record, person, { model }), balances(session, person, model)];
      const scale = Math.max(person.capacity, ...byStretch.map(Math.abs));
      expect(Math.abs((bySecond.at(-1) as number) - (byStretch.at(-1) as number))).toBeLessThan(1e-8 * scale);
    }),
    { numRuns: 40 },
  );
});

test('the balance is never above the store of a rested person', () => {
  fc.assert(
    fc.property(people, sessions, models, (person, session, model) => {
      for (const value of balances(session, person, model))
        expect(value).toBeLessThanOrEqual(person.capacity * (1 + 1e-12));
    }),
  );
});

test('by distance, work above critical power is taken from the store whole, and recovery only adds', () => {
  fc.assert(
    fc.property(
      people,
      sessions,
      fc.constantFrom<RecoveryModel>('by distance', 'by distance, elite cyclists'),
      (...all) => {
        const [person, session, model] = all;
        const after = balances(session, person, model);
        for (const [place, { power, lasting }] of session.entries()) {
          const change = (after[place] as number) - (after[place - 1] ?? person.capacity);
          if (power >= person.criticalPower) expect(change).toBeCloseTo(-(power - person.criticalPower) * lasting, 5);
          else expect(change).toBeGreaterThanOrEqual(0);
        }
      },
    ),
  );
});

test('without recovery, what left the store is the work above critical power', () => {
  fc.assert(
    fc.property(people, sessions, (person, session) => {
      const hard = session.map((each) => ({ ...each, power: watts(each.power + person.criticalPower) }));
      const above = hard.reduce((sum, { power, lasting }) => sum + (power - person.criticalPower) * lasting, 0);
      expect(person.capacity - (balances(hard, person, 'by distance').at(-1) as number)).toBeCloseTo(above, 5);
    }),
  );
});

test('more power at any moment never leaves a larger balance, by distance', () => {
  fc.assert(
    fc.property(people, sessions, fc.nat(), fc.integer({ min: 0, max: 200 }), (person, session, where, more) => {
      const place = where % session.length;
      const harder = session.map((each, at) => (at === place ? { ...each, power: watts(each.power + more) } : each));
      const [easy, hard] = [balances(session, person, 'by distance'), balances(harder, person, 'by distance')];
      for (const [at, value] of hard.entries()) expect(value).toBeLessThanOrEqual((easy[at] as number) + 1e-6);
    }),
  );
});

test('the store refills even during work in the integral form, and not by distance', () => {
  const person = { criticalPower: watts(250), capacity: joules(20_000) };
  const hard = [{ power: watts(350), lasting: seconds(60) }];
  expect(balances(hard, person, 'by distance')[0]).toBe(14_000);
  expect(balances(hard, person, 'integral')[0]).toBeGreaterThan(14_000);
});

test.each([
  { of: timeToExhaustion, holds: [251, 250, 18_000], broken: [250, 250, 18_000] },
  { of: balanceAfterWork, holds: [9000, 250, 250, 60], broken: [9000, 249, 250, 60] },
  { of: balanceAfterRecovery, holds: [18_000, 18_000, 200, 60], broken: [18_001, 18_000, 200, 60] },
  { of: recoveryNeeded, holds: [9000, 9000, 18_000, 200], broken: [9000, 8999, 18_000, 200] },
  { of: recoveryNeeded, holds: [9000, 17_999, 18_000, 200], broken: [9000, 18_000, 18_000, 200] },
])('$of.record.id holds up to its condition, and is refused beyond', ({ of, holds, broken }) => {
  expect(evaluate(of, holds).kind).toBe('value');
  expect(evaluate(of, broken)).toMatchObject({ kind: 'refused' });
});

test('where two moments are equally low the first is told', () => {
  const person = { criticalPower: watts(250), capacity: joules(20_000) };
  const session = [350, 250, 250].map((power) => ({ power: watts(power), lasting: seconds(60) }));
  expect(balanceAlong(session, person)).toMatchObject({ least: 14_000, leastAt: 0 });
  expect(balanceAlong([...session, { power: watts(260), lasting: seconds(60) }], person)).toMatchObject({ leastAt: 3 });
});

test('at critical power nothing moves', () => {
  const person = { criticalPower: watts(250), capacity: joules(20_000) };
  const session = [350, 250].map((power) => ({ power: watts(power), lasting: seconds(60) }));
  expect([...balances(session, person, 'by distance')]).toEqual([14_000, 14_000]);
});

test('the integral form takes its mean over time below critical power only', () => {
  const person = { criticalPower: watts(250), capacity: joules(20_000) };
  const of = (...powers: readonly number[]): number =>
    balances(
      powers.map((power) => ({ power: watts(power), lasting: seconds(60) })),
      person,
      'integral',
    )[0] as number;
  // A stretch at critical power is no recovery; an easier one later shortens the constant of what came before.
  expect(of(350, 150, 250)).toBe(of(350, 150));
  expect(of(350, 50)).toBeGreaterThan(of(350, 150));
  expect(of(350)).toBe(of(350, 250));
});

test('a balance below zero is left as it is, with a caution', () => {
  const person = { criticalPower: watts(200), capacity: joules(5000) };
  const along = balanceAlong(
    [
      { power: watts(300), lasting: seconds(60) },
      { power: watts(0), lasting: seconds(30) },
    ],
    person,
  );
  expect(along).toMatchObject({ kind: 'balance', least: -1000, leastAt: 0 });
  if (along.kind === 'balance') {
    expect(along.cautions).toHaveLength(1);
    expect(along.cautions[0]).toContain('below zero');
  }
});

test('an emptied store to the joule is no caution', () => {
  const person = { criticalPower: watts(200), capacity: joules(6000) };
  expect(balanceAlong([{ power: watts(300), lasting: seconds(60) }], person)).toMatchObject({ least: 0, cautions: [] });
});

test('a recording is refused where it has a gap, and its place is named', () => {
  const person = { criticalPower: watts(200), capacity: joules(15_000) };
  const refused = (record: readonly number[], each = 1): string => {
    const along = balanceOfRecording(Float64Array.from(record), person, each as never);
    return along.kind === 'refused' ? along.reason : 'accepted';
  };
  expect(refused([100, 120, Number.NaN])).toContain('Value 3');
  expect(refused([100, -1])).toContain('Value 2');
  expect(refused([Infinity])).toContain('Value 1');
  expect(refused([100], 0)).toContain('Value 1');
  expect(refused([100], Infinity)).toContain('Value 1');
  expect(refused([100, Number.NaN, Number.NaN])).toMatch(/^Value 2: power must lie in 0 to 2500 W; it is NaN\. A gap/);
  expect(refused([2501])).toContain('power must lie');
  expect(refused([2500], 86_400)).toBe('accepted');
  expect(refused([-1], 0)).toMatch(/power must lie.*duration must lie/);
  expect(refused([])).toContain('no power');
  expect(refused([0, 100])).toBe('accepted');
});

test('a person whose critical power or store cannot be is refused, both at once', () => {
  const one = [{ power: watts(200), lasting: seconds(60) }];
  const reason = (criticalPower: number, capacity: number): string => {
    const along = balanceAlong(one, { criticalPower, capacity } as unknown as PowerDuration);
    return along.kind === 'refused' ? along.reason : 'accepted';
  };
  for (const wrong of [0, -5, Number.NaN, Infinity]) {
    expect(reason(wrong, 10_000)).toContain('critical power must lie');
    expect(reason(200, wrong)).toContain('work above critical power, rested must lie');
    expect(reason(wrong, wrong)).toMatch(/critical power must lie.*rested must lie/);
  }
  expect(reason(20, 500)).toBe('accepted');
});

test('a session is feasible as long as its least balance is not below zero', () => {
  fc.assert(
    fc.property(people, sessions, models, (person, session, model) => {
      const found = sessionFeasibility(session, person, model);
      const after = [...balances(session, person, model)];
      const least = Math.min(...after);
      if (found.kind === 'feasible') {
        expect(found.least).toBe(least);
        expect(after[found.leastAt]).toBe(least);
        expect(found.reserve).toBeCloseTo(least / person.capacity, 12);
      } else if (found.kind === 'emptied') {
        expect(found.missing).toBe(-least);
        expect(after[found.stretch]).toBeLessThan(0);
        expect(after.slice(0, found.stretch).every((value) => value >= 0)).toBe(true);
        expect(found.reason).toContain(`Stretch ${found.stretch + 1}`);
      }
      expect(found.kind).toBe(least >= 0 ? 'feasible' : 'emptied');
    }),
  );
});

test('a store that is emptied to the joule is enough, and the stretch that goes below is named', () => {
  const person = { criticalPower: watts(200), capacity: joules(6000) };
  const to = (...lasting: readonly number[]) =>
    sessionFeasibility(
      lasting.map((each) => ({ power: watts(300), lasting: seconds(each) })),
      person,
    );
  expect(to(60)).toMatchObject({ kind: 'feasible', least: 0, reserve: 0 });
  expect(to(60, 1)).toMatchObject({ kind: 'emptied', stretch: 1, missing: 100 });
});

test('what the balance refuses, the session refuses', () => {
  expect(sessionFeasibility([], { criticalPower: watts(200), capacity: joules(9000) }).kind).toBe('refused');
});

test('time, power and work are one line seen three ways', () => {
  fc.assert(
    fc.property(people, fc.integer({ min: 60, max: 3600 }), ({ criticalPower, capacity }, time) => {
      const power = powerForTime(seconds(time), criticalPower, capacity);
      expect(timeToExhaustion(power, criticalPower, capacity)).toBeCloseTo(time, 6);
      expect(workUntilExhaustion(seconds(time), criticalPower, capacity)).toBeCloseTo(power * time, 6);
    }),
  );
});

test('recovery needed brings the balance wanted', () => {
  const [person, tau] = [{ criticalPower: watts(250), capacity: joules(20_000) }, seconds(200)];
  const needed = recoveryNeeded(joules(8000), joules(15_000), person.capacity, tau);
  const after = balances(
    [
      { power: watts(310), lasting: seconds(200) },
      { power: watts(150), lasting: needed },
    ],
    person,
    'by distance',
  );
  expect(after[1]).toBeCloseTo(15_000, 6);
});

test('the curves of two parts and one part begin at nothing and are the formulas', () => {
  const [two, one] = recoveredInTwoParts.record.plot?.curves() ?? [];
  expect(two?.points[4]).toEqual([60, recoveredInTwoParts(seconds(60))]);
  expect(one?.points[0]?.[1]).toBe(0);
  expect(one?.points[20]).toEqual([300, 1 - Math.exp(-1.5)]);
  const lasting = timeToExhaustion.record.plot?.curves() ?? [];
  expect(lasting.map(({ points }) => [points[0]?.[0], points.at(-1)?.[0]])).toEqual([
    [190, 330],
    [230, 370],
    [270, 410],
  ]);
  expect(lasting[0]?.points[0]?.[1]).toBe(1800);
});

test('the example starts from a full store and its three models part', () => {
  const curves = balanceAlong.record.plot?.curves() ?? [];
  expect(curves.map(({ label }) => label)).toEqual(RECOVERY_MODELS);
  for (const { points } of curves) {
    expect(points[0]).toEqual([0, 20_000]);
    expect(points.at(-1)?.[0]).toBe(600);
  }
  const ends = curves.map(({ points }) => points.at(-1)?.[1] ?? 0);
  const printed = [fixture.example.byDistance, fixture.example.elite, fixture.example.integral].map(
    (all) => all.at(-1) ?? 0,
  );
  for (const [place, end] of ends.entries()) expect(end).toBeCloseTo(printed[place] as number, 4);
});
