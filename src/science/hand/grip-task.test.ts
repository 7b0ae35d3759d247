import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fraction, newtons, seconds } from '#units/quantity.ts';
import { forEachCycle, isRest, type GripTask } from './grip-task.ts';
import { WORKED_TASKS } from './worked-example.ts';

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

test('lengths typed in tenths make as many cycles as they say', () => {
  // In doubles 2.1 is more than three times 0.7, and 6.9 less than three times 2.3.
  expect(cyclesOf({ duration: seconds(2.1), cycle: seconds(0.7) })).toHaveLength(3);
  expect(cyclesOf({ duration: seconds(6.9), cycle: seconds(2.3) })).toHaveLength(3);
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
        // Thousands of cycles: one expectation of all of them.
        expect(cycles.filter(([on, off]) => !(on > 0 && off >= 0))).toEqual([]);
      },
    ),
  );
});
