import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  fraction,
  joules,
  newtons,
  seconds,
  watts,
  type Fraction,
  type Newtons,
  type Seconds,
} from '#units/quantity.ts';
import { evaluate } from '../evaluate.ts';
import { wPrimeBalance } from '../critical-power/w-prime-balance.ts';
import { simulateCompartments } from './compartment-simulation.ts';
import type { FatigueConstants } from './fatigue-constants.table.ts';
import { forEachCycle, isRest, type GripTask } from './grip-task.ts';
import { greatestHourMean } from './hour-mean.ts';
import { balanceImpulse, impulseAfterEase, impulseAfterWork } from './impulse-balance.ts';
import { marchHand, type HandMarch } from './march.ts';
import { WORKED_CONSTANTS, WORKED_MAXIMUM, WORKED_TASKS } from './worked-example.ts';

interface Rows {
  readonly rows: readonly { readonly task: string; readonly tired: number; readonly margin: number | null }[];
  readonly least: number | null;
  readonly failure: { readonly task: string; readonly at: number } | null;
}

interface Balance {
  readonly critical: number;
  readonly impulse: number;
  readonly rows: readonly number[];
  readonly exhausted: { readonly task: string; readonly at: number } | null;
}

interface Timeline extends Rows {
  readonly tasks: readonly GripTask[];
  readonly maximum: Newtons;
  readonly fatigue: number;
  readonly recovery: number;
  readonly share: Fraction;
  readonly impulse: number;
  readonly leastWithResidual: number | null;
  readonly balance: Balance;
  readonly hourMean: number;
}

const read = (name: string): unknown =>
  JSON.parse(readFileSync(join(import.meta.dirname, '../../../test/fixtures/science', name), 'utf8'));

// Written by the scripts that stand beside the files.
const { timelines, spaceWalk } = read('hand.json') as {
  readonly timelines: readonly Timeline[];
  readonly spaceWalk: Readonly<Record<'measured' | 'glove45' | 'glove40', Rows>> &
    Readonly<Record<'balance' | 'balance45', Balance>> &
    Readonly<Record<'hourMean' | 'residual1' | 'residual2' | 'zeroMarginGlove', number>>;
};
const scipy = read('hand-scipy.json') as {
  readonly spaceWalk: { readonly margins: readonly number[] };
  readonly spaceWalkWeakGlove: { readonly margins: readonly number[] };
};

const marched = (...given: Parameters<typeof marchHand>): Extract<HandMarch, { kind: 'estimate' }> => {
  const march = marchHand(...given);
  if (march.kind === 'refused') throw new Error(march.reason);
  return march;
};

const expectRows = (march: Extract<HandMarch, { kind: 'estimate' }>, { rows, least, failure }: Rows): void => {
  expect(march.tasks.map(({ name }) => name)).toEqual(rows.map(({ task }) => task));
  for (const [place, { tired, margin }] of march.tasks.entries()) {
    expect(tired).toBeCloseTo(rows[place]?.tired ?? Number.NaN, 10);
    if (rows[place]?.margin === null) expect(margin).toBeNull();
    else expect(margin).toBeCloseTo(rows[place]?.margin ?? Number.NaN, 10);
  }
  if (least === null) expect(march.value).toBeNull();
  else expect(march.value).toBeCloseTo(least, 10);
  expect(march.firstFailure?.task ?? null).toBe(failure?.task ?? null);
  if (failure) expect(march.firstFailure?.at).toBeCloseTo(failure.at, 6);
  expect(march.cautions).toHaveLength(failure ? 1 : 0);
};

test.each([
  ['measured', 290],
  ['glove45', 225],
  ['glove40', 200],
] as const)('the worked space walk (%s, %s N in the suit) goes as a second program has it', (name, maximum) => {
  const march = marched(WORKED_TASKS, newtons(maximum), WORKED_CONSTANTS);
  expect(march.tasks).toHaveLength(6);
  expectRows(march, spaceWalk[name]);
});

test('slow residuals take as much from the worked space walk as a second program says', () => {
  const fades = seconds(14_400);
  const least = (share: number) =>
    marched(WORKED_TASKS, WORKED_MAXIMUM, WORKED_CONSTANTS, { share: fraction(share), fades }).value;
  expect(least(0.01)).toBeCloseTo(spaceWalk.residual1, 10);
  expect(least(0.02)).toBeCloseTo(spaceWalk.residual2, 10);
  expect(least(0)).toBe(marched(WORKED_TASKS, WORKED_MAXIMUM, WORKED_CONSTANTS).value);
});

