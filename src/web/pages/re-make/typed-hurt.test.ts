import { expect, test } from 'vitest';
import { hurtsOf, nextHurt, unreadHurts } from './typed-hurt.ts';

test('a line counts once it holds a whole number from 0 to 10', () => {
  const line = { key: 1, site: 'knee', side: 'left' } as const;
  const scored = (score: string) => hurtsOf([{ ...line, score }]);
  expect(scored('6')).toEqual([{ site: 'knee', side: 'left', score: 6 }]);
  expect(scored(' 10 ')).toEqual([{ site: 'knee', side: 'left', score: 10 }]);
  for (const nothing of ['', '11', '-1', '3.5', 'a']) expect(scored(nothing)).toEqual([]);
});

test('without a side both are meant', () => {
  expect(hurtsOf([{ key: 1, site: 'low back', side: '', score: '4' }])).toEqual([
    { site: 'low back', side: null, score: 4 },
  ]);
});

test('a new line has a key of its own', () => {
  const one = nextHurt([], 'knee');
  expect(nextHurt([one], 'knee').key).toBe(one.key + 1);
});

test('a line without a whole number from 0 to 10 is asked about, never passed over', () => {
  const line = { key: 1, site: 'neck', side: '', score: '4' } as const;
  expect(unreadHurts([line])).toEqual([]);
  expect(unreadHurts([{ ...line, score: '' }]).map(({ what }) => what)).toEqual([
    'How much the neck hurts is not told.',
  ]);
  expect(unreadHurts(['7.5', '11', 'much'].map((score, key) => ({ ...line, key, score })))).toHaveLength(3);
});
