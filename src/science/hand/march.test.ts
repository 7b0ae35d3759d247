import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { fraction, newtons, seconds, type Fraction, type Newtons, type Seconds } from '#units/quantity.ts';
import { simulateCompartments } from './compartment-simulation.ts';
import type { FatigueConstants } from './fatigue-constants.table.ts';
import type { GripTask } from './grip-task.ts';
import { greatestHourMean } from './hour-mean.ts';
import { balanceImpulse } from './impulse-balance.ts';
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

const MAXIMUM = newtons(220);

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