test('the worked space walk has no margin left at the share of grip that a second program finds', () => {
  const { value } = marched(WORKED_TASKS, newtons(500 * spaceWalk.zeroMarginGlove), WORKED_CONSTANTS);
  expect(value).toBeCloseTo(0, 9);
});

test.each([
  [290, scipy.spaceWalk.margins],
  [225, scipy.spaceWalkWeakGlove.margins],
] as const)('margins at %s N in the suit lie within 0.002 of the full equations by SciPy', (maximum, margins) => {
  const { tasks } = marched(WORKED_TASKS, newtons(maximum), WORKED_CONSTANTS);
  for (const [place, { margin }] of tasks.entries())
    expect(Math.abs((margin ?? 9) - (margins[place] ?? 0))).toBeLessThan(0.002);
});

test.each(timelines.map((timeline, place) => ({ name: `timeline ${place + 1}`, ...timeline })))(
  '$name of invented tasks goes as a second program has it',
  ({ tasks, maximum, fatigue, recovery, share, impulse, leastWithResidual, balance, hourMean, ...rows }) => {
    const constants: FatigueConstants = { fatigue, recovery, restMultiplier: 12.51 };
    expectRows(marched(tasks, maximum, constants), rows);
    const slow = marched(tasks, maximum, constants, { share: fraction(0.01), fades: seconds(14_400) });
    if (leastWithResidual === null) expect(slow.value).toBeNull();
    else expect(slow.value).toBeCloseTo(leastWithResidual, 10);

    const opinion = balanceImpulse(tasks, { share, testDuty: fraction(0.7), suitedMaximum: maximum, impulse });
    if (opinion.kind === 'refused') throw new Error(opinion.reason);
    expect(opinion.criticalMean).toBeCloseTo(balance.critical, 9);
    for (const [at, left] of opinion.left.entries()) expect(left).toBeCloseTo(balance.rows[at] ?? Number.NaN, 6);
    expect(opinion.exhausted?.task ?? null).toBe(balance.exhausted?.task ?? null);
    if (balance.exhausted) expect(opinion.exhausted?.at).toBeCloseTo(balance.exhausted.at, 6);
    expect(opinion.value).toBeCloseTo(Math.min(...balance.rows) / impulse, 9);
    expect(opinion.cautions).toHaveLength(balance.exhausted ? 1 : 0);

    // The second program slides its hour in whole seconds, and every task lasts whole seconds.
    const hour = greatestHourMean(tasks, maximum);
    if (hour.kind === 'refused') throw new Error(hour.reason);
    expect(hour.value).toBeCloseTo(hourMean, 10);
    expect(hour.aboveLimit).toBe(hourMean > 0.14);
    expect(hour.cautions).toHaveLength(hourMean > 0.14 ? 1 : 0);
  },
);

test('the impulse of the worked space walk goes as a second program has it', () => {
  const hand = {
    share: fraction(0.4),
    testDuty: fraction(0.7),
    suitedMaximum: newtons(225),
    impulse: spaceWalk.balance45.impulse,
  };
  const opinion = balanceImpulse(WORKED_TASKS, hand);
  if (opinion.kind === 'refused') throw new Error(opinion.reason);
  expect(opinion.left.map((each) => each.toFixed(6))).toEqual(spaceWalk.balance45.rows.map((each) => each.toFixed(6)));
  expect(opinion.exhausted).toEqual({ task: 'connector', at: expect.closeTo(4541.66, 3) as number });
});

// What must hold of any march

const CYCLES = [4, 8, 10, 20] as const;
const anyTask: fc.Arbitrary<GripTask> = fc
  .record({
    cycle: fc.constantFrom(...CYCLES),
    cycles: fc.integer({ min: 2, max: 60 }),
    force: fc.integer({ min: 0, max: 200 }),
    duty: fc.double({ min: 0.1, max: 1, noNaN: true }),
  })
  .map(({ cycle, cycles, force, duty }) => ({
    name: 'task',
    duration: seconds(cycle * cycles),
    force: newtons(force),
    duty: fraction(duty),
    cycle: seconds(cycle),
  }));
