import { expect, test, vi } from 'vitest';
import type { Check } from '#science/check.ts';
import { checkGroups, shortSource } from './check-groups.ts';
import { checkRun, nextSize } from './check-run.ts';

const source = { text: 'Noone N. et al. (1999) A paper. 1:2–3.', status: 'our own design' } as const;
const check = (title: string, compute: () => number, because = 'exact'): Check => ({
  kind: 'series',
  title,
  compute,
  printed: 1,
  within: 0.1,
  because,
  source,
});
const throws = (): number => {
  throw new RangeError('out of range');
};

test('a run computes every check, and keeps what does not hold and what cannot be computed', async () => {
  const [good, off, broken] = [check('good', () => 1.05), check('off', () => 1.2), check('broken', throws)];
  const run = checkRun([good, off, broken]);
  const listen = vi.fn<() => void>();
  run.subscribe(listen);
  expect(run.tally()).toMatchObject({ of: 3, done: 0, broken: [] });
  const stop = run.start();
  await vi.waitFor(() => expect(run.tally().done).toBe(3));
  stop();
  expect(run.resultOf(good)).toEqual({ kind: 'computed', value: 1.05, holds: true });
  expect(run.resultOf(off)).toEqual({ kind: 'computed', value: 1.2, holds: false });
  expect(run.resultOf(broken)).toEqual({ kind: 'failed', why: 'out of range' });
  expect(run.tally().broken).toEqual([off, broken]);
  expect(listen).toHaveBeenCalled();
});

test('a slice grows while it is quick and shrinks when it is slow, and never to nothing', () => {
  expect(nextSize(16, 0)).toBe(32);
  expect(nextSize(16, 8)).toBe(16);
  expect(nextSize(16, 80)).toBe(2);
  expect(nextSize(1, 5000)).toBe(1);
});

test('checks stand together by reason and source', () => {
  const checks = [check('a', () => 1), check('b', () => 1, 'rounded'), check('c', () => 1)];
  expect(checkGroups(checks).map((group) => group.checks.length)).toEqual([2, 1]);
});

test.each([
  ['Noone N. et al. (1999) A paper. 1:2–3.', 'Noone N. et al. (1999)'],
  ['Common practice, no source.', 'Common practice'],
  ['A handbook', 'A handbook'],
])('%s is called %s in short', (text, short) => {
  expect(shortSource(text)).toBe(short);
});
