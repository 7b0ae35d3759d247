import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fraction, joules, newtons, seconds, watts } from '#units/quantity.ts';
import { wPrimeBalance } from '../critical-power/w-prime-balance.ts';
import type { FatigueConstants } from './fatigue-constants.table.ts';
import type { GripTask } from './grip-task.ts';
import { balanceImpulse } from './impulse-balance.ts';
import { marchHand, type HandMarch } from './march.ts';

/** What must hold of any march through tasks, and of any impulse. */

const marched = (...given: Parameters<typeof marchHand>): Extract<HandMarch, { kind: 'estimate' }> => {
  const march = marchHand(...given);
  if (march.kind === 'refused') throw new Error(march.reason);
  return march;
};

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