const anyTasks = fc.array(anyTask, { minLength: 1, maxLength: 4 });
const anyConstants: fc.Arbitrary<FatigueConstants> = fc.record({
  fatigue: fc.double({ min: 0.004, max: 0.04, noNaN: true }),
  recovery: fc.double({ min: 0.0002, max: 0.006, noNaN: true }),
  restMultiplier: fc.constant(12.51),
});
const MAXIMUM = newtons(220);

test('a task that is split between two cycles ends as the whole one does', () => {
  fc.assert(
    fc.property(anyTask, fc.integer({ min: 1, max: 59 }), anyConstants, (task, at, constants) => {
      const cycles = task.duration / task.cycle;
      const first = (at % (cycles - 1)) + 1;
      const halves = [first, cycles - first].map((count) => ({ ...task, duration: seconds(count * task.cycle) }));
      const [whole, split] = [[task], halves].map((tasks) => marched(tasks, MAXIMUM, constants));
      expect(split?.tasks[1]?.tired).toBeCloseTo(whole?.tasks[0]?.tired ?? Number.NaN, 9);
      if (whole?.value !== null) expect(split?.value).toBeCloseTo(whole?.value ?? Number.NaN, 9);
      expect(split?.firstFailure === null).toBe(whole?.firstFailure === null);
    }),
  );
});

test('a stronger grip in the suit never leaves less margin, nor fails sooner', () => {
  const grip = fc.double({ min: 210, max: 600, noNaN: true });
  fc.assert(
    fc.property(anyTasks, grip, grip, anyConstants, (tasks, one, other, constants) => {
      const [weak, strong] = (one < other ? [one, other] : [other, one]).map((maximum) =>
        marched(tasks, newtons(maximum), constants),
      );
      if (weak?.value === null || strong?.value === null) return;
      expect(strong?.value ?? 0).toBeGreaterThanOrEqual((weak?.value ?? 9) - 1e-9);
      expect(strong?.firstFailure?.at ?? Number.MAX_VALUE).toBeGreaterThanOrEqual(
        (weak?.firstFailure?.at ?? Number.MAX_VALUE) - 1e-6,
      );
    }),
  );
});

test('more force in any task never leaves more margin', () => {
  fc.assert(
    fc.property(anyTasks, fc.nat(3), fc.integer({ min: 1, max: 20 }), anyConstants, (tasks, which, more, constants) => {
      const at = which % tasks.length;
      const harder = tasks.map((task, place) => (place === at ? { ...task, force: newtons(task.force + more) } : task));
      const [now, then] = [tasks, harder].map((each) => marched(each, MAXIMUM, constants).value ?? 1);
      expect(then).toBeLessThanOrEqual((now ?? 0) + 1e-9);
    }),
  );
});

test('more of a cycle under load never leaves more margin', () => {
  fc.assert(
    fc.property(anyTask, fc.double({ min: 0, max: 1, noNaN: true }), anyConstants, (task, towards, constants) => {
      const longer = { ...task, duty: fraction(task.duty + towards * (1 - task.duty)) };
      const [now, then] = [task, longer].map((each) => marched([each], MAXIMUM, constants).value ?? 1);
      expect(then).toBeLessThanOrEqual((now ?? 0) + 1e-9);
    }),
  );
});

test('a rest before a task never leaves less margin in it', () => {
  const rest: GripTask = {
    name: 'rest',
    duration: seconds(120),
    force: newtons(0),
    duty: fraction(0.5),
    cycle: seconds(10),
  };
  fc.assert(
    fc.property(anyTask, anyTask, anyConstants, (first, second, constants) => {
      const without = marched([first, second], MAXIMUM, constants).tasks[1]?.margin ?? 1;
      const rested = marched([first, rest, second], MAXIMUM, constants).tasks[2]?.margin ?? 1;
      expect(rested).toBeGreaterThanOrEqual(without - 1e-9);
    }),
  );
});

