import { expect, test } from 'vitest';
import { fraction, newtons, seconds } from '#units/quantity.ts';
import type { GripTask } from './grip-task.ts';
import { greatestHourMean } from './hour-mean.ts';
import { WORKED_TASKS } from './worked-example.ts';

const MAXIMUM = newtons(220);

test('an hour that is worked through has its own load as its mean, and a shorter list is filled up with rest', () => {
  const steady = (lasts: number) =>
    greatestHourMean([{ ...(WORKED_TASKS[0] as GripTask), duration: seconds(lasts), force: newtons(110) }], MAXIMUM);
  expect(steady(7200)).toMatchObject({ value: expect.closeTo(0.25, 12) as number, aboveLimit: true });
  expect(steady(3600)).toMatchObject({ value: expect.closeTo(0.25, 12) as number });
  expect(steady(1800)).toMatchObject({ value: expect.closeTo(0.125, 12) as number, aboveLimit: false, cautions: [] });
});

test('an hour at the limit is not above it', () => {
  const task: GripTask = {
    ...(WORKED_TASKS[0] as GripTask),
    duration: seconds(3600),
    force: newtons(14),
    duty: fraction(1),
  };
  expect(greatestHourMean([task], newtons(100))).toEqual({
    kind: 'estimate',
    value: 0.14,
    aboveLimit: false,
    cautions: [],
  });
});

test('an hour refuses what a march refuses', () => {
  expect(greatestHourMean([], MAXIMUM)).toEqual({ kind: 'refused', reason: 'There is no task.' });
});
