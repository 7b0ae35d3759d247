import { expect, test } from 'vitest';
import { fraction, newtons, seconds } from '#units/quantity.ts';
import { evaluate } from '../evaluate.ts';
import type { GripTask } from './grip-task.ts';
import { balanceImpulse, impulseAfterEase, impulseAfterWork } from './impulse-balance.ts';
import { WORKED_MAXIMUM, WORKED_TASKS } from './worked-example.ts';

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

test('an impulse refuses what a march refuses, and what is its own', () => {
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