test('the tired share of any march stays in 0 to 1, and its capacity is what is not tired', () => {
  fc.assert(
    fc.property(anyTasks, anyConstants, (tasks, constants) => {
      const { trace, tasks: rows } = marched(tasks, MAXIMUM, constants);
      for (const { capacity } of trace) {
        expect(capacity).toBeGreaterThanOrEqual(-1e-12);
        expect(capacity).toBeLessThanOrEqual(1);
      }
      for (const { tired } of rows) expect(tired).toBeGreaterThanOrEqual(0);
      const lengths = tasks.reduce((sum, { duration }) => sum + duration, 0);
      expect(trace.at(-1)?.at ?? 0).toBeLessThanOrEqual(lengths + 1e-6);
    }),
  );
});

test('a force is lost exactly where the margin at the end of a contraction is below 0', () => {
  fc.assert(
    fc.property(anyTasks, anyConstants, (tasks, constants) => {
      const { value, firstFailure } = marched(tasks, MAXIMUM, constants);
      fc.pre(value === null || Math.abs(value) > 1e-9);
      expect(firstFailure !== null).toBe((value ?? 1) < 0);
    }),
  );
});

test('a slow residual only takes from the margin', () => {
  fc.assert(
    fc.property(anyTasks, anyConstants, fc.double({ min: 0, max: 0.1, noNaN: true }), (tasks, constants, share) => {
      const slow = marched(tasks, MAXIMUM, constants, { share: fraction(share), fades: seconds(14_400) });
      const plain = marched(tasks, MAXIMUM, constants);
      expect(slow.value ?? 1).toBeLessThanOrEqual(plain.value ?? 1);
      expect(slow.firstFailure).toEqual(plain.firstFailure);
    }),
  );
});

test('a short march agrees with the full equations', () => {
  const task: GripTask = {
    name: 'turn',
    duration: seconds(62),
    force: newtons(120),
    duty: fraction(0.6),
    cycle: seconds(10),
  };
  const phases = [...Array.from({ length: 6 }, () => [6, 4]), [2, 0]].flatMap(([on = 0, off = 0]) => [
    { target: fraction(120 / 220), seconds: seconds(on) },
    ...(off > 0 ? [{ target: fraction(0), seconds: seconds(off) }] : []),
  ]);
  const full = simulateCompartments(phases, WORKED_CONSTANTS);
  if (full.kind === 'refused') throw new Error(full.reason);
  const { tasks } = marched([task], MAXIMUM, WORKED_CONSTANTS);
  expect(Math.abs((tasks[0]?.tired ?? 9) - (full.ends.at(-1)?.tired ?? 0))).toBeLessThan(0.002);
});

// Cycles

const cyclesOf = (task: Partial<GripTask>): readonly (readonly [number, number])[] => {
  const cycles: [number, number][] = [];
  const whole = {
    name: 'task',
    duration: seconds(60),
    force: newtons(50),
    duty: fraction(0.5),
    cycle: seconds(10),
    ...task,
  };
  forEachCycle(whole, (on, off) => cycles.push([on, off]));
  return cycles;
};

test('cycles fill a task; the last is cut where the task ends', () => {
  expect(cyclesOf({ duration: seconds(20) })).toEqual([
    [5, 5],
    [5, 5],
  ]);
  expect(cyclesOf({ duration: seconds(23) })).toEqual([
    [5, 5],
    [5, 5],
    [3, 0],
  ]);
  expect(cyclesOf({ duration: seconds(27) })).toEqual([
    [5, 5],
    [5, 5],
    [5, 2],
  ]);
  expect(cyclesOf({ duration: seconds(4) })).toEqual([[4, 0]]);
  expect(cyclesOf({ duration: seconds(20), duty: fraction(1) })).toEqual([
    [10, 0],
    [10, 0],
  ]);
});

test('a task of no force, or of none of its cycle, is rest throughout', () => {
  expect(cyclesOf({ force: newtons(0) })).toEqual([[0, 60]]);
  expect(cyclesOf({ duty: fraction(0) })).toEqual([[0, 60]]);
  expect(isRest({ ...(WORKED_TASKS[0] as GripTask), force: newtons(0) })).toBe(true);
  expect(isRest(WORKED_TASKS[0] as GripTask)).toBe(false);
});

test('a cycle that does not divide its task by rounding makes no sliver of another', () => {
  for (const cycle of [0.7, 1.1, 3.3])
    for (const count of [3, 7, 11, 100])
      expect(cyclesOf({ duration: seconds(cycle * count), cycle: seconds(cycle) })).toHaveLength(count);
});

