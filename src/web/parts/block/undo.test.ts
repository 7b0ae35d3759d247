import fc from 'fast-check';
import { expect, test } from 'vitest';
import { doAgain, NO_STEPS, STEPS_KEPT, takeBack, withStep, type Steps } from './undo.ts';

const stepsOf = (...names: readonly string[]): Steps<string> =>
  names.reduce((steps, name) => withStep(steps, name), NO_STEPS as Steps<string>);

test('the newest step is taken back first, and done again last', () => {
  const once = takeBack(stepsOf('a', 'b', 'c'));
  expect(once?.step).toBe('c');
  const twice = once && takeBack(once.steps);
  expect(twice).toEqual({ step: 'b', steps: { done: ['a'], takenBack: ['c', 'b'] } });
  expect(twice && doAgain(twice.steps)?.step).toBe('b');
});

test('nothing done can neither be taken back nor done again', () => {
  expect(takeBack(NO_STEPS)).toBeNull();
  expect(doAgain(stepsOf('a'))).toBeNull();
});

test('a new step ends what had been taken back', () => {
  const after = takeBack(stepsOf('a', 'b'));
  expect(after && withStep(after.steps, 'c')).toEqual({ done: ['a', 'c'], takenBack: [] });
});

test('old steps are forgotten', () => {
  const names = Array.from({ length: STEPS_KEPT + 3 }, (_, place) => `${place}`);
  const { done } = stepsOf(...names);
  expect([done.length, done[0], done.at(-1)]).toEqual([STEPS_KEPT, '3', `${STEPS_KEPT + 2}`]);
});

test('taking back everything and doing it again leaves what was', () => {
  fc.assert(
    fc.property(fc.array(fc.string(), { maxLength: 12 }), (names) => {
      const start = stepsOf(...names);
      let steps = start;
      for (let turn = takeBack(steps); turn; turn = takeBack(steps)) ({ steps } = turn);
      expect(steps.done).toEqual([]);
      for (let turn = doAgain(steps); turn; turn = doAgain(steps)) ({ steps } = turn);
      expect(steps).toEqual(start);
    }),
  );
});