test('cycles sum to the task, whatever its length', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1, max: 3000, noNaN: true }),
      fc.double({ min: 0.5, max: 600, noNaN: true }),
      fc.double({ min: 0.01, max: 1, noNaN: true }),
      (duration, cycle, duty) => {
        const cycles = cyclesOf({ duration: seconds(duration), cycle: seconds(cycle), duty: fraction(duty) });
        const whole = cycles.reduce((sum, [on, off]) => sum + on + off, 0);
        expect(Math.abs(whole - duration)).toBeLessThan(1e-6);
        for (const [on, off] of cycles) {
          expect(on).toBeGreaterThan(0);
          expect(off).toBeGreaterThanOrEqual(0);
        }
      },
    ),
  );
});

test('a march of rest has no margin to tell, and one point at the end of each rest', () => {
  const rest: GripTask = {
    name: 'rest',
    duration: seconds(100),
    force: newtons(0),
    duty: fraction(0.5),
    cycle: seconds(10),
  };
  expect(marched([rest], MAXIMUM, WORKED_CONSTANTS)).toEqual({
    kind: 'estimate',
    value: null,
    tasks: [{ name: 'rest', load: 0, tired: 0, margin: null }],
    firstFailure: null,
    trace: [{ at: 100, capacity: 1, load: 0 }],
    cautions: [],
  });
});

test('a rest after work has its capacity at its end in the trace', () => {
  const rest: GripTask = { ...(WORKED_TASKS[1] as GripTask), duration: seconds(20), force: newtons(0) };
  const { trace, tasks } = marched([WORKED_TASKS[1] as GripTask, rest], MAXIMUM, WORKED_CONSTANTS);
  expect(trace.at(-1)).toEqual({ at: 1820, capacity: 1 - (tasks[1]?.tired ?? 9), load: 0 });
  expect(tasks[1]?.tired).toBeGreaterThan(0.1);
});

test('an impulse that is gone when its task ends is gone', () => {
  const task: GripTask = {
    ...(WORKED_TASKS[0] as GripTask),
    duration: seconds(100),
    force: newtons(100),
    duty: fraction(1),
  };
  // 100 N against 50 for 100 s.
  const hand = { share: fraction(0.25), testDuty: fraction(1), suitedMaximum: newtons(200), impulse: 5000 };
  expect(balanceImpulse([task], hand)).toMatchObject({ left: [0], exhausted: { task: 'translate out', at: 100 } });
  expect(balanceImpulse([task], { ...hand, impulse: 5001 })).toMatchObject({ left: [1], exhausted: null });
});

test('formulas of the impulse refuse the side that is not theirs', () => {
  expect(evaluate(impulseAfterWork, [5000, 100, 50, 60])).toEqual({ kind: 'value', value: 2000, cautions: [] });
  expect(evaluate(impulseAfterWork, [5000, 50, 50, 60])).toMatchObject({ kind: 'value', value: 5000 });
  expect(evaluate(impulseAfterWork, [5000, 40, 50, 60])).toMatchObject({ kind: 'refused' });
  expect(evaluate(impulseAfterEase, [1000, 5000, 40, 50, 60]).kind).toBe('value');
  expect(evaluate(impulseAfterEase, [1000, 5000, 50, 50, 60])).toMatchObject({ kind: 'value', value: 1000 });
  expect(evaluate(impulseAfterEase, [5000, 5000, 40, 50, 60])).toMatchObject({ kind: 'value', value: 5000 });
  expect(evaluate(impulseAfterEase, [1000, 5000, 60, 50, 60])).toMatchObject({ kind: 'refused' });
  expect(evaluate(impulseAfterEase, [6000, 5000, 40, 50, 60])).toMatchObject({ kind: 'refused' });
});

test('a trace has a point at the end of each contraction', () => {
  const { trace, tasks } = marched(
    [{ ...(WORKED_TASKS[1] as GripTask), duration: seconds(23) }],
    MAXIMUM,
    WORKED_CONSTANTS,
  );
  expect(trace.map(({ at }) => at)).toEqual([6, 16, 23]);
  expect(trace.map(({ load }) => load)).toEqual([0.5, 0.5, 0.5]);
  expect(Math.min(...trace.map(({ capacity, load }) => capacity - load))).toBeCloseTo(
    tasks[0]?.margin ?? Number.NaN,
    12,
  );
});

// Refusals

const refusal = (
  tasks: readonly GripTask[],
  maximum: number = MAXIMUM,
  constants = WORKED_CONSTANTS,
  slow?: { share: Fraction; fades: Seconds },
): string => {
  const march = marchHand(tasks, maximum as Newtons, constants, slow);
  return march.kind === 'refused' ? march.reason : '';
};

test('a task above the maximum in the suit is impossible, and every such task is named at once', () => {
  const [out, fasteners, , connector] = WORKED_TASKS as readonly [GripTask, GripTask, GripTask, GripTask];
  expect(refusal([out, fasteners, connector], 100)).toBe(
    [fasteners, connector]
      .map(
        ({ name, force }) =>
          `"${name}" asks for ${force} N and the maximum in the suit is 100 N: it is impossible in this suit. Lower the force or share it between the hands.`,
      )
      .join(' '),
  );
  expect(refusal([{ ...out, force: newtons(100) }], 100)).toBe('');
});

test('a march refuses what cannot be, in a sentence that names the task', () => {
  const task = WORKED_TASKS[0] as GripTask;
  expect(refusal([task])).toBe('');
  expect(refusal([])).toBe('There is no task.');
  expect(refusal([task], 0)).toMatch(/^The maximum in the suit must lie above 0/);
  expect(refusal([task], 2001)).toMatch(/^The maximum in the suit/);
  expect(refusal([task], 2000)).toBe('');
  expect(refusal([{ ...task, duration: seconds(0.5) }])).toBe('"translate out" must last 1 to 36000 s; it lasts 0.5.');
  expect(refusal([{ ...task, duration: seconds(36_001) }])).toMatch(/must last/);
  for (const duration of [1, 36_000]) expect(refusal([{ ...task, duration: seconds(duration) }])).toBe('');
  expect(refusal([{ ...task, force: newtons(-1) }])).toMatch(/must ask for 0 N or more/);
  expect(refusal([{ ...task, duty: fraction(-0.1) }])).toMatch(/under load for 0 to 1/);
  expect(refusal([{ ...task, duty: fraction(1.1) }])).toMatch(/under load for 0 to 1/);
  expect(refusal([{ ...task, cycle: seconds(0.4) }])).toMatch(/^A cycle of "translate out"/);
  expect(refusal([{ ...task, cycle: seconds(601) }])).toMatch(/^A cycle of/);
  for (const cycle of [0.5, 600]) expect(refusal([{ ...task, cycle: seconds(cycle) }])).toBe('');
  expect(
    refusal([{ ...task, duration: seconds(Number.MIN_VALUE), duty: Number.NaN as Fraction }]).split('"translate out"'),
  ).toHaveLength(3);
  const many = Array.from({ length: 3 }, () => ({ ...task, duration: seconds(36_000), cycle: seconds(0.5) }));
  expect(refusal(many)).toMatch(/more than 200000 cycles/);
  expect(refusal([task], MAXIMUM, { ...WORKED_CONSTANTS, fatigue: 9 })).toMatch(/rate of fatigue/);
  expect(refusal([task], 0, { ...WORKED_CONSTANTS, fatigue: 9 })).toMatch(/maximum in the suit.*rate of fatigue/);
});

test('a slow residual outside what is asked of it is refused', () => {
  const slow = (share: number, fades: number): string =>
    refusal([WORKED_TASKS[0] as GripTask], MAXIMUM, WORKED_CONSTANTS, {
      share: fraction(share),
      fades: seconds(fades),
    });
  expect(slow(0.1, 60)).toBe('');
  expect(slow(0, 864_000)).toBe('');
  for (const [share, fades] of [
    [-0.01, 3600],
    [0.11, 3600],
    [0.01, 59],
    [0.01, 864_001],
  ] as const)
    expect(slow(share, fades)).toMatch(/^A slow residual must be 0 to 0.1/);
});

test('the hour and the impulse refuse what a march refuses, and what is their own', () => {
  expect(greatestHourMean([], MAXIMUM)).toEqual({ kind: 'refused', reason: 'There is no task.' });
  const reason = (given: Partial<Parameters<typeof balanceImpulse>[1]>, tasks = WORKED_TASKS): string => {
    const hand = {
      share: fraction(0.4),
      testDuty: fraction(0.7),
      suitedMaximum: WORKED_MAXIMUM,
      impulse: 8000,
      ...given,
    };
    const balance = balanceImpulse(tasks, hand);
    return balance.kind === 'refused' ? balance.reason : '';
  };
  expect(reason({})).toBe('');
  expect(reason({}, [])).toBe('There is no task.');
  for (const share of [0, 1])
    expect(reason({ share: fraction(share) })).toMatch(/^The critical force must lie between 0 and 1/);
  expect(reason({ testDuty: fraction(0) })).toMatch(/^The test must have been under load/);
  expect(reason({ testDuty: fraction(1.1) })).toMatch(/^The test must have been/);
  expect(reason({ testDuty: fraction(1) })).toBe('');
  expect(reason({ impulse: 0.9 })).toMatch(/^The impulse must lie in 1 to 200000/);
  expect(reason({ impulse: 200_001 })).toMatch(/^The impulse must/);
  expect(reason({ impulse: 1 })).toBe('');
  expect(reason({ impulse: 200_000 })).toBe('');
  expect(reason({ share: fraction(2), impulse: 0 }, []).split('.').length).toBeGreaterThan(3);
});

test('impulse that comes back never exceeds that of a rested hand, and work above the critical force spends it', () => {
  fc.assert(
    fc.property(
      anyTasks,
      fc.double({ min: 0.1, max: 0.9, noNaN: true }),
      fc.double({ min: 100, max: 20_000, noNaN: true }),
      (tasks, share, impulse) => {
        const balance = balanceImpulse(tasks, {
          share: fraction(share),
          testDuty: fraction(0.7),
          suitedMaximum: MAXIMUM,
          impulse,
        });
        if (balance.kind === 'refused') throw new Error(balance.reason);
        let before = impulse;
        for (const [place, left] of balance.left.entries()) {
          const task = tasks[place] as GripTask;
          expect(left).toBeGreaterThanOrEqual(0);
          expect(left).toBeLessThanOrEqual(impulse * (1 + 1e-12));
          if (task.force * task.duty > balance.criticalMean) expect(left).toBeLessThanOrEqual(before);
          else expect(left).toBeGreaterThanOrEqual(before - 1e-9);
          before = left;
        }
        expect(balance.exhausted !== null).toBe(balance.left.some((left) => left === 0));
      },
    ),
  );
});

test('the second opinion is the balance of work above critical power, in newtons for watts', () => {
  fc.assert(
    fc.property(anyTasks, fc.double({ min: 0.1, max: 0.9, noNaN: true }), (tasks, share) => {
      const hand = { share: fraction(share), testDuty: fraction(0.7), suitedMaximum: MAXIMUM, impulse: 9000 };
      const balance = balanceImpulse(tasks, hand);
      if (balance.kind === 'refused') throw new Error(balance.reason);
      const means = Float64Array.from(tasks, ({ force, duty }) => force * duty);
      const lasting = Float64Array.from(tasks, ({ duration }) => duration);
      const person = { criticalPower: watts(balance.criticalMean), capacity: joules(9000) };
      const other = [...wPrimeBalance(means, person, { lasting })];
      // That one goes on below nothing, where a hand is held at nothing.
      const spent = other.findIndex((left) => left < 0);
      const until = spent < 0 ? other.length : spent;
      expect(balance.left.slice(0, until).map((left) => left.toFixed(6))).toEqual(
        other.slice(0, until).map((left) => left.toFixed(6)),
      );
      expect(balance.exhausted !== null).toBe(other.some((left) => left <= 0));
    }),
  );
});

test('an hour that is worked through has its own load as its mean, and a shorter list is filled up with rest', () => {
  const steady = (lasts: number) =>
    greatestHourMean([{ ...(WORKED_TASKS[0] as GripTask), duration: seconds(lasts), force: newtons(110) }], MAXIMUM);
  expect(steady(7200)).toMatchObject({ value: expect.closeTo(0.25, 12) as number, aboveLimit: true });
  expect(steady(3600)).toMatchObject({ value: expect.closeTo(0.25, 12) as number });
  expect(steady(1800)).toMatchObject({ value: expect.closeTo(0.125, 12) as number, aboveLimit: false, cautions: [] });
});
